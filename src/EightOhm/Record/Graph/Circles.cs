namespace EightOhm.Record;

/// <summary>Looks for entries that come from themselves.</summary>
internal static class Circles
{
    /// <summary>The names along some circle, or null.</summary>
    public static IReadOnlyList<string>? Find(RecordContent content)
    {
        // What can be put in an order, sources first, is in no circle; what is left is one, or hangs on one.
        var ordered = EvaluationOrder.Of(content, [.. content.Slots.Keys]).Select(s => s.Name).ToHashSet(StringComparer.Ordinal);
        return ordered.Count == content.Slots.Count
            ? null
            : content.InOrder.Where(s => !ordered.Contains(s.Name)).Select(s => content.CircleThrough(s.Name)).First(c => c is not null);
    }
}
