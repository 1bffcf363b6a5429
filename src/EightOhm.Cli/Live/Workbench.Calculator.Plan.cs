using System.Diagnostics;
using System.Text.Json.Nodes;
using EightOhm.Cells.Running;
using EightOhm.Cells.Sources;
using EightOhm.Cli.Ends;
using EightOhm.Cli.Live.Cells;
using EightOhm.Cli.Notebooks;
using EightOhm.Cli.WhatIf;

namespace EightOhm.Cli.Live;

/// <content>Which cells are calculated, and in which order.</content>
internal sealed partial class Workbench
{
    private sealed partial class Calculator
    {
        private async Task MoveAsync(LiveFolder folder)
        {
            List<Move> moves;
            lock (bench.gate)
                moves = [.. folder.Moves];
            Remember(folder);
            var process = ProcessOf(folder);
            foreach (var move in moves)
                await process.SetAsync(move.Record, move.Name, move.Text);
            HashSet<EntryName> entries;
            lock (bench.gate)
            {
                ForgetInputs(folder);
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
            var all = Views(folder, changedIn);
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
                    // What another cell gives is no longer what it gave.
                    if (changed is not null)
                        cell.Found = null;
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
                foreach (var earlier in view.Graph.Graph.LinkedTo(cell).Where(i => i < cell))
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
                var makes = cells.Where(i => view.Graph.Graph.Cells[i].Unknown is not null || view.Graph.Graph.Cells[i].Writes.Any(w => w.Entry.IsEvery || read.Contains(w.Entry.Name) || read.Contains(""))).ToHashSet();
                makes.UnionWith(makes.SelectMany(view.Needed).Where(cells.Contains).ToList());
                read.UnionWith(Reads(view, makes));
                found.InsertRange(0, In((folder, view, makes)));
            }

            return found;
        }

        private static HashSet<string> Reads(ChapterView view, IEnumerable<int> cells) =>
            [.. cells.Concat(cells.SelectMany(view.Needed)).Distinct().SelectMany(i => view.Graph.Graph.Cells[i].Reads).Select(r => r.Name)];

        // The chapters that have to do with a record, or with a cell that was changed, read for what hangs on what.
        private List<ChapterView> Views(LiveFolder folder, LiveChapter? changedIn = null)
        {
            List<ChapterView> all;
            lock (bench.gate)
                all = [.. folder.Chapters.Select(ViewOf).Where(v => v.Chapter == changedIn || NotebookGraphs.SpeaksOfARecord(v.Notebook))];
            graphs.Begin(all.Select(v => v.Notebook));
            return all;
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
