using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>The root of a bandwidth: what a noise density is multiplied by to give a voltage or current.</summary>
/// <remarks>An intermediate of the algebra: it has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 √Hz.</remarks>
/// <param name="Si">The value in √Hz.</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly record struct RootFrequency(double Si) : IIntermediate<RootFrequency>
{
    /// <inheritdoc/>
    public static string Symbol => "√Hz";

    /// <inheritdoc/>
    public static RootFrequency FromSi(double si) => new(si);

    /// <summary>Adds two values.</summary>
    public static RootFrequency operator +(RootFrequency a, RootFrequency b) => new(a.Si + b.Si);

    /// <summary>Subtracts two values.</summary>
    public static RootFrequency operator -(RootFrequency a, RootFrequency b) => new(a.Si - b.Si);

    /// <summary>Scales a value.</summary>
    public static RootFrequency operator *(double factor, RootFrequency a) => new(factor * a.Si);

    /// <summary>Scales a value.</summary>
    public static RootFrequency operator *(RootFrequency a, double factor) => new(a.Si * factor);

    /// <summary>Divides a value.</summary>
    public static RootFrequency operator /(RootFrequency a, double divisor) => new(a.Si / divisor);

    /// <summary>The ratio of two values.</summary>
    public static double operator /(RootFrequency a, RootFrequency b) => a.Si / b.Si;

    /// <summary>Whether one value is less than the other.</summary>
    public static bool operator <(RootFrequency a, RootFrequency b) => a.Si < b.Si;

    /// <summary>Whether one value is greater than the other.</summary>
    public static bool operator >(RootFrequency a, RootFrequency b) => a.Si > b.Si;

    /// <summary>Whether one value is at most the other.</summary>
    public static bool operator <=(RootFrequency a, RootFrequency b) => a.Si <= b.Si;

    /// <summary>Whether one value is at least the other.</summary>
    public static bool operator >=(RootFrequency a, RootFrequency b) => a.Si >= b.Si;

    /// <inheritdoc/>
    public int CompareTo(RootFrequency other) => Si.CompareTo(other.Si);

    /// <summary>The value in engineering notation with its unit.</summary>
    public override string ToString() => QuantityFormat.Short(this);
}
