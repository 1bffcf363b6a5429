using EightOhm.Cells.Sources;

namespace EightOhm.Cli.WhatIf;

/// <summary>The cells of a folder by what they find in its records: one that finds what it found when it ran last would show and make what it did, and need not run again.</summary>
/// <remarks>
/// What a cell reads counts through the variables and functions of other cells, so that no value of a variable need be compared. Left out, and never known,
/// are cells of which this does not hold: those that were not followed, that come after a change of a file or of a library's setting, or that have to do
/// with an entry which several cells write, or which is written after it is read.
/// </remarks>
internal sealed class FolderReads
{
    private readonly IReadOnlyList<CellGraph> notebooks;
    private readonly HashSet<(int Notebook, int Cell)> unknown = [];

    /// <param name="notebooks">The graphs of the folder's notebooks, in their order.</param>
    public FolderReads(IReadOnlyList<CellGraph> notebooks)
    {
        this.notebooks = notebooks;
        var cells = notebooks.SelectMany((n, i) => n.Cells.Select((reading, cell) => (Place: (i, cell), Reading: reading))).ToList();
        // What does not compile runs never.
        var isOpaque = cells.Any(c => c.Reading is { Unknown: not null, Position: >= 0 }) || cells.Any(c => c.Reading.Writes.Any(w => w.Entry.IsEvery));
        var writers = cells.SelectMany(c => c.Reading.Writes.Select(w => w.Entry).Distinct().Select(e => (c.Place, Entry: e))).ToLookup(w => (w.Entry.Name, w.Entry.IsRequirement), w => (w.Place, w.Entry.Record));
        var lastWrite = cells.LastOrDefault(c => c.Reading.Writes.Count > 0).Place;
        var isChanged = false;
        foreach (var (place, reading) in cells)
        {
            if (isOpaque || isChanged || reading.Unknown is not null
                || reading.Reads.Any(r => r.IsEvery ? lastWrite.CompareTo(place) > 0 : WritersOf(r).Any(w => w.CompareTo(place) > 0))
                || reading.Writes.Any(w => WritersOf(w.Entry).Any(other => other != place)))
            {
                unknown.Add(place);
            }

            isChanged |= reading.ChangesWorld;
        }

        IEnumerable<(int, int)> WritersOf(EntryName name) => writers[(name.Name, name.IsRequirement)]
            .Where(w => RecordState.MayBeOne(w.Record, name.Record)).Select(w => w.Place);
    }

    /// <summary>What a cell finds in the records.</summary>
    /// <param name="notebook">The place of its notebook.</param>
    /// <param name="cell">Its place in the graph.</param>
    /// <param name="records">The records as they stand.</param>
    /// <returns>The same words for the same findings; null where nobody can tell.</returns>
    public FoundWords? Of(int notebook, int cell, RecordState records) =>
        unknown.Contains((notebook, cell)) ? null : records.Of(Found(notebooks[notebook].Cells[cell]));

    /// <summary>The same of what no calculation moves.</summary>
    public string SettledOf(int notebook, int cell, RecordState records) => records.SettledOf(Found(notebooks[notebook].Cells[cell]));

    // What it writes, too: an entry that the record calls stale is to be written anew.
    private static List<EntryName> Found(CellReading reading) => [.. reading.Reads.Concat(reading.Writes.Select(w => w.Entry)).Distinct()];
}
