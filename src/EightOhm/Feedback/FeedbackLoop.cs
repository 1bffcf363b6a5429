using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Feedback;

/// <summary>Negative feedback by a divider: fraction, loop gain, closed-loop gain and how much it still owes to the open loop.</summary>
/// <remarks>T = A·B_fb is positive when the feedback is negative. An amplifier that inverts has a negative A and a negative B_fb.
/// These are the formulas of real numbers, valid well below the first open-loop pole unless a summary says otherwise; for errors near crossover see <see cref="LoopErrors"/>.</remarks>
public static partial class FeedbackLoop
{
    private const string Source = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 8";

    /// <summary>The fraction of the output that a divider feeds back: R_g/(R_f + R_g).</summary>
    /// <param name="R_g">From the inverting input to ground; greater than 0 Ω.</param>
    /// <param name="R_f">From the output to the inverting input; 0 Ω or more (0 Ω feeds back everything).</param>
    /// <returns>The fraction B_fb, 0 to 1, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>FeedbackLoop.Fraction(1.kOhm, 22.6.kOhm)   // 0.04237</code></example>
    [Formula(Source, Symbol = "B_fb")]
    [RecordName("feedback-loop.fraction")]
    public static double Fraction(ElectricResistance R_g, ElectricResistance R_f)
    {
        Guard.Positive(R_g);
        Guard.NotNegative(R_f);
        return R_g / (R_f + R_g);
    }

    /// <summary>Loop gain: T = A·B_fb.</summary>
    /// <param name="A">Open-loop gain.</param>
    /// <param name="B_fb">Fraction fed back; of the sign of A.</param>
    /// <returns>The loop gain T, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The feedback is positive.</exception>
    /// <example><code>FeedbackLoop.LoopGain(80.dB, 0.0424)   // 424</code></example>
    [Formula(Source, Symbol = "T")]
    [RecordName("feedback-loop.loop-gain")]
    public static double LoopGain(Gain A, double B_fb)
    {
        Guard.NotNegative(A.Ratio * B_fb, "A·B_fb", "This feedback is positive: give A and B_fb the same sign.");
        return A.Ratio * B_fb;
    }

    /// <summary>The fraction fed back that makes a closed-loop gain of an open-loop gain: 1/A_CL − 1/A.</summary>
    /// <remarks>Not 1/A_CL, which an infinite open-loop gain would need. Where the gains have phases: <see cref="ComplexFraction"/>.</remarks>
    /// <param name="A">Open-loop gain; greater than 0.</param>
    /// <param name="A_CL">Closed-loop gain; greater than 0, at most A.</param>
    /// <returns>The fraction B_fb needed, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source + ": A_CL = A/(1 + A·B), solved for B", Symbol = "B_fb")]
    [RecordName("feedback-loop.fraction-for")]
    public static double FractionFor(Gain A, Gain A_CL)
    {
        Guard.Positive(A);
        Guard.Positive(A_CL);
        Guard.Between(A_CL.Ratio, 0, A.Ratio, nameof(A_CL), "Negative feedback never raises the gain.");
        return 1 / A_CL.Ratio - 1 / A.Ratio;
    }

    /// <summary>The magnitude of the loop gain of one open-loop pole: T_0/√(1 + (f/f_pole)²).</summary>
    /// <remarks>Far above the pole it is f_x/f, with f_x = T_0·f_pole the crossover; it lags by up to 90° there (see <see cref="LoopErrors.AfterGainAbovePole"/>).</remarks>
    /// <param name="T_0">Loop gain far below the pole; 0 or more.</param>
    /// <param name="f_pole">The open-loop pole; greater than 0 Hz.</param>
    /// <param name="f">The frequency; 0 Hz or more.</param>
    /// <returns>The magnitude of the loop gain, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 6: one-pole open loop", Symbol = "T")]
    [RecordName("feedback-loop.one-pole-loop-gain")]
    public static double OnePoleLoopGain(double T_0, Frequency f_pole, Frequency f)
    {
        Guard.NotNegative(T_0);
        Guard.Positive(f_pole);
        Guard.NotNegative(f);
        var x = f / f_pole;
        return T_0 / Sqrt(1 + x * x);
    }

    /// <summary>Closed-loop gain: A/(1 + A·B_fb), which tends to 1/B_fb.</summary>
    /// <param name="A">Open-loop gain.</param>
    /// <param name="B_fb">Fraction fed back; of the sign of A.</param>
    /// <returns>The closed-loop gain.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The feedback is positive.</exception>
    /// <example><code>FeedbackLoop.ClosedLoopGain(80.dB, 0.0424)   // 23.53</code></example>
    [Formula(Source, Symbol = "A_CL")]
    [RecordName("feedback-loop.closed-loop-gain")]
    public static Gain ClosedLoopGain(Gain A, double B_fb)
    {
        Guard.NotNegative(A.Ratio * B_fb, "A·B_fb", "This feedback is positive: give A and B_fb the same sign.");
        return Gain.FromRatio(A.Ratio / (1 + A.Ratio * B_fb));
    }

    /// <summary>By how much the closed-loop gain misses the ideal 1/B_fb, relative to it: −1/(1 + T), exactly.</summary>
    /// <param name="T">Loop gain; 0 or more.</param>
    /// <returns>The relative error; negative, the gain is too small, as a fraction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The loop gain is negative.</exception>
    /// <example><code>FeedbackLoop.GainError(424)   // −0.2353 %</code></example>
    [Formula(Source + "; A/(1 + A·B) over 1/B, less 1", Symbol = "epsilon")]
    [RecordName("feedback-loop.gain-error")]
    public static Ratio GainError(double T)
    {
        Guard.NotNegative(T);
        return Ratio.FromDecimalFractions(-1 / (1 + T));
    }

    /// <summary>The sensitivity of the closed-loop gain to the open loop: 1/(1 + T), the relative change of one over the relative change of the other.</summary>
    /// <remarks>A derivative: for small changes of A. For a large change compute <see cref="ClosedLoopGain"/> twice.</remarks>
    /// <param name="T">Loop gain; 0 or more.</param>
    /// <returns>The relative sensitivity, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The loop gain is negative.</exception>
    [Formula(Source, Symbol = "S")]
    [RecordName("feedback-loop.sensitivity")]
    public static double Sensitivity(double T)
    {
        Guard.NotNegative(T);
        return 1 / (1 + T);
    }

    /// <summary>The closed-loop bandwidth (−3 dB) of a loop with one open-loop pole: f_pole·(1 + T_0).</summary>
    /// <param name="f_pole">The open-loop pole; greater than 0 Hz.</param>
    /// <param name="T_0">Loop gain far below the pole; 0 or more.</param>
    /// <returns>The closed-loop −3 dB frequency, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>FeedbackLoop.Bandwidth(100.Hz, 1000)   // 100.1 kHz</code></example>
    [Formula(Source, Symbol = "f_CL")]
    [RecordName("feedback-loop.bandwidth")]
    public static Frequency Bandwidth(Frequency f_pole, double T_0)
    {
        Guard.Positive(f_pole);
        Guard.NotNegative(T_0);
        return f_pole * (1 + T_0);
    }

    /// <summary>The gain of an inverting stage with finite open-loop gain: −(R_f/R_g)/(1 + (1 + R_f/R_g)/A).</summary>
    /// <remarks>Its loop gain is that of the non-inverting stage of the same two resistors: the noise gain 1 + R_f/R_g decides, not the signal gain.</remarks>
    /// <param name="A">Open-loop gain, as a positive number; greater than 0.</param>
    /// <param name="R_g">From the source to the inverting input, the source's own resistance included; greater than 0 Ω.</param>
    /// <param name="R_f">From the output to the inverting input; greater than 0 Ω.</param>
    /// <returns>The gain, negative.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 2", Symbol = "G")]
    [RecordName("feedback-loop.inverting-gain")]
    public static Gain InvertingGain(Gain A, ElectricResistance R_g, ElectricResistance R_f)
    {
        Guard.Positive(A, hint: "Give the open-loop gain's magnitude; the stage's own sign is in the formula.");
        Guard.Positive(R_g);
        Guard.Positive(R_f);
        var ideal = R_f / R_g;
        return Gain.FromRatio(-ideal / (1 + (1 + ideal) / A.Ratio));
    }
}
