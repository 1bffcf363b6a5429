using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;
using UnitsNet;

namespace EightOhm.Quantities;

/// <summary>Temperature difference per watt of heat flow, K/W: the thermal resistance of the trade.</summary>
/// <remarks>Equality and order are by value, whatever the unit; <c>default</c> is 0 K/W.</remarks>
[RecordName("ThermalResistance", "HeatResistance")]
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly struct ThermalResistance : IOwnQuantity<ThermalResistance, ThermalResistanceUnit>, IEquatable<ThermalResistance>
{
    private readonly ThermalResistanceUnit _unit;

    private ThermalResistance(double number, ThermalResistanceUnit unit)
    {
        Number = number;
        _unit = unit;
    }

    /// <inheritdoc/>
    public static UnitTable<ThermalResistanceUnit> Units { get; } = new(
        nameof(ThermalResistance),
        default(ThermalResistance),
        new BaseDimensions(-2, -1, 3, 0, 1, 0, 0),
        (ThermalResistanceUnit.KelvinPerWatt, "KelvinsPerWatt", "K/W", 1),
        (ThermalResistanceUnit.MillikelvinPerWatt, "MillikelvinsPerWatt", "mK/W", 1e-3));

    /// <summary>0 K/W.</summary>
    public static ThermalResistance Zero => default;

    /// <summary>0 K/W.</summary>
    public static ThermalResistance AdditiveIdentity => default;

    /// <inheritdoc/>
    public double Number { get; }

    /// <inheritdoc/>
    public ThermalResistanceUnit Unit => _unit == 0 ? ThermalResistanceUnit.KelvinPerWatt : _unit;

    /// <summary>The value in K/W.</summary>
    public double Si => Unit == ThermalResistanceUnit.KelvinPerWatt ? Number : Number * Units.Factor(Unit);

    /// <inheritdoc/>
    public static ThermalResistance From(double value, ThermalResistanceUnit unit) => new(Guard.Finite(value, nameof(value)), unit);

    /// <summary>Makes a value from a number in K/W.</summary>
    /// <param name="si">The number in K/W; finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite.</exception>
    public static ThermalResistance FromSi(double si) => From(si, ThermalResistanceUnit.KelvinPerWatt);

    /// <summary>Reads a value with its unit.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">Not used: numbers are written with a point.</param>
    /// <exception cref="FormatException">The text is not a ThermalResistance.</exception>
    public static ThermalResistance Parse(string s, IFormatProvider? provider) => QuantityText.Parse<ThermalResistance>(s);

    /// <summary>Reads a value with its unit, or says that it cannot.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">Not used: numbers are written with a point.</param>
    /// <param name="result">The value read.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out ThermalResistance result) =>
        QuantityText.TryParse(s, out result);

    /// <summary>Adds two values (linearly: independent noise adds as squares).</summary>
    public static ThermalResistance operator +(ThermalResistance a, ThermalResistance b) => FromSi(a.Si + b.Si);

    /// <summary>Subtracts two values.</summary>
    public static ThermalResistance operator -(ThermalResistance a, ThermalResistance b) => FromSi(a.Si - b.Si);

    /// <summary>The value with the other sign.</summary>
    public static ThermalResistance operator -(ThermalResistance a) => From(-a.Number, a.Unit);

    /// <summary>Scales a value.</summary>
    public static ThermalResistance operator *(double factor, ThermalResistance a) => FromSi(factor * a.Si);

    /// <summary>Scales a value.</summary>
    public static ThermalResistance operator *(ThermalResistance a, double factor) => FromSi(a.Si * factor);

    /// <summary>Divides a value.</summary>
    public static ThermalResistance operator /(ThermalResistance a, double divisor) => FromSi(a.Si / divisor);

    /// <summary>The ratio of two values.</summary>
    public static double operator /(ThermalResistance a, ThermalResistance b) => a.Si / b.Si;

    /// <summary>Whether two values are the same.</summary>
    public static bool operator ==(ThermalResistance a, ThermalResistance b) => a.Si.Equals(b.Si);

    /// <summary>Whether two values differ.</summary>
    public static bool operator !=(ThermalResistance a, ThermalResistance b) => !(a == b);

    /// <summary>Whether one value is less than the other.</summary>
    public static bool operator <(ThermalResistance a, ThermalResistance b) => a.Si < b.Si;

    /// <summary>Whether one value is greater than the other.</summary>
    public static bool operator >(ThermalResistance a, ThermalResistance b) => a.Si > b.Si;

    /// <summary>Whether one value is at most the other.</summary>
    public static bool operator <=(ThermalResistance a, ThermalResistance b) => a.Si <= b.Si;

    /// <summary>Whether one value is at least the other.</summary>
    public static bool operator >=(ThermalResistance a, ThermalResistance b) => a.Si >= b.Si;

    /// <inheritdoc/>
    public bool Equals(ThermalResistance other) => this == other;

    /// <summary>Whether two values are the same within a tolerance.</summary>
    /// <param name="other">The other value.</param>
    /// <param name="tolerance">The greatest difference that still counts as the same.</param>
    public bool Equals(ThermalResistance other, ThermalResistance tolerance) => Math.Abs(Si - other.Si) <= tolerance.Si;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is ThermalResistance other && this == other;

    /// <inheritdoc/>
    public override int GetHashCode() => Si.GetHashCode();

    /// <summary>The value in engineering notation with its unit.</summary>
    public override string ToString() => QuantityFormat.Short(this);

    /// <summary>The value in engineering notation; format and culture make no difference, so that every page reads the same.</summary>
    /// <param name="format">Not used.</param>
    /// <param name="formatProvider">Not used.</param>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString();
}
