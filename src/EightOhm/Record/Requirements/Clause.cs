namespace EightOhm.Record;

/// <summary>What the record keeps of a requirement: one label, one value, one limit.</summary>
/// <param name="Label">The label as written; its key.</param>
/// <param name="Entry">The entry judged; null where <paramref name="Worst"/> is.</param>
/// <param name="Worst">The worst found over conditions; null where <paramref name="Entry"/> is.</param>
/// <param name="Limit">What is asked.</param>
internal sealed record Clause(string Label, string? Entry, WorstValue? Worst, LimitPair Limit)
{
    /// <summary>All entries that its standing comes from, its value's first.</summary>
    public IReadOnlyList<string> From =>
        [.. (Entry is not null ? [Entry] : Worst!.Marks.Select(m => m.Name)).Concat(Limit.Names).Distinct(StringComparer.Ordinal)];
}
