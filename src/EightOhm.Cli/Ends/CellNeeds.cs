using EightOhm.Cells.Sources;
using EightOhm.Cli.Notebooks;
using EightOhm.Cli.WhatIf;
using EightOhm.Record;

namespace EightOhm.Cli.Ends;

/// <summary>What cells need of each other, so that none runs with what a lost cell left half made.</summary>
internal sealed class CellNeeds(NotebookGraphs graphs)
{
    private readonly Dictionary<NotebookCell, CellNames> names = [];

    /// <summary>What a cell needs and a lost cell was to give; null when it can run without them.</summary>
    /// <param name="place">The cell about to run.</param>
    /// <param name="lost">The cells that gave nothing so far.</param>
    public CellNeed? Missing(CellPlace place, IReadOnlyList<CellEnd> lost)
    {
        if (lost.Count == 0)
            return null;
        var cell = Names(place.Cell);
        if (lost.Any(end => end.Place.Notebook == place.Notebook))
        {
            var graph = graphs.Of(place.Notebook);
            var needed = graph.Graph.NeededBefore(graph.IndexOf(place.Cell)).Select(i => graph.Cells[i]).ToHashSet();
            var before = lost.Where(end => needed.Contains(end.Place.Cell)).ToList();
            // A name that the cell itself uses says more than one that another function uses for it.
            foreach (var end in before)
            {
                if (cell.Uses.FirstOrDefault(Names(end.Place.Cell).Gives.Contains) is { } name)
                    return new CellNeed(name, end);
            }

            if (before.Count > 0)
                return new CellNeed($"what {before[0].Place.InBook} makes", before[0]);
        }

        return lost.Select(end => cell.Reads.FirstOrDefault(end.Lost.Entries.Contains) is { } entry ? new CellNeed(entry, end) : null)
            .FirstOrDefault(need => need is not null);
    }

    /// <summary>The entries that a cell writes into a record and the labels of its requirements, as far as it did not come to them.</summary>
    /// <param name="place">The cell.</param>
    /// <param name="reached">The line that the cell had come to, from 1; null when it did not run, or nobody can tell.</param>
    public LostNames Lost(CellPlace place, int? reached)
    {
        var cell = Names(place.Cell);
        // The graph follows names through variables; a cell that does not compile it cannot follow at all.
        var read = graphs.Of(place.Notebook).Reading(place.Cell).Writes.Where(w => !w.Entry.IsEvery).ToList();
        // It finds a requirement by the entry as well that it is about, which is no requirement more: it is asked only where a label is not written out.
        var asked = read.Where(w => w.Entry.IsRequirement && cell.ComputesLabels);
        return new(
            Lost(read.Where(w => !w.Entry.IsRequirement), cell.Entries, reached),
            [.. Lost(asked, cell.Requirements, reached).Select(label => new LostRequirement(label, cell.Requirements.FirstOrDefault(r => r.Name == label)?.About))]);
    }

    private static HashSet<string> Lost(IEnumerable<EntryWrite> read, IReadOnlyList<CellWrite> seen, int? reached) =>
        [.. read.Select(w => w.Entry.Name).Concat(seen.Select(w => w.Name)).Except(seen.Where(w => w.EndsOn < reached).Select(w => w.Name))];

    private CellNames Names(NotebookCell cell)
    {
        if (!names.TryGetValue(cell, out var known))
            names[cell] = known = CellNames.Of(cell.Source);
        return known;
    }
}

/// <summary>A name that a lost cell was to give.</summary>
/// <param name="Name">A variable, a function or an entry, in words.</param>
/// <param name="Lost">The cell.</param>
internal sealed record CellNeed(string Name, CellEnd Lost);
