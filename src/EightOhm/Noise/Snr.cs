using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Noise;

/// <summary>Signal over noise, both rms and at the same place, in each direction: ratio, noise, density, corner.</summary>
/// <remarks>A figure in decibels says nothing without its reference voltage, its bandwidth and its weighting. The ratio is one of
/// voltages: its decibels are 20·log₁₀. A density here is white, through one pole whose noise bandwidth is π/2 times its corner.</remarks>
public static partial class Snr
{
    private const string RatioHint = "Give the ratio of voltages, for example 110.dB.";
    private const string SignalHint = "Give the rms voltage that the noise is compared with, for example 1.V.";
    private const string ZeroNoise = "The SNR of zero noise has no value: give the rms noise over its bandwidth, for example 3.uV, or a noise density with a corner.";

    /// <summary>Signal over noise: V_s/V_n.</summary>
    /// <param name="V_s">The signal, rms; greater than 0 V.</param>
    /// <param name="V_n">The noise over its bandwidth, rms, at the same place; greater than 0 V.</param>
    /// <returns>The signal-to-noise ratio, as a ratio of voltages.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A voltage is not positive: the SNR of zero noise has no value.</exception>
    /// <example><code>Snr.OfVoltages(28.3.V, 100.uV)   // 283000</code></example>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 7", Symbol = "SNR")]
    [RecordName("snr.of-voltages")]
    public static Gain OfVoltages(ElectricPotential V_s, ElectricPotential V_n)
    {
        Guard.Positive(V_s, hint: SignalHint);
        Guard.Positive(V_n, hint: ZeroNoise);
        return Gain.FromRatio(V_s / V_n);
    }

    /// <summary>The noise that a signal-to-noise ratio claims, rms: V_s/SNR.</summary>
    /// <param name="V_s">The signal that the ratio refers to, rms; greater than 0 V.</param>
    /// <param name="SNR">The ratio of voltages; greater than 0.</param>
    /// <returns>The noise, rms, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 7", Symbol = "V_n")]
    [RecordName("snr.noise-for")]
    public static ElectricPotential NoiseFor(ElectricPotential V_s, Gain SNR)
    {
        Guard.Positive(V_s, hint: SignalHint);
        Guard.Positive(SNR, hint: RatioHint);
        return V_s / SNR;
    }

    /// <summary>Signal over white noise through one pole: V_s/(e_n·√(π/2·f_c)).</summary>
    /// <param name="V_s">The signal, rms; greater than 0 V.</param>
    /// <param name="e_n">The noise density at the same place; greater than 0 V/√Hz.</param>
    /// <param name="f_c">The corner (−3 dB, not the noise bandwidth) of the one pole; greater than 0 Hz.</param>
    /// <returns>The signal-to-noise ratio, as a ratio of voltages.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive: the SNR of zero noise has no value.</exception>
    /// <example><code>Snr.OfDensity(1.V, 10.nV_rtHz, 20.kHz)   // 564200</code></example>
    [Formula("J. Fiore, Op Amps and Linear Integrated Circuits, ch. 5", Symbol = "SNR")]
    [RecordName("snr.of-density")]
    public static Gain OfDensity(ElectricPotential V_s, VoltageNoiseDensity e_n, Frequency f_c)
    {
        Guard.Positive(V_s, hint: SignalHint);
        Guard.Positive(e_n, hint: ZeroNoise);
        Guard.Positive(f_c, hint: ZeroNoise);
        var V_n = e_n * Sqrt(pi / 2 * f_c);
        return Gain.FromRatio(V_s / V_n);
    }

    /// <summary>The white density that a ratio allows through one pole: V_s/SNR/√(π/2·f_c).</summary>
    /// <param name="V_s">The signal that the ratio refers to, rms; greater than 0 V.</param>
    /// <param name="SNR">The ratio of voltages; greater than 0.</param>
    /// <param name="f_c">The corner (−3 dB, not the noise bandwidth) of the one pole; greater than 0 Hz.</param>
    /// <returns>The density allowed, rms, in V/√Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula("J. Fiore, Op Amps and Linear Integrated Circuits, ch. 5, solved for the density", Symbol = "e_n")]
    [RecordName("snr.density-for")]
    public static VoltageNoiseDensity DensityFor(ElectricPotential V_s, Gain SNR, Frequency f_c)
    {
        Guard.Positive(V_s, hint: SignalHint);
        Guard.Positive(SNR, hint: RatioHint);
        Guard.Positive(f_c, hint: "Give the corner of the one pole, for example 20.kHz.");
        return V_s / SNR / Sqrt(pi / 2 * f_c);
    }

    /// <summary>The corner of the one pole behind a ratio and a white density: 2/π·(V_s/SNR)²/e_n².</summary>
    /// <remarks>The corner, not the noise bandwidth, which is π/2 times it.</remarks>
    /// <param name="V_s">The signal that the ratio refers to, rms; greater than 0 V.</param>
    /// <param name="SNR">The ratio of voltages; greater than 0.</param>
    /// <param name="e_n">The noise density at the same place; greater than 0 V/√Hz.</param>
    /// <returns>The −3 dB frequency of the pole, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula("J. Fiore, Op Amps and Linear Integrated Circuits, ch. 5, solved for the corner", Symbol = "f_c")]
    [RecordName("snr.corner-for")]
    public static Frequency CornerFor(ElectricPotential V_s, Gain SNR, VoltageNoiseDensity e_n)
    {
        Guard.Positive(V_s, hint: SignalHint);
        Guard.Positive(SNR, hint: RatioHint);
        Guard.Positive(e_n, hint: "No noise needs no corner: give the density, for example 3.3.nV_rtHz.");
        var V_n = V_s / SNR;
        return 2 / pi * (V_n * V_n / (e_n * e_n));
    }
}
