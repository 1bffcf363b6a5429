using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>A voltage times a resistance: on the way to a divider, V·R₂/(R₁ + R₂).</summary>
/// <remarks>An intermediate of the algebra: it has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 V·Ω.</remarks>
/// <param name="Si">The value in V·Ω.</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly record struct VoltageResistance(double Si) : IIntermediate<VoltageResistance>
{
    /// <inheritdoc/>
    public static string Symbol => "V·Ω";

    /// <inheritdoc/>
    public static VoltageResistance FromSi(double si) => new(si);

    /// <summary>Adds two values.</summary>
    public static VoltageResistance operator +(VoltageResistance a, VoltageResistance b) => new(a.Si + b.Si);

    /// <summary>Subtracts two values.</summary>
    public static VoltageResistance operator -(VoltageResistance a, VoltageResistance b) => new(a.Si - b.Si);

    /// <summary>Scales a value.</summary>
    public static VoltageResistance operator *(double factor, VoltageResistance a) => new(factor * a.Si);

    /// <summary>Scales a value.</summary>
    public static VoltageResistance operator *(VoltageResistance a, double factor) => new(a.Si * factor);

    /// <summary>Divides a value.</summary>
    public static VoltageResistance operator /(VoltageResistance a, double divisor) => new(a.Si / divisor);

    /// <summary>The ratio of two values.</summary>
    public static double operator /(VoltageResistance a, VoltageResistance b) => a.Si / b.Si;

    /// <summary>Whether one value is less than the other.</summary>
    public static bool operator <(VoltageResistance a, VoltageResistance b) => a.Si < b.Si;

    /// <summary>Whether one value is greater than the other.</summary>
    public static bool operator >(VoltageResistance a, VoltageResistance b) => a.Si > b.Si;

    /// <summary>Whether one value is at most the other.</summary>
    public static bool operator <=(VoltageResistance a, VoltageResistance b) => a.Si <= b.Si;

    /// <summary>Whether one value is at least the other.</summary>
    public static bool operator >=(VoltageResistance a, VoltageResistance b) => a.Si >= b.Si;

    /// <inheritdoc/>
    public int CompareTo(VoltageResistance other) => Si.CompareTo(other.Si);

    /// <summary>The value in engineering notation with its unit.</summary>
    public override string ToString() => QuantityFormat.Short(this);
}
