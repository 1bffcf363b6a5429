using System.Text.Json.Serialization;
using UnitsNet;

namespace EightOhm.Quantities;

/// <summary>A voltage level: decibels over 1 V, rms.</summary>
/// <param name="Decibels">Decibels over 1 V; finite.</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly partial record struct DbvLevel(double Decibels) : ILevel<DbvLevel>
{
    /// <inheritdoc/>
    public static string Symbol => "dBV";

    /// <summary>The reference, 1 V.</summary>
    public static ElectricPotential Reference => ElectricPotential.FromVolts(1);

    /// <summary>The voltage behind the level, rms.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The level is outside −400 to 400 dB.</exception>
    public ElectricPotential Voltage => ElectricPotential.FromVolts(Decibel.Ratio(Decibels, 20, 400));

    /// <summary>The level of a voltage.</summary>
    /// <param name="V_rms">Voltage, rms; greater than 0 V.</param>
    /// <returns>The level, in dBV.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not positive.</exception>
    public static DbvLevel Of(ElectricPotential V_rms) => new(Decibel.Of(Guard.Positive(V_rms, hint: "Silence has no level in decibels.").Volts, 20));
}
