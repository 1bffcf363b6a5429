using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Ratings;

/// <summary>A signal-to-noise ratio moved to another reference; the noise, its bandwidth and weighting stay the same.</summary>
public static partial class SnrReference
{
    /// <summary>The ratio against another power into the same load: SNR·√(P_to/P_from). 150 W against 1 W is 21.76 dB.</summary>
    /// <param name="SNR">Signal-to-noise ratio at the first power, for example 90.dB; greater than 0.</param>
    /// <param name="P_from">The power it is stated at; greater than 0 W.</param>
    /// <param name="P_to">The power wanted, into the same load; greater than 0 W.</param>
    /// <returns>The signal-to-noise ratio against the other power, as a ratio of voltages.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>SnrReference.AtPower(100.dB, 100.W, 1.W)   // 10000</code></example>
    [Formula("J. Fiore, Op Amps and Linear Integrated Circuits, ch. 1: decibels of power", Symbol = "SNR_to")]
    [RecordName("snr-reference.at-power")]
    public static Gain AtPower(Gain SNR, Power P_from, Power P_to)
    {
        Guard.Positive(SNR);
        Guard.Positive(P_from);
        Guard.Positive(P_to);
        return SNR * Sqrt((double)(P_to / P_from));
    }

    /// <summary>The ratio against another voltage at the same point: SNR·V_to/V_from. 1.2 V against 1 V is 1.58 dB.</summary>
    /// <param name="SNR">Signal-to-noise ratio against the first voltage; greater than 0.</param>
    /// <param name="V_from">The voltage it is stated against; greater than 0 V.</param>
    /// <param name="V_to">The voltage wanted, both rms; greater than 0 V.</param>
    /// <returns>The signal-to-noise ratio against the other voltage.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula("J. Fiore, Op Amps and Linear Integrated Circuits, ch. 1: decibels of voltage", Symbol = "SNR_to")]
    [RecordName("snr-reference.at-voltage")]
    public static Gain AtVoltage(Gain SNR, ElectricPotential V_from, ElectricPotential V_to)
    {
        Guard.Positive(SNR);
        Guard.Positive(V_from);
        Guard.Positive(V_to);
        return SNR * (V_to / V_from);
    }
}
