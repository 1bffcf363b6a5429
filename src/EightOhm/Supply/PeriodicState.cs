using MathNet.Numerics.RootFinding;

namespace EightOhm.Supply;

/// <summary>Finds the state that a period brings back to itself: Newton's method on the map of the period.</summary>
/// <remarks>
/// The map's derivative comes with the march, exactly: the currents are continuous at every event, so the pieces' sensitivities
/// multiply. The capacitors' gain over a period falls and flattens as their voltage rises, so Newton from below climbs to the root. Two lightly loaded
/// rails take the last of the pulse from each other, and a whole step may throw one past the other for ever: a step that leads further off is halved.
/// </remarks>
internal static class PeriodicState
{
    private const int MostSteps = 120;

    private const double Accuracy = 1e-12;

    /// <summary>The state at t = 0.</summary>
    /// <param name="network">The network.</param>
    /// <param name="period">The common period of mains and load, s.</param>
    /// <param name="steps">How many periods were marched.</param>
    /// <exception cref="InvalidOperationException">No periodic state was found; the message gives the last.</exception>
    public static (double U1, double U2) Find(RailNetwork network, double period, out int steps)
    {
        var march = new RailMarch(network);
        // Without any load the rail stays where the peak has left it; else from below.
        var full = network.Peak - network.Drop;
        double start = network.Load1.IsNone && network.Load2.IsNone ? full : 0.8 * full, u1 = start, u2 = network.Rails > 1 ? start : 0;
        double off = double.NaN, before = double.PositiveInfinity, from1 = u1, from2 = u2, s1 = 0, s2 = 0, part = 0;
        for (steps = 1; steps <= MostSteps; steps++)
        {
            double a = u1, b = u2;
            march.Run(ref a, ref b, 0, period, null);
            double g1 = a - u1, g2 = network.Rails > 1 ? b - u2 : 0;
            off = Math.Max(Math.Abs(g1), Math.Abs(g2));
            if (off < Accuracy * network.Peak)
                return (a, b);
            if (off > before && part > 1e-3)
            {
                part /= 2;
                (u1, u2) = (from1 + (part * s1), from2 + (part * s2));
                continue;
            }

            (from1, from2, before, part) = (u1, u2, off, 0);
            var m = march.Sensitivity;
            double d11 = 1 - m.M11, d12 = -m.M12, d21 = -m.M21, d22 = network.Rails > 1 ? 1 - m.M22 : 1;
            var det = (d11 * d22) - (d12 * d21);
            // Where a rail was not charged at all its state drifts by as much wherever it starts: Newton has no root there, so march on.
            if (!(Math.Abs(det) > 1e-9))
            {
                (u1, u2) = (a, b);
                continue;
            }

            s1 = Math.Clamp(((d22 * g1) - (d12 * g2)) / det, -network.Peak / 2, network.Peak / 2);
            s2 = Math.Clamp(((d11 * g2) - (d21 * g1)) / det, -network.Peak / 2, network.Peak / 2);
            (u1, u2, part) = (u1 + s1, u2 + s2, 1);
        }

        if (network.Rails > 1 && OneInTheOther(march, network, period, full) is { } found)
            return found;
        throw new InvalidOperationException(
            $"No steady state was found in {MostSteps} steps: the last began at {u1:g8} V{(network.Rails > 1 ? $" and {u2:g8} V" : "")} and missed itself by {off:g3} V a period. Check that the load is one that the winding can carry.");
    }

    // A very light load beside a heavy one behind much shared resistance is charged for an instant alone, and there the map has an edge on which a halved
    // step can come to rest. What a rail gains falls as it rises, and the other, which it then takes less from, rises by no more than it does itself (the
    // network is cooperative): so the one's state is found inside the search for the other's, each between bounds. Slow, but it cannot miss.
    private static (double U1, double U2)? OneInTheOther(RailMarch march, RailNetwork network, double period, double full)
    {
        double u1 = 0, off1 = 0;
        if (!TryFind(Second, full, out var u2))
            return null;
        var off2 = Second(u2);
        return Math.Max(Math.Abs(off1), Math.Abs(off2)) < Accuracy * network.Peak ? (u1, u2) : null;

        double Second(double second)
        {
            if (!TryFind(first => Gain(first, second).First, full, out u1))
                return double.NegativeInfinity;
            (off1, var gain) = Gain(u1, second);
            return gain;
        }

        (double First, double Second) Gain(double first, double second)
        {
            double a = first, b = second;
            march.Run(ref a, ref b, 0, period, null);
            return (a - first, b - second);
        }
    }

    // Where a falling gain is zero. A load beyond what the winding can feed draws its rail below zero, which is told later.
    private static bool TryFind(Func<double, double> gain, double full, out double u)
    {
        var low = 0.0;
        for (var below = full; !(gain(low) > 0); (low, below) = (-below, 2 * below))
        {
            if (below > 1e6 * full)
            {
                u = double.NaN;
                return false;
            }
        }

        return Brent.TryFindRoot(gain, low, full, 1e-15 * full, 200, out u);
    }
}
