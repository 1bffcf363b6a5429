using System.Numerics;
using System.Text.Json.Serialization;

namespace EightOhm.Quantities;

/// <summary>A voltage (or current) gain: a linear ratio that is entered and shown in decibels as well.</summary>
/// <remarks>Decibels here are 20·log₁₀ of the ratio's magnitude. Gains in cascade multiply; there is no sum, because 20 dB + 6 dB
/// read as levels would be 26 dB and read as ratios 21.6 dB. Equality and order are by the linear ratio; <c>default</c> is a gain of 0.</remarks>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly struct Gain : IEquatable<Gain>, IComparable<Gain>, IComparisonOperators<Gain, Gain, bool>
{
    private Gain(double ratio) => Ratio = ratio;

    /// <summary>The linear ratio, output over input; negative when it inverts.</summary>
    public double Ratio { get; }

    /// <summary>20·log₁₀ of the magnitude.</summary>
    /// <exception cref="InvalidOperationException">The ratio is zero, which has no decibels.</exception>
    public double Decibels => Ratio != 0
        ? 20 * Math.Log10(Math.Abs(Ratio))
        : throw new InvalidOperationException("A gain of zero has no value in decibels; look at its ratio instead.");

    /// <summary>Makes a gain from a linear ratio.</summary>
    /// <param name="ratio">Output over input; finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is not finite.</exception>
    public static Gain FromRatio(double ratio) => new(Guard.Finite(ratio));

    /// <summary>Makes a gain from decibels of voltage: 10^(dB/20).</summary>
    /// <param name="decibels">Decibels, 20·log₁₀ of the ratio; from −400 to 400.</param>
    /// <exception cref="ArgumentOutOfRangeException">The decibels are out of range.</exception>
    public static Gain FromDecibels(double decibels) => new(Math.Pow(10, Guard.Between(decibels, -400, 400) / 20));

    /// <summary>Makes a voltage gain from decibels of power: into the same resistance they are the same decibels,
    /// but a power ratio r is a voltage ratio √r.</summary>
    /// <param name="powerRatio">Output power over input power; not negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is negative or not finite.</exception>
    public static Gain FromPowerRatio(double powerRatio) => new(Math.Sqrt(Guard.NotNegative(powerRatio)));

    /// <summary>Gains in cascade.</summary>
    public static Gain operator *(Gain a, Gain b) => FromRatio(a.Ratio * b.Ratio);

    /// <summary>One gain relative to another.</summary>
    public static Gain operator /(Gain a, Gain b) => FromRatio(a.Ratio / b.Ratio);

    /// <summary>A scaled gain.</summary>
    public static Gain operator *(double factor, Gain a) => FromRatio(factor * a.Ratio);

    /// <summary>A scaled gain.</summary>
    public static Gain operator *(Gain a, double factor) => FromRatio(a.Ratio * factor);

    /// <summary>A number over a gain, such as the feedback fraction 1/G.</summary>
    public static Gain operator /(double number, Gain a) => FromRatio(number / a.Ratio);

    /// <summary>A gain over a number.</summary>
    public static Gain operator /(Gain a, double divisor) => FromRatio(a.Ratio / divisor);

    /// <summary>The same magnitude with the other sign of the ratio: a stage that inverts.</summary>
    public Gain Inverted => new(-Ratio);

    /// <summary>Refused: -6.dB would be +6 dB turned over, −1.995, not −6 dB.</summary>
    [Obsolete("For decibels below zero write (-6).dB; C# reads -6.dB as minus (6.dB). For a gain that inverts write gain.Inverted.", error: true)]
    public static Gain operator -(Gain a) => a.Inverted;

    /// <summary>Refused: decibels of a cascade add, ratios of a cascade multiply.</summary>
    [Obsolete("Gains in cascade multiply: write a * b (their decibels then add). For a sum of ratios write Gain.FromRatio(a.Ratio + b.Ratio).", error: true)]
    public static Gain operator +(Gain a, Gain b) => FromRatio(a.Ratio + b.Ratio);

    /// <summary>Refused: decibels between two gains are their quotient.</summary>
    [Obsolete("The decibels between two gains are their quotient: write a / b. For a difference of ratios write Gain.FromRatio(a.Ratio - b.Ratio).", error: true)]
    public static Gain operator -(Gain a, Gain b) => FromRatio(a.Ratio - b.Ratio);

    /// <summary>Whether two gains are the same ratio.</summary>
    public static bool operator ==(Gain a, Gain b) => a.Ratio.Equals(b.Ratio);

    /// <summary>Whether two gains differ.</summary>
    public static bool operator !=(Gain a, Gain b) => !(a == b);

    /// <summary>Whether one ratio is less than the other.</summary>
    public static bool operator <(Gain a, Gain b) => a.Ratio < b.Ratio;

    /// <summary>Whether one ratio is greater than the other.</summary>
    public static bool operator >(Gain a, Gain b) => a.Ratio > b.Ratio;

    /// <summary>Whether one ratio is at most the other.</summary>
    public static bool operator <=(Gain a, Gain b) => a.Ratio <= b.Ratio;

    /// <summary>Whether one ratio is at least the other.</summary>
    public static bool operator >=(Gain a, Gain b) => a.Ratio >= b.Ratio;

    /// <inheritdoc/>
    public bool Equals(Gain other) => this == other;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Gain other && this == other;

    /// <inheritdoc/>
    public override int GetHashCode() => Ratio.GetHashCode();

    /// <inheritdoc/>
    public int CompareTo(Gain other) => Ratio.CompareTo(other.Ratio);

    /// <summary>The ratio, with its decibels beside it.</summary>
    public override string ToString() => QuantityFormat.Long(this);
}
