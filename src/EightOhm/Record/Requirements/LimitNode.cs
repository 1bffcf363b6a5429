using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>A limit as the record keeps it: one of the three.</summary>
internal sealed record LimitNode
{
    public string? Entry { get; init; }

    public Rule? Rule { get; init; }

    /// <summary>What a rule gives, or what a constant is of; null for an entry.</summary>
    public QuantityKind? Kind { get; init; }

    public object? Constant { get; init; }

    /// <summary>The entries it comes from.</summary>
    public IReadOnlyList<string> Names => Entry is not null ? [Entry] : Rule?.Names ?? [];

    /// <summary>What stands behind its value: the entry's name, the rule in symbols; nothing for a constant.</summary>
    public string? Origin => Entry ?? Rule?.Symbols;
}

/// <summary>What a requirement asks: a low end, a high end, or both. A value on the limit meets it.</summary>
internal sealed record LimitPair(LimitNode? Low, LimitNode? High)
{
    public IReadOnlyList<string> Names => [.. (Low?.Names ?? []).Concat(High?.Names ?? []).Distinct(StringComparer.Ordinal)];
}
