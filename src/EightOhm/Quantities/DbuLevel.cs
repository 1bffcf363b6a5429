using System.Text.Json.Serialization;
using UnitsNet;

namespace EightOhm.Quantities;

/// <summary>A voltage level: decibels over √0.6 V (1 mW in 600 Ω), rms.</summary>
/// <param name="Decibels">Decibels over √0.6 V (1 mW in 600 Ω); finite.</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly partial record struct DbuLevel(double Decibels) : ILevel<DbuLevel>
{
    /// <inheritdoc/>
    public static string Symbol => "dBu";

    /// <summary>The reference, √0.6 V (1 mW in 600 Ω).</summary>
    public static ElectricPotential Reference => ElectricPotential.FromVolts(Decibel.RootPointSix);

    /// <summary>The voltage behind the level, rms.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The level is outside −400 to 400 dB.</exception>
    public ElectricPotential Voltage => ElectricPotential.FromVolts(Decibel.RootPointSix * Decibel.Ratio(Decibels, 20, 400));

    /// <summary>The level of a voltage.</summary>
    /// <param name="V_rms">Voltage, rms; greater than 0 V.</param>
    /// <returns>The level, in dBu.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not positive.</exception>
    public static DbuLevel Of(ElectricPotential V_rms) => new(Decibel.Of(Guard.Positive(V_rms, hint: "Silence has no level in decibels.").Volts / Decibel.RootPointSix, 20));
}
