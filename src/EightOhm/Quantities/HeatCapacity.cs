using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;
using UnitsNet;

namespace EightOhm.Quantities;

/// <summary>Heat that warms a thing by a kelvin, J/K.</summary>
/// <remarks>Equality and order are by value, whatever the unit; <c>default</c> is 0 J/K.</remarks>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly struct HeatCapacity : IOwnQuantity<HeatCapacity, HeatCapacityUnit>, IEquatable<HeatCapacity>
{
    private readonly HeatCapacityUnit _unit;

    private HeatCapacity(double number, HeatCapacityUnit unit)
    {
        Number = number;
        _unit = unit;
    }

    /// <inheritdoc/>
    public static UnitTable<HeatCapacityUnit> Units { get; } = new(
        nameof(HeatCapacity),
        default(HeatCapacity),
        new BaseDimensions(2, 1, -2, 0, -1, 0, 0),
        (HeatCapacityUnit.JoulePerKelvin, "JoulesPerKelvin", "J/K", 1),
        (HeatCapacityUnit.KilojoulePerKelvin, "KilojoulesPerKelvin", "kJ/K", 1e3));

    /// <summary>0 J/K.</summary>
    public static HeatCapacity Zero => default;

    /// <summary>0 J/K.</summary>
    public static HeatCapacity AdditiveIdentity => default;

    /// <inheritdoc/>
    public double Number { get; }

    /// <inheritdoc/>
    public HeatCapacityUnit Unit => _unit == 0 ? HeatCapacityUnit.JoulePerKelvin : _unit;

    /// <summary>The value in J/K.</summary>
    public double Si => Unit == HeatCapacityUnit.JoulePerKelvin ? Number : Number * Units.Factor(Unit);

    /// <inheritdoc/>
    public static HeatCapacity From(double value, HeatCapacityUnit unit) => new(Guard.Finite(value, nameof(value)), unit);

    /// <summary>Makes a value from a number in J/K.</summary>
    /// <param name="si">The number in J/K; finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite.</exception>
    public static HeatCapacity FromSi(double si) => From(si, HeatCapacityUnit.JoulePerKelvin);

    /// <summary>Reads a value with its unit.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">Not used: numbers are written with a point.</param>
    /// <exception cref="FormatException">The text is not a HeatCapacity.</exception>
    public static HeatCapacity Parse(string s, IFormatProvider? provider) => QuantityText.Parse<HeatCapacity>(s);

    /// <summary>Reads a value with its unit, or says that it cannot.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">Not used: numbers are written with a point.</param>
    /// <param name="result">The value read.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out HeatCapacity result) =>
        QuantityText.TryParse(s, out result);

    /// <summary>Adds two values.</summary>
    public static HeatCapacity operator +(HeatCapacity a, HeatCapacity b) => FromSi(a.Si + b.Si);

    /// <summary>Subtracts two values.</summary>
    public static HeatCapacity operator -(HeatCapacity a, HeatCapacity b) => FromSi(a.Si - b.Si);

    /// <summary>The value with the other sign.</summary>
    public static HeatCapacity operator -(HeatCapacity a) => From(-a.Number, a.Unit);

    /// <summary>Scales a value.</summary>
    public static HeatCapacity operator *(double factor, HeatCapacity a) => FromSi(factor * a.Si);

    /// <summary>Scales a value.</summary>
    public static HeatCapacity operator *(HeatCapacity a, double factor) => FromSi(a.Si * factor);

    /// <summary>Divides a value.</summary>
    public static HeatCapacity operator /(HeatCapacity a, double divisor) => FromSi(a.Si / divisor);

    /// <summary>The ratio of two values.</summary>
    public static double operator /(HeatCapacity a, HeatCapacity b) => a.Si / b.Si;

    /// <summary>Whether two values are the same.</summary>
    public static bool operator ==(HeatCapacity a, HeatCapacity b) => a.Si.Equals(b.Si);

    /// <summary>Whether two values differ.</summary>
    public static bool operator !=(HeatCapacity a, HeatCapacity b) => !(a == b);

    /// <summary>Whether one value is less than the other.</summary>
    public static bool operator <(HeatCapacity a, HeatCapacity b) => a.Si < b.Si;

    /// <summary>Whether one value is greater than the other.</summary>
    public static bool operator >(HeatCapacity a, HeatCapacity b) => a.Si > b.Si;

    /// <summary>Whether one value is at most the other.</summary>
    public static bool operator <=(HeatCapacity a, HeatCapacity b) => a.Si <= b.Si;

    /// <summary>Whether one value is at least the other.</summary>
    public static bool operator >=(HeatCapacity a, HeatCapacity b) => a.Si >= b.Si;

    /// <inheritdoc/>
    public bool Equals(HeatCapacity other) => this == other;

    /// <summary>Whether two values are the same within a tolerance.</summary>
    /// <param name="other">The other value.</param>
    /// <param name="tolerance">The greatest difference that still counts as the same.</param>
    public bool Equals(HeatCapacity other, HeatCapacity tolerance) => Math.Abs(Si - other.Si) <= tolerance.Si;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is HeatCapacity other && this == other;

    /// <inheritdoc/>
    public override int GetHashCode() => Si.GetHashCode();

    /// <summary>The value in engineering notation with its unit.</summary>
    public override string ToString() => QuantityFormat.Short(this);

    /// <summary>The value in engineering notation; format and culture make no difference, so that every page reads the same.</summary>
    /// <param name="format">Not used.</param>
    /// <param name="formatProvider">Not used.</param>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString();
}
