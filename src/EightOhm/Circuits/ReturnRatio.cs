using System.Numerics;
using EightOhm.Explaining;
using EightOhm.Quantities;
using EightOhm.Samples;
using UnitsNet;

namespace EightOhm.Circuits;

/// <summary>Where a return ratio has a magnitude of one, or a phase of −180°, and what is left there.</summary>
/// <param name="Frequency">The frequency.</param>
/// <param name="PhaseMargin">How far the phase is from −180° at a crossover; null at a crossing of −180°, and where the closed loop is unstable.</param>
/// <param name="GainMargin">One over the magnitude at a crossing of −180°; null at a crossover, and where the closed loop is unstable.</param>
public sealed record LoopCrossing(Frequency Frequency, Angle? PhaseMargin, Gain? GainMargin);

/// <summary>The return ratio of a loop opened at one place, T(f): the loop gain there, positive where the feedback is negative.</summary>
/// <remarks>The same circuit has another return ratio at each place; the crossover of the outer loop and that of an inner one are different figures, so the place stands with them.</remarks>
public sealed class ReturnRatio
{
    // Less than this coming back is a stray path, not a loop.
    private const double Loop = 1;

    private readonly List<double> crossovers, reversals;

    private ReturnRatio(Opening at, bool isFirst, Response<Gain> response, (bool? Stable, IReadOnlyList<ComplexRoot> Unstable) closed)
    {
        (At, IsFirstStage, Response, IsStable, Unstable) = (at.Words, isFirst, response, closed.Stable, closed.Unstable);
        crossovers = [.. response.CrossingsOf(1)];
        reversals = [.. response.PhaseCrossings(Math.PI)];
    }

    /// <summary>Where the loop was opened: "at the base of Q1".</summary>
    public string At { get; }

    /// <summary>Whether it was opened at the first stage, so that T is the outer loop's; elsewhere inner loops through that place are in it too.</summary>
    public bool IsFirstStage { get; }

    /// <summary>T over frequency.</summary>
    public Response<Gain> Response { get; }

    /// <summary>Whether the closed loop is stable: no natural frequency in the right half plane; null where that cannot be told.</summary>
    public bool? IsStable { get; }

    /// <summary>The closed loop's poles that do not die away; none where it is stable, and none of a loop with a delay, where it is known that there are some but not where.</summary>
    public IReadOnlyList<ComplexRoot> Unstable { get; }

    /// <summary>Where |T| passes one, rising frequencies.</summary>
    public IReadOnlyList<LoopCrossing> Crossovers => [.. crossovers.Select(f => new LoopCrossing(Frequency.FromHertz(f), IsStable == true ? Margin(f) : null, null))];

    /// <summary>Where the phase passes −180°, rising frequencies.</summary>
    public IReadOnlyList<LoopCrossing> PhaseReversals => [.. reversals.Select(f => new LoopCrossing(Frequency.FromHertz(f), null, IsStable == true ? Gain.FromRatio(1 / Complex.Abs(Response.Value(f))) : null))];

    /// <summary>The highest frequency at which |T| passes one; null where it never does in the range.</summary>
    [Symbol("f_x")]
    public Frequency? Crossover => crossovers.Count > 0 ? Frequency.FromHertz(crossovers[^1]) : null;

    /// <summary>The least phase margin of all crossovers; null where there is none, or where the closed loop is not known to be stable: a margin then promises nothing.</summary>
    [Symbol("PM")]
    public Angle? PhaseMargin => IsStable == true && crossovers.Count > 0 ? crossovers.Select(Margin).MinBy(m => Math.Abs(m.Degrees)) : null;

    /// <summary>By how much the gain may rise until the loop oscillates: the least of 1/|T| where the phase passes −180° and |T| is below one; null where there is none, or the closed loop is not known to be stable.</summary>
    [Symbol("GM")]
    public Gain? GainMargin => IsStable == true && Left().Where(g => g > 1).DefaultIfEmpty().Min() is var least and > 1 ? Gain.FromRatio(least) : null;

    /// <summary>By how much the gain may fall until a conditionally stable loop oscillates; null where it may fall to nothing.</summary>
    [Symbol("GM_down")]
    public Gain? GainReduction => IsStable == true && Left().Where(g => g < 1).DefaultIfEmpty().Max() is var most and > 0 ? Gain.FromRatio(most) : null;

    /// <summary>|T| at a frequency.</summary>
    /// <param name="f">Within the response.</param>
    /// <returns>The loop gain's magnitude, a ratio, shown in decibels too.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is outside the response.</exception>
    [Worked("the magnitude of the return ratio")]
    public Gain MagnitudeAt(Frequency f) => Response.MagnitudeAt(f);

    /// <summary>By how much the loop divides an error made after its gain, |1 + T|: below one it multiplies it.</summary>
    /// <param name="f">Within the response.</param>
    /// <returns>The factor, a ratio, shown in decibels too.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is outside the response.</exception>
    [Worked("the magnitude of 1 + T")]
    public Gain ErrorReduction(Frequency f) => Gain.FromRatio(Complex.Abs(1 + Response.At(f)));

    /// <summary>The figures in a sentence.</summary>
    public override string ToString() => IsStable switch
    {
        false => $"return ratio {At}: the closed loop is UNSTABLE{(Unstable.Count > 0 ? $" ({string.Join("; ", Unstable)})" : "")}; its margins are not told",
        null => $"return ratio {At}: whether the closed loop is stable cannot be told",
        _ => $"return ratio {At}: {(Crossover is { } f ? $"crossover {QuantityFormat.Short(f)}, phase margin {QuantityFormat.Short(PhaseMargin!, 3)}" : "no crossover in the range")}{(GainMargin is { } g ? $", gain margin {QuantityFormat.Short(20 * Math.Log10(g.Ratio), 3)} dB" : "")}",
    };

    internal static ReturnRatio Of(LinearSystem system, string? at, double[] hertz)
    {
        foreach (var opening in system.Openings.Where(o => at is null || o.Element == at))
        {
            var open = system.Opened(opening);
            if (at is null && !InLoop(open, opening, hertz))
                continue;
            var response = Circuit.Swept<Gain>(open, opening.Drives, opening.Control, hertz);
            var first = at is null || system.Openings.TakeWhile(o => o.Element != at).All(o => !InLoop(system.Opened(o), o, hertz));
            return new(opening, first, response, ClosedLoop.Of(system, open, response));
        }

        throw new InvalidOperationException("No transistor, amplifier or controlled source of this circuit lies in a loop with a gain above one in this range. Name the place, c.ReturnRatio(\"Q1\"), for one below.");
    }

    // Whether more comes back than was put in, at one of a few frequencies over the range.
    private static bool InLoop(LinearSystem open, Opening opening, double[] hertz)
    {
        for (var i = 0; i <= 4; i++)
        {
            var f = hertz[0] * Math.Pow(hertz[^1] / hertz[0], i / 4.0);
            var (x, _) = SingleSolver.At(open, new Complex(0, Math.Tau * f), opening.Drives, null);
            var back = Complex.Zero;
            foreach (var (col, sign) in opening.Control)
                back += sign * x[col];
            if (back.Magnitude >= Loop)
                return true;
        }

        return false;
    }

    // From −180°, −180° to 180°.
    private Angle Margin(double f)
    {
        var degrees = Response.PhaseOf(f) * 180 / Math.PI + 180;
        return Angle.FromDegrees(degrees - (360 * Math.Round(degrees / 360)));
    }

    private IEnumerable<double> Left() => reversals.Select(f => 1 / Complex.Abs(Response.Value(f)));
}
