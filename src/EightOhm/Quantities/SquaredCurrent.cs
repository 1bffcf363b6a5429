using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>A current squared: what power over resistance is.</summary>
/// <remarks>An intermediate of the algebra: it has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 A².</remarks>
/// <param name="Si">The value in A².</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly partial record struct SquaredCurrent(double Si) : IIntermediate<SquaredCurrent>
{
    /// <inheritdoc/>
    public static string Symbol => "A²";
}
