using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>A capacitance times a squared frequency: one over it is an inductance.</summary>
/// <remarks>An intermediate of the algebra: it has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 S/s.</remarks>
/// <param name="Si">The value in S/s.</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly partial record struct ConductanceRate(double Si) : IIntermediate<ConductanceRate>
{
    /// <inheritdoc/>
    public static string Symbol => "S/s";
}
