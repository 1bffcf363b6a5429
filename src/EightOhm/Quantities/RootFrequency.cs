using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>The root of a bandwidth: what a noise density is multiplied by to give a voltage or current.</summary>
/// <remarks>An intermediate of the algebra: it has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 √Hz.</remarks>
/// <param name="Si">The value in √Hz.</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly partial record struct RootFrequency(double Si) : IIntermediate<RootFrequency>
{
    /// <inheritdoc/>
    public static string Symbol => "√Hz";
}
