using EightOhm.Display.Tables;
using EightOhm.Record;

namespace EightOhm.Cli.WhatIf;

/// <summary>What moved with what was set: the records as they are kept against the records of this run.</summary>
internal static class Movement
{
    /// <summary>The tables; null when nothing was set.</summary>
    /// <param name="set">What was set for this run.</param>
    /// <param name="kept">The records as they are kept.</param>
    /// <param name="now">The records as the run left them.</param>
    public static IReadOnlyList<Table>? Of(IReadOnlyList<SetValue> set, IReadOnlyList<DesignRecord> kept, IReadOnlyList<DesignRecord> now)
    {
        if (set.Count == 0)
            return null;
        var names = set.Select(s => s.Name).ToHashSet(StringComparer.Ordinal);
        return [.. now.SelectMany(record =>
            kept.FirstOrDefault(k => Path.GetFileName(k.Path) == Path.GetFileName(record.Path)) is { } before
                ? Tables(RecordChanges.Compare(before, record), names)
                : [])];
    }

    // What was set stands above the tables already; an input that a changed chapter moved as well does not.
    private static IReadOnlyList<Table> Tables(RecordChanges changes, HashSet<string> set) =>
        ChangeTables.All(changes.Moved.All(m => set.Contains(m.Name)) ? changes with { Moved = [] } : changes);
}
