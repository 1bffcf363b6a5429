using System.Numerics;
using EightOhm.Explaining;
using EightOhm.Numerics;
using EightOhm.Quantities;
using MathNet.Numerics.RootFinding;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Protection;

/// <summary>A dc detector and a note that begins: the filter still holds nothing, and the note's first half-wave counts as dc.</summary>
/// <remarks>A sine that begins at its zero crossing has a mean of its own until the filter has forgotten the beginning: one pole passes up to twice what it passes of
/// a lasting note, two poles several times as much, because the beginning acts on them as one push, which a second pole spreads but hardly weakens.
/// By this measure two poles lose their advantage over one. The worst phase of the beginning is taken.</remarks>
public static partial class DcDetectorFromRest
{
    /// <summary>The greatest output of the filter for a note that begins, over all phases of the beginning.</summary>
    /// <param name="V_p">Peak of the note; greater than 0 V.</param>
    /// <param name="f">Its frequency; greater than 0 Hz.</param>
    /// <param name="tau">Time constant of each pole; greater than 0 s.</param>
    /// <param name="poles">1, or 2 equal ones.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [RecordName("dc-detector-from-rest.peak")]
    [Worked("the greatest output over the beginning of the note, over all phases: a scan, then golden section")]
    public static ElectricPotential Peak(ElectricPotential V_p, Frequency f, Duration tau, int poles)
    {
        Guard.Positive(V_p);
        Guard.Positive(f);
        Guard.Positive(tau);
        Guard.Between(poles, 1, 2);
        return V_p * Share(2 * Math.PI * f.Hertz * tau.Seconds, poles);
    }

    /// <summary>The least time constant of each pole with which a note that begins does not trip.</summary>
    /// <param name="V_p">Peak of the note; above the threshold.</param>
    /// <param name="f">Its frequency; greater than 0 Hz.</param>
    /// <param name="V_th">Threshold; greater than 0 V.</param>
    /// <param name="poles">1, or 2 equal ones.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="InvalidOperationException">No time constant was found; the message gives the last bracket.</exception>
    [RecordName("dc-detector-from-rest.least-tau")]
    [Worked("the time constant with which the greatest output of a beginning note is the threshold: a bracketed root search")]
    public static Duration LeastTau(ElectricPotential V_p, Frequency f, ElectricPotential V_th, int poles)
    {
        Guard.Between(poles, 1, 2);
        var lasting = poles == 1 ? DcDetector.OnePoleTau(V_p, f, V_th) : DcDetector.TwoPoleTau(V_p, f, V_th);
        double target = V_th / V_p, from = 2 * Math.PI * f.Hertz * lasting.Seconds;

        // A beginning passes at least what lasts, and at most 2/(ωτ) of the note, whichever the number of poles.
        double Residue(double logarithm) => Math.Log(Share(Math.Exp(logarithm), poles) / target);
        double low = Math.Log(from) - 0.01, high = Math.Log(10 / target);
        if (!Brent.TryFindRoot(Residue, low, high, 1e-10, 200, out var root))
            throw new InvalidOperationException($"No time constant from {QuantityFormat.Short(lasting)} upwards lets a note of {QuantityFormat.Short(V_p)} at {QuantityFormat.Short(f)} begin without tripping at {QuantityFormat.Short(V_th)}.");
        return Duration.FromSeconds(Math.Exp(root) / (2 * Math.PI * f.Hertz));
    }

    /// <summary>The lowest frequency of a square that begins without a trip, one pole: the first half-wave of a note that was driven on into clipping charges the filter for as long as it lasts.</summary>
    /// <param name="V_p">Height of the square; above the threshold, by less than a thousand million times.</param>
    /// <param name="V_th">Threshold; greater than 0 V.</param>
    /// <param name="tau">Time constant of the pole; greater than 0 s.</param>
    /// <returns>The frequency, in Hz. A sine of that height may be lower by π/2 or so: its half-waves hold less.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range; a square that does not reach the threshold never trips.</exception>
    /// <example><code>DcDetectorFromRest.LowestSquare(50.V, 650.mV, 4.s)   // 9.553 Hz</code></example>
    [RecordName("dc-detector-from-rest.lowest-square")]
    [Formula("first-order step response, general textbook: the filter has V_p·(1 − e^(−t/τ)) after a half-wave of t = 1/(2·f)")]
    public static Frequency LowestSquare(ElectricPotential V_p, ElectricPotential V_th, Duration tau)
    {
        Guard.Positive(V_th);
        Guard.Positive(V_p - V_th, nameof(V_p), "A square that does not reach the threshold never trips.");
        Guard.Positive(tau);
        Guard.Between(V_p, V_th, 1e9 * V_th, nameof(V_p), "So small a threshold is no detector's.");
        return -1 / (2 * tau * Ln(1 - V_th / V_p));
    }

    // The filter's answer to e^(jωt) from rest is |H|·|e^(jωt) − transient|; its magnitude is the worst over the phases of the beginning.
    private static double Share(double wt, int poles)
    {
        double At(double angle)
        {
            var decay = Math.Exp(-angle / wt);
            var pole = new Complex(1, wt);
            var carrier = Complex.FromPolarCoordinates(1, angle);
            return poles == 1
                ? Complex.Abs((carrier - decay) / pole)
                : Complex.Abs((carrier - (decay * (1 + (pole * (angle / wt))))) / (pole * pole));
        }

        // The greatest lies within the first two periods or near t = τ, with one ripple a period; after 40·τ nothing of the beginning is left.
        const double periods = 4 * Math.PI;
        var step = Math.Min(0.1, wt / 20);
        double Greatest(double from, double to) => Scan.Highest(At, from, to, (int)Math.Ceiling((to - from) / step), 1e-9 * Math.Min(1, wt)).Value;
        var lasting = Math.Pow(1 + (wt * wt), -poles / 2.0);
        var early = Greatest(0, Math.Min(periods, 40 * wt));
        return Math.Max(lasting, 40 * wt <= periods ? early : Math.Max(early, Greatest(Math.Max(periods, wt - periods), wt + periods)));
    }
}
