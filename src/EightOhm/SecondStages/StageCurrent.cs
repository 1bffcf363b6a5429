using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.SecondStages;

/// <summary>The standing current of a second stage: what slewing and the followers' bases ask of it.</summary>
/// <remarks>A stage with a current source slews by the first stage's current in one direction and by its own standing current in the other. If the other is the slower, the wave
/// tilts before it limits.</remarks>
public static partial class StageCurrent
{
    private const string Source = "S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 6: slewing, the current balance of the second stage's output";

    /// <summary>The standing current that a slew rate needs: SR·(C + C_s) + I_B.</summary>
    /// <remarks>The least of it: a choice is a good deal more, so that the stage does not come near its end (common practice: twice).</remarks>
    /// <param name="SR">Slew rate; greater than 0.</param>
    /// <param name="C">The compensation capacitor; 0 F or more.</param>
    /// <param name="C_s">Everything else at the stage's output: followers, transistors, wiring; 0 F or more.</param>
    /// <param name="I_B">Peak current into the followers' bases (not rms); 0 A or more.</param>
    /// <returns>The current, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>StageCurrent.Needed(40.V_per_us, 100.pF, 20.pF, 0.1.mA)   // 4.9 mA</code></example>
    [Formula(Source, Symbol = "I_need")]
    [RecordName("stage-current.needed")]
    public static ElectricCurrent Needed(ElectricPotentialChangeRate SR, ElectricCapacitance C, ElectricCapacitance C_s, ElectricCurrent I_B)
    {
        Guard.Positive(SR);
        Guard.NotNegative(C);
        Guard.NotNegative(C_s);
        Guard.NotNegative(I_B);
        return SR * (C + C_s) + I_B;
    }

    /// <summary>The slew rate that the standing current allows: (I − I_B)/(C + C_s).</summary>
    /// <remarks>In the direction in which the stage's current source drives the output; the other direction has the first stage's current over C.</remarks>
    /// <param name="I">Standing current; greater than I_B.</param>
    /// <param name="I_B">Peak current into the followers' bases (not rms); 0 A or more.</param>
    /// <param name="C">The compensation capacitor; 0 F or more.</param>
    /// <param name="C_s">Everything else at the stage's output; 0 F or more, and not both 0 F.</param>
    /// <returns>The slew rate, in V/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or the followers take all of the current.</exception>
    /// <example><code>StageCurrent.SlewRate(10.mA, 0.1.mA, 100.pF, 20.pF)   // 82.5 V/µs</code></example>
    [Formula(Source, Symbol = "SR_2")]
    [RecordName("stage-current.slew-rate")]
    public static ElectricPotentialChangeRate SlewRate(ElectricCurrent I, ElectricCurrent I_B, ElectricCapacitance C, ElectricCapacitance C_s)
    {
        Guard.Positive(I);
        Guard.NotNegative(I_B);
        Guard.Positive(I - I_B, nameof(I), "The followers' bases take all of the standing current: nothing is left to slew with.");
        Guard.NotNegative(C);
        Guard.NotNegative(C_s);
        Guard.Positive(C + C_s);
        return (I - I_B) / (C + C_s);
    }
}
