using System.Runtime.CompilerServices;
using EightOhm.Numerics;

namespace EightOhm.Supply;

/// <summary>The exact solution from an instant on, while the same rails are being charged and neither sine changes its sign.</summary>
/// <remarks>Each of the two modes is an exponential, a constant, and a sine of each frequency.</remarks>
internal struct RailSegment
{
    /// <summary>When it begins, s.</summary>
    public double Start;

    /// <summary>Which half-cycle of the mains, from 0.</summary>
    public int HalfCycle;

    // The state and what follows from it at the last instant evaluated.
    public double U1, U2, I1, I2, V1, V2, L1, L2, Blocked1, Blocked2;

    private RailMode mode;
    private double omega, signal, drop, esr, shared, g1, g2;
    private double sourceCos, sourceSin;
    private double idle1, cosLoad1, sinLoad1, idle2, cosLoad2, sinLoad2;
    private (double Constant, double Cos, double Sin, double SignalCos, double SignalSin, double Free) y1, y2;
    private bool two;

    // The last instant evaluated, which looks ask for again, and what is left of each mode there.
    private double last, decay1, decay2;

    public readonly RailMode Mode => mode;

    /// <summary>Begins at a state.</summary>
    /// <param name="n">The network.</param>
    /// <param name="mask">Which rails are being charged.</param>
    /// <param name="start">When, s.</param>
    /// <param name="halfCycle">Which half-cycle of the mains.</param>
    /// <param name="signalHalf">Which half-cycle of the signal.</param>
    /// <param name="u1">The first capacitor's inner voltage.</param>
    /// <param name="u2">The second's.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static RailSegment Begin(RailNetwork n, int mask, double start, int halfCycle, int signalHalf, double u1, double u2)
    {
        var s = default(RailSegment);
        s.Start = start;
        s.HalfCycle = halfCycle;
        s.last = double.NaN;
        s.mode = n.Mode(mask);
        (s.omega, s.signal, s.drop, s.esr, s.shared, s.two) = (n.Omega, n.SignalOmega, n.Drop, n.Esr, n.Shared, n.Rails > 1);
        (s.g1, s.g2) = (n.Load1.Conductance, n.Load2.Conductance);
        var (sine, cosine) = Math.SinCos((n.Omega * start) - (halfCycle * Math.PI));
        (s.sourceCos, s.sourceSin) = (n.Peak * sine, n.Peak * cosine);
        (s.idle1, s.idle2) = (n.Load1.Idle, n.Load2.Idle);
        if (n.SignalOmega > 0)
        {
            // In an even half the sine is positive: the rail of that sign carries it.
            var sign = (signalHalf & 1) == 0 ? 1 : -1;
            var (a, b) = Math.SinCos((n.SignalOmega * start) + n.SignalPhase);
            if (n.Load1.Sign == sign)
                (s.cosLoad1, s.sinLoad1) = (n.Load1.Peak * sign * a, n.Load1.Peak * sign * b);
            if (n.Load2.Sign == sign)
                (s.cosLoad2, s.sinLoad2) = (n.Load2.Peak * sign * a, n.Load2.Peak * sign * b);
        }

        var m = s.mode;
        s.y1 = s.Solve(m.Rate1, (m.Cos * u1) + (m.Sin * u2), m.E1, m.S11, m.S12);
        if (s.two)
            s.y2 = s.Solve(m.Rate2, (m.Cos * u2) - (m.Sin * u1), m.E2, m.S21, m.S22);
        return s;
    }

    /// <summary>Puts the state at a time after the start into the fields.</summary>
    /// <remarks>Most of what a supply takes to solve: compiled well at once, as a run asks for it thousands of times before it would be compiled again.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void At(double tau)
    {
        if (tau == last)
            return;
        last = tau;
        var (sin, cos) = tau == 0 ? (0, 1) : Math.SinCos(omega * tau);
        var (sinS, cosS) = signal > 0 && tau != 0 ? Math.SinCos(signal * tau) : (0, 1);
        double a = Value(y1, mode.Rate1, tau, sin, cos, sinS, cosS, out decay1), b = two ? Value(y2, mode.Rate2, tau, sin, cos, sinS, cosS, out decay2) : 0;
        U1 = (mode.Cos * a) - (mode.Sin * b);
        U2 = (mode.Sin * a) + (mode.Cos * b);
        var e = (sourceCos * cos) + (sourceSin * sin) - drop;
        double s1 = idle1 + (cosLoad1 * cosS) + (sinLoad1 * sinS), s2 = idle2 + (cosLoad2 * cosS) + (sinLoad2 * sinS);
        double d1 = e - (mode.B1 * (U1 - (esr * s1))), d2 = e - (mode.B2 * (U2 - (esr * s2)));
        I1 = (mode.K11 * d1) + (mode.K12 * d2 * (mode.Second ? 1 : 0));
        I2 = (mode.K12 * d1 * (mode.First ? 1 : 0)) + (mode.K22 * d2);
        V1 = mode.B1 * (U1 + (esr * (I1 - s1)));
        V2 = mode.B2 * (U2 + (esr * (I2 - s2)));
        L1 = s1 + (g1 * V1);
        L2 = s2 + (g2 * V2);

        // Positive when the set of charging rails is wrong: a charging current would reverse, or a diode at rest is driven forward.
        var common = shared * (I1 + I2);
        Blocked1 = mode.First ? -I1 : e - V1 - common;
        Blocked2 = !two ? -1 : mode.Second ? -I2 : e - V2 - common;
    }

    /// <summary>How the state at the last instant evaluated moves with that at the start: a symmetric matrix.</summary>
    public readonly (double M11, double M12, double M22) Sensitivity()
    {
        double p = decay1, q = two ? decay2 : 1, c = mode.Cos, s = mode.Sin;
        return ((c * c * p) + (s * s * q), c * s * (p - q), (s * s * p) + (c * c * q));
    }

    private readonly (double, double, double, double, double, double) Solve(double rate, double start, double source, double first, double second)
    {
        var constant = (-source * drop) + (first * idle1) + (second * idle2);
        var (cos, sin) = Forced(rate, omega, source * sourceCos, source * sourceSin);
        var (cosS, sinS) = signal > 0
            ? Forced(rate, signal, (first * cosLoad1) + (second * cosLoad2), (first * sinLoad1) + (second * sinLoad2))
            : (0, 0);
        return (constant, cos, sin, cosS, sinS, start - cos - cosS);
    }

    // y' = rate·y + p·cos + q·sin is solved by a·cos + b·sin.
    private static (double, double) Forced(double rate, double w, double p, double q)
    {
        var a = -((rate * p) + (w * q)) / ((rate * rate) + (w * w));
        return (a, ((rate * a) + p) / w);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Value(in (double Constant, double Cos, double Sin, double SignalCos, double SignalSin, double Free) y, double rate, double tau, double sin, double cos, double sinS, double cosS, out double decay)
    {
        var x = rate * tau;
        // A rail at rest with no resistor across it has no exponential, and that is what it is most of the time.
        decay = x == 0 ? 1 : Math.Exp(x);
        var grown = Exponential.Expm1Over(x, decay);
        return (y.Free * decay) + (y.Constant * tau * grown) + (y.Cos * cos) + (y.Sin * sin) + (y.SignalCos * cosS) + (y.SignalSin * sinS);
    }
}
