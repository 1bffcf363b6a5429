using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>A voltage per kelvin: the temperature coefficient of a junction, a spreader or an offset.</summary>
/// <remarks>It has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 V/K.</remarks>
/// <param name="Si">The value in V/K.</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly partial record struct VoltageDrift(double Si) : IIntermediate<VoltageDrift>
{
    /// <inheritdoc/>
    public static string Symbol => "V/K";

    /// <summary>The value with its sign turned.</summary>
    public static VoltageDrift operator -(VoltageDrift a) => new(-a.Si);
}
