using System.Text;
using EightOhm.Cells.Sources;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Emit;
using Microsoft.CodeAnalysis.Text;

namespace EightOhm.Cells.Compiling;

/// <summary>The compiler at work on a notebook: each cell sees those before it.</summary>
internal sealed class CompilerChain
{
    private static readonly EmitOptions Emitting = new(debugInformationFormat: DebugInformationFormat.PortablePdb);

    private readonly List<CellSource> before = [];
    private readonly ReadAhead reading;
    private CellReferences references;
    private CSharpCompilation? last;
    private bool hasEightOhm;

    /// <param name="references">What cells are compiled against.</param>
    /// <param name="sources">The cells that compiled before.</param>
    public CompilerChain(CellReferences references, IEnumerable<CellSource> sources)
    {
        this.references = references;
        reading = new ReadAhead(references);
        foreach (var source in sources)
            Follow(source);
    }

    /// <summary>Goes through a cell that was compiled before.</summary>
    public void Follow(CellSource source)
    {
        last = Compilation(source).Compilation;
        before.Add(source);
        reading.Follow(source.Code, references);
    }

    /// <summary>Compiles the next cell; one with faults changes nothing.</summary>
    /// <param name="source">The cell.</param>
    public CompiledCell Next(CellSource source)
    {
        if (CellChain.IsForeign(source.Code))
            return new CompiledCell(source.Key, source.Slot, [], [], false, false, [], [], null, [new(1, "A line that begins with #! or #load is for another kernel; this host runs C# alone.")]);
        var compiled = Compile(source);
        if (!compiled.Cell.Compiled && references.WithAll() is var all && all != references)
        {
            // It may name an assembly that cells seldom name; the names of cells compiled against few and against all are not the same.
            var few = (references, last, hasEightOhm);
            (references, last, hasEightOhm) = (all, null, false);
            foreach (var earlier in before)
                last = Compilation(earlier).Compilation;
            compiled = Compile(source);
            if (!compiled.Cell.Compiled)
                (references, last, hasEightOhm) = few;
        }

        if (!compiled.Cell.Compiled)
            return compiled.Cell;
        last = compiled.Compilation;
        before.Add(source);
        return reading.Next(source.Code, references) is { Unknown: null } read ? compiled.Cell with { Writes = read.Writes } : compiled.Cell;
    }

    /// <summary>What hangs on what among the cells so far; null where not all of them were read.</summary>
    /// <param name="count">How many there are.</param>
    public CellGraph? Graph(int count) => reading.Graph(count);

    private (CSharpCompilation Compilation, CompiledCell Cell) Compile(CellSource source)
    {
        var had = hasEightOhm;
        var (compilation, notes) = Compilation(source);
        using var image = new MemoryStream();
        using var symbols = new MemoryStream();
        var emitted = compilation.Emit(image, symbols, options: Emitting);
        var faults = emitted.Diagnostics.Where(d => d.Severity == DiagnosticSeverity.Error).Select(Fault).ToList();
        // Without code there is nothing to emit, which is no fault.
        var hasCode = emitted.Success && image.Length > 0;
        if (faults.Count > 0)
            hasEightOhm = had;
        return (compilation, new CompiledCell(
            source.Key, source.Slot, hasCode ? image.ToArray() : [], hasCode ? symbols.ToArray() : [], hasCode && HasValue(compilation), source.BringsEightOhm, notes, source.Files, null, faults));
    }

    private (CSharpCompilation Compilation, IReadOnlyList<string> Notes) Compilation(CellSource source)
    {
        var previous = last;
        if (source.BringsEightOhm && !hasEightOhm)
        {
            hasEightOhm = true;
            previous = Script(CellUsings.Script, "usings", 0, previous);
        }

        var code = CellChain.Blanked(source.Code);
        var (steps, missing) = CellFormulas.Of(code, text => Script(text, "formulas", source.Slot, previous));
        var lifted = TextLift.Rewrite(CellText.With(code, [.. LiteralLift.Changes(code), .. steps]));
        return (Script(lifted, $"cell-{source.Key}", source.Slot, previous), missing);
    }

    private CSharpCompilation Script(string code, string name, int slot, CSharpCompilation? previous)
    {
        var options = new CSharpCompilationOptions(
            OutputKind.DynamicallyLinkedLibrary,
            scriptClassName: CompiledCell.ClassName(slot),
            usings: references.Usings,
            optimizationLevel: OptimizationLevel.Debug,
            concurrentBuild: false,
            metadataReferenceResolver: references.Resolver);
        var tree = CSharpSyntaxTree.ParseText(SourceText.From(code, Encoding.UTF8), CellText.Script, path: "cell");
        return CellScript.Of(name, tree, references.References, options, previous);
    }

    // A return, or an expression at the end without a semicolon that gives something.
    private static bool HasValue(CSharpCompilation cell)
    {
        var tree = cell.SyntaxTrees.Single();
        var root = tree.GetCompilationUnitRoot();
        if (root.DescendantNodes(n => n is CompilationUnitSyntax or GlobalStatementSyntax or StatementSyntax).Any(n => n.IsKind(SyntaxKind.ReturnStatement)))
            return true;
        return root.Members.LastOrDefault() is GlobalStatementSyntax { Statement: ExpressionStatementSyntax { SemicolonToken.IsMissing: true } last }
            && cell.GetSemanticModel(tree).GetTypeInfo(last.Expression).Type?.SpecialType != SpecialType.System_Void;
    }

    private static CellFault Fault(Diagnostic d) => new(
        d.Location.GetLineSpan().StartLinePosition.Line + 1,
        $"error {d.Id}: {d.GetMessage(System.Globalization.CultureInfo.InvariantCulture)}");
}
