using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace EightOhm.Quantities;

/// <summary>Temperature difference per watt of heat flow, K/W: the thermal resistance of the trade.</summary>
/// <remarks>Equality and order are by value, whatever the unit; <c>default</c> is 0 K/W.</remarks>
public readonly struct HeatResistance : IOwnQuantity<HeatResistance, HeatResistanceUnit>, IEquatable<HeatResistance>
{
    private readonly HeatResistanceUnit _unit;

    private HeatResistance(double number, HeatResistanceUnit unit)
    {
        Number = number;
        _unit = unit;
    }

    /// <inheritdoc/>
    public static UnitTable<HeatResistanceUnit> Units { get; } = new(
        nameof(HeatResistance),
        default(HeatResistance),
        new BaseDimensions(-2, -1, 3, 0, 1, 0, 0),
        (HeatResistanceUnit.KelvinPerWatt, "KelvinsPerWatt", "K/W", 1),
        (HeatResistanceUnit.MillikelvinPerWatt, "MillikelvinsPerWatt", "mK/W", 1e-3));

    /// <summary>0 K/W.</summary>
    public static HeatResistance Zero => default;

    /// <summary>0 K/W.</summary>
    public static HeatResistance AdditiveIdentity => default;

    /// <inheritdoc/>
    public double Number { get; }

    /// <inheritdoc/>
    public HeatResistanceUnit Unit => _unit == 0 ? HeatResistanceUnit.KelvinPerWatt : _unit;

    /// <summary>The value in K/W.</summary>
    public double Si => Unit == HeatResistanceUnit.KelvinPerWatt ? Number : Number * Units.Factor(Unit);

    /// <inheritdoc/>
    public static HeatResistance From(double value, HeatResistanceUnit unit) => new(Guard.Finite(value, nameof(value)), unit);

    /// <summary>Makes a value from a number in K/W.</summary>
    /// <param name="si">The number in K/W; finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite.</exception>
    public static HeatResistance FromSi(double si) => From(si, HeatResistanceUnit.KelvinPerWatt);

    /// <summary>Reads a value with its unit.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">Not used: numbers are written with a point.</param>
    /// <exception cref="FormatException">The text is not a HeatResistance.</exception>
    public static HeatResistance Parse(string s, IFormatProvider? provider) => QuantityText.Parse<HeatResistance>(s);

    /// <summary>Reads a value with its unit, or says that it cannot.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">Not used: numbers are written with a point.</param>
    /// <param name="result">The value read.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out HeatResistance result) =>
        QuantityText.TryParse(s, out result);

    /// <summary>Adds two values (linearly: independent noise adds as squares).</summary>
    public static HeatResistance operator +(HeatResistance a, HeatResistance b) => FromSi(a.Si + b.Si);

    /// <summary>Subtracts two values.</summary>
    public static HeatResistance operator -(HeatResistance a, HeatResistance b) => FromSi(a.Si - b.Si);

    /// <summary>The value with the other sign.</summary>
    public static HeatResistance operator -(HeatResistance a) => From(-a.Number, a.Unit);

    /// <summary>Scales a value.</summary>
    public static HeatResistance operator *(double factor, HeatResistance a) => FromSi(factor * a.Si);

    /// <summary>Scales a value.</summary>
    public static HeatResistance operator *(HeatResistance a, double factor) => FromSi(a.Si * factor);

    /// <summary>Divides a value.</summary>
    public static HeatResistance operator /(HeatResistance a, double divisor) => FromSi(a.Si / divisor);

    /// <summary>The ratio of two values.</summary>
    public static double operator /(HeatResistance a, HeatResistance b) => a.Si / b.Si;

    /// <summary>Whether two values are the same.</summary>
    public static bool operator ==(HeatResistance a, HeatResistance b) => a.Si.Equals(b.Si);

    /// <summary>Whether two values differ.</summary>
    public static bool operator !=(HeatResistance a, HeatResistance b) => !(a == b);

    /// <summary>Whether one value is less than the other.</summary>
    public static bool operator <(HeatResistance a, HeatResistance b) => a.Si < b.Si;

    /// <summary>Whether one value is greater than the other.</summary>
    public static bool operator >(HeatResistance a, HeatResistance b) => a.Si > b.Si;

    /// <summary>Whether one value is at most the other.</summary>
    public static bool operator <=(HeatResistance a, HeatResistance b) => a.Si <= b.Si;

    /// <summary>Whether one value is at least the other.</summary>
    public static bool operator >=(HeatResistance a, HeatResistance b) => a.Si >= b.Si;

    /// <inheritdoc/>
    public bool Equals(HeatResistance other) => this == other;

    /// <summary>Whether two values are the same within a tolerance.</summary>
    /// <param name="other">The other value.</param>
    /// <param name="tolerance">The greatest difference that still counts as the same.</param>
    public bool Equals(HeatResistance other, HeatResistance tolerance) => Math.Abs(Si - other.Si) <= tolerance.Si;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is HeatResistance other && this == other;

    /// <inheritdoc/>
    public override int GetHashCode() => Si.GetHashCode();

    /// <summary>The value in engineering notation with its unit.</summary>
    public override string ToString() => Face.Of(this);

    /// <summary>The value in engineering notation; format and culture make no difference, so that every page reads the same.</summary>
    /// <param name="format">Not used.</param>
    /// <param name="formatProvider">Not used.</param>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString();
}
