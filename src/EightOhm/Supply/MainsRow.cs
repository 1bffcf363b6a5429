using EightOhm.Quantities;

namespace EightOhm.Supply;

/// <summary>One line of a <see cref="MainsTable"/>: a value at low, nominal and high mains.</summary>
public sealed record MainsRow
{
    internal MainsRow(string name, object low, object nominal, object high, object? limit) => (Name, Low, Nominal, High, Limit) = (name, low, nominal, high, limit);

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>At low mains: a quantity or number.</summary>
    public object Low { get; }

    /// <summary>At nominal mains.</summary>
    public object Nominal { get; }

    /// <summary>At high mains.</summary>
    public object High { get; }

    /// <summary>The rating that it is held against, or null.</summary>
    public object? Limit { get; }

    /// <summary>The share of the rating that is used at high mains; null without a rating.</summary>
    public double? ShareAtHigh => Limit is null ? null : Si(High) / Si(Limit);

    /// <summary>Whether the rating is kept at low, nominal and high mains; true without a rating.</summary>
    public bool Holds => Limit is null || (Si(Low) <= Si(Limit) && Si(Nominal) <= Si(Limit) && Si(High) <= Si(Limit));

    private static double Si(object value) => QuantityKinds.Of(value.GetType()).ToSi(value);
}
