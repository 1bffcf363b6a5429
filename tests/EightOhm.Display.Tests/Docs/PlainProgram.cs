using System.Reflection;
using System.Runtime.Loader;
using EightOhm.Tests.Docs;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace EightOhm.Display.Tests.Docs;

/// <summary>A program that references the package, compiled and run with what the package brings: its usings, and what makes texts ours.</summary>
internal static class PlainProgram
{
    private static readonly CSharpParseOptions Options = new CSharpParseOptions(LanguageVersion.CSharp14).WithFeatures([KeyValuePair.Create("FileBasedProgram", "true")]);

    private static readonly MetadataReference[] References =
        [.. ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator).Select(p => MetadataReference.CreateFromFile(p))];

    /// <summary>What the program prints.</summary>
    public static string Run(string code)
    {
        var compilation = Compile(code);
        Assert.Empty(Errors(compilation).Select(d => d.ToString()));
        using var image = new MemoryStream();
        compilation.Emit(image);
        image.Position = 0;
        var entry = new AssemblyLoadContext("program", isCollectible: false).LoadFromStream(image).EntryPoint!;
        return ConsoleOutput.Of(() => entry.Invoke(null, BindingFlags.DoNotWrapExceptions, null, [Array.Empty<string>()], null));
    }

    /// <summary>What the compiler has against the program.</summary>
    public static IEnumerable<Diagnostic> Errors(string code) => Errors(Compile(code));

    private static IEnumerable<Diagnostic> Errors(CSharpCompilation compilation) => compilation.GetDiagnostics().Where(d => d.Severity >= DiagnosticSeverity.Warning);

    private static CSharpCompilation Compile(string code) => CSharpCompilation.Create(
        "program",
        [CSharpSyntaxTree.ParseText(Usings(), Options), CSharpSyntaxTree.ParseText(Brought(), Options), CSharpSyntaxTree.ParseText(code, Options)],
        References,
        new(OutputKind.ConsoleApplication, nullableContextOptions: NullableContextOptions.Enable));

    private static string Brought() => File.ReadAllText(Path.Combine(WrittenTable.Root(), "src", "EightOhm.Display", "build", "QuantityText.cs"));

    // Those of an SDK's implicit usings, and the package's.
    private static string Usings() => string.Join('\n',
        new[] { "System", "System.Collections.Generic", "System.IO", "System.Linq", "System.Net.Http", "System.Threading", "System.Threading.Tasks" }.Select(n => $"using {n};")
            .Concat(StandardUsings.All).Select(u => $"global {u}"));
}
