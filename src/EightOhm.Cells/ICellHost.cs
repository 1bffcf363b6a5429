using EightOhm.Cells.Running;

namespace EightOhm.Cells;

/// <summary>Where the cells of one notebook run, one after the other: a host of our own, or a notebook kernel of .NET Interactive.</summary>
public interface ICellHost : IDisposable
{
    /// <summary>Runs a cell to its end. The caller watches the time: a running cell can be asked to stop, and no more.</summary>
    /// <param name="source">The cell's code as written.</param>
    /// <param name="executionCount">The number that a notebook file tells of its run, from 1.</param>
    /// <param name="cancellation">Asks it to stop.</param>
    /// <param name="progress">Told from inside long work.</param>
    Task<CellOutcome> RunAsync(string source, int executionCount, CancellationToken cancellation, IProgress<WorkDone>? progress = null);
}
