using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>A time squared: what L·C is; its root is the time constant of a resonance.</summary>
/// <remarks>An intermediate of the algebra: it has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 s².</remarks>
/// <param name="Si">The value in s².</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly partial record struct SquaredDuration(double Si) : IIntermediate<SquaredDuration>
{
    /// <inheritdoc/>
    public static string Symbol => "s²";
}
