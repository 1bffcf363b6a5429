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
        // The first look after inputs moved: a record takes longer to read than most cells to run, and what rules make of inputs stays as it is while cells are calculated.
        private readonly Dictionary<LiveFolder, RecordState> settled = [];

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
        private FoundWords? Find(LiveFolder folder, ChapterView view, int at) =>
            PlaceOf(folder, view) is var (known, notebook) ? known.Of(notebook, at, Records(folder)) : null;

        // Within the gate. Whether a cell finds in the records what its outputs and variables were made with.
        private bool FindsTheSame(LiveFolder folder, ChapterView view, int at)
        {
            if (view.Cells[at].Found is not { } found || PlaceOf(folder, view) is not var (known, notebook))
                return false;
            if (!settled.TryGetValue(folder, out var begun))
                settled[folder] = begun = Records(folder);
            return known.SettledOf(notebook, at, begun) == found.Settled && known.Of(notebook, at, Records(folder)) == found;
        }

        private (FolderReads Reads, int Notebook)? PlaceOf(LiveFolder folder, ChapterView view) =>
            reads.TryGetValue(folder, out var known) && known.Views.IndexOf(view) is >= 0 and var notebook ? (known.Reads, notebook) : null;

        // Within the gate.
        private RecordState Records(LiveFolder folder)
        {
            if (!records.TryGetValue(folder, out var state))
                records[folder] = state = new RecordState(folder.Copy.Records);
            return state;
        }

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

        // Within the gate. Inputs have moved.
        private void ForgetInputs(LiveFolder folder)
        {
            Forget(folder);
            settled.Remove(folder);
        }
    }
}
