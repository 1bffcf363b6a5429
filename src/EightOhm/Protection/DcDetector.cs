using EightOhm.Explaining;
using EightOhm.Numerics;
using EightOhm.Quantities;
using MathNet.Numerics.RootFinding;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Protection;

/// <summary>A dc detector at the output: one RC low pass or two equal ones that do not load each other, and a threshold.</summary>
/// <remarks>
/// It must trip soon on a rail and never on music. The loudest low note decides the time constant: at 10 Hz and 40 V peak a threshold of 0.65 V asks for 0.98 s of
/// one pole, not for the 16 ms of "a corner at 10 Hz". The formulas here take a note that has gone on for ever;
/// <see cref="DcDetectorFromRest"/> takes one that begins, which passes more of it and asks for more.
/// </remarks>
public static partial class DcDetector
{
    private const string Step = "step response of a first-order low pass; OpenStax, College Physics, ch. 21.6";
    private const string Note = "J. Fiore, Op Amps and Linear Integrated Circuits, ch. 1: magnitude of a first-order low pass";

    /// <summary>The time constant of one pole at which a lasting note just does not trip: √((V_p/V_th)² − 1)/(2·π·f).</summary>
    /// <param name="V_p">Peak of the loudest low note at the output; above V_th.</param>
    /// <param name="f">Its frequency; greater than 0 Hz.</param>
    /// <param name="V_th">Threshold at the filter's output; greater than 0 V.</param>
    /// <returns>The time constant of the pole, in s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Note, Symbol = "tau")]
    [RecordName("dc-detector.one-pole-tau")]
    public static Duration OnePoleTau(ElectricPotential V_p, Frequency f, ElectricPotential V_th)
    {
        Guard.Positive(V_th);
        Guard.Positive(V_p - V_th, nameof(V_p), "A note below the threshold cannot trip; no filter is needed.");
        Guard.Positive(f);
        var q = V_p / V_th;
        return Sqrt(q * q - 1) / (2 * pi * f);
    }

    /// <summary>The time constant of each of two equal poles at which a lasting note just does not trip: √(V_p/V_th − 1)/(2·π·f).</summary>
    /// <param name="V_p">Peak of the loudest low note at the output; above V_th.</param>
    /// <param name="f">Its frequency; greater than 0 Hz.</param>
    /// <param name="V_th">Threshold at the filter's output; greater than 0 V.</param>
    /// <returns>The time constant of each pole, in s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Note + ", twice", Symbol = "tau")]
    [RecordName("dc-detector.two-pole-tau")]
    public static Duration TwoPoleTau(ElectricPotential V_p, Frequency f, ElectricPotential V_th)
    {
        Guard.Positive(V_th);
        Guard.Positive(V_p - V_th, nameof(V_p), "A note below the threshold cannot trip; no filter is needed.");
        Guard.Positive(f);
        var q = V_p / V_th;
        return Sqrt(q - 1) / (2 * pi * f);
    }

    /// <summary>When one pole trips on a step: τ·ln(V/(V − V_th)).</summary>
    /// <remarks>Without the relay's own release time, and from an empty filter: music before the fault can make it sooner or later.</remarks>
    /// <param name="V">The step, a rail or an offset, magnitude; above V_th.</param>
    /// <param name="V_th">Threshold; greater than 0 V.</param>
    /// <param name="tau">Time constant; greater than 0 s.</param>
    /// <returns>The time from the step to the trip, in s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>DcDetector.OnePoleTrip(50.V, 1.V, 500.ms)   // 10.1 ms</code></example>
    [Formula(Step, Symbol = "t")]
    [RecordName("dc-detector.one-pole-trip")]
    public static Duration OnePoleTrip(ElectricPotential V, ElectricPotential V_th, Duration tau)
    {
        Guard.Positive(V_th);
        Guard.Positive(V - V_th, nameof(V), "A step below the threshold never trips; a loudspeaker must bear it for ever.");
        Guard.Positive(tau);
        return tau * Ln(V / (V - V_th));
    }

    /// <summary>What the trip of two equal poles satisfies: V_th = V·(1 − (1 + t/τ)·e^(−t/τ)).</summary>
    /// <param name="t">The time: the unknown.</param>
    /// <param name="V">The step.</param>
    /// <param name="V_th">Threshold.</param>
    /// <param name="tau">Time constant of each pole.</param>
    /// <returns>Both sides of the balance, in V; equal where it is solved.</returns>
    [Formula("step response of two equal first-order low passes in a row: K. Ogata, Modern Control Engineering, 5th ed., ch. 5, critical damping")]
    public static Balance<ElectricPotential> TwoPoleStep(Duration t, ElectricPotential V, ElectricPotential V_th, Duration tau) =>
        Balance.Of(V_th, V * (1 - (1 + t / tau) * Exp(-(t / tau))));

    /// <summary>When two equal poles trip on a step.</summary>
    /// <param name="V">The step, a rail or an offset, magnitude; above V_th.</param>
    /// <param name="V_th">Threshold; greater than 0 V.</param>
    /// <param name="tau">Time constant of each pole; greater than 0 s.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="InvalidOperationException">No time was found; the message gives the last bracket.</exception>
    [Solves(nameof(TwoPoleStep))]
    [RecordName("dc-detector.two-pole-trip")]
    public static Duration TwoPoleTrip(ElectricPotential V, ElectricPotential V_th, Duration tau)
    {
        var target = Guard.Positive(V_th).Volts / V.Volts;
        Guard.Positive(V - V_th, nameof(V), "A step below the threshold never trips; a loudspeaker must bear it for ever.");
        Guard.Positive(tau);
        var steps = 0;

        // In u = t/τ, on a logarithm: small trips keep their digits. 1 − (1+u)·e^(−u) by expm1, which does not cancel, and by its series where even that does.
        double Residue(double logarithm)
        {
            steps++;
            var u = Math.Exp(logarithm);
            var passed = u < 1e-4 ? u * u * ((1 / 2.0) - (u / 3) + (u * u / 8)) : Decay.Gone(u) - (u * Math.Exp(-u));
            return Math.Log(passed / target);
        }

        // Below, at half of √(2·share), less than the share has passed; above, e^(−u)·(1+u) has fallen under 1 − share.
        double low = Math.Log(Math.Sqrt(2 * target) / 2), high = Math.Log(2 * Math.Max(1, -Math.Log(1 - target)) + 2);
        if (!Brent.TryFindRoot(Residue, low, high, 1e-14, 200, out var root))
            throw new InvalidOperationException($"No trip was found between {QuantityFormat.Short(tau * Math.Exp(low))} and {QuantityFormat.Short(tau * Math.Exp(high))} for a threshold of {QuantityFormat.Short(V_th)} and a step of {QuantityFormat.Short(V)}: the two are too close.");
        SolverTrace.Note(steps);
        return tau * Math.Exp(root);
    }
}
