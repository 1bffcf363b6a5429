using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;

namespace EightOhm.Feedback;

/// <summary>One capacitor from the second stage's output to its input: what it makes of the loop, in the formulas of an amplifier that is ideal otherwise.</summary>
/// <remarks>Three frequencies are called unity-gain frequency, and differ by tens of times: the open loop's (<see cref="OpenLoopUnity"/>), the loop's crossover
/// (<see cref="Crossover"/>), and the closed loop's −3 dB (<see cref="UnityFrequencies"/>). With its stages' own poles and delays: <see cref="MillerAmplifier"/>.</remarks>
public static partial class MillerLoop
{
    private const string Source = "S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 8: Miller compensation";

    private const string Splitting = Source + ", pole splitting";

    /// <summary>Where the open-loop gain would be one: g_m1/(2π·C).</summary>
    /// <remarks>Of the amplifier without its feedback divider. The loop's own crossover is lower by the closed-loop gain.</remarks>
    /// <param name="g_m1">Transconductance of the first stage, degeneration and mirror included: 1/(r_e + R_E) of a pair with a mirror, half of it without; greater than 0 S.</param>
    /// <param name="C">The compensation capacitor; greater than 0 F.</param>
    /// <returns>The open loop's unity-gain frequency, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>MillerLoop.OpenLoopUnity(16.mS, 100.pF)   // 25.46 MHz</code></example>
    [Formula(Source, Symbol = "f_ol")]
    [RecordName("miller-loop.open-loop-unity")]
    public static Frequency OpenLoopUnity(ElectricConductance g_m1, ElectricCapacitance C)
    {
        Guard.Positive(g_m1);
        Guard.Positive(C);
        return g_m1 / (2 * pi * C);
    }

    /// <summary>The loop's crossover, where the loop gain is one: g_m1/(2π·G·C).</summary>
    /// <remarks>The asymptote of one pole; stages with poles of their own cross a little below.</remarks>
    /// <param name="g_m1">Transconductance of the first stage, degeneration and mirror included; greater than 0 S.</param>
    /// <param name="C">The compensation capacitor; greater than 0 F.</param>
    /// <param name="G">Closed-loop gain 1/B_fb (the noise gain); 1 or more.</param>
    /// <returns>The loop crossover, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>MillerLoop.Crossover(16.mS, 100.pF, 23.6.ratio)   // 1.079 MHz</code></example>
    [Formula(Source, Symbol = "f_x")]
    [RecordName("miller-loop.crossover")]
    public static Frequency Crossover(ElectricConductance g_m1, ElectricCapacitance C, Gain G)
    {
        Guard.Positive(g_m1);
        Guard.Positive(C);
        Guard.AtLeast(G.Ratio, 1, nameof(G), "A divider feeds back at most everything, which is a closed-loop gain of one.");
        return g_m1 / (2 * pi * G.Ratio * C);
    }

    /// <summary>The compensation capacitor of a crossover: g_m1/(2π·G·f_x).</summary>
    /// <param name="g_m1">Transconductance of the first stage, degeneration and mirror included; greater than 0 S.</param>
    /// <param name="f_x">The loop crossover wanted; greater than 0 Hz.</param>
    /// <param name="G">Closed-loop gain 1/B_fb; 1 or more.</param>
    /// <returns>The capacitor, in F.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>MillerLoop.CapacitorFor(16.mS, 1.MHz, 23.6.ratio)   // 107.9 pF</code></example>
    [Formula(Source + ", solved for C", Symbol = "C")]
    [RecordName("miller-loop.capacitor-for")]
    public static ElectricCapacitance CapacitorFor(ElectricConductance g_m1, Frequency f_x, Gain G)
    {
        Guard.Positive(g_m1);
        Guard.Positive(f_x);
        Guard.AtLeast(G.Ratio, 1, nameof(G), "A divider feeds back at most everything, which is a closed-loop gain of one.");
        return g_m1 / (2 * pi * G.Ratio * f_x);
    }

    /// <summary>The dominant pole: 1/(2π·R_1·g_m2·R_2·C).</summary>
    /// <remarks>The capacitor acts g_m2·R_2 times as large at the second stage's input, far more than what is there anyway.</remarks>
    /// <param name="R_1">All resistance to ground at the second stage's input; greater than 0 Ω.</param>
    /// <param name="g_m2">Transconductance of the second stage; greater than 0 S.</param>
    /// <param name="R_2">All resistance to ground at its output; greater than 0 Ω.</param>
    /// <param name="C">The compensation capacitor; greater than 0 F.</param>
    /// <returns>The pole, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Splitting, Symbol = "f_1")]
    [RecordName("miller-loop.dominant-pole")]
    public static Frequency DominantPole(ElectricResistance R_1, ElectricConductance g_m2, ElectricResistance R_2, ElectricCapacitance C)
    {
        Guard.Positive(R_1);
        Guard.Positive(g_m2);
        Guard.Positive(R_2);
        Guard.Positive(C);
        return 1 / (2 * pi * (g_m2 * R_2) * (R_1 * C));
    }

    /// <summary>Where the inner loop, through the capacitor and the second stage alone, has a gain of one: g_m2·C/(2π·(C_1·C_2 + C·(C_1 + C_2))).</summary>
    /// <remarks>It is also where the split second pole lies. Tens of MHz: the second stage's transistor and its base resistance decide whether this loop is stable, and the
    /// outer loop's margin does not show it.</remarks>
    /// <param name="g_m2">Transconductance of the second stage; greater than 0 S.</param>
    /// <param name="C">The compensation capacitor; greater than 0 F.</param>
    /// <param name="C_1">From the second stage's input to ground; 0 F or more.</param>
    /// <param name="C_2">From its output to ground; 0 F or more, and not both 0 F.</param>
    /// <returns>The inner loop's crossover, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>MillerLoop.InnerUnity(40.mS, 100.pF, 40.pF, 30.pF)   // 77.64 MHz</code></example>
    [Formula(Splitting, Symbol = "f_in")]
    [RecordName("miller-loop.inner-unity")]
    public static Frequency InnerUnity(ElectricConductance g_m2, ElectricCapacitance C, ElectricCapacitance C_1, ElectricCapacitance C_2)
    {
        Guard.Positive(g_m2);
        Guard.Positive(C);
        Guard.NotNegative(C_1);
        Guard.NotNegative(C_2);
        Guard.Positive(C_1 + C_2, hint: "With no capacitance at either end the inner loop would have no end.");
        // What the stage sees: the output's capacitance, and the two others in series, of which a part comes back.
        var b = C / (C + C_1);
        return g_m2 * b / (2 * pi * (C_2 + b * C_1));
    }

    /// <summary>The zero in the right half-plane, where as much goes forward through the capacitor as the stage gives: g_m2/(2π·C).</summary>
    /// <param name="g_m2">Transconductance of the second stage; greater than 0 S.</param>
    /// <param name="C">The compensation capacitor; greater than 0 F.</param>
    /// <returns>The zero, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>MillerLoop.RightZero(40.mS, 100.pF)   // 63.66 MHz</code></example>
    [Formula(Splitting, Symbol = "f_z")]
    [RecordName("miller-loop.right-zero")]
    public static Frequency RightZero(ElectricConductance g_m2, ElectricCapacitance C)
    {
        Guard.Positive(g_m2);
        Guard.Positive(C);
        return g_m2 / (2 * pi * C);
    }
}
