using EightOhm.Generators;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace EightOhm.Cells;

/// <summary>Writes the steps of each <c>[Formula]</c> that a cell declares, as the generator does in a program: a cell is compiled without generators.</summary>
internal static class CellFormulas
{
    /// <summary>The steps that are put behind the formulas of a cell, and what keeps others from having any.</summary>
    /// <param name="code">The cell's code.</param>
    /// <param name="compile">Compiles a text behind the cells before it.</param>
    /// <returns>The text to put in, on the line where the formula ends, and a sentence for each formula without steps.</returns>
    public static (IReadOnlyList<TextChange> Changes, IReadOnlyList<string> Missing) Of(string code, Func<string, Compilation> compile)
    {
        if (!code.Contains("[Formula", StringComparison.Ordinal))
            return ([], []);
        var compilation = compile(code);
        if (compilation.SyntaxTrees.LastOrDefault() is not { } tree || tree.GetDiagnostics().Any(d => d.Severity == DiagnosticSeverity.Error))
            return ([], []);
        var (written, missing) = (new List<TextChange>(), new List<string>());
        foreach (var bare in Bare(tree))
            missing.Add($"The steps of {bare.Identifier.Text} cannot be shown: in a cell a [Formula] must stand in a partial type, as public static partial class Mine {{ … }}.");
        if (missing.Count > 0)
            return ([], missing);
        var result = CSharpGeneratorDriver.Create([new FormulaGenerator().AsSourceGenerator()], parseOptions: (CSharpParseOptions)tree.Options)
            .RunGenerators(compilation).GetRunResult().Results.Single();
        missing.AddRange(result.Diagnostics.Select(d => $"Line {d.Location.GetLineSpan().StartLinePosition.Line + 1}: {d.GetMessage(System.Globalization.CultureInfo.InvariantCulture).TrimEnd('.')}. Until then its steps cannot be shown."));
        var outer = Outer(compilation);
        written.AddRange(result.GeneratedSources.Select(g => new TextChange(new TextSpan(EndOf(g, tree), 0), " " + Flat(g.SourceText.ToString(), outer))));
        return (written, missing);
    }

    // A method of the cell itself belongs to an object of the kernel's own, which has no name that could be written.
    private static IEnumerable<MethodDeclarationSyntax> Bare(SyntaxTree tree) =>
        tree.GetRoot().ChildNodes().OfType<MethodDeclarationSyntax>()
            .Where(m => m.AttributeLists.SelectMany(l => l.Attributes).Any(a => a.Name.ToString() is "Formula" or "FormulaAttribute"));

    // The class that the kernel puts around each cell: what it holds is named without it.
    private static string? Outer(Compilation compilation) => compilation.ScriptClass?.ToDisplayString(SymbolDisplayFormat.FullyQualifiedFormat);

    // Behind the outermost type that holds the formula.
    private static int EndOf(GeneratedSourceResult generated, SyntaxTree tree)
    {
        var name = generated.SyntaxTree.GetRoot().ChildNodes().OfType<TypeDeclarationSyntax>().First().Identifier.Text;
        return tree.GetRoot().ChildNodes().OfType<TypeDeclarationSyntax>().Last(t => t.Identifier.Text == name).Span.End;
    }

    // One line, without what stands before the members: a line more would move the numbers of the cell's own.
    private static string Flat(string text, string? outer)
    {
        var lines = text.Split('\n').Where(l => !l.StartsWith("//", StringComparison.Ordinal) && !l.StartsWith('#') && !l.StartsWith("using ", StringComparison.Ordinal));
        var flat = string.Join(' ', lines.Select(l => l.TrimEnd('\r')));
        return outer is null ? flat : flat.Replace(outer + ".", "", StringComparison.Ordinal);
    }
}
