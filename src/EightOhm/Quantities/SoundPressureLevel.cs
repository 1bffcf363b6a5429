using System.Text.Json.Serialization;
using UnitsNet;

namespace EightOhm.Quantities;

/// <summary>A sound pressure level in air: decibels over 20 µPa, rms (ISO 1683).</summary>
/// <param name="Decibels">Decibels over 20 µPa, rms; finite.</param>
[JsonConverter(typeof(QuantityJsonConverter))]
public readonly partial record struct SoundPressureLevel(double Decibels) : ILevel<SoundPressureLevel>
{
    /// <inheritdoc/>
    public static string Symbol => "dB SPL";

    /// <summary>The reference, 20 µPa, rms.</summary>
    public static Pressure Reference => Pressure.FromPascals(20e-6);

    /// <summary>The sound pressure behind the level.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The level is outside −400 to 400 dB.</exception>
    public Pressure Pressure => Pressure.FromPascals(20e-6 * Decibel.Ratio(Decibels, 20, 400));

    /// <summary>The level of a sound pressure.</summary>
    /// <param name="p_rms">Sound pressure, rms; greater than 0 Pa.</param>
    /// <returns>The level, in dB SPL.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The sound pressure is not positive.</exception>
    public static SoundPressureLevel Of(Pressure p_rms) => new(Decibel.Of(Guard.Positive(p_rms, hint: "Silence has no level in decibels.").Pascals / 20e-6, 20));
}
