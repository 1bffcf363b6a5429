using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>A voltage squared: what power times resistance is, and what noise voltages add up in.</summary>
/// <remarks>An intermediate of the algebra: it has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 V².</remarks>
/// <param name="Si">The value in V².</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly partial record struct SquaredVoltage(double Si) : IIntermediate<SquaredVoltage>
{
    /// <inheritdoc/>
    public static string Symbol => "V²";
}
