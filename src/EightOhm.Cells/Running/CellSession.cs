using System.Text.Json.Nodes;
using EightOhm.Cells.Compiling;
using EightOhm.Cells.Sources;
using EightOhm.Display;
using EightOhm.Record;

namespace EightOhm.Cells.Running;

/// <summary>Runs the compiled cells of one notebook, in any order and as often as asked; their variables live as long as it does. It needs no compiler.</summary>
/// <remarks>Not for use from several threads at once; <see cref="SoFar"/> may be asked from any.</remarks>
public sealed class CellSession
{
    private readonly CellLoader loader = new();
    private object?[] slots = new object?[16];
    private volatile CellScreen? screen;

    /// <summary>A session without any variables.</summary>
    public CellSession() => CellConsole.Install();

    /// <summary>What the cell at work has shown so far; empty when none is.</summary>
    public JsonArray SoFar() => screen?.SoFar() ?? [];

    /// <summary>Runs a cell to its end. The caller watches the time: a running cell can be asked to stop, and no more.</summary>
    /// <param name="cell">The cell, compiled or not.</param>
    /// <param name="executionCount">The number that a notebook file tells of its run, from 1.</param>
    /// <param name="cancellation">Asks it to stop.</param>
    /// <param name="progress">Told from inside long work.</param>
    public async Task<CellOutcome> RunAsync(CompiledCell cell, int executionCount, CancellationToken cancellation, IProgress<WorkDone>? progress = null)
    {
        ArgumentNullException.ThrowIfNull(cell);
        if (!cell.Compiled)
            return new CellOutcome([], CellFailure.Of(cell.Faults));
        var own = screen = new CellScreen();
        foreach (var note in cell.Notes)
            own.Show(ShownForms.Of(note));
        if (cell.BringsEightOhm)
            own.Show(ShownForms.Of($"EightOhm {BuildVersion.Text} is at hand: quantities, formulas, the record, charts."));
        try
        {
            // What is said in here of the flow ends with it, and the cell's own threads inherit it.
            var failure = await Task.Run(() => RunAsync(cell, own, executionCount, cancellation, progress), CancellationToken.None).ConfigureAwait(false);
            return new CellOutcome(own.End(), failure);
        }
        finally
        {
            screen = null;
        }
    }

    private async Task<CellFailure?> RunAsync(CompiledCell cell, CellScreen own, int executionCount, CancellationToken cancellation, IProgress<WorkDone>? progress)
    {
        CellScreen.Current = own;
        CellSources.Current = new SourcesOfCell(cell.Writes);
        using var work = Work.Begin(cancellation, progress);
        try
        {
            if (cell.Image.Length == 0)
                return null;
            var entry = loader.Entry(cell);
            if (cell.Slot >= slots.Length)
                Array.Resize(ref slots, Math.Max(cell.Slot + 1, slots.Length * 2));
            object? value;
            using (RecordBatch.Open())
                value = await entry(slots).ConfigureAwait(false);
            if (cell.HasValue)
                own.Return(ShownForms.Of(value), executionCount);
            return null;
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            return CellFailures.Of(e);
        }
    }
}
