using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>Noise voltage squared per hertz: what independent noise voltages add up in.</summary>
/// <remarks>An intermediate of the algebra: it has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 V²/Hz.</remarks>
/// <param name="Si">The value in V²/Hz.</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly partial record struct SquaredVoltageDensity(double Si) : IIntermediate<SquaredVoltageDensity>
{
    /// <inheritdoc/>
    public static string Symbol => "V²/Hz";
}
