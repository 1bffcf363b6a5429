using EightOhm.Display.Tables;
using EightOhm.Record;

namespace EightOhm.Cli.WhatIf;

/// <summary>What moved with what was set: a record as it is kept against that of this run.</summary>
internal static class Movement
{
    /// <summary>The tables; null when nothing was set.</summary>
    /// <param name="set">What was set for this run.</param>
    /// <param name="copy">The records of the folder.</param>
    /// <param name="record">One of them as the run left it.</param>
    public static IReadOnlyList<Table>? Of(IReadOnlyList<SetValue> set, RecordCopy copy, DesignRecord record)
    {
        if (set.Count == 0)
            return null;
        var names = set.Where(s => s.Record == record.Path).Select(s => s.Name).ToHashSet(StringComparer.Ordinal);
        return copy.Kept.FirstOrDefault(k => Path.GetFileName(k.Path) == Path.GetFileName(record.Path)) is { } before
            ? Tables(RecordChanges.Compare(before, record), names)
            : [];
    }

    // What was set stands above the tables already; an input that a changed chapter moved as well does not.
    private static IReadOnlyList<Table> Tables(RecordChanges changes, HashSet<string> set) =>
        ChangeTables.All(changes.Moved.All(m => set.Contains(m.Name)) ? changes with { Moved = [] } : changes);
}
