using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>Thermal resistance of a unit of area, of a layer or a joint: over an area it is a resistance in K/W.</summary>
/// <remarks>It has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 m²·K/W.</remarks>
/// <param name="Si">The value in m²·K/W.</param>
[RecordName("SurfaceThermalResistance", "SurfaceHeatResistance")]
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly record struct SurfaceThermalResistance(double Si) : IIntermediate<SurfaceThermalResistance>
{
    /// <inheritdoc/>
    public static string Symbol => "m²·K/W";

    /// <inheritdoc/>
    public static SurfaceThermalResistance FromSi(double si) => new(si);

    /// <summary>Adds two values.</summary>
    public static SurfaceThermalResistance operator +(SurfaceThermalResistance a, SurfaceThermalResistance b) => new(a.Si + b.Si);

    /// <summary>Subtracts two values.</summary>
    public static SurfaceThermalResistance operator -(SurfaceThermalResistance a, SurfaceThermalResistance b) => new(a.Si - b.Si);

    /// <summary>The value with its sign turned.</summary>
    public static SurfaceThermalResistance operator -(SurfaceThermalResistance a) => new(-a.Si);

    /// <summary>Scales a value.</summary>
    public static SurfaceThermalResistance operator *(double factor, SurfaceThermalResistance a) => new(factor * a.Si);

    /// <summary>Scales a value.</summary>
    public static SurfaceThermalResistance operator *(SurfaceThermalResistance a, double factor) => new(a.Si * factor);

    /// <summary>Divides a value.</summary>
    public static SurfaceThermalResistance operator /(SurfaceThermalResistance a, double divisor) => new(a.Si / divisor);

    /// <summary>The ratio of two values.</summary>
    public static double operator /(SurfaceThermalResistance a, SurfaceThermalResistance b) => a.Si / b.Si;

    /// <summary>Whether one value is less than the other.</summary>
    public static bool operator <(SurfaceThermalResistance a, SurfaceThermalResistance b) => a.Si < b.Si;

    /// <summary>Whether one value is greater than the other.</summary>
    public static bool operator >(SurfaceThermalResistance a, SurfaceThermalResistance b) => a.Si > b.Si;

    /// <summary>Whether one value is at most the other.</summary>
    public static bool operator <=(SurfaceThermalResistance a, SurfaceThermalResistance b) => a.Si <= b.Si;

    /// <summary>Whether one value is at least the other.</summary>
    public static bool operator >=(SurfaceThermalResistance a, SurfaceThermalResistance b) => a.Si >= b.Si;

    /// <inheritdoc/>
    public int CompareTo(SurfaceThermalResistance other) => Si.CompareTo(other.Si);

    /// <summary>The value in engineering notation with its unit.</summary>
    public override string ToString() => QuantityFormat.Short(this);
}
