using System.Diagnostics;
using System.Text.Json.Nodes;
using EightOhm.Cells.Running;
using EightOhm.Cells.Sources;
using EightOhm.Cli.Ends;
using EightOhm.Cli.Live.Cells;
using EightOhm.Cli.Notebooks;
using EightOhm.Cli.WhatIf;

namespace EightOhm.Cli.Live;

/// <content>Running a cell, and taking what it gave.</content>
internal sealed partial class Workbench
{
    private sealed partial class Calculator
    {
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
                    target = view.Needed(at).Append(at).First(i => i == at || !(IsAlive(folder, view, i, keys[i], process) || (view.Cells[i].End is not null && !wanted.Contains(view.Cells[i]))));
                }

                await RunAsync(folder, view, target, keys[target], process, stop.Token);
                lock (bench.gate)
                    stopping = null;
            }
        }

        // Within the gate. Whether a cell's variables are there, and are those of the records as they stand.
        private bool IsAlive(LiveFolder folder, ChapterView view, int at, string key, ICellProcess process) =>
            alive.TryGetValue(view.Cells[at], out var there) && there == (key, process, process.Life) && (view.Cells[at].IsCurrent || FindsTheSame(folder, view, at));

        private async Task RunAsync(LiveFolder folder, ChapterView view, int at, string key, ICellProcess process, CancellationToken stop)
        {
            var (cell, place) = (view.Cells[at], view.Places[at]);
            var needs = new CellNeeds(graphs);
            var lost = Lost(folder, view, cell);
            if (needs.Missing(place, lost) is { } need)
            {
                var skipped = CellEnd.Skipped(place, need, needs.Lost(place, null));
                await process.LoseAsync(skipped.Lost, skipped.Reason);
                lock (bench.gate)
                    Forget(folder);
                Take(folder, view, at, [skipped.Output()], skipped, null);
                return;
            }

            lock (bench.gate)
            {
                running = cell;
                bench.TellCell(view.Chapter, cell);
            }

            CellRun? run;
            var life = process.Life;
            try
            {
                run = await process.RunAsync(view.Chapter.File, at, at + 1, told => Told(view.Chapter, cell, told), stop);
            }
            finally
            {
                lock (bench.gate)
                {
                    running = null;
                    Forget(folder);
                }
            }

            if (run is null)
            {
                // It is still wanted, and the next step begins with what it needs.
                lock (bench.gate)
                    bench.TellCell(view.Chapter, cell);
                return;
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
                {
                    await process.LoseAsync(end.Lost, end.Reason);
                    lock (bench.gate)
                        Forget(folder);
                }
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

        // Later cells that hold what this one made hold the old. Those whose entries moved are found by what they find in the records.
        private void Age(ChapterView view, int at)
        {
            foreach (var later in view.Graph.Graph.LinkedTo(at).Where(i => i > at))
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
    }
}
