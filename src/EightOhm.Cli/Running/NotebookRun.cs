using System.Globalization;
using EightOhm.Cells.Running;
using EightOhm.Cli.Ends;
using EightOhm.Cli.Notebooks;
using EightOhm.Cli.Watching;
using EightOhm.Display;

namespace EightOhm.Cli.Running;

/// <summary>Runs one notebook's cells in order, passes over those that need what a failed cell was to give, and watches the time.</summary>
/// <param name="notebook">The notebook.</param>
/// <param name="program">Its cells as they run; null when none of them is to run.</param>
/// <param name="run">What it shares with the others.</param>
/// <param name="progress">Tells how it goes.</param>
internal sealed class NotebookRun(NotebookFile notebook, NotebookProgram? program, RunContext run, RunProgress progress)
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
            var place = new CellPlace(notebook, cell);
            var runs = run.Plan.Runs(place);
            run.Log.Count(runs);
            if (!runs)
                continue;

            var end = run.Needs.Missing(place, Lost) is { } need
                ? Skip(place, count, need)
                : await RunAsync(place, count, cancellation);
            if (end is null)
                continue;
            run.Log.Add(end);
            run.Lost(end);
        }

        Watched.After();
        progress.End(notebook);
    }

    // Another folder's notebooks are of another design: nothing here hangs on them.
    private List<CellEnd> Lost => [.. run.Log.Ends.Where(e => e.Place.Notebook.Folder == notebook.Folder)];

    private CellEnd Skip(CellPlace place, int count, CellNeed need)
    {
        var end = CellEnd.Skipped(place, need, run.Needs.Lost(place, null));
        place.Cell.SetOutputs(count, [end.Output()]);
        return end;
    }

    // Null when the cell ran to its end.
    private async Task<CellEnd?> RunAsync(CellPlace place, int count, CancellationToken cancellation)
    {
        var outcome = await OutcomeAsync(place, count, cancellation);
        if (outcome.Failure is { Kind: FailureKind.Cancelled })
            cancellation.ThrowIfCancellationRequested();
        var end = outcome.Failure is { } failure ? CellEnd.Of(place, failure, run.Needs.Lost(place, failure.Reached), Lost) : null;
        if (end is not null)
            outcome.Outputs.Add((System.Text.Json.Nodes.JsonNode)end.Output());
        place.Cell.SetOutputs(count, outcome.Outputs);
        return end;
    }

    private async Task<CellOutcome> OutcomeAsync(CellPlace place, int count, CancellationToken cancellation)
    {
        var compiled = await Stage.RunAsync($"Compiling {place.InFile}", Stage.LimitOf(run.Limit), _ => program!.Compiled(place.Cell), cancellation);
        Watched.At(place.InFile);
        var running = program!.RunAsync(compiled, count, cancellation, progress.Inside);
        try
        {
            return await running.WaitAsync(run.Limit, cancellation);
        }
        catch (TimeoutException) when (!running.IsCompleted)
        {
            var seconds = run.Limit.TotalSeconds.ToString("0.###", CultureInfo.InvariantCulture);
            throw new RunFailure(
                ExitCode.OverLimit,
                $"{place.InFile} ran longer than {seconds} s and the run was ended; nothing was written. " +
                "Make the cell do less, or allow more with --limit.");
        }
        catch (OperationCanceledException) when (cancellation.IsCancellationRequested)
        {
            await Task.WhenAny(running, Task.Delay(Grace, CancellationToken.None));
            throw;
        }
    }
}
