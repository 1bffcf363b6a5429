using EightOhm.Cells.Sources;

namespace EightOhm.Cells.Compiling;

/// <summary>The cells of a notebook, compiled in order in the background: the first may run while the others are still at the compiler.</summary>
public sealed class CellsAhead
{
    private readonly TaskCompletionSource<CompiledCell>[] cells;
    private readonly TaskCompletionSource<CellGraph?> graph = new(TaskCreationOptions.RunContinuationsAsynchronously);

    private CellsAhead(int count) => cells = [.. Enumerable.Range(0, count).Select(_ => new TaskCompletionSource<CompiledCell>(TaskCreationOptions.RunContinuationsAsynchronously))];

    /// <summary>Begins.</summary>
    /// <param name="sources">The code of the cells, in order.</param>
    /// <param name="compiler">Makes the notebook's compiler.</param>
    /// <param name="turn">Waits until it is this notebook's turn, and gives what ends the turn.</param>
    /// <param name="cancellation">Ends it.</param>
    public static CellsAhead Begin(IReadOnlyList<string> sources, Func<NotebookCompiler> compiler, Func<CancellationToken, Task<IDisposable>> turn, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(sources);
        var ahead = new CellsAhead(sources.Count);
        _ = Task.Run(() => ahead.CompileAsync(sources, compiler, turn, cancellation), CancellationToken.None);
        return ahead;
    }

    /// <summary>A cell, once it is compiled.</summary>
    /// <param name="index">Its place among the sources.</param>
    public Task<CompiledCell> Cell(int index) => cells[index].Task;

    /// <summary>What hangs on what among them, once all are compiled; null as <see cref="NotebookCompiler.Graph"/> says.</summary>
    public Task<CellGraph?> Graph => graph.Task;

    private async Task CompileAsync(IReadOnlyList<string> sources, Func<NotebookCompiler> begin, Func<CancellationToken, Task<IDisposable>> turn, CancellationToken cancellation)
    {
        try
        {
            using var mine = await turn(cancellation).ConfigureAwait(false);
            var compiler = begin();
            for (var i = 0; i < sources.Count; i++)
            {
                cancellation.ThrowIfCancellationRequested();
                cells[i].SetResult(compiler.Next(sources[i]));
            }

            graph.SetResult(compiler.Graph());
        }
        catch (Exception e)
        {
            foreach (var cell in cells)
                cell.TrySetException(e);
            // Nobody may ask for them any more.
            foreach (var cell in cells)
                _ = cell.Task.Exception;
            graph.TrySetResult(null);
        }
    }
}
