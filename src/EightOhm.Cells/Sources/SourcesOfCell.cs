using EightOhm.Record;

namespace EightOhm.Cells.Sources;

/// <summary>What the reading of one cell tells the record.</summary>
/// <param name="writes">What the cell writes into records; null where it could not be followed.</param>
internal sealed class SourcesOfCell(Task<IReadOnlyList<EntryWrite>?> writes) : ICellSources
{
    /// <summary>What a reading that is done tells.</summary>
    public SourcesOfCell(IReadOnlyList<EntryWrite>? writes)
        : this(Task.FromResult(writes))
    {
    }

    /// <summary>What a reading that may still be at work tells.</summary>
    public static SourcesOfCell Of(Task<CellReading?> reading) => new(Written(reading));

    /// <inheritdoc/>
    public IReadOnlyCollection<string>? Of(string recordPath, string entryOrLabel, int line)
    {
        if (writes.GetAwaiter().GetResult() is not { } read)
            return null;
        var file = Path.GetFileName(recordPath);
        var at = read.Where(w => w.Line == line && Fits(w.Entry.Record, file) && (w.Entry.IsEvery || w.Entry.Name == entryOrLabel)).ToList();
        var sources = at.SelectMany(w => w.Sources).Where(s => !s.IsRequirement && Fits(s.Record, file)).ToList();
        return at.Count == 0 || sources.Any(s => s.IsEvery) ? null : [.. sources.Select(s => s.Name).Distinct(StringComparer.Ordinal)];
    }

    private static async Task<IReadOnlyList<EntryWrite>?> Written(Task<CellReading?> reading) => await reading.ConfigureAwait(false) is { Unknown: null } read ? read.Writes : null;

    // A cell opens a record by a path of its own; an empty one stands for whatever record.
    private static bool Fits(string record, string file) => record.Length == 0 || Path.GetFileName(record) == file;
}
