using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;
using UnitsNet;

namespace EightOhm.Quantities;

/// <summary>A noise current in one root hertz of bandwidth (rms).</summary>
/// <remarks>Equality and order are by value, whatever the unit; <c>default</c> is 0 A/√Hz.</remarks>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly struct CurrentNoiseDensity : IOwnQuantity<CurrentNoiseDensity, CurrentNoiseDensityUnit>, IEquatable<CurrentNoiseDensity>
{
    private readonly CurrentNoiseDensityUnit _unit;

    private CurrentNoiseDensity(double number, CurrentNoiseDensityUnit unit)
    {
        Number = number;
        _unit = unit;
    }

    /// <inheritdoc/>
    public static UnitTable<CurrentNoiseDensityUnit> Units { get; } = new(
        nameof(CurrentNoiseDensity),
        default(CurrentNoiseDensity),
        BaseDimensions.Dimensionless, // UnitsNet keeps whole exponents only; a density has a half power of time
        (CurrentNoiseDensityUnit.AmperePerRootHertz, "AmperesPerRootHertz", "A/√Hz", 1),
        (CurrentNoiseDensityUnit.PicoamperePerRootHertz, "PicoamperesPerRootHertz", "pA/√Hz", 1e-12),
        (CurrentNoiseDensityUnit.FemtoamperePerRootHertz, "FemtoamperesPerRootHertz", "fA/√Hz", 1e-15));

    /// <summary>0 A/√Hz.</summary>
    public static CurrentNoiseDensity Zero => default;

    /// <summary>0 A/√Hz.</summary>
    public static CurrentNoiseDensity AdditiveIdentity => default;

    /// <inheritdoc/>
    public double Number { get; }

    /// <inheritdoc/>
    public CurrentNoiseDensityUnit Unit => _unit == 0 ? CurrentNoiseDensityUnit.AmperePerRootHertz : _unit;

    /// <summary>The value in A/√Hz.</summary>
    public double Si => Unit == CurrentNoiseDensityUnit.AmperePerRootHertz ? Number : Number * Units.Factor(Unit);

    /// <inheritdoc/>
    public static CurrentNoiseDensity From(double value, CurrentNoiseDensityUnit unit) => new(Guard.Finite(value, nameof(value)), unit);

    /// <summary>Makes a value from a number in A/√Hz.</summary>
    /// <param name="si">The number in A/√Hz; finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite.</exception>
    public static CurrentNoiseDensity FromSi(double si) => From(si, CurrentNoiseDensityUnit.AmperePerRootHertz);

    /// <summary>Reads a value with its unit.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">Not used: numbers are written with a point.</param>
    /// <exception cref="FormatException">The text is not a CurrentNoiseDensity.</exception>
    public static CurrentNoiseDensity Parse(string s, IFormatProvider? provider) => QuantityText.Parse<CurrentNoiseDensity>(s);

    /// <summary>Reads a value with its unit, or says that it cannot.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">Not used: numbers are written with a point.</param>
    /// <param name="result">The value read.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out CurrentNoiseDensity result) =>
        QuantityText.TryParse(s, out result);

    /// <summary>Adds two values (linearly: independent noise adds as squares).</summary>
    public static CurrentNoiseDensity operator +(CurrentNoiseDensity a, CurrentNoiseDensity b) => FromSi(a.Si + b.Si);

    /// <summary>Subtracts two values.</summary>
    public static CurrentNoiseDensity operator -(CurrentNoiseDensity a, CurrentNoiseDensity b) => FromSi(a.Si - b.Si);

    /// <summary>The value with the other sign.</summary>
    public static CurrentNoiseDensity operator -(CurrentNoiseDensity a) => From(-a.Number, a.Unit);

    /// <summary>Scales a value.</summary>
    public static CurrentNoiseDensity operator *(double factor, CurrentNoiseDensity a) => FromSi(factor * a.Si);

    /// <summary>Scales a value.</summary>
    public static CurrentNoiseDensity operator *(CurrentNoiseDensity a, double factor) => FromSi(a.Si * factor);

    /// <summary>Divides a value.</summary>
    public static CurrentNoiseDensity operator /(CurrentNoiseDensity a, double divisor) => FromSi(a.Si / divisor);

    /// <summary>The ratio of two values.</summary>
    public static double operator /(CurrentNoiseDensity a, CurrentNoiseDensity b) => a.Si / b.Si;

    /// <summary>Whether two values are the same.</summary>
    public static bool operator ==(CurrentNoiseDensity a, CurrentNoiseDensity b) => a.Si.Equals(b.Si);

    /// <summary>Whether two values differ.</summary>
    public static bool operator !=(CurrentNoiseDensity a, CurrentNoiseDensity b) => !(a == b);

    /// <summary>Whether one value is less than the other.</summary>
    public static bool operator <(CurrentNoiseDensity a, CurrentNoiseDensity b) => a.Si < b.Si;

    /// <summary>Whether one value is greater than the other.</summary>
    public static bool operator >(CurrentNoiseDensity a, CurrentNoiseDensity b) => a.Si > b.Si;

    /// <summary>Whether one value is at most the other.</summary>
    public static bool operator <=(CurrentNoiseDensity a, CurrentNoiseDensity b) => a.Si <= b.Si;

    /// <summary>Whether one value is at least the other.</summary>
    public static bool operator >=(CurrentNoiseDensity a, CurrentNoiseDensity b) => a.Si >= b.Si;

    /// <inheritdoc/>
    public bool Equals(CurrentNoiseDensity other) => this == other;

    /// <summary>Whether two values are the same within a tolerance.</summary>
    /// <param name="other">The other value.</param>
    /// <param name="tolerance">The greatest difference that still counts as the same.</param>
    public bool Equals(CurrentNoiseDensity other, CurrentNoiseDensity tolerance) => Math.Abs(Si - other.Si) <= tolerance.Si;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is CurrentNoiseDensity other && this == other;

    /// <inheritdoc/>
    public override int GetHashCode() => Si.GetHashCode();

    /// <summary>The value in engineering notation with its unit.</summary>
    public override string ToString() => QuantityFormat.Short(this);

    /// <summary>The value in engineering notation; format and culture make no difference, so that every page reads the same.</summary>
    /// <param name="format">Not used.</param>
    /// <param name="formatProvider">Not used.</param>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString();
}
