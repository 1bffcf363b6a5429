using System.Reflection;
using System.Runtime.Loader;
using System.Text.RegularExpressions;
using EightOhm.Tests.Docs;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace EightOhm.Display.Tests.Docs;

/// <summary>The programs in the README compile as they stand, with the usings that the package brings, and print what the README says they print.</summary>
[Collection(nameof(ConsoleOutput))]
public partial class ReadmeTests
{
    private static readonly CSharpParseOptions Options = new CSharpParseOptions(LanguageVersion.CSharp14).WithFeatures([KeyValuePair.Create("FileBasedProgram", "true")]);

    private static readonly MetadataReference[] References =
        [.. ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator).Select(p => MetadataReference.CreateFromFile(p))];

    public static TheoryData<string, string> Programs
    {
        get
        {
            var programs = new TheoryData<string, string>();
            foreach (Match block in Block().Matches(Readme()))
                programs.Add(block.Groups["code"].Value, block.Groups["says"].Value);
            return programs;
        }
    }

    [Fact]
    public void Every_block_of_CSharp_in_the_README_is_a_program_with_what_it_prints() =>
        Assert.Equal(CodeFence().Count(Readme()), Programs.Count);

    [Theory]
    [MemberData(nameof(Programs))]
    public void A_program_compiles_and_prints_what_the_README_says(string code, string says) =>
        Assert.Equal(says, Run(code));

    // A literal is an extension property, which no expression tree takes: the README says to name it first.
    [Fact]
    public void A_literal_within_Explain_is_refused_by_the_compiler_of_a_plain_program() =>
        Assert.Equal(["CS9296", "CS9296"], Errors(Compile("Show.Print(Explain(() => Sqrt(100.W * 8.Ohm)));")).Select(d => d.Id));

    private static string Readme() => File.ReadAllText(Path.Combine(WrittenTable.Root(), "README.md")).ReplaceLineEndings("\n");

    private static string Run(string code)
    {
        var compilation = Compile(code);
        Assert.Empty(Errors(compilation).Select(d => d.ToString()));
        using var image = new MemoryStream();
        compilation.Emit(image);
        image.Position = 0;
        var entry = new AssemblyLoadContext("readme", isCollectible: false).LoadFromStream(image).EntryPoint!;
        return ConsoleOutput.Of(() => entry.Invoke(null, BindingFlags.DoNotWrapExceptions, null, [Array.Empty<string>()], null));
    }

    private static IEnumerable<Diagnostic> Errors(CSharpCompilation compilation) => compilation.GetDiagnostics().Where(d => d.Severity == DiagnosticSeverity.Error);

    private static CSharpCompilation Compile(string code) => CSharpCompilation.Create(
        "readme",
        [CSharpSyntaxTree.ParseText(Usings(), Options), CSharpSyntaxTree.ParseText(code, Options)],
        References,
        new(OutputKind.ConsoleApplication, nullableContextOptions: NullableContextOptions.Enable));

    // Those of an SDK's implicit usings, and the package's.
    private static string Usings() => string.Join('\n',
        new[] { "System", "System.Collections.Generic", "System.IO", "System.Linq", "System.Net.Http", "System.Threading", "System.Threading.Tasks" }.Select(n => $"using {n};")
            .Concat(StandardUsings.All).Select(u => $"global {u}"));

    [GeneratedRegex("```csharp\n(?<code>.*?)```\n+(?:[^\n`]+\n+)?```text\n(?<says>.*?)```", RegexOptions.Singleline)]
    private static partial Regex Block();

    [GeneratedRegex("```csharp")]
    private static partial Regex CodeFence();
}
