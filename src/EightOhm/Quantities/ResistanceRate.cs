using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>A resistance times a frequency, or an inductance times a squared one: one over it is a capacitance.</summary>
/// <remarks>An intermediate of the algebra: it has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 Ω/s.</remarks>
/// <param name="Si">The value in Ω/s.</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly partial record struct ResistanceRate(double Si) : IIntermediate<ResistanceRate>
{
    /// <inheritdoc/>
    public static string Symbol => "Ω/s";
}
