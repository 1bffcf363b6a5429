using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>A current squared over time, I²t: what melts a fuse.</summary>
/// <remarks>It has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 A²s.</remarks>
/// <param name="Si">The value in A²s.</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly partial record struct JouleIntegral(double Si) : IIntermediate<JouleIntegral>
{
    /// <inheritdoc/>
    public static string Symbol => "A²s";
}
