using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;

namespace EightOhm.Feedback;

/// <summary>What feedback does to the resistances at the ends of an amplifier.</summary>
/// <remarks>Real loop gain: above the open-loop pole T falls, so the output resistance rises like an inductor's.</remarks>
public static partial class LoopResistance
{
    /// <summary>Output resistance when the output voltage is fed back: r_o/(1 + T).</summary>
    /// <param name="r_o">Open-loop output resistance; 0 Ω or more.</param>
    /// <param name="T">Loop gain with the load that it has; 0 or more.</param>
    /// <returns>The output resistance with feedback, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    /// <example><code>LoopResistance.Output(0.5.Ohm, 99)   // 5 mΩ</code></example>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 8", Symbol = "R_out")]
    [RecordName("loop-resistance.output")]
    public static ElectricResistance Output(ElectricResistance r_o, double T)
    {
        Guard.NotNegative(r_o);
        Guard.NotNegative(T);
        return r_o / (1 + T);
    }

    /// <summary>Input resistance when the feedback is in series with the input: r_i·(1 + T).</summary>
    /// <remarks>Of the differential input alone: what goes from each input to ground stays, in parallel.</remarks>
    /// <param name="r_i">Open-loop differential input resistance; 0 Ω or more.</param>
    /// <param name="T">Loop gain; 0 or more.</param>
    /// <returns>The input resistance with feedback, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 8", Symbol = "R_in")]
    [RecordName("loop-resistance.input")]
    public static ElectricResistance Input(ElectricResistance r_i, double T)
    {
        Guard.NotNegative(r_i);
        Guard.NotNegative(T);
        return r_i * (1 + T);
    }

    /// <summary>Input resistance when the feedback goes to the same node as the input: r_i/(1 + T).</summary>
    /// <param name="r_i">Open-loop resistance of that node, the feedback resistor's loading included; 0 Ω or more.</param>
    /// <param name="T">Loop gain; 0 or more.</param>
    /// <returns>The input resistance with feedback, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 8: shunt feedback", Symbol = "R_in")]
    [RecordName("loop-resistance.shunt-input")]
    public static ElectricResistance ShuntInput(ElectricResistance r_i, double T)
    {
        Guard.NotNegative(r_i);
        Guard.NotNegative(T);
        return r_i / (1 + T);
    }

    /// <summary>The inductance that the output shows above the open-loop pole, where the loop gain falls as 1/f: r_o/(2π·f_x).</summary>
    /// <remarks>Up to the crossover; above it r_o itself is seen.</remarks>
    /// <param name="r_o">Open-loop output resistance; 0 Ω or more.</param>
    /// <param name="f_x">The loop's crossover; greater than 0 Hz.</param>
    /// <returns>The inductance, in H.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>LoopResistance.Inductance(0.2.Ohm, 1.1.MHz)   // 28.94 nH</code></example>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 6: inductive output impedance", Symbol = "L_o")]
    [RecordName("loop-resistance.inductance")]
    public static ElectricInductance Inductance(ElectricResistance r_o, Frequency f_x)
    {
        Guard.NotNegative(r_o);
        Guard.Positive(f_x);
        return r_o / (2 * pi * f_x);
    }
}
