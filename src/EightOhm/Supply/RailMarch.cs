using EightOhm.Numerics;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>Told of each finished piece of a march.</summary>
internal interface ISegmentVisitor
{
    /// <summary>A piece is complete.</summary>
    /// <param name="segment">Its solution; evaluating it does not disturb the march.</param>
    /// <param name="length">How long it lasted, s.</param>
    void Visit(ref RailSegment segment, double length);
}

/// <summary>Marches the network from event to event; between events the solution is exact, so there is no step to choose.</summary>
/// <remarks>Events are the beginning and end of charging, found to rounding, and the zeros of both sines, which are known.</remarks>
internal sealed class RailMarch(RailNetwork network)
{
    // Twelve looks a half-cycle see every pulse: one that would hide between two looks is asked for by its neighbours.
    private const int Looks = 12, MostEvents = 40;

    /// <summary>How the state at the end moves with that at the start, after <see cref="Run"/>: the product of all pieces.</summary>
    public (double M11, double M12, double M21, double M22) Sensitivity { get; private set; } = (1, 0, 0, 1);

    /// <summary>Marches from one instant to another.</summary>
    /// <param name="u1">The first capacitor's inner voltage: at the start, then at the end.</param>
    /// <param name="u2">The second's.</param>
    /// <param name="from">Start, s.</param>
    /// <param name="to">End, s.</param>
    /// <param name="visitor">Told of each piece; may be null.</param>
    /// <exception cref="ShortfallException">The load draws the rail below zero, where the diodes conduct against each other.</exception>
    /// <exception cref="InvalidOperationException">The diodes chatter on a standing rail: more events in a half-cycle than can be.</exception>
    public void Run(ref double u1, ref double u2, double from, double to, ISegmentVisitor? visitor)
    {
        Sensitivity = (1, 0, 0, 1);
        double half = network.Half, signal = network.SignalOmega, phase = network.SignalPhase, least = half * 1e-12;
        var halfCycle = (int)Math.Floor((from / half) + 1e-9);
        var signalHalf = signal > 0 ? (int)Math.Floor((((signal * from) + phase) / Math.PI) + 1e-9) : 0;
        var mask = -1;
        var t = from;
        while (t < to - least)
        {
            Work.Checkpoint();
            var mains = (halfCycle + 1) * half;
            var next = Math.Min(mains, to);
            var turn = signal > 0 ? (((signalHalf + 1) * Math.PI) - phase) / signal : double.PositiveInfinity;
            next = Math.Min(next, turn);
            if (mask < 0)
                mask = MaskAt(t, halfCycle, signalHalf, u1, u2);
            Smooth(ref u1, ref u2, ref mask, t, next, halfCycle, signalHalf, visitor);
            if (mains - next < least)
                halfCycle++;
            if (turn - next < least)
                signalHalf++;
            t = next;
        }
    }

    private static ShortfallException Collapse(double below, double t) => new("The rail", ElectricPotential.FromVolts(below),
        $"the load draws it {QuantityFormat.Short(ElectricPotential.FromVolts(below))} below zero after {QuantityFormat.Short(Duration.FromSeconds(t))}", "Take a higher secondary, a stiffer winding, a larger reservoir or a lighter load.");

    // From one known instant to the next, events between.
    private void Smooth(ref double u1, ref double u2, ref int mask, double from, double to, int halfCycle, int signalHalf, ISegmentVisitor? visitor)
    {
        var t = from;
        for (var events = 0; t < to; events++)
        {
            if (events > MostEvents && Math.Min(u1, network.Rails > 1 ? u2 : u1) < 0)
                throw Collapse(-Math.Min(u1, network.Rails > 1 ? u2 : u1), t);
            if (events > MostEvents)
                throw new InvalidOperationException($"The diodes switch without end at {t:g6} s (rail {u1:g6} V{(network.Rails > 1 ? $" and {u2:g6} V" : "")}). Give the path some resistance or the reservoir more capacitance.");
            var segment = RailSegment.Begin(network, mask, t, halfCycle, signalHalf, u1, u2);
            var (length, change) = FirstEvent(ref segment, to - t);
            segment.At(length);
            (u1, u2) = (segment.U1, segment.U2);
            Multiply(segment.Sensitivity());
            if (length > 0)
                visitor?.Visit(ref segment, length);
            mask ^= change;
            t = change == 0 ? to : t + length;
        }
    }

    // A rail that has just begun or ended stands at zero, on either side of it by rounding: sooner than this nothing is told by its sign.
    private double Instant => network.Half * 1e-6;

    // What is told of a rail by less than this is rounding's: volts of one at rest, amperes of one that is charged.
    private double Rounding(RailMode mode, int rail) => 1e-13 * network.Peak * (rail == 1 ? mode.First ? mode.K11 : 1 : mode.Second ? mode.K22 : 1);

    private (double Length, int Change) FirstEvent(ref RailSegment s, double length)
    {
        var looks = Math.Max(1, (int)Math.Ceiling(length / network.Half * Looks));
        var step = length / looks;
        s.At(0);
        double a1 = s.Blocked1, a2 = s.Blocked2, before1 = double.NegativeInfinity, before2 = double.NegativeInfinity;
        for (var i = 1; i <= looks; i++)
        {
            double a = (i - 1) * step, b = i == looks ? length : i * step;
            s.At(b);
            double b1 = s.Blocked1, b2 = s.Blocked2;
            var edge = i == 1 || i == looks;
            // Both rails are asked and the earlier goes first: two lightly loaded rails begin within the same pulse.
            double first = Event(ref s, 1, a, b, step, edge, before1, a1, b1), second = Event(ref s, 2, a, b, step, edge, before2, a2, b2);
            // Where one of them ends the stretch there is no look after it: the other's top before that end would be passed by, even by a later event of its own.
            if (second > first && first - a > Instant)
                second = Event(ref s, 2, a, first, step, true, before2, a2, Blocked(ref s, 2, first));
            else if (first > second && second - a > Instant)
                first = Event(ref s, 1, a, second, step, true, before1, a1, Blocked(ref s, 1, second));
            if (Math.Min(first, second) is var when && !double.IsPositiveInfinity(when))
                return (when, first <= second ? 1 : 2);
            (before1, before2, a1, a2) = (a1, a2, b1, b2);
        }

        return (length, 0);
    }

    // When a rail first contradicts the set of charging rails between two looks, with the look before; infinite if it does not.
    private double Event(ref RailSegment s, int rail, double a, double b, double step, bool edge, double before, double atA, double atB)
    {
        if (atB > 0)
            return Root(ref s, rail, a, b, atA, atB);
        var from = a;
        // The middle of three looks is the nearest to an event: the top between may have passed it. Where a stretch begins or ends there is no third
        // look, and the ends tell: it falls towards the later, and has risen from the earlier or lies above it.
        if (atA > before && atA > atB && !double.IsNegativeInfinity(before))
            (from, atA) = (a - step, before);
        else if (!(edge && Near(s.Mode, rail, atA, atB, b - a) && Blocked(ref s, rail, b - (1e-3 * (b - a))) is var shortly && shortly > atB
            && (shortly > atA || Blocked(ref s, rail, a + (1e-3 * (b - a))) > atA)))
            return double.PositiveInfinity;
        return Top(ref s, rail, from, b) is var top && top >= 0 ? Root(ref s, rail, from, top, atA, 1) : double.PositiveInfinity;
    }

    // No look is wasted where source and rail cannot meet: the one rises by its steepest slope at most, the other falls by what its load takes out of the
    // capacitor, and at once by what the load's rise takes in the capacitor's resistance. While either is charged that is no bound.
    private bool Near(RailMode mode, int rail, double atA, double atB, double length)
    {
        if (rail > network.Rails)
            return false;
        var load = rail == 1 ? network.Load1 : network.Load2;
        var falls = (load.Idle + load.Peak + (load.Conductance * network.Peak)) / network.C;
        return mode.First || mode.Second || Math.Max(atA, atB) > -((((network.Peak * network.Omega) + falls) * length) + (network.Esr * load.Peak));
    }

    private static double Blocked(ref RailSegment s, int rail, double tau)
    {
        s.At(tau);
        return rail == 1 ? s.Blocked1 : s.Blocked2;
    }

    // Where the blocked quantity turns positive: false position with halving (Illinois).
    private double Root(ref RailSegment s, int rail, double a, double b, double atA, double atB)
    {
        if (atA > -Rounding(s.Mode, rail))
        {
            // It is wrong only if it stays there.
            var later = Math.Min(a + Instant, b);
            if (Blocked(ref s, rail, later) is var atLater && !(atLater < 0))
                return a;
            (a, atA) = (later, atLater);
        }

        atB = atB == 1 ? Blocked(ref s, rail, b) : atB;
        var tolerance = network.Half * 1e-14;
        // Which end the last look replaced: 1 the upper, −1 the lower.
        var moved = 0;
        for (var i = 0; i < 60 && b - a > tolerance; i++)
        {
            var c = ((a * atB) - (b * atA)) / (atB - atA);
            var atC = Blocked(ref s, rail, c);
            if (atC == 0)
                return c;
            if (atC > 0)
                (b, atB, atA, moved) = (c, atC, moved > 0 ? atA / 2 : atA, 1);
            else
                (a, atA, atB, moved) = (c, atC, moved < 0 ? atB / 2 : atB, -1);
        }

        return b;
    }

    // The place of a positive top between two looks, or −1; any value will do that is not rounding's. One that only touches zero would switch without end.
    private double Top(ref RailSegment s, int rail, double a, double b)
    {
        var curve = new BlockedCurve(ref s, rail);
        var least = Rounding(s.Mode, rail);
        var top = GoldenSection.Highest(ref curve, a, b, 23, enough: least);
        return top.Value > least ? top.At : -1;
    }

    private readonly ref struct BlockedCurve(ref RailSegment segment, int rail) : ICurve
    {
        private readonly ref RailSegment segment = ref segment;

        public double At(double x) => Blocked(ref segment, rail, x);
    }

    // Of the four sets the one that contradicts nothing.
    private int MaskAt(double t, int halfCycle, int signalHalf, double u1, double u2)
    {
        var (best, least) = (0, double.PositiveInfinity);
        for (var mask = 0; mask < (network.Rails > 1 ? 4 : 2); mask++)
        {
            var s = RailSegment.Begin(network, mask, t, halfCycle, signalHalf, u1, u2);
            s.At(0);
            if (Math.Max(s.Blocked1, s.Blocked2) is var worst && worst < least)
                (best, least) = (mask, worst);
        }

        return best;
    }

    private void Multiply((double M11, double M12, double M22) m)
    {
        var x = Sensitivity;
        Sensitivity = ((m.M11 * x.M11) + (m.M12 * x.M21), (m.M11 * x.M12) + (m.M12 * x.M22), (m.M12 * x.M11) + (m.M22 * x.M21), (m.M12 * x.M12) + (m.M22 * x.M22));
    }
}
