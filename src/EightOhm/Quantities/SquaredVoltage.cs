using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>A voltage squared: what power times resistance is, and what noise voltages add up in.</summary>
/// <remarks>An intermediate of the algebra: it has arithmetic and a face, no unit zoo. Equality and order are by value; <c>default</c> is 0 V².</remarks>
/// <param name="Si">The value in V².</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly record struct SquaredVoltage(double Si) : IIntermediate<SquaredVoltage>
{
    /// <inheritdoc/>
    public static string Symbol => "V²";

    /// <inheritdoc/>
    public static SquaredVoltage FromSi(double si) => new(si);

    /// <summary>Adds two values.</summary>
    public static SquaredVoltage operator +(SquaredVoltage a, SquaredVoltage b) => new(a.Si + b.Si);

    /// <summary>Subtracts two values.</summary>
    public static SquaredVoltage operator -(SquaredVoltage a, SquaredVoltage b) => new(a.Si - b.Si);

    /// <summary>Scales a value.</summary>
    public static SquaredVoltage operator *(double factor, SquaredVoltage a) => new(factor * a.Si);

    /// <summary>Scales a value.</summary>
    public static SquaredVoltage operator *(SquaredVoltage a, double factor) => new(a.Si * factor);

    /// <summary>Divides a value.</summary>
    public static SquaredVoltage operator /(SquaredVoltage a, double divisor) => new(a.Si / divisor);

    /// <summary>The ratio of two values.</summary>
    public static double operator /(SquaredVoltage a, SquaredVoltage b) => a.Si / b.Si;

    /// <summary>Whether one value is less than the other.</summary>
    public static bool operator <(SquaredVoltage a, SquaredVoltage b) => a.Si < b.Si;

    /// <summary>Whether one value is greater than the other.</summary>
    public static bool operator >(SquaredVoltage a, SquaredVoltage b) => a.Si > b.Si;

    /// <summary>Whether one value is at most the other.</summary>
    public static bool operator <=(SquaredVoltage a, SquaredVoltage b) => a.Si <= b.Si;

    /// <summary>Whether one value is at least the other.</summary>
    public static bool operator >=(SquaredVoltage a, SquaredVoltage b) => a.Si >= b.Si;

    /// <inheritdoc/>
    public int CompareTo(SquaredVoltage other) => Si.CompareTo(other.Si);

    /// <summary>The value in engineering notation with its unit.</summary>
    public override string ToString() => QuantityFormat.Short(this);
}
