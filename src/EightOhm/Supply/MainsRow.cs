using EightOhm.Quantities;

namespace EightOhm.Supply;

/// <summary>One value of a <see cref="MainsRow"/>: there, or short of something.</summary>
/// <param name="Value">A quantity or number; null where there is none.</param>
/// <param name="Shortfall">What is missing; null where there is a value.</param>
public sealed record MainsValue(object? Value, ShortfallException? Shortfall)
{
    /// <inheritdoc/>
    public override string ToString() => Value is not null ? QuantityFormat.Short(Value) : Shortfall is not null ? $"none: short by {QuantityFormat.Short(Shortfall.By)}" : "none";
}

/// <summary>One line of a <see cref="MainsTable"/>: a value at low, nominal and high mains.</summary>
public sealed record MainsRow
{
    internal MainsRow(string name, MainsValue low, MainsValue nominal, MainsValue high, object? limit) => (Name, Low, Nominal, High, Limit) = (name, low, nominal, high, limit);

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>At low mains.</summary>
    public MainsValue Low { get; }

    /// <summary>At nominal mains.</summary>
    public MainsValue Nominal { get; }

    /// <summary>At high mains.</summary>
    public MainsValue High { get; }

    /// <summary>The rating that it is held against, or null.</summary>
    public object? Limit { get; }

    /// <summary>The share of the rating that is used at high mains; null without a rating or a value.</summary>
    public double? ShareAtHigh => Limit is null || High.Value is null ? null : Si(High.Value) / Si(Limit);

    /// <summary>Whether there are values at low, nominal and high mains, and the rating, where there is one, is kept by all.</summary>
    public bool Holds => Kept(Low) && Kept(Nominal) && Kept(High);

    private bool Kept(MainsValue at) => at.Value is not null && (Limit is null || Si(at.Value) <= Si(Limit));

    private static double Si(object value) => QuantityKinds.Of(value.GetType()).ToSi(value);
}
