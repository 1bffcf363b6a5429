using UnitsNet;

namespace EightOhm.Quantities;

/// <summary>The physical constants, exact by the definition of the SI (2019), and π.</summary>
/// <remarks>They are properties, not <c>const</c>, so that the compiler does not fold them away and a shown formula keeps their names.
/// Source: BIPM, The International System of Units, 9th edition (2019), section 2.2, table 1.</remarks>
public static class Constants
{
    /// <summary>Boltzmann constant, 1.380649×10⁻²³ J/K (exact).</summary>
    [RecordName("k")]
    public static Entropy k { get; } = Entropy.FromJoulesPerKelvin(1.380649e-23);

    /// <summary>Elementary charge, 1.602176634×10⁻¹⁹ C (exact).</summary>
    [RecordName("q")]
    public static ElectricCharge q { get; } = ElectricCharge.FromCoulombs(1.602176634e-19);

    /// <summary>The ratio of a circle's circumference to its diameter.</summary>
    [RecordName("pi")]
    public static double pi => Math.PI;

    /// <summary>The same, as it is written: 1 / (2 * π * R * C).</summary>
    [RecordName("π")]
    public static double π => Math.PI;

    /// <summary>The temperature of 0 °C, 273.15 K (exact).</summary>
    internal const double ZeroCelsius = 273.15;
}
