using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>A time squared: what L·C is; its root is the time constant of a resonance.</summary>
/// <remarks>An intermediate of the algebra: it has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 s².</remarks>
/// <param name="Si">The value in s².</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly record struct SquaredDuration(double Si) : IIntermediate<SquaredDuration>
{
    /// <inheritdoc/>
    public static string Symbol => "s²";

    /// <inheritdoc/>
    public static SquaredDuration FromSi(double si) => new(si);

    /// <summary>Adds two values.</summary>
    public static SquaredDuration operator +(SquaredDuration a, SquaredDuration b) => new(a.Si + b.Si);

    /// <summary>Subtracts two values.</summary>
    public static SquaredDuration operator -(SquaredDuration a, SquaredDuration b) => new(a.Si - b.Si);

    /// <summary>Scales a value.</summary>
    public static SquaredDuration operator *(double factor, SquaredDuration a) => new(factor * a.Si);

    /// <summary>Scales a value.</summary>
    public static SquaredDuration operator *(SquaredDuration a, double factor) => new(a.Si * factor);

    /// <summary>Divides a value.</summary>
    public static SquaredDuration operator /(SquaredDuration a, double divisor) => new(a.Si / divisor);

    /// <summary>The ratio of two values.</summary>
    public static double operator /(SquaredDuration a, SquaredDuration b) => a.Si / b.Si;

    /// <summary>Whether one value is less than the other.</summary>
    public static bool operator <(SquaredDuration a, SquaredDuration b) => a.Si < b.Si;

    /// <summary>Whether one value is greater than the other.</summary>
    public static bool operator >(SquaredDuration a, SquaredDuration b) => a.Si > b.Si;

    /// <summary>Whether one value is at most the other.</summary>
    public static bool operator <=(SquaredDuration a, SquaredDuration b) => a.Si <= b.Si;

    /// <summary>Whether one value is at least the other.</summary>
    public static bool operator >=(SquaredDuration a, SquaredDuration b) => a.Si >= b.Si;

    /// <inheritdoc/>
    public int CompareTo(SquaredDuration other) => Si.CompareTo(other.Si);

    /// <summary>The value in engineering notation with its unit.</summary>
    public override string ToString() => QuantityFormat.Short(this);
}
