using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>Noise current squared per hertz: what independent noise currents add up in.</summary>
/// <remarks>An intermediate of the algebra: it has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 A²/Hz.</remarks>
/// <param name="Si">The value in A²/Hz.</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly partial record struct SquaredCurrentDensity(double Si) : IIntermediate<SquaredCurrentDensity>
{
    /// <inheritdoc/>
    public static string Symbol => "A²/Hz";
}
