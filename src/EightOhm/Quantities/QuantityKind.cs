namespace EightOhm.Quantities;

/// <summary>How a kind of quantity is shown.</summary>
public enum FormatStyle
{
    /// <summary>A mantissa and a prefix: 28.28 V.</summary>
    Engineering,

    /// <summary>A ratio with its decibels: 23.62 (27.47 dB).</summary>
    Gain,

    /// <summary>A fraction in percent, ppm and decibels: 0.001 % (10 ppm, −100 dB).</summary>
    Fraction,

    /// <summary>A temperature in degrees Celsius: 61.4 °C.</summary>
    Celsius,

    /// <summary>An angle in degrees: 45°.</summary>
    Angle,

    /// <summary>A level in decibels with its reference: 4 dBu.</summary>
    Level,

    /// <summary>A plain number: 300.</summary>
    Number,
}

/// <summary>What the house knows of a kind of quantity: its symbol, how it is shown, read and kept.</summary>
/// <param name="Type">The type.</param>
/// <param name="Symbol">The symbol of the unit it is kept in.</param>
/// <param name="Style">How it is shown.</param>
/// <param name="Least">The smallest prefix used, as a power of ten.</param>
/// <param name="Most">The largest prefix used, as a power of ten.</param>
/// <param name="ToSi">From a value to the number in the unit <paramref name="Symbol"/> names.</param>
/// <param name="FromSi">From that number to a value.</param>
/// <param name="Spellings">Other ways to write the unit, each with its factor; longer ones first.</param>
public sealed record QuantityKind(
    Type Type,
    string Symbol,
    FormatStyle Style,
    int Least,
    int Most,
    Func<object, double> ToSi,
    Func<double, object> FromSi,
    IReadOnlyList<(string Text, double Factor)> Spellings)
{
    /// <summary>The type's name.</summary>
    public string Name => Type.Name;

    /// <summary>The scale at which the trade speaks of it when the SI unit is not used, such as V/µs: factor and symbol.</summary>
    public (double Factor, string Symbol)? Spoken { get; init; }

    /// <summary>Whether a value below zero cannot be a target or a choice: there is no resistor of −8 Ω to buy.</summary>
    public bool NeverNegative { get; init; }
}
