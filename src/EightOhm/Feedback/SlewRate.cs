using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;

namespace EightOhm.Feedback;

/// <summary>Slew rate and the sine it allows.</summary>
public static partial class SlewRate
{
    /// <summary>The greatest slope of a sine: 2π·f·V_p.</summary>
    /// <param name="f">Frequency; 0 Hz or more.</param>
    /// <param name="V_p">Peak voltage (not rms); 0 V or more.</param>
    /// <returns>The slew rate, the greatest slope, in V/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    /// <example><code>SlewRate.Needed(20.kHz, 40.V)   // 5.027 V/µs</code></example>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 6", Symbol = "SR_need")]
    [RecordName("slew-rate.needed")]
    public static ElectricPotentialChangeRate Needed(Frequency f, ElectricPotential V_p)
    {
        Guard.NotNegative(f);
        Guard.NotNegative(V_p);
        return 2 * pi * f * V_p;
    }

    /// <summary>The full-power bandwidth that a slew rate allows: SR/(2π·V_p).</summary>
    /// <param name="SR">Slew rate; greater than 0.</param>
    /// <param name="V_p">Peak voltage (not rms); greater than 0 V.</param>
    /// <returns>The highest frequency at full peak voltage, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>SlewRate.FullPowerBandwidth(30.V_per_us, 40.V)   // 119.4 kHz</code></example>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 6", Symbol = "FPB")]
    [RecordName("slew-rate.full-power-bandwidth")]
    public static Frequency FullPowerBandwidth(ElectricPotentialChangeRate SR, ElectricPotential V_p)
    {
        Guard.Positive(SR);
        Guard.Positive(V_p);
        return SR / (2 * pi * V_p);
    }
}
