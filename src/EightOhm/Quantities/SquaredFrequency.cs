using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>A frequency squared: over an inductance or a capacitance times it a resonance is found; its root is a frequency.</summary>
/// <remarks>An intermediate of the algebra: it has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 Hz².</remarks>
/// <param name="Si">The value in Hz².</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly partial record struct SquaredFrequency(double Si) : IIntermediate<SquaredFrequency>
{
    /// <inheritdoc/>
    public static string Symbol => "Hz²";
}
