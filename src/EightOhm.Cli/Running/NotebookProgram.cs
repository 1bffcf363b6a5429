using EightOhm.Cells.Compiling;
using EightOhm.Cells.Running;
using EightOhm.Cells.Sources;
using EightOhm.Cli.Notebooks;

namespace EightOhm.Cli.Running;

/// <summary>One notebook as it runs in this process: its cells, compiled ahead, and their variables.</summary>
/// <param name="cells">Its code cells that hold code, in order.</param>
/// <param name="ahead">The same, on their way through the compiler.</param>
/// <param name="kept">What was compiled before.</param>
/// <param name="graph">Where what hangs on what is kept; null where nothing can be.</param>
internal sealed class NotebookProgram(IReadOnlyList<NotebookCell> cells, CellsAhead ahead, Lazy<KeptImages?> kept, KeptGraph? graph)
{
    private readonly Dictionary<NotebookCell, int> places = cells.Select((cell, i) => (cell, i)).ToDictionary(c => c.cell, c => c.i);
    private readonly CellSession session = new();

    /// <summary>A cell, once it is compiled.</summary>
    public Task<CompiledCell> Compiled(NotebookCell cell) => ahead.Cell(places[cell]);

    /// <summary>Keeps what was compiled, for the next run.</summary>
    public async Task KeepAsync()
    {
        // Also the cells that were not to run: the next run may want them.
        for (var i = 0; i < cells.Count; i++)
            await ahead.Cell(i);
        kept.Value?.Save();
        if (await ahead.Graph is { } read)
            graph?.Keep([.. cells.Select(c => c.Source)], read);
    }

    /// <summary>Runs a cell to its end.</summary>
    public Task<CellOutcome> RunAsync(CompiledCell cell, int executionCount, CancellationToken cancellation, IProgress<WorkDone>? progress) =>
        session.RunAsync(cell, executionCount, cancellation, progress);
}
