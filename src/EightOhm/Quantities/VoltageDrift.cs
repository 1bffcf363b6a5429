using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>A voltage per kelvin: the temperature coefficient of a junction, a spreader or an offset.</summary>
/// <remarks>It has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 V/K.</remarks>
/// <param name="Si">The value in V/K.</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly record struct VoltageDrift(double Si) : IIntermediate<VoltageDrift>
{
    /// <inheritdoc/>
    public static string Symbol => "V/K";

    /// <inheritdoc/>
    public static VoltageDrift FromSi(double si) => new(si);

    /// <summary>Adds two values.</summary>
    public static VoltageDrift operator +(VoltageDrift a, VoltageDrift b) => new(a.Si + b.Si);

    /// <summary>Subtracts two values.</summary>
    public static VoltageDrift operator -(VoltageDrift a, VoltageDrift b) => new(a.Si - b.Si);

    /// <summary>The value with its sign turned.</summary>
    public static VoltageDrift operator -(VoltageDrift a) => new(-a.Si);

    /// <summary>Scales a value.</summary>
    public static VoltageDrift operator *(double factor, VoltageDrift a) => new(factor * a.Si);

    /// <summary>Scales a value.</summary>
    public static VoltageDrift operator *(VoltageDrift a, double factor) => new(a.Si * factor);

    /// <summary>Divides a value.</summary>
    public static VoltageDrift operator /(VoltageDrift a, double divisor) => new(a.Si / divisor);

    /// <summary>The ratio of two values.</summary>
    public static double operator /(VoltageDrift a, VoltageDrift b) => a.Si / b.Si;

    /// <summary>Whether one value is less than the other.</summary>
    public static bool operator <(VoltageDrift a, VoltageDrift b) => a.Si < b.Si;

    /// <summary>Whether one value is greater than the other.</summary>
    public static bool operator >(VoltageDrift a, VoltageDrift b) => a.Si > b.Si;

    /// <summary>Whether one value is at most the other.</summary>
    public static bool operator <=(VoltageDrift a, VoltageDrift b) => a.Si <= b.Si;

    /// <summary>Whether one value is at least the other.</summary>
    public static bool operator >=(VoltageDrift a, VoltageDrift b) => a.Si >= b.Si;

    /// <inheritdoc/>
    public int CompareTo(VoltageDrift other) => Si.CompareTo(other.Si);

    /// <summary>The value in engineering notation with its unit.</summary>
    public override string ToString() => QuantityFormat.Short(this);
}
