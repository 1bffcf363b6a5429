namespace EightOhm;

/// <summary>Lists in a sentence: the one place for commas and "and".</summary>
internal static class Lists
{
    /// <summary>"a ← b ← a"; of a long way the beginning and the end.</summary>
    public static string Way(IReadOnlyList<string> names) => string.Join(" ← ", names.Count <= 12 ? names : [.. names.Take(3), "…", .. names.TakeLast(3)]);

    /// <summary>"P", "P and R_L", "P, R_L and V".</summary>
    public static string And(IReadOnlyList<string> items) => items.Count < 2
        ? string.Concat(items)
        : $"{string.Join(", ", items.Take(items.Count - 1))} and {items[^1]}";
}
