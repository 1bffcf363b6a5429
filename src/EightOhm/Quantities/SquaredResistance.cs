using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>A resistance squared: what L/C is; its root is a characteristic impedance.</summary>
/// <remarks>An intermediate of the algebra: it has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 Ω².</remarks>
/// <param name="Si">The value in Ω².</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly record struct SquaredResistance(double Si) : IIntermediate<SquaredResistance>
{
    /// <inheritdoc/>
    public static string Symbol => "Ω²";

    /// <inheritdoc/>
    public static SquaredResistance FromSi(double si) => new(si);

    /// <summary>Adds two values.</summary>
    public static SquaredResistance operator +(SquaredResistance a, SquaredResistance b) => new(a.Si + b.Si);

    /// <summary>Subtracts two values.</summary>
    public static SquaredResistance operator -(SquaredResistance a, SquaredResistance b) => new(a.Si - b.Si);

    /// <summary>Scales a value.</summary>
    public static SquaredResistance operator *(double factor, SquaredResistance a) => new(factor * a.Si);

    /// <summary>Scales a value.</summary>
    public static SquaredResistance operator *(SquaredResistance a, double factor) => new(a.Si * factor);

    /// <summary>Divides a value.</summary>
    public static SquaredResistance operator /(SquaredResistance a, double divisor) => new(a.Si / divisor);

    /// <summary>The ratio of two values.</summary>
    public static double operator /(SquaredResistance a, SquaredResistance b) => a.Si / b.Si;

    /// <summary>Whether one value is less than the other.</summary>
    public static bool operator <(SquaredResistance a, SquaredResistance b) => a.Si < b.Si;

    /// <summary>Whether one value is greater than the other.</summary>
    public static bool operator >(SquaredResistance a, SquaredResistance b) => a.Si > b.Si;

    /// <summary>Whether one value is at most the other.</summary>
    public static bool operator <=(SquaredResistance a, SquaredResistance b) => a.Si <= b.Si;

    /// <summary>Whether one value is at least the other.</summary>
    public static bool operator >=(SquaredResistance a, SquaredResistance b) => a.Si >= b.Si;

    /// <inheritdoc/>
    public int CompareTo(SquaredResistance other) => Si.CompareTo(other.Si);

    /// <summary>The value in engineering notation with its unit.</summary>
    public override string ToString() => QuantityFormat.Short(this);
}
