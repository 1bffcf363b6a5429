using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>A resistance squared: what L/C is; its root is a characteristic impedance.</summary>
/// <remarks>An intermediate of the algebra: it has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 Ω².</remarks>
/// <param name="Si">The value in Ω².</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly partial record struct SquaredResistance(double Si) : IIntermediate<SquaredResistance>
{
    /// <inheritdoc/>
    public static string Symbol => "Ω²";
}
