using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Feedback;

/// <summary>Errors in a feedback amplifier, in their two classes: after the gain the loop divides them; at the summing node it does not.</summary>
/// <remarks>The trap: an error at the summing node (the input pair's noise and offset, hum in the feedback divider, what an output
/// current induces in the input loop, the pair's own distortion) looks to the loop like signal. It appears at the output times the
/// closed-loop gain, and no loop gain reduces it. To divide it by 1 + T gives a number that is far too good.</remarks>
public static partial class LoopErrors
{
    /// <summary>An error that arises after the gain, with feedback: d/(1 + T), for a loop gain without phase.</summary>
    /// <remarks>Holds well below the first open-loop pole, with d taken at the same output swing as with feedback.</remarks>
    /// <param name="d">The error at the output without feedback, relative to the output; 0 or more.</param>
    /// <param name="T">Loop gain at the error's own frequency (a harmonic's, not the fundamental's); 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 8", Symbol = "d_CL")]
    [RecordName("loop-errors.after-gain")]
    public static Ratio AfterGain(Ratio d, double T)
    {
        Guard.NotNegative(d);
        Guard.NotNegative(T);
        return d / (1 + T);
    }

    /// <summary>The same above the pole of a one-pole loop, where T lags by 90°: d/|1 − jT| = d/√(1 + T²).</summary>
    /// <remarks>Far above the pole and with no other pole near. Near crossover a second pole can make |1 + T| less than one: the loop then raises the error.</remarks>
    /// <param name="d">The error at the output without feedback, relative to the output; 0 or more.</param>
    /// <param name="T">Magnitude of the loop gain at the error's own frequency (a harmonic's: f_c/(n·f)); 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 8, with T = −j|T|: |1 − jT|² = 1 + T²", Symbol = "d_CL")]
    [RecordName("loop-errors.after-gain-above-pole")]
    public static Ratio AfterGainAbovePole(Ratio d, double T)
    {
        Guard.NotNegative(d);
        Guard.NotNegative(T);
        return d / Sqrt(1 + T * T);
    }

    /// <summary>An error voltage at the summing node, as it appears at the output: times the closed-loop gain, whatever the loop gain.</summary>
    /// <param name="e">The error in series with an input (peak in, peak out; rms in, rms out).</param>
    /// <param name="A_CL">Closed-loop gain from the non-inverting input, the noise gain.</param>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 8: an error beside the signal has the signal's gain", Symbol = "e_out")]
    [RecordName("loop-errors.at-summing-node")]
    public static ElectricPotential AtSummingNode(ElectricPotential e, Gain A_CL)
    {
        Guard.InReach(e);
        Guard.InReach(A_CL);
        return A_CL * e;
    }
}
