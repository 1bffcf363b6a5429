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
    private sealed class Calculator(Workbench bench, Func<RecordCopy, ICellProcess> start) : IAsyncDisposable
    {
        private static readonly TimeSpan Between = TimeSpan.FromMilliseconds(500);

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
        public void Move(LiveFolder folder)
        {
            _ = folder;
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
        public async Task SettledAsync(Action act)
        {
            await turn.WaitAsync();
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

            await RunAsync(next.Folder, next.Chapter, next.Cell);
            return true;
        }

        private LiveFolder? Moved()
        {
            lock (bench.gate)
                return bench.folders.FirstOrDefault(f => f.Moves.Count > 0);
        }

        private async Task MoveAsync(LiveFolder folder)
        {
            List<Move> moves;
            lock (bench.gate)
                moves = [.. folder.Moves];
            var process = ProcessOf(folder);
            foreach (var move in moves)
                await process.SetAsync(move.Record, move.Name, move.Text);
            HashSet<EntryName> entries;
            lock (bench.gate)
            {
                folder.Moves.RemoveAll(moves.Contains);
                folder.Look();
                entries = [.. folder.Records.SelectMany(r => RerunPlanner.After(r, moves.Where(m => m.Record == LiveFolder.FileOf(r)).Select(m => m.Name)))];
            }

            Outdate(folder, entries, null, null);
            lock (bench.gate)
            {
                if (!isQuiet && bench.IsTrusted)
                    wanted.UnionWith(folder.Chapters.SelectMany(c => c.Cells).Where(c => c.IsCode && !c.IsCurrent));
                isPlanOld = true;
            }
        }

        // Marks what hangs on entries, or on a cell that was changed, as not calculated since. A later notebook may move what an earlier one shows: round the folder until nothing new has moved.
        private void Outdate(LiveFolder folder, HashSet<EntryName> entries, LiveChapter? changedIn, LiveCell? changed)
        {
            List<ChapterView> all;
            lock (bench.gate)
                all = [.. folder.Chapters.Select(ViewOf).Where(v => v.Chapter == changedIn || NotebookGraphs.SpeaksOfARecord(v.Notebook))];
            graphs.Begin(all.Select(v => v.Notebook));
            var outdated = new HashSet<(LiveChapter, LiveCell)>();
            for (var known = -1; known != entries.Count;)
            {
                known = entries.Count;
                foreach (var view in all)
                {
                    var at = view.Chapter == changedIn ? view.IndexOf(changed!) : -1;
                    var rerun = view.Graph.Graph.CellsToRun(entries, at < 0 ? [] : [at]);
                    outdated.UnionWith(rerun.Moved.Where(i => i != at).Select(i => (view.Chapter, view.Cells[i])));
                    entries.UnionWith(rerun.MovedEntries);
                }
            }

            lock (bench.gate)
            {
                foreach (var (chapter, cell) in outdated)
                {
                    var was = StateOf(cell);
                    cell.IsCurrent = false;
                    if (StateOf(cell) != was)
                        bench.TellCell(chapter, cell);
                }
            }
        }

        private void Plan()
        {
            List<(LiveFolder Folder, ChapterView View, HashSet<int> Cells)> waiting;
            lock (bench.gate)
            {
                isPlanOld = false;
                waiting =
                [
                    .. from folder in bench.folders
                       from chapter in folder.Chapters
                       where chapter.Cells.Any(wanted.Contains)
                       let view = ViewOf(chapter)
                       select (folder, view, Enumerable.Range(0, view.Cells.Count).Where(i => wanted.Contains(view.Cells[i])).ToHashSet()),
                ];
                // What holds no code is calculated.
                wanted.IntersectWith(waiting.SelectMany(w => w.View.Cells));
            }

            foreach (var (_, view, cells) in waiting)
                Refresh(view, cells);
            var first = waiting.FindIndex(w => w.View.Chapter == bench.inHand);
            var before = first < 0 ? [] : Feeding(waiting, first);
            var order = before.Concat(first < 0 ? [] : In(waiting[first])).Concat(waiting.SelectMany(In)).Distinct().ToList();
            lock (bench.gate)
            {
                plan = order;
                foreach (var (_, chapter, cell) in order)
                    bench.TellCell(chapter, cell);
            }
        }

        // A cell that changes what an earlier one made must find that as it was made.
        private void Refresh(ChapterView view, HashSet<int> cells)
        {
            foreach (var cell in cells.Where(c => alive.ContainsKey(view.Cells[c])))
            {
                foreach (var earlier in view.Graph.Graph.CellsToRun([], [cell]).Moved.Where(i => i < cell))
                    alive.Remove(view.Cells[earlier]);
            }
        }

        private static IEnumerable<(LiveFolder, LiveChapter, LiveCell)> In((LiveFolder Folder, ChapterView View, HashSet<int> Cells) chapter) =>
            chapter.Cells.Order().Select(i => (chapter.Folder, chapter.View.Chapter, chapter.View.Cells[i]));

        // The waiting cells of earlier chapters that make what the chapter in hand reads, through whatever others.
        private static List<(LiveFolder, LiveChapter, LiveCell)> Feeding(List<(LiveFolder Folder, ChapterView View, HashSet<int> Cells)> waiting, int first)
        {
            var read = Reads(waiting[first].View, waiting[first].Cells);
            var found = new List<(LiveFolder, LiveChapter, LiveCell)>();
            for (var at = first - 1; at >= 0; at--)
            {
                var (folder, view, cells) = waiting[at];
                if (folder != waiting[first].Folder)
                    break;
                var makes = cells.Where(i => view.Graph.Graph.Cells[i].Unknown is not null || view.Graph.Graph.Cells[i].Writes.Any(w => w.Entry.IsEvery || read.Contains(w.Entry.Name))).ToHashSet();
                makes.UnionWith(makes.SelectMany(view.Needed).Where(cells.Contains).ToList());
                read.UnionWith(Reads(view, makes));
                found.InsertRange(0, In((folder, view, makes)));
            }

            return found;
        }

        private static HashSet<string> Reads(ChapterView view, IEnumerable<int> cells) =>
            [.. cells.Concat(cells.SelectMany(view.Needed)).Distinct().SelectMany(i => view.Graph.Graph.Cells[i].Reads).Select(r => r.Name)];

        private async Task RunAsync(LiveFolder folder, LiveChapter chapter, LiveCell cell)
        {
            ChapterView view;
            CancellationTokenSource stop;
            lock (bench.gate)
            {
                view = ViewOf(chapter);
                if (view.IndexOf(cell) < 0)
                {
                    wanted.Remove(cell);
                    return;
                }

                stop = stopping = CancellationTokenSource.CreateLinkedTokenSource(closing.Token);
            }

            using (stop)
            {
                var process = ProcessOf(folder);
                // What it needs and is not there runs first: other texts before it, or a process that is gone.
                var at = view.IndexOf(cell);
                var keys = process.Prepare(chapter.File, view.Texts, at);
                int target;
                lock (bench.gate)
                {
                    // One that gave nothing gives nothing now either: what needs it is passed over.
                    target = view.Needed(at).Append(at).First(i => i == at || !(IsAlive(view.Cells[i], keys[i], process) || (view.Cells[i].End is not null && !wanted.Contains(view.Cells[i]))));
                }

                await RunAsync(folder, view, target, keys[target], process, stop.Token);
                lock (bench.gate)
                    stopping = null;
            }
        }

        private bool IsAlive(LiveCell cell, string key, ICellProcess process) => alive.TryGetValue(cell, out var there) && there == (key, process, process.Life);

        private async Task RunAsync(LiveFolder folder, ChapterView view, int at, string key, ICellProcess process, CancellationToken stop)
        {
            var (cell, place) = (view.Cells[at], view.Places[at]);
            var needs = new CellNeeds(graphs);
            var lost = Lost(folder, view, cell);
            if (needs.Missing(place, lost) is { } need)
            {
                var skipped = CellEnd.Skipped(place, need, needs.Lost(place, null));
                await process.LoseAsync(skipped.Lost, skipped.Reason);
                Take(folder, view, at, [skipped.Output()], skipped, null);
                return;
            }

            lock (bench.gate)
            {
                running = cell;
                bench.TellCell(view.Chapter, cell);
            }

            CellRun run;
            var life = process.Life;
            try
            {
                run = await process.RunAsync(view.Chapter.File, at, at + 1, told => Told(view.Chapter, cell, told), stop);
            }
            finally
            {
                lock (bench.gate)
                    running = null;
            }

            var (outputs, failure) = (run.Outcome.Outputs, run.Outcome.Failure);
            if (process.Life != life)
                bench.Tell(new JsonObject { ["type"] = "kernel", ["state"] = failure is { Kind: FailureKind.Cancelled } ? "stopped" : "ended", ["words"] = $"{place.InBook}: {failure?.Message}" });
            if (failure is { Kind: FailureKind.Cancelled } && stop.IsCancellationRequested)
            {
                lock (bench.gate)
                {
                    cell.IsCurrent = false;
                    alive.Remove(cell);
                    bench.TellCell(view.Chapter, cell);
                }

                return;
            }

            if (failure is null)
            {
                alive[cell] = (key, process, process.Life);
                Age(view, at);
            }

            var end = failure is null ? null : CellEnd.Of(place, failure, needs.Lost(place, failure.Reached), lost);
            if (end is not null)
            {
                outputs.Add((JsonNode)end.Output());
                if (!end.Lost.IsEmpty)
                    await process.LoseAsync(end.Lost, end.Reason);
            }

            var isReplay = !wanted.Contains(cell) && cell.IsCurrent && end is null;
            var isChanged = cell.Calculated != view.Texts[at];
            if (isReplay && !isChanged)
            {
                lock (bench.gate)
                    bench.TellCell(view.Chapter, cell);
                return;
            }

            Take(folder, view, at, outputs, end, run.Took);
            if (isChanged)
                Outdate(folder, [], view.Chapter, cell);
        }

        // Later cells that use what this one made hold the old.
        private void Age(ChapterView view, int at)
        {
            foreach (var later in view.Graph.Graph.CellsToRun([], [at]).Moved.Where(i => i > at))
                alive.Remove(view.Cells[later]);
        }

        private List<CellEnd> Lost(LiveFolder folder, ChapterView view, LiveCell except)
        {
            lock (bench.gate)
            {
                // Cells that are to run again have not ended yet. Of this chapter, the places are those of its text as it runs now.
                return
                [
                    .. folder.Chapters.SelectMany(c => c.Cells).Where(c => c != except && c.End is not null && !wanted.Contains(c))
                        .Select(c => view.IndexOf(c) is >= 0 and var i ? c.End! with { Place = view.Places[i] } : c.End!),
                ];
            }
        }

        private void Take(LiveFolder folder, ChapterView view, int at, JsonArray outputs, CellEnd? end, TimeSpan? took)
        {
            var looks = false;
            lock (bench.gate)
            {
                var cell = view.Cells[at];
                cell.Take(view.Texts[at], at + 1, outputs, end, took);
                wanted.Remove(cell);
                written.Remove(cell);
                plan.RemoveAll(p => p.Cell == cell);
                bench.TellCell(view.Chapter, cell);
                looks = sinceSheet.Elapsed > Between && plan.Count > 0;
                if (looks)
                    folder.Look();
            }

            if (!looks)
                return;
            bench.TellSheet();
            sinceSheet.Restart();
        }

        private void Told(LiveChapter chapter, LiveCell cell, CellTold told)
        {
            if (told.SoFar is { } shown)
                bench.Tell(new JsonObject { ["type"] = "printed", ["chapter"] = chapter.Id, ["cell"] = cell.Id, ["html"] = CellHtml.SoFar(shown) });
            else
                bench.Tell(new JsonObject { ["type"] = "progress", ["chapter"] = chapter.Id, ["cell"] = cell.Id, ["fraction"] = told.Fraction });
        }

        private ICellProcess ProcessOf(LiveFolder folder) => folder.Process ??= start(folder.Copy);

        // Within the gate.
        private ChapterView ViewOf(LiveChapter chapter)
        {
            if (views.TryGetValue(chapter, out var view) && view.IsOf(chapter, written.Contains))
                return view;
            Forget(chapter);
            return views[chapter] = new ChapterView(chapter, written.Contains, graphs);
        }

        private void Forget(LiveChapter chapter)
        {
            if (views.Remove(chapter, out var old))
                graphs.Forget(old.Notebook);
        }
    }
}
