using System.Collections.Immutable;
using System.Reflection;
using System.Runtime.Loader;
using EightOhm.Cells;
using EightOhm.Cells.Sources;
using EightOhm.Record;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace EightOhm.Design.Tests.Running;

/// <summary>A chapter compiled cell by cell, once; each run then has variables of its own.</summary>
internal sealed class CompiledChapter
{
    private static readonly CSharpParseOptions Script = new(LanguageVersion.Preview, kind: SourceCodeKind.Script);

    private static readonly ImmutableArray<MetadataReference> References =
    [
        .. ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Select(path => (MetadataReference)MetadataReference.CreateFromFile(path)),
    ];

    private readonly IReadOnlyList<Func<object?[], Task<object?>>> cells;
    private readonly Lazy<CellGraph> graph;

    private CompiledChapter(ChapterText text, IReadOnlyList<Func<object?[], Task<object?>>> cells)
    {
        Text = text;
        this.cells = cells;
        graph = new(() => CellGraph.Read(text.Cells, CellReferences.OfThisProcess(), CellUsings.Script));
    }

    public ChapterText Text { get; }

    public string Name => Text.Name;

    /// <summary>Compiles the cells as a notebook's kernel would: each sees what the ones before it declared.</summary>
    public static CompiledChapter Of(ChapterText text)
    {
        // The first line of the extension's script is its usings; the second loads it into a host, of which there is none here.
        var usings = CellUsings.Script.Split('\n')[0]
            + " using System; using System.Linq; using System.Collections.Generic; using System.Threading.Tasks;";
        CSharpCompilation? previous = null;
        var faults = new List<string>();
        var compiled = new List<Func<object?[], Task<object?>>>();
        var loader = new AssemblyLoadContext(text.Name, isCollectible: false);
        foreach (var (code, number) in text.Cells.Prepend(usings).Select((c, i) => (c, i)))
        {
            var tree = CSharpSyntaxTree.ParseText(LiteralLift.Rewrite(code), Script);
            var cell = CSharpCompilation.CreateScriptCompilation(
                $"{text.Name}-{number}",
                tree,
                References,
                new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, scriptClassName: $"Submission_{number}", optimizationLevel: OptimizationLevel.Release, nullableContextOptions: NullableContextOptions.Disable)
                    .WithSpecificDiagnosticOptions([KeyValuePair.Create("CS1701", ReportDiagnostic.Suppress), KeyValuePair.Create("CS1702", ReportDiagnostic.Suppress)]),
                previous,
                typeof(object));
            using var image = new MemoryStream();
            var result = cell.Emit(image);
            if (result.Diagnostics.Where(d => d.Severity == DiagnosticSeverity.Error).ToList() is { Count: > 0 } errors)
            {
                faults.AddRange(errors.Select(e => $"{text.Name}, code cell {number}: {e}"));
                continue;
            }

            previous = cell;
            if (image.Length == 0)
            {
                compiled.Add(_ => Task.FromResult<object?>(null));
                continue;
            }

            image.Position = 0;
            var entry = cell.GetEntryPoint(default)!;
            var type = loader.LoadFromStream(image).GetType(entry.ContainingType.MetadataName)!;
            compiled.Add(type.GetMethod(entry.MetadataName, BindingFlags.Static | BindingFlags.NonPublic | BindingFlags.Public)!
                .CreateDelegate<Func<object?[], Task<object?>>>());
        }

        return faults.Count == 0 ? new(text, compiled) : throw new InvalidOperationException(string.Join('\n', faults));
    }

    /// <summary>What each cell hangs on, read from its text.</summary>
    public IReadOnlyList<CellReading> Readings => graph.Value.Cells;

    /// <summary>Runs the cells, in order, with variables of their own; each cell's changes to the record are written as one, with the sources that were read.</summary>
    /// <param name="failed">Called when a cell threw, and for each that needs what such a cell was to make: as in a run, it is not calculated. The others run all the same.</param>
    public async Task RunAsync(Action<int, Exception> failed)
    {
        var slots = new object?[cells.Count + 1];
        await cells[0](slots);
        var lost = new HashSet<int>();
        for (var i = 1; i < cells.Count; i++)
        {
            if (lost.Count > 0 && graph.Value.NeededBefore(i - 1).Any(lost.Contains))
            {
                lost.Add(i - 1);
                failed(i - 1, new InvalidOperationException("It needs what a cell before it did not make."));
                continue;
            }

            CellSources.Current = new SourcesOfCell(Readings[i - 1].Unknown is null ? Readings[i - 1].Writes : null);
            try
            {
                using (RecordBatch.Open())
                    await cells[i](slots);
            }
            catch (Exception e)
            {
                lost.Add(i - 1);
                failed(i - 1, e);
            }
        }

        CellSources.Current = null;
    }
}
