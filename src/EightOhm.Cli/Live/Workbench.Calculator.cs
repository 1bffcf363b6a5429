using System.Diagnostics;
using System.Text.Json.Nodes;
using EightOhm.Cells.Running;
using EightOhm.Cells.Sources;
using EightOhm.Cli.Ends;
using EightOhm.Cli.Live.Cells;
using EightOhm.Cli.Notebooks;
using EightOhm.Cli.WhatIf;

namespace EightOhm.Cli.Live;

/// <content>Calculating.</content>
internal sealed partial class Workbench
{
    /// <summary>Calculates cells as they are written now.</summary>
    /// <param name="chapter">The chapter.</param>
    /// <param name="what">"cell", "from" (it and those below it), "chapter" or "design" (all chapters of its folder).</param>
    /// <param name="cell">The cell, where one is meant.</param>
    public void Calculate(string chapter, string what, string? cell)
    {
        lock (gate)
        {
            if (!IsTrusted)
                throw new LiveRefusal("These notebooks have never been run here, and a cell may do whatever you may do. Say first that you trust them.");
            var (open, folder) = ChapterOf(chapter);
            var cells = what switch
            {
                "cell" => [open.Cell(cell ?? "")],
                "from" => open.Cells.SkipWhile(c => c != open.Cell(cell ?? "")),
                "chapter" => open.Cells,
                "design" => folder.Chapters.SelectMany(c => c.Cells),
                _ => throw new LiveRefusal($"What to calculate is \"cell\", \"from\", \"chapter\" or \"design\" (was \"{what}\")."),
            };
            inHand = open;
            var asked = cells.Where(c => c.IsCode).ToHashSet();
            calculator.Ask(asked);
            // What waits is seen to wait before the answer comes that it was asked for.
            foreach (var one in folder.Chapters)
            {
                foreach (var waiting in one.Cells.Where(asked.Contains))
                    TellCell(one, waiting);
            }
        }

        TellSheet();
    }

    /// <summary>Stops what is being calculated: what is not calculated stays visibly so.</summary>
    public void Stop() => calculator.Stop();

    /// <summary>Waits until nothing is left to be calculated.</summary>
    public Task IdleAsync() => calculator.IdleAsync();

    /// <summary>Runs what is to run, one cell after the other: first what the chapter in hand needs, then that chapter, then the rest of its folder.</summary>
    private sealed partial class Calculator(Workbench bench, Func<RecordCopy, ICellProcess> start) : IAsyncDisposable
    {
        private static readonly TimeSpan Between = TimeSpan.FromMilliseconds(500);

        // Between two cells nobody need be told of a wait.
        private static readonly TimeSpan Soon = TimeSpan.FromMilliseconds(150);

        private readonly SemaphoreSlim wake = new(0);
        private readonly SemaphoreSlim turn = new(1, 1);
        private readonly CancellationTokenSource closing = new();
        private readonly NotebookGraphs graphs = new();
        private readonly Dictionary<LiveChapter, ChapterView> views = [];
        private readonly Dictionary<LiveCell, (string Key, ICellProcess Process, int Life)> alive = [];
        private readonly HashSet<LiveCell> wanted = [], written = [];
        private readonly Stopwatch sinceSheet = Stopwatch.StartNew();
        private List<(LiveFolder Folder, LiveChapter Chapter, LiveCell Cell)> plan = [];
        private TaskCompletionSource idle = Done();
        private CancellationTokenSource? stopping;
        private LiveCell? running;
        private Task loop = Task.CompletedTask;
        private bool isPlanOld, isQuiet;

        /// <summary>What is being done, in words; null for nothing.</summary>
        public string? Busy { get; private set; }

        public void Start() => loop = Task.Run(LoopAsync);

        public CellState StateOf(LiveCell cell) => cell == running ? CellState.Running : wanted.Contains(cell) ? CellState.Waiting : cell.State;

        /// <summary>Something was moved in a folder's records. Called within the gate.</summary>
        public void Move()
        {
            isQuiet = false;
            Busy ??= "finding what hangs on it";
            stopping?.Cancel();
            Wake();
        }

        /// <summary>Cells are asked for. Called within the gate.</summary>
        public void Ask(IReadOnlyCollection<LiveCell> cells)
        {
            isQuiet = false;
            Busy ??= "getting ready to calculate";
            wanted.UnionWith(cells);
            written.UnionWith(cells);
            isPlanOld = true;
            Wake();
        }

        public void Stop()
        {
            lock (bench.gate)
            {
                isQuiet = true;
                wanted.Clear();
                written.Clear();
                isPlanOld = true;
                stopping?.Cancel();
            }

            Wake();
        }

        public Task IdleAsync()
        {
            lock (bench.gate)
                return idle.Task;
        }

        /// <summary>Does something while no cell runs.</summary>
        public async Task PauseAsync(Action act)
        {
            await turn.WaitAsync();
            try
            {
                act();
            }
            finally
            {
                turn.Release();
            }
        }

        /// <summary>Does something while no cell runs, with all that was moved in the records that the cells use: those are what is saved.</summary>
        /// <param name="act">What is done.</param>
        /// <param name="waits">Told, once, that it waits for a running cell.</param>
        public async Task SettledAsync(Action act, Action waits)
        {
            if (!await turn.WaitAsync(Soon))
            {
                waits();
                await turn.WaitAsync();
            }

            try
            {
                while (Moved() is { } folder)
                    await MoveAsync(folder);
                act();
            }
            finally
            {
                turn.Release();
            }
        }

        /// <summary>Does something after which nobody wants what is being calculated: it is stopped first.</summary>
        public Task DropAsync(Action act)
        {
            Stop();
            return PauseAsync(act);
        }

        /// <summary>A folder is read anew: its process ends. Called within the gate and a pause.</summary>
        public void Leave(LiveFolder folder)
        {
            var process = folder.Process;
            folder.Process = null;
            foreach (var cell in folder.Chapters.SelectMany(c => c.Cells))
            {
                wanted.Remove(cell);
                written.Remove(cell);
                alive.Remove(cell);
            }

            foreach (var chapter in folder.Chapters)
                Forget(chapter);
            ForgetInputs(folder);
            reads.Remove(folder);
            isPlanOld = true;
            _ = process?.DisposeAsync().AsTask();
        }

        public async ValueTask DisposeAsync()
        {
            lock (bench.gate)
                stopping?.Cancel();
            await closing.CancelAsync();
            await loop;
            closing.Dispose();
            wake.Dispose();
            turn.Dispose();
        }

        private static TaskCompletionSource Done()
        {
            var done = new TaskCompletionSource();
            done.SetResult();
            return done;
        }

        // Within the gate.
        private void Wake()
        {
            if (idle.Task.IsCompleted)
                idle = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
            wake.Release();
        }

        private async Task LoopAsync()
        {
            try
            {
                ReadAhead();
                while (true)
                {
                    await wake.WaitAsync(closing.Token);
                    while (await TurnAsync())
                    {
                        // One cell after the other.
                    }

                    Rest();
                }
            }
            catch (OperationCanceledException) when (closing.IsCancellationRequested)
            {
                // The program ends.
            }
        }

        // What hangs on what is read while nobody waits for it: the first move is answered as quickly as the next.
        private void ReadAhead()
        {
            List<ChapterView> all;
            lock (bench.gate)
                all = [.. bench.Chapters.Select(ViewOf).Where(v => NotebookGraphs.SpeaksOfARecord(v.Notebook))];
            foreach (var view in all.TakeWhile(_ => wake.CurrentCount == 0 && !closing.IsCancellationRequested))
            {
                try
                {
                    _ = view.Graph;
                }
                catch (Exception e) when (e is not OutOfMemoryException)
                {
                    // Whoever needs it is told.
                }
            }

            if (bench.IsTrusted)
                graphs.Keep();
        }

        private async Task<bool> TurnAsync()
        {
            await turn.WaitAsync(closing.Token);
            try
            {
                return await StepAsync();
            }
            catch (Exception e) when (e is not OperationCanceledException || !closing.IsCancellationRequested)
            {
                lock (bench.gate)
                {
                    wanted.Clear();
                    written.Clear();
                    isPlanOld = true;
                    // What could not be moved is not moved: the sheet says what is.
                    foreach (var folder in bench.folders.Where(f => f.Moves.Count > 0))
                    {
                        folder.Moves.Clear();
                        folder.Look();
                    }
                }

                bench.Say($"Calculating was ended: {e.Message}", "Calculate again.");
                return false;
            }
            finally
            {
                turn.Release();
            }
        }

        private void Rest()
        {
            lock (bench.gate)
            {
                if (wanted.Count > 0 || bench.folders.Any(f => f.Moves.Count > 0) && bench.IsTrusted)
                    return;
                Busy = null;
                foreach (var folder in bench.folders.Where(f => f.Process is not null))
                    folder.Look();
                bench.Index();
            }

            if (bench.IsTrusted)
                graphs.Keep();
            bench.TellFolder();
            bench.TellSheet();
            bench.TellInputs();
            lock (bench.gate)
            {
                if (wanted.Count == 0)
                    idle.TrySetResult();
            }
        }

        // False when there is nothing left to do.
        private async Task<bool> StepAsync()
        {
            if (bench.IsTrusted && Moved() is { } moved)
            {
                await MoveAsync(moved);
                return true;
            }

            if (isPlanOld)
                Plan();
            (LiveFolder Folder, LiveChapter Chapter, LiveCell Cell) next;
            lock (bench.gate)
            {
                plan.RemoveAll(p => !wanted.Contains(p.Cell));
                if (plan.Count == 0)
                {
                    wanted.Clear();
                    written.Clear();
                    return false;
                }

                next = plan[0];
                Busy = FormattableString.Invariant($"calculating {next.Chapter.File.Name}, {plan.Count} {(plan.Count == 1 ? "cell" : "cells")} to go");
            }

            if (IsRight(next.Folder, next.Chapter, next.Cell))
                Leave(next.Chapter, next.Cell);
            else
                await RunAsync(next.Folder, next.Chapter, next.Cell);
            return true;
        }

        private LiveFolder? Moved()
        {
            lock (bench.gate)
                return bench.folders.FirstOrDefault(f => f.Moves.Count > 0);
        }
    }
}
