using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>Thermal resistance of a unit of area, of a layer or a joint: over an area it is a resistance in K/W.</summary>
/// <remarks>It has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 m²·K/W.</remarks>
/// <param name="Si">The value in m²·K/W.</param>
[RecordName("SurfaceThermalResistance", "SurfaceHeatResistance")]
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly partial record struct SurfaceThermalResistance(double Si) : IIntermediate<SurfaceThermalResistance>
{
    /// <inheritdoc/>
    public static string Symbol => "m²·K/W";

    /// <summary>The value with its sign turned.</summary>
    public static SurfaceThermalResistance operator -(SurfaceThermalResistance a) => new(-a.Si);
}
