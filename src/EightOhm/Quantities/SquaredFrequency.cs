using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>A frequency squared: over an inductance or a capacitance times it a resonance is found; its root is a frequency.</summary>
/// <remarks>An intermediate of the algebra: it has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 Hz².</remarks>
/// <param name="Si">The value in Hz².</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly record struct SquaredFrequency(double Si) : IIntermediate<SquaredFrequency>
{
    /// <inheritdoc/>
    public static string Symbol => "Hz²";

    /// <inheritdoc/>
    public static SquaredFrequency FromSi(double si) => new(si);

    /// <summary>Adds two values.</summary>
    public static SquaredFrequency operator +(SquaredFrequency a, SquaredFrequency b) => new(a.Si + b.Si);

    /// <summary>Subtracts two values.</summary>
    public static SquaredFrequency operator -(SquaredFrequency a, SquaredFrequency b) => new(a.Si - b.Si);

    /// <summary>Scales a value.</summary>
    public static SquaredFrequency operator *(double factor, SquaredFrequency a) => new(factor * a.Si);

    /// <summary>Scales a value.</summary>
    public static SquaredFrequency operator *(SquaredFrequency a, double factor) => new(a.Si * factor);

    /// <summary>Divides a value.</summary>
    public static SquaredFrequency operator /(SquaredFrequency a, double divisor) => new(a.Si / divisor);

    /// <summary>The ratio of two values.</summary>
    public static double operator /(SquaredFrequency a, SquaredFrequency b) => a.Si / b.Si;

    /// <summary>Whether one value is less than the other.</summary>
    public static bool operator <(SquaredFrequency a, SquaredFrequency b) => a.Si < b.Si;

    /// <summary>Whether one value is greater than the other.</summary>
    public static bool operator >(SquaredFrequency a, SquaredFrequency b) => a.Si > b.Si;

    /// <summary>Whether one value is at most the other.</summary>
    public static bool operator <=(SquaredFrequency a, SquaredFrequency b) => a.Si <= b.Si;

    /// <summary>Whether one value is at least the other.</summary>
    public static bool operator >=(SquaredFrequency a, SquaredFrequency b) => a.Si >= b.Si;

    /// <inheritdoc/>
    public int CompareTo(SquaredFrequency other) => Si.CompareTo(other.Si);

    /// <summary>The value in engineering notation with its unit.</summary>
    public override string ToString() => QuantityFormat.Short(this);
}
