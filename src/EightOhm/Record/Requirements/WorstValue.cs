using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>One condition at a point: its name, its value in words, and as a number.</summary>
/// <param name="Name">The condition's name, which is the lambda's parameter.</param>
/// <param name="Text">The value as it reads, such as "4 Ω ∠45°" or "mains +10 %".</param>
/// <param name="Number">The value in its SI unit; for a case its place in the list, from 0.</param>
public sealed record ConditionAt(string Name, string Text, double Number);

/// <summary>The point that was worst while one condition was held where it does the least harm: how much that condition matters.</summary>
/// <param name="Name">The condition.</param>
/// <param name="At">Where it does the least harm.</param>
/// <param name="Value">The requirement's value there, in the SI unit, everything else as at the worst.</param>
public sealed record LeastAlong(string Name, ConditionAt At, double Value);

/// <summary>The worst value that a search over conditions found, as the record keeps it: the figure, where, how it was found, and from what.</summary>
internal sealed record WorstValue
{
    /// <summary>The kind of quantity.</summary>
    public required QuantityKind Kind { get; init; }

    /// <summary>The worst value, in its SI unit.</summary>
    public required object Value { get; init; }

    /// <summary>The conditions there, in the order they were given.</summary>
    public required IReadOnlyList<ConditionAt> Where { get; init; }

    /// <summary>Where as one text, for the sheet: "4 Ω ∠45°, mains +10 %".</summary>
    public required string WhereText { get; init; }

    /// <summary>How it was found, in words: "every corner of 3 conditions, then downhill".</summary>
    public required string Method { get; init; }

    /// <summary>How many times the value was computed.</summary>
    public required int Evaluations { get; init; }

    /// <summary>The seed of what was random; null when nothing was.</summary>
    public int? Seed { get; init; }

    /// <summary>How much each condition matters.</summary>
    public IReadOnlyList<LeastAlong> LeastAlong { get; init; } = [];

    /// <summary>What it was computed from, each with its fingerprint at that time.</summary>
    public required IReadOnlyList<Mark> Marks { get; init; }

    /// <summary>Whether nothing is known of what it was computed from, so that it hangs on every input there was.</summary>
    public bool HangsOnAll { get; init; }
}
