using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>Noise voltage squared per hertz: what independent noise voltages add up in.</summary>
/// <remarks>An intermediate of the algebra: it has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 V²/Hz.</remarks>
/// <param name="Si">The value in V²/Hz.</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly record struct SquaredVoltageDensity(double Si) : IIntermediate<SquaredVoltageDensity>
{
    /// <inheritdoc/>
    public static string Symbol => "V²/Hz";

    /// <inheritdoc/>
    public static SquaredVoltageDensity FromSi(double si) => new(si);

    /// <summary>Adds two values.</summary>
    public static SquaredVoltageDensity operator +(SquaredVoltageDensity a, SquaredVoltageDensity b) => new(a.Si + b.Si);

    /// <summary>Subtracts two values.</summary>
    public static SquaredVoltageDensity operator -(SquaredVoltageDensity a, SquaredVoltageDensity b) => new(a.Si - b.Si);

    /// <summary>Scales a value.</summary>
    public static SquaredVoltageDensity operator *(double factor, SquaredVoltageDensity a) => new(factor * a.Si);

    /// <summary>Scales a value.</summary>
    public static SquaredVoltageDensity operator *(SquaredVoltageDensity a, double factor) => new(a.Si * factor);

    /// <summary>Divides a value.</summary>
    public static SquaredVoltageDensity operator /(SquaredVoltageDensity a, double divisor) => new(a.Si / divisor);

    /// <summary>The ratio of two values.</summary>
    public static double operator /(SquaredVoltageDensity a, SquaredVoltageDensity b) => a.Si / b.Si;

    /// <summary>Whether one value is less than the other.</summary>
    public static bool operator <(SquaredVoltageDensity a, SquaredVoltageDensity b) => a.Si < b.Si;

    /// <summary>Whether one value is greater than the other.</summary>
    public static bool operator >(SquaredVoltageDensity a, SquaredVoltageDensity b) => a.Si > b.Si;

    /// <summary>Whether one value is at most the other.</summary>
    public static bool operator <=(SquaredVoltageDensity a, SquaredVoltageDensity b) => a.Si <= b.Si;

    /// <summary>Whether one value is at least the other.</summary>
    public static bool operator >=(SquaredVoltageDensity a, SquaredVoltageDensity b) => a.Si >= b.Si;

    /// <inheritdoc/>
    public int CompareTo(SquaredVoltageDensity other) => Si.CompareTo(other.Si);

    /// <summary>The value in engineering notation with its unit.</summary>
    public override string ToString() => QuantityFormat.Short(this);
}
