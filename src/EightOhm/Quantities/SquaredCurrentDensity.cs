using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>Noise current squared per hertz: what independent noise currents add up in.</summary>
/// <remarks>An intermediate of the algebra: it has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 A²/Hz.</remarks>
/// <param name="Si">The value in A²/Hz.</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly record struct SquaredCurrentDensity(double Si) : IIntermediate<SquaredCurrentDensity>
{
    /// <inheritdoc/>
    public static string Symbol => "A²/Hz";

    /// <inheritdoc/>
    public static SquaredCurrentDensity FromSi(double si) => new(si);

    /// <summary>Adds two values.</summary>
    public static SquaredCurrentDensity operator +(SquaredCurrentDensity a, SquaredCurrentDensity b) => new(a.Si + b.Si);

    /// <summary>Subtracts two values.</summary>
    public static SquaredCurrentDensity operator -(SquaredCurrentDensity a, SquaredCurrentDensity b) => new(a.Si - b.Si);

    /// <summary>Scales a value.</summary>
    public static SquaredCurrentDensity operator *(double factor, SquaredCurrentDensity a) => new(factor * a.Si);

    /// <summary>Scales a value.</summary>
    public static SquaredCurrentDensity operator *(SquaredCurrentDensity a, double factor) => new(a.Si * factor);

    /// <summary>Divides a value.</summary>
    public static SquaredCurrentDensity operator /(SquaredCurrentDensity a, double divisor) => new(a.Si / divisor);

    /// <summary>The ratio of two values.</summary>
    public static double operator /(SquaredCurrentDensity a, SquaredCurrentDensity b) => a.Si / b.Si;

    /// <summary>Whether one value is less than the other.</summary>
    public static bool operator <(SquaredCurrentDensity a, SquaredCurrentDensity b) => a.Si < b.Si;

    /// <summary>Whether one value is greater than the other.</summary>
    public static bool operator >(SquaredCurrentDensity a, SquaredCurrentDensity b) => a.Si > b.Si;

    /// <summary>Whether one value is at most the other.</summary>
    public static bool operator <=(SquaredCurrentDensity a, SquaredCurrentDensity b) => a.Si <= b.Si;

    /// <summary>Whether one value is at least the other.</summary>
    public static bool operator >=(SquaredCurrentDensity a, SquaredCurrentDensity b) => a.Si >= b.Si;

    /// <inheritdoc/>
    public int CompareTo(SquaredCurrentDensity other) => Si.CompareTo(other.Si);

    /// <summary>The value in engineering notation with its unit.</summary>
    public override string ToString() => QuantityFormat.Short(this);
}
