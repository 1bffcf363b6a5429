using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Feedback;

/// <summary>A loop of two poles, one an integrator: damping, overshoot, peaking and phase margin of one another.</summary>
/// <remarks>The rule of thumb by which an overshoot on the oscilloscope is read as a margin. It holds for two poles and nothing else.</remarks>
public static partial class SecondOrder
{
    private const string Source = "G. F. Franklin, J. D. Powell & A. Emami-Naeini, Feedback Control of Dynamic Systems, 6th ed., ch. 3 and 6: second-order systems";

    /// <summary>The overshoot of the step response: e^(−π·ζ/√(1 − ζ²)).</summary>
    /// <param name="zeta">The damping; 0 to 1.</param>
    /// <returns>The overshoot beyond the final value, as a fraction; 0 from a damping of 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The damping is out of range.</exception>
    /// <example><code>SecondOrder.Overshoot(0.5)   // 16.3 %</code></example>
    [Formula(Source, Symbol = "OS")]
    [RecordName("second-order.overshoot")]
    public static Ratio Overshoot(double zeta)
    {
        Guard.Between(zeta, 0, 1, hint: "Above 1 there is no overshoot.");
        if (zeta >= 1)
            return Ratio.FromDecimalFractions(0);
        return Ratio.FromDecimalFractions(Exp(-(pi * zeta / Sqrt(1 - zeta * zeta))));
    }

    /// <summary>The damping behind an overshoot: −ln(OS)/√(π² + ln²(OS)).</summary>
    /// <param name="OS">The overshoot; greater than 0, below 100 %.</param>
    /// <returns>The damping ζ, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The overshoot is out of range.</exception>
    /// <example><code>SecondOrder.DampingOf(5.percent)   // 0.6901</code></example>
    [Formula(Source + ", solved for the damping", Symbol = "zeta")]
    [RecordName("second-order.damping-of")]
    public static double DampingOf(Ratio OS)
    {
        Guard.Positive(OS, hint: "Without overshoot the damping is 1 or more; this does not tell which.");
        Guard.Between(OS, Ratio.FromPercent(0), Ratio.FromPercent(100));
        var x = Ln(OS.DecimalFractions);
        return -x / Sqrt(pi * pi + x * x);
    }

    /// <summary>The phase margin of the loop: arctan(2ζ/√(√(1 + 4ζ⁴) − 2ζ²)).</summary>
    /// <param name="zeta">The damping of the closed loop; 0 to 10.</param>
    /// <returns>The phase margin, 0 to 90, in degrees.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The damping is out of range.</exception>
    /// <example><code>SecondOrder.PhaseMargin(0.5)   // 51.83°</code></example>
    [Formula(Source, Symbol = "PM")]
    [RecordName("second-order.phase-margin")]
    public static Angle PhaseMargin(double zeta)
    {
        Guard.Between(zeta, 0, 10);
        var z2 = zeta * zeta;
        // √(1 + 4ζ⁴) − 2ζ² as one over the sum, which keeps its digits at high damping.
        return ArcTan(2 * zeta * Sqrt(Sqrt(1 + 4 * z2 * z2) + 2 * z2));
    }

    /// <summary>The peak of the closed-loop gain over that at 0 Hz: 1/(2ζ·√(1 − ζ²)).</summary>
    /// <param name="zeta">The damping; greater than 0.</param>
    /// <returns>The peak as a gain; 0 dB from a damping of √½.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The damping is not positive.</exception>
    [Formula(Source, Symbol = "M_p")]
    [RecordName("second-order.peaking")]
    public static Gain Peaking(double zeta)
    {
        Guard.Positive(zeta);
        if (zeta * zeta >= 0.5)
            return Gain.FromRatio(1);
        return Gain.FromRatio(1 / (2 * zeta * Sqrt(1 - zeta * zeta)));
    }
}
