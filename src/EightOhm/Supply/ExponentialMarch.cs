using EightOhm.Numerics;

namespace EightOhm.Supply;

/// <summary>One rail behind exponential diodes: an implicit method of order two, L-stable, at equal steps.</summary>
/// <remarks>
/// Each stage is a junction with a resistor: the step's own resistance h·γ/C joins the path's, so a stiff circuit costs no smaller step
/// (γ = 1 − 1/√2, stiffly accurate; E. Hairer and G. Wanner, Solving Ordinary Differential Equations II, sec. IV.6).
/// </remarks>
internal sealed class ExponentialMarch(RailNetwork network, double saturation, double slope, int stepsPerHalf)
{
    private static readonly double Gamma = 1 - (1 / Math.Sqrt(2));

    private readonly double h = network.Half / stepsPerHalf;
    private double logarithm;

    /// <summary>How the end moves with the start.</summary>
    public double Sensitivity { get; private set; }

    /// <summary>Marches from t = 0 over whole half-cycles.</summary>
    /// <param name="u">The capacitor's inner voltage at the start.</param>
    /// <param name="halfCycles">How many.</param>
    /// <param name="inner">Receives u at each step, from the start on; null when not wanted.</param>
    public double Run(double u, int halfCycles, double[]? inner)
    {
        Sensitivity = 1;
        logarithm = 0;
        double b = 1 / (1 + (network.Esr * network.Load1.Conductance)), kappa = h * Gamma * b / network.C;
        var steps = halfCycles * stepsPerHalf;
        for (var k = 0; k < steps; k++)
        {
            if ((k & 1023) == 0)
                Work.Checkpoint();
            if (inner is not null)
                inner[k] = u;
            var first = Stage(u, (k + Gamma) * h, b, kappa, out var slope1);
            var rate = (first - u) / (h * Gamma);
            var second = Stage(u + (h * (1 - Gamma) * rate), (k + 1) * h, b, kappa, out var slope2);
            Sensitivity *= slope2 * (1 + ((1 - Gamma) / Gamma * (slope1 - 1)));
            u = second;
        }

        if (inner is not null)
            inner[steps] = u;
        return u;
    }

    /// <summary>Charging current, rail and load at a state.</summary>
    public (double I, double V, double Load) Outputs(double u, double t)
    {
        var b = 1 / (1 + (network.Esr * network.Load1.Conductance));
        var s = LoadAt(t);
        var i = Current(Source(t) - (b * (u - (network.Esr * s))), network.Own + (b * network.Esr), out _);
        var v = b * (u + (network.Esr * (i - s)));
        return (i, v, s + (network.Load1.Conductance * v));
    }

    // U = start + κ·(i − s − G·U), the current i being the junction's at U.
    private double Stage(double start, double t, double b, double kappa, out double sensitivity)
    {
        double s = LoadAt(t), g = 1 + (kappa * network.Load1.Conductance), r = network.Esr;
        var drive = Source(t) - (b * (start - (kappa * s)) / g) + (b * r * s);
        var i = Current(drive, network.Own + (b * r) + (b * kappa / g), out var conductance);
        sensitivity = (1 - (kappa * conductance * b / g)) / g;
        return (start + (kappa * (i - s))) / g;
    }

    private double Source(double t) => network.Peak * Math.Abs(Math.Sin(network.Omega * t));

    private double LoadAt(double t) => network.Load1.At(network.SignalOmega > 0 ? Math.Sin((network.SignalOmega * t) + network.SignalPhase) : 0);

    // R·I_s·(e^w − 1) + slope·w = drive, w = ln(1 + i/I_s): convex and rising, so Newton from above comes down to the root.
    private double Current(double drive, double resistance, out double conductance)
    {
        if (drive <= 0)
        {
            var back = saturation * Exponential.Expm1(drive / slope);
            conductance = 1 / (resistance + (slope / (back + saturation)));
            return back;
        }

        var most = Math.Min(drive / slope, Exponential.Log1p(drive / (resistance * saturation)));
        var w = logarithm > 0 && logarithm < most ? logarithm : most;
        for (var k = 0; k < 50; k++)
        {
            var e = saturation * Math.Exp(w);
            var step = ((resistance * (e - saturation)) + (slope * w) - drive) / ((resistance * e) + slope);
            w = Math.Min(w - step, most);
            if (Math.Abs(step) < 1e-12 * (1 + w))
                break;
        }

        logarithm = w;
        var i = saturation * Exponential.Expm1(w);
        conductance = 1 / (resistance + (slope / (i + saturation)));
        return i;
    }
}
