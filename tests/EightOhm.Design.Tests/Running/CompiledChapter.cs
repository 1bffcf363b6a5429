using EightOhm.Cells;
using EightOhm.Cells.Compiling;
using EightOhm.Cells.Running;
using EightOhm.Cells.Sources;
using EightOhm.Record;

namespace EightOhm.Design.Tests.Running;

/// <summary>A chapter compiled cell by cell, once; each run then has variables of its own, and shows nothing.</summary>
internal sealed class CompiledChapter
{
    private readonly IReadOnlyList<CompiledCell> cells;
    private readonly CellLoader loader = new();
    private readonly CellGraph graph;

    private CompiledChapter(ChapterText text, IReadOnlyList<CompiledCell> cells, CellGraph graph)
    {
        Text = text;
        this.cells = cells;
        this.graph = graph;
    }

    public ChapterText Text { get; }

    public string Name => Text.Name;

    /// <summary>Compiles the cells as the tool does: each sees what the ones before it declared.</summary>
    public static CompiledChapter Of(ChapterText text)
    {
        var compiler = new NotebookCompiler(CellReferences.OfThisProcess(), text.Folder);
        // The text leaves the package line out.
        compiler.Next(CellUsings.Script);
        var cells = text.Cells.Select(compiler.Next).ToList();
        var faults = cells.SelectMany((c, i) => c.Faults.Select(f => $"{text.Name}, code cell {i + 1}, line {f.Line}: {f.Words}")).ToList();
        if (faults.Count > 0)
            throw new InvalidOperationException(string.Join('\n', faults));
        return new(text, cells, compiler.Graph() ?? throw new InvalidOperationException($"{text.Name} names no record."));
    }

    /// <summary>What each cell hangs on, read from its text.</summary>
    public IReadOnlyList<CellReading> Readings => [.. graph.Cells.Skip(1)];

    /// <summary>The earlier cells that one needs.</summary>
    public IEnumerable<int> NeededBefore(int cell) => graph.NeededBefore(cell + 1).Where(i => i > 0).Select(i => i - 1);

    /// <summary>Runs the cells, in order, with variables of their own; each cell's changes to the record are written as one, with the sources that were read.</summary>
    /// <param name="failed">Called when a cell threw, and for each that needs what such a cell was to make: as in a run, it is not calculated. The others run all the same.</param>
    public async Task RunAsync(Action<int, Exception> failed)
    {
        var slots = new object?[cells.Count + 1];
        var lost = new HashSet<int>();
        for (var i = 0; i < cells.Count; i++)
        {
            if (lost.Count > 0 && NeededBefore(i).Any(lost.Contains))
            {
                lost.Add(i);
                failed(i, new InvalidOperationException("It needs what a cell before it did not make."));
                continue;
            }

            CellSources.Current = new SourcesOfCell(cells[i].Writes);
            try
            {
                if (cells[i].Image.Length > 0)
                {
                    using (RecordBatch.Open())
                        await loader.Entry(cells[i])(slots);
                }
            }
            catch (Exception e)
            {
                lost.Add(i);
                failed(i, e);
            }
        }

        CellSources.Current = null;
    }
}
