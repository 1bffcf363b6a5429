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

    /// <summary>The slew rate that a current gives with a compensation capacitor: I/C.</summary>
    /// <param name="I">The most that the first stage gives: the whole tail current with a mirror, half of it without; greater than 0 A.</param>
    /// <param name="C">The compensation capacitor; greater than 0 F.</param>
    /// <returns>The slew rate, in V/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>SlewRate.Available(4.mA, 100.pF)   // 40 V/µs</code></example>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 6", Symbol = "SR")]
    [RecordName("slew-rate.available")]
    public static ElectricPotentialChangeRate Available(ElectricCurrent I, ElectricCapacitance C)
    {
        Guard.Positive(I);
        Guard.Positive(C);
        return I / C;
    }

    /// <summary>The slew rate that goes with a crossover, whatever the capacitor: 2π·f_x·G·I/g_m1.</summary>
    /// <remarks>Without degeneration, g_m1 = I/(2·V_T), this is 4π·V_T·G·f_x: the tail current cancels, and only degeneration buys slew rate.</remarks>
    /// <param name="f_x">The loop crossover; greater than 0 Hz.</param>
    /// <param name="G">Closed-loop gain 1/B_fb; 1 or more.</param>
    /// <param name="I">The most that the first stage gives; greater than 0 A.</param>
    /// <param name="g_m1">Its transconductance, degeneration and mirror included; greater than 0 S.</param>
    /// <returns>The slew rate, in V/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>SlewRate.OfCrossover(1.1.MHz, 23.6.ratio, 4.mA, 16.5.mS)   // 39.54 V/µs</code></example>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 6: slew rate and transition frequency, g_m1/(2π·G·f_x) put in for C", Symbol = "SR")]
    [RecordName("slew-rate.of-crossover")]
    public static ElectricPotentialChangeRate OfCrossover(Frequency f_x, Gain G, ElectricCurrent I, ElectricConductance g_m1)
    {
        Guard.Positive(f_x);
        Guard.AtLeast(G.Ratio, 1, nameof(G), "A divider feeds back at most everything, which is a closed-loop gain of one.");
        Guard.Positive(I);
        Guard.Positive(g_m1);
        return 2 * pi * f_x * (G * (I / g_m1));
    }

    /// <summary>The largest step at the output that the loop follows without slewing: SR/(2π·f_x).</summary>
    /// <param name="SR">Slew rate; greater than 0.</param>
    /// <param name="f_x">The loop crossover; greater than 0 Hz.</param>
    /// <returns>The step at the output, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>SlewRate.LargestStep(40.V_per_us, 1.1.MHz)   // 5.787 V</code></example>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 6: slew onset, V = SR·τ", Symbol = "V_crit")]
    [RecordName("slew-rate.largest-step")]
    public static ElectricPotential LargestStep(ElectricPotentialChangeRate SR, Frequency f_x)
    {
        Guard.Positive(SR);
        Guard.Positive(f_x);
        return SR / (2 * pi * f_x);
    }
}
