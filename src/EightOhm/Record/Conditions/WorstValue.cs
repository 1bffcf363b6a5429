using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>What a requirement over conditions found, as the record keeps it: the highest, the lowest, or both, and from what.</summary>
internal sealed record WorstValue
{
    /// <summary>The kind of quantity.</summary>
    public required QuantityKind Kind { get; init; }

    /// <summary>The highest, where there is an upper limit.</summary>
    public WorstCase? Highest { get; init; }

    /// <summary>The lowest, where there is a lower limit.</summary>
    public WorstCase? Lowest { get; init; }

    /// <summary>What it was computed from, each with its fingerprint at that time.</summary>
    public required IReadOnlyList<Mark> Marks { get; init; }

    /// <summary>Whether nothing is known of what it was computed from, so that it hangs on every input there was.</summary>
    public bool HangsOnAll { get; init; }

    /// <summary>The one that decides: of two the one with less margin.</summary>
    /// <param name="low">The lower limit in the kept unit, or null when there is none or nobody can tell.</param>
    /// <param name="high">The upper limit.</param>
    public WorstCase Deciding(double? low, double? high)
    {
        if (Highest is not { Value: { } most } || Lowest is not { Value: { } least })
            return Highest ?? Lowest!;
        return (low is not null || high is not null) && Amount(least) < Amount(most) ? Lowest : Highest;

        double Amount(object value) => Margin.Of(Kind, KeptValue.Number(Kind, value), low, high).Amount;
    }
}
