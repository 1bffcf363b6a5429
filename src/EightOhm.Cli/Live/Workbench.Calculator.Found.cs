using EightOhm.Cli.Ends;
using EightOhm.Cli.WhatIf;

namespace EightOhm.Cli.Live;

/// <content>What cells find in the records: one that finds what it found before is right as it is, and its variables too.</content>
internal sealed partial class Workbench
{
    private sealed partial class Calculator
    {
        private readonly Dictionary<LiveFolder, (List<ChapterView> Views, FolderReads Reads)> reads = [];
        private readonly Dictionary<LiveFolder, RecordState> records = [];

        // Before inputs move: what the cells found whose outputs are right now. Those that were not calculated since an earlier move keep what they found then.
        private void Remember(LiveFolder folder)
        {
            var views = Views(folder);
            lock (bench.gate)
            {
                if (!reads.TryGetValue(folder, out var known) || !known.Views.SequenceEqual(views))
                    reads[folder] = (views, new FolderReads([.. views.Select(v => v.Graph.Graph)]));
                foreach (var view in views)
                {
                    for (var at = 0; at < view.Cells.Count; at++)
                    {
                        if (view.Cells[at] is { IsCurrent: true, IsEdited: false, End: null, Found: null } cell)
                            cell.Found = Find(folder, view, at);
                    }
                }
            }
        }

        // Within the gate. Null where nobody can tell.
        private string? Find(LiveFolder folder, ChapterView view, int at)
        {
            if (!reads.TryGetValue(folder, out var known))
                return null;
            var notebook = known.Views.IndexOf(view);
            if (notebook < 0)
                return null;
            if (!records.TryGetValue(folder, out var state))
                records[folder] = state = new RecordState(folder.Copy.Records);
            return known.Reads.Of(notebook, at, state);
        }

        // Within the gate. Whether a cell finds in the records what its outputs and variables were made with.
        private bool FindsTheSame(LiveFolder folder, ChapterView view, int at) => view.Cells[at].Found is { } found && Find(folder, view, at) == found;

        // Whether a cell that waits because something moved, and not because it was asked for, is right as it is.
        private bool IsRight(LiveFolder folder, LiveChapter chapter, LiveCell cell)
        {
            lock (bench.gate)
            {
                if (written.Contains(cell) || cell.IsEdited || cell.End is not null)
                    return false;
                var view = ViewOf(chapter);
                var at = view.IndexOf(cell);
                return at >= 0 && FindsTheSame(folder, view, at) && new CellNeeds(graphs).Missing(view.Places[at], Lost(folder, view, cell)) is null;
            }
        }

        private void Leave(LiveChapter chapter, LiveCell cell)
        {
            lock (bench.gate)
            {
                cell.IsCurrent = true;
                wanted.Remove(cell);
                bench.TellCell(chapter, cell);
            }
        }

        // Within the gate. The cells' process may have written the records.
        private void Forget(LiveFolder folder) => records.Remove(folder);
    }
}
