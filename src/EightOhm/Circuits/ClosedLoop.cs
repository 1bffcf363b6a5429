using System.Numerics;
using EightOhm.Quantities;
using EightOhm.Samples;

namespace EightOhm.Circuits;

/// <summary>Whether a closed loop is stable: by its poles, or where there are none to be had by how often its return ratio goes round −1.</summary>
internal static class ClosedLoop
{
    // A pair this near to the imaginary axis rings for ever, as far as the numbers tell.
    private const double Undamped = 1e-12;

    /// <summary>Whether the closed loop is stable, null where that cannot be told; and its poles that are not in the left half plane, where their places are known.</summary>
    public static (bool? Stable, IReadOnlyList<ComplexRoot> Unstable) Of(LinearSystem closed, LinearSystem open, Response<Gain> t)
    {
        try
        {
            if (closed.Delays.Count > 0)
                return (Encircled(open, t) is { } turns ? turns == 0 : null, []);
            var unstable = Unstable(closed);
            return (unstable.Count == 0, unstable);
        }
        catch (InvalidOperationException)
        {
            return (null, []);
        }
    }

    /// <summary>The poles of a circuit that are not in the left half plane.</summary>
    /// <exception cref="InvalidOperationException">The poles cannot be found.</exception>
    public static IReadOnlyList<ComplexRoot> Unstable(LinearSystem system) =>
        ComplexRoot.List(SystemRoots.Of(system, "poles").Where(s => s.Real > -Undamped * s.Magnitude));

    // Right-half-plane poles of the closed loop: those of the opened one less the turns of 1 + T about the origin (Nyquist).
    private static int? Encircled(LinearSystem open, Response<Gain> t)
    {
        var delayless = open.WithoutDelays();
        var before = SystemRoots.Of(delayless, "poles").Count(s => s.Real > 0);
        // From far below the range, where 1 + T is real, to its end, where nothing may be left of T.
        double low = t.Hertz[0] * 1e-6, high = t.Hertz[^1];
        var hertz = Sweep.Log(low, high, 20);
        var difference = new Response<Gain>(hertz, [.. hertz.Select(f => 1 + t.Value(f))], f => 1 + t.Value(f));
        var first = Math.Abs(difference.Values[0].Phase);
        if (Complex.Abs(t.Values[^1]) > 0.1 || (first > 0.2 && first < Math.PI - 0.2))
            return null;
        var turned = difference.PhaseOf(high) - difference.PhaseOf(low);
        return before - (int)Math.Round(turned / Math.PI);
    }
}
