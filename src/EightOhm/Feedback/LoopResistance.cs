using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

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
}
