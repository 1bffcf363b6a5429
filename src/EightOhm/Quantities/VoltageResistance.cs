using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>A voltage times a resistance: on the way to a divider, V·R₂/(R₁ + R₂).</summary>
/// <remarks>An intermediate of the algebra: it has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 V·Ω.</remarks>
/// <param name="Si">The value in V·Ω.</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly partial record struct VoltageResistance(double Si) : IIntermediate<VoltageResistance>
{
    /// <inheritdoc/>
    public static string Symbol => "V·Ω";
}
