using System.Collections.Immutable;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace EightOhm.Generators.Tests;

/// <summary>Runs the generator on a piece of source, as the compiler would.</summary>
internal sealed class Generated
{
    private static readonly CSharpParseOptions Options = new(LanguageVersion.CSharp14);

    private static readonly ImmutableArray<MetadataReference> References =
        [.. ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator).Select(p => MetadataReference.CreateFromFile(p))];

    private readonly Compilation _compilation;

    private Generated(string source)
    {
        Source = source;
        var before = Plain(source);
        var driver = CSharpGeneratorDriver.Create([new FormulaGenerator().AsSourceGenerator()], parseOptions: Options)
            .RunGeneratorsAndUpdateCompilation(before, out _compilation, out _);
        Problems = driver.GetRunResult().Diagnostics;
        Code = string.Join("\n", driver.GetRunResult().GeneratedTrees.Select(t => t.ToString()));
    }

    public string Source { get; }

    public string Code { get; }

    public ImmutableArray<Diagnostic> Problems { get; }

    /// <summary>What the compiler says of the source and the steps together.</summary>
    public IEnumerable<string> Errors => _compilation.GetDiagnostics().Where(d => d.Severity == DiagnosticSeverity.Error).Select(d => d.ToString());

    /// <summary>The text that a problem points at.</summary>
    public string Marked(Diagnostic problem) => Source.Substring(problem.Location.SourceSpan.Start, problem.Location.SourceSpan.Length);

    public static Generated From(string source) => new(source);

    /// <summary>A formula with this body, over doubles a, b, c, a resistance R, a power P and a list of doubles.</summary>
    public static Generated Body(string body) => new(Room(body));

    /// <summary>The same formula, compiled and loaded as a program that has no generator does it.</summary>
    public static System.Reflection.Assembly WithoutGenerator(string body)
    {
        using var stream = new MemoryStream();
        Assert.True(Plain(Room(body)).Emit(stream).Success);
        return System.Reflection.Assembly.Load(stream.ToArray());
    }

    /// <summary>Compiles and loads the source with its steps.</summary>
    public System.Reflection.Assembly Load()
    {
        Assert.Empty(Errors);
        using var stream = new MemoryStream();
        Assert.True(_compilation.Emit(stream).Success);
        return System.Reflection.Assembly.Load(stream.ToArray());
    }

    private static CSharpCompilation Plain(string source) =>
        CSharpCompilation.Create("snippet", [CSharpSyntaxTree.ParseText(source, Options, "Snippet.cs")], References, new(OutputKind.DynamicallyLinkedLibrary, nullableContextOptions: NullableContextOptions.Enable));

    private static string Room(string body) =>
        $$"""
        using System;
        using System.Collections.Generic;
        using EightOhm.Quantities;
        using EightOhm.Explaining;
        using UnitsNet;
        using static EightOhm.Quantities.Constants;
        using static EightOhm.Quantities.Maths;
        namespace Snippets;
        public static partial class Room
        {
            [Formula("a textbook, ch. 1")]
            public static double F(double a, double b, double c, ElectricResistance R, Power P, IReadOnlyList<double> parts) {{body}}
            private const double half = 0.5;
            public static double G(double x, double y = 2) => x * y;
        }
        """;
}
