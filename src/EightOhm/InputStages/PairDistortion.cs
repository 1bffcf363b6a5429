using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.InputStages;

/// <summary>Distortion of a bipolar pair inside a loop that charges a capacitor.</summary>
/// <remarks>The loop dictates the current, C·dv/dt, and the pair must find the input for it: 2·V_T·artanh(δ + u·cos) + R_deg·i. Its harmonics stand at the summing node, so they come out times
/// the gain and no loop gain divides them. The resistor's part is linear: degeneration leaves the harmonics as they are for the same current. It helps by letting C shrink at the same crossover.
/// Exact for any share u that the pair can give.</remarks>
public static partial class PairDistortion
{
    private const string Source = "derived: Fourier series of artanh(δ + u·cos), from that of ln(a + u·cos); the pair by Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 7";
    private const string Starved = "The pair cannot give this current: it slews. More tail current or a smaller capacitor.";

    /// <summary>The share of the tail current that a sine takes: 2π·f·V_p·C_dom/I_tail.</summary>
    /// <param name="f">Frequency; 0 Hz or more.</param>
    /// <param name="V_p">Peak of the output (not rms); 0 V or more.</param>
    /// <param name="C_dom">Compensation capacitor; greater than 0 F.</param>
    /// <param name="I_tail">Tail current; greater than 0 A.</param>
    /// <returns>The share u, as a fraction: at one the pair slews.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>PairDistortion.Share(20.kHz, 40.V, 100.pF, 4.mA)   // 12.57 %</code></example>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 6: slope of a sine over the slew rate", Symbol = "u")]
    [RecordName("pair-distortion.share")]
    public static Ratio Share(Frequency f, ElectricPotential V_p, ElectricCapacitance C_dom, ElectricCurrent I_tail)
    {
        Guard.NotNegative(f);
        Guard.NotNegative(V_p);
        Guard.Positive(C_dom);
        Guard.Positive(I_tail);
        return Ratio.FromDecimalFractions(2 * pi * f * V_p * C_dom / I_tail);
    }

    /// <summary>Third harmonic at the output, of its fundamental: (2·V_T/3)·(t_1³ + t_2³)·G/V_p, t = (a − √(a² − u²))/u, a = 1 ± δ.</summary>
    /// <remarks>For a small share it is V_T·u³/6·G/V_p, rising with the cube of frequency. Not the distortion of tanh over the loop gain, which is a hundred times as much.</remarks>
    /// <param name="V_T">Thermal voltage; greater than 0 V.</param>
    /// <param name="u">Share of the tail current, by <see cref="Share"/>; above 0, below 1 − δ.</param>
    /// <param name="delta">Imbalance of the collector currents at rest, (I_1 − I_2)/I_tail, as a magnitude; below 1.</param>
    /// <param name="G">Closed-loop gain; greater than 0.</param>
    /// <param name="V_p">Peak of the output (not rms); greater than 0 V.</param>
    /// <returns>The third harmonic over the fundamental, as a fraction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pair cannot give the current, or an input is out of range.</exception>
    /// <example><code>PairDistortion.ThirdHarmonic(25.69.mV, 12.566.percent, 0.percent, 23.6.ratio, 40.V)   // 5.073 ppm</code></example>
    [Formula(Source, Symbol = "H_3")]
    [RecordName("pair-distortion.third-harmonic")]
    public static Ratio ThirdHarmonic(ElectricPotential V_T, Ratio u, Ratio delta, Gain G, ElectricPotential V_p)
    {
        Guard.Positive(V_T);
        Guard.Between(u.DecimalFractions, 1e-9, 1, nameof(u), Starved);
        Guard.Between(delta.DecimalFractions, 0, 0.999, nameof(delta), "Give the imbalance as a magnitude, for example 2.percent.");
        Guard.NotNegative(1 - delta.DecimalFractions - u.DecimalFractions, "1 − δ − u", Starved);
        Guard.Positive(G);
        Guard.Positive(V_p);
        var t_1 = u.DecimalFractions / (1 + delta + Sqrt((1 + delta) * (1 + delta) - u.DecimalFractions * u.DecimalFractions));
        var t_2 = u.DecimalFractions / (1 - delta + Sqrt((1 - delta) * (1 - delta) - u.DecimalFractions * u.DecimalFractions));
        return Ratio.FromDecimalFractions(2 * (t_1 * t_1 * t_1 + t_2 * t_2 * t_2) / 3 * G.Ratio * (V_T / V_p));
    }

    /// <summary>Second harmonic at the output, of its fundamental, by an imbalance of the pair: V_T·(t_2² − t_1²)·G/V_p, t = (a − √(a² − u²))/u, a = 1 ± δ.</summary>
    /// <remarks>For a small share and imbalance it is V_T·δ·u²·G/V_p: a mirror that keeps the currents equal is worth more than degeneration.</remarks>
    /// <param name="V_T">Thermal voltage; greater than 0 V.</param>
    /// <param name="u">Share of the tail current, by <see cref="Share"/>; above 0, below 1 − δ.</param>
    /// <param name="delta">Imbalance of the collector currents at rest, (I_1 − I_2)/I_tail, as a magnitude; below 1.</param>
    /// <param name="G">Closed-loop gain; greater than 0.</param>
    /// <param name="V_p">Peak of the output (not rms); greater than 0 V.</param>
    /// <returns>The second harmonic over the fundamental, as a fraction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pair cannot give the current, or an input is out of range.</exception>
    [Formula(Source, Symbol = "H_2")]
    [RecordName("pair-distortion.second-harmonic")]
    public static Ratio SecondHarmonic(ElectricPotential V_T, Ratio u, Ratio delta, Gain G, ElectricPotential V_p)
    {
        Guard.Positive(V_T);
        Guard.Between(u.DecimalFractions, 1e-9, 1, nameof(u), Starved);
        Guard.Between(delta.DecimalFractions, 0, 0.999, nameof(delta), "Give the imbalance as a magnitude, for example 2.percent.");
        Guard.NotNegative(1 - delta.DecimalFractions - u.DecimalFractions, "1 − δ − u", Starved);
        Guard.Positive(G);
        Guard.Positive(V_p);
        var t_1 = u.DecimalFractions / (1 + delta + Sqrt((1 + delta) * (1 + delta) - u.DecimalFractions * u.DecimalFractions));
        var t_2 = u.DecimalFractions / (1 - delta + Sqrt((1 - delta) * (1 - delta) - u.DecimalFractions * u.DecimalFractions));
        return Ratio.FromDecimalFractions((t_2 * t_2 - t_1 * t_1) * G.Ratio * (V_T / V_p));
    }
}
