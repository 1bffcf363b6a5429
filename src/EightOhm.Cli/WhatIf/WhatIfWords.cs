using EightOhm.Record;

namespace EightOhm.Cli.WhatIf;

/// <summary>What is set, in words: for the console, the index and the top of every page.</summary>
internal static class WhatIfWords
{
    /// <summary>The sentence at the top of every page; empty when nothing was set for this run.</summary>
    /// <param name="set">What was set for this run.</param>
    /// <param name="saved">Whether the records keep it.</param>
    public static string Banner(IReadOnlyList<SetValue> set, bool saved) =>
        set.Count == 0 ? ""
        : saved ? $"Set, and kept in the record: {string.Join("; ", set)}."
        : $"What if {string.Join("; ", set)}? These pages show that; the design as it is kept is another.";

    /// <summary>A sentence for each value that wins over its chapter's: those of this run and those kept from before.</summary>
    public static IReadOnlyList<string> InForce(IEnumerable<DesignRecord> records, IReadOnlyList<SetValue> set)
    {
        var now = set.Select(s => $"Set for this run: {s}.");
        var before = records
            .SelectMany(r => r.Entries.Where(e => e.State == EntryState.Set && !set.Any(s => s.Name == e.Name && s.Record == r.Path)))
            .Select(e => $"Set, and kept in the record: {e.Name} = {e.Reads} ({e.Reason}). To give it back: --set \"{e.Name}=\" --save.");
        return [.. now, .. before];
    }
}
