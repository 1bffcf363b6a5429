using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;
using UnitsNet;

namespace EightOhm.Quantities;

/// <summary>A noise voltage in one root hertz of bandwidth (rms).</summary>
/// <remarks>Equality and order are by value, whatever the unit; <c>default</c> is 0 V/√Hz.</remarks>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly struct VoltageNoiseDensity : IOwnQuantity<VoltageNoiseDensity, VoltageNoiseDensityUnit>, IEquatable<VoltageNoiseDensity>
{
    private readonly VoltageNoiseDensityUnit _unit;

    private VoltageNoiseDensity(double number, VoltageNoiseDensityUnit unit)
    {
        Number = number;
        _unit = unit;
    }

    /// <inheritdoc/>
    public static UnitTable<VoltageNoiseDensityUnit> Units { get; } = new(
        nameof(VoltageNoiseDensity),
        default(VoltageNoiseDensity),
        BaseDimensions.Dimensionless, // UnitsNet keeps whole exponents only; a density has a half power of time
        (VoltageNoiseDensityUnit.VoltPerRootHertz, "VoltsPerRootHertz", "V/√Hz", 1),
        (VoltageNoiseDensityUnit.NanovoltPerRootHertz, "NanovoltsPerRootHertz", "nV/√Hz", 1e-9),
        (VoltageNoiseDensityUnit.MicrovoltPerRootHertz, "MicrovoltsPerRootHertz", "µV/√Hz", 1e-6));

    /// <summary>0 V/√Hz.</summary>
    public static VoltageNoiseDensity Zero => default;

    /// <summary>0 V/√Hz.</summary>
    public static VoltageNoiseDensity AdditiveIdentity => default;

    /// <inheritdoc/>
    public double Number { get; }

    /// <inheritdoc/>
    public VoltageNoiseDensityUnit Unit => _unit == 0 ? VoltageNoiseDensityUnit.VoltPerRootHertz : _unit;

    /// <summary>The value in V/√Hz.</summary>
    public double Si => Unit == VoltageNoiseDensityUnit.VoltPerRootHertz ? Number : Number * Units.Factor(Unit);

    /// <inheritdoc/>
    public static VoltageNoiseDensity From(double value, VoltageNoiseDensityUnit unit) => new(Guard.Finite(value, nameof(value)), unit);

    /// <summary>Makes a value from a number in V/√Hz.</summary>
    /// <param name="si">The number in V/√Hz; finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite.</exception>
    public static VoltageNoiseDensity FromSi(double si) => From(si, VoltageNoiseDensityUnit.VoltPerRootHertz);

    /// <summary>Reads a value with its unit.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">Not used: numbers are written with a point.</param>
    /// <exception cref="FormatException">The text is not a VoltageNoiseDensity.</exception>
    public static VoltageNoiseDensity Parse(string s, IFormatProvider? provider) => QuantityText.Parse<VoltageNoiseDensity>(s);

    /// <summary>Reads a value with its unit, or says that it cannot.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">Not used: numbers are written with a point.</param>
    /// <param name="result">The value read.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out VoltageNoiseDensity result) =>
        QuantityText.TryParse(s, out result);

    /// <summary>Adds two values (linearly: independent noise adds as squares).</summary>
    public static VoltageNoiseDensity operator +(VoltageNoiseDensity a, VoltageNoiseDensity b) => FromSi(a.Si + b.Si);

    /// <summary>Subtracts two values.</summary>
    public static VoltageNoiseDensity operator -(VoltageNoiseDensity a, VoltageNoiseDensity b) => FromSi(a.Si - b.Si);

    /// <summary>The value with the other sign.</summary>
    public static VoltageNoiseDensity operator -(VoltageNoiseDensity a) => From(-a.Number, a.Unit);

    /// <summary>Scales a value.</summary>
    public static VoltageNoiseDensity operator *(double factor, VoltageNoiseDensity a) => FromSi(factor * a.Si);

    /// <summary>Scales a value.</summary>
    public static VoltageNoiseDensity operator *(VoltageNoiseDensity a, double factor) => FromSi(a.Si * factor);

    /// <summary>Divides a value.</summary>
    public static VoltageNoiseDensity operator /(VoltageNoiseDensity a, double divisor) => FromSi(a.Si / divisor);

    /// <summary>The ratio of two values.</summary>
    public static double operator /(VoltageNoiseDensity a, VoltageNoiseDensity b) => a.Si / b.Si;

    /// <summary>Whether two values are the same.</summary>
    public static bool operator ==(VoltageNoiseDensity a, VoltageNoiseDensity b) => a.Si.Equals(b.Si);

    /// <summary>Whether two values differ.</summary>
    public static bool operator !=(VoltageNoiseDensity a, VoltageNoiseDensity b) => !(a == b);

    /// <summary>Whether one value is less than the other.</summary>
    public static bool operator <(VoltageNoiseDensity a, VoltageNoiseDensity b) => a.Si < b.Si;

    /// <summary>Whether one value is greater than the other.</summary>
    public static bool operator >(VoltageNoiseDensity a, VoltageNoiseDensity b) => a.Si > b.Si;

    /// <summary>Whether one value is at most the other.</summary>
    public static bool operator <=(VoltageNoiseDensity a, VoltageNoiseDensity b) => a.Si <= b.Si;

    /// <summary>Whether one value is at least the other.</summary>
    public static bool operator >=(VoltageNoiseDensity a, VoltageNoiseDensity b) => a.Si >= b.Si;

    /// <inheritdoc/>
    public bool Equals(VoltageNoiseDensity other) => this == other;

    /// <summary>Whether two values are the same within a tolerance.</summary>
    /// <param name="other">The other value.</param>
    /// <param name="tolerance">The greatest difference that still counts as the same.</param>
    public bool Equals(VoltageNoiseDensity other, VoltageNoiseDensity tolerance) => Math.Abs(Si - other.Si) <= tolerance.Si;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is VoltageNoiseDensity other && this == other;

    /// <inheritdoc/>
    public override int GetHashCode() => Si.GetHashCode();

    /// <summary>The value in engineering notation with its unit.</summary>
    public override string ToString() => QuantityFormat.Short(this);

    /// <summary>The value in engineering notation; format and culture make no difference, so that every page reads the same.</summary>
    /// <param name="format">Not used.</param>
    /// <param name="formatProvider">Not used.</param>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString();
}
