using System.Globalization;
using EightOhm.Cli.Notebooks;

namespace EightOhm.Cli.Running;

/// <summary>Runs one notebook from its first cell to its last, and watches the time.</summary>
internal sealed class NotebookRun(NotebookFile notebook, NotebookKernel kernel, TimeSpan limit, RunProgress progress)
{
    // A loop of ours stops within a fifth of this; a loop of the cell's own is left behind when it is over.
    private static readonly TimeSpan Grace = TimeSpan.FromMilliseconds(500);

    public async Task ExecuteAsync(CancellationToken cancellation)
    {
        progress.Begin(notebook);
        var count = 0;
        foreach (var cell in notebook.Cells.Where(c => c.IsCode))
        {
            cancellation.ThrowIfCancellationRequested();
            progress.Cell(notebook, cell);
            if (string.IsNullOrWhiteSpace(cell.Source))
            {
                cell.ClearOutputs();
                continue;
            }

            count++;
            var outcome = await RunAsync(cell, count, cancellation);
            if (outcome.Failure is { } failure)
            {
                if (failure.Cancelled)
                    cancellation.ThrowIfCancellationRequested();
                var line = failure.Line is { } n ? string.Create(CultureInfo.InvariantCulture, $", line {n}") : "";
                throw new RunFailure(ExitCode.CellFailed, $"{notebook.FileName}, cell {cell.Number}{line}: {failure.Message}");
            }

            cell.SetOutputs(count, outcome.Outputs);
        }

        progress.End(notebook);
    }

    private async Task<CellOutcome> RunAsync(NotebookCell cell, int count, CancellationToken cancellation)
    {
        var running = Task.Run(() => kernel.RunAsync(cell.Source, count, cancellation, progress.Inside), CancellationToken.None);
        try
        {
            return await running.WaitAsync(limit, cancellation);
        }
        catch (TimeoutException) when (!running.IsCompleted)
        {
            var seconds = limit.TotalSeconds.ToString("0.###", CultureInfo.InvariantCulture);
            throw new RunFailure(
                ExitCode.OverLimit,
                $"{notebook.FileName}, cell {cell.Number} ran longer than {seconds} s and the run was ended; nothing was written. " +
                "Make the cell do less, or allow more with --limit.");
        }
        catch (OperationCanceledException) when (cancellation.IsCancellationRequested)
        {
            await Task.WhenAny(running, Task.Delay(Grace, CancellationToken.None));
            throw;
        }
    }
}
