using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>A current squared over time, I²t: what melts a fuse.</summary>
/// <remarks>It has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 A²s.</remarks>
/// <param name="Si">The value in A²s.</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly record struct JouleIntegral(double Si) : IIntermediate<JouleIntegral>
{
    /// <inheritdoc/>
    public static string Symbol => "A²s";

    /// <inheritdoc/>
    public static JouleIntegral FromSi(double si) => new(si);

    /// <summary>Adds two values.</summary>
    public static JouleIntegral operator +(JouleIntegral a, JouleIntegral b) => new(a.Si + b.Si);

    /// <summary>Subtracts two values.</summary>
    public static JouleIntegral operator -(JouleIntegral a, JouleIntegral b) => new(a.Si - b.Si);

    /// <summary>Scales a value.</summary>
    public static JouleIntegral operator *(double factor, JouleIntegral a) => new(factor * a.Si);

    /// <summary>Scales a value.</summary>
    public static JouleIntegral operator *(JouleIntegral a, double factor) => new(a.Si * factor);

    /// <summary>Divides a value.</summary>
    public static JouleIntegral operator /(JouleIntegral a, double divisor) => new(a.Si / divisor);

    /// <summary>The ratio of two values.</summary>
    public static double operator /(JouleIntegral a, JouleIntegral b) => a.Si / b.Si;

    /// <summary>Whether one value is less than the other.</summary>
    public static bool operator <(JouleIntegral a, JouleIntegral b) => a.Si < b.Si;

    /// <summary>Whether one value is greater than the other.</summary>
    public static bool operator >(JouleIntegral a, JouleIntegral b) => a.Si > b.Si;

    /// <summary>Whether one value is at most the other.</summary>
    public static bool operator <=(JouleIntegral a, JouleIntegral b) => a.Si <= b.Si;

    /// <summary>Whether one value is at least the other.</summary>
    public static bool operator >=(JouleIntegral a, JouleIntegral b) => a.Si >= b.Si;

    /// <inheritdoc/>
    public int CompareTo(JouleIntegral other) => Si.CompareTo(other.Si);

    /// <summary>The value in engineering notation with its unit.</summary>
    public override string ToString() => QuantityFormat.Short(this);
}
