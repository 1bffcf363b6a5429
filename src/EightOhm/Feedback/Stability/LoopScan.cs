using System.Numerics;
using EightOhm.Numerics;
using EightOhm.Quantities;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace EightOhm.Feedback;

/// <summary>A loop gain over all frequencies that matter: where it crosses one, where its phase passes −180°, where 1/(1 + T) is highest.</summary>
internal sealed class LoopScan
{
    private const int PerDecade = 500;

    // Below this no crossing of −180° is of any interest, and a delay has endlessly many of them.
    private const double Nothing = 1e-6;

    // How many looks there are to one question whether the work is to stop, which costs as much as a look.
    private const int Between = 64;

    private readonly TransferFunction loop;

    // Logarithms of the angular frequency, rising.
    private readonly double[] places;

    public LoopScan(TransferFunction loop)
    {
        this.loop = loop;
        places = Places();
    }

    public IReadOnlyList<GainCrossing> GainCrossings() =>
        [.. Ones().Select(u => new GainCrossing(Hertz(u), Margin(loop.PhaseAt(Math.Exp(u)))))];

    public IReadOnlyList<PhaseCrossing> PhaseCrossings() =>
        [.. Turns().Select(u => new PhaseCrossing(Hertz(u), Gain.FromRatio(Size(u)))).Where(c => c.LoopGain.Ratio > Nothing)];

    public (Frequency At, double Peak) SensitivityPeak() => Highest<LoopLooks.Sensitivity>();

    public (Frequency At, double Peak) GainPeak() => Highest<LoopLooks.Gain>();

    private (Frequency At, double Peak) Highest<TFigure>()
        where TFigure : struct, IGainFigure
    {
        TFigure figure = default;
        var (best, height) = LoopLooks.Highest(loop, places, figure);
        var top = GoldenSection.Highest(u => figure.Of(loop.At(Math.Exp(u))), places[Math.Max(0, best - 1)], places[Math.Min(places.Length - 1, best + 1)], 1e-9);
        return top.Value > height ? (Hertz(top.At), top.Value) : (Hertz(places[best]), height);
    }

    private double Size(double u) => LoopLooks.Size(loop.At(Math.Exp(u)));

    private static Frequency Hertz(double u) => Frequency.FromHertz(Math.Exp(u) / (2 * Math.PI));

    // What is left to −180°, as an angle of one turn.
    private static Angle Margin(double phase)
    {
        var degrees = (phase * 180 / Math.PI) + 180;
        return Angle.FromDegrees(degrees - (360 * Math.Ceiling((degrees - 180) / 360)));
    }

    // Where the gain is one.
    private IEnumerable<double> Ones()
    {
        double Level(double u) => Math.Log(Size(u));
        var over = LoopLooks.OverOne(loop, places);
        for (var i = 1; i < over.Length; i++)
        {
            if (over[i - 1] * over[i] < 0 && Brent.TryFindRoot(Level, places[i - 1], places[i], 1e-13, 200, out var root))
                yield return root;
            else if (over[i] == 0)
                yield return places[i];
        }
    }

    // Between two looks the phase, counted through, may pass −180° less any number of turns.
    private IEnumerable<double> Turns()
    {
        double Above(double u) => (loop.PhaseAt(Math.Exp(u)) + Math.PI) / (2 * Math.PI);
        var before = Above(places[0]);
        for (var i = 1; i < places.Length; i++)
        {
            if (i % Between == 0)
                Work.Checkpoint();
            var here = Above(places[i]);
            var (low, high) = (Math.Min(before, here), Math.Max(before, here));
            for (var turn = Math.Ceiling(low); turn <= high && high - low < 50; turn++)
                if (turn > low && turn < high && Brent.TryFindRoot(u => Above(u) - turn, places[i - 1], places[i], 1e-13, 200, out var root))
                    yield return root;
            before = here;
            if (i > places.Length / 2 && Size(places[i]) < Nothing * 1e-2)
                yield break;
        }
    }

    private double[] Places()
    {
        var corners = loop.PolesInS.Concat(loop.ZerosInS).Select(r => r.Magnitude).Where(m => m > 0).ToList();
        if (loop.DelaySeconds > 0)
            corners.Add(1 / loop.DelaySeconds);
        if (corners.Count == 0)
            corners.Add(1);
        double low = Math.Log(corners.Min()) - 9, high = Math.Log(corners.Max()) + 7;
        // An integrator may cross far beyond its corners: go on until the gain no longer comes near one.
        for (var i = 0; i < 60 && Math.Abs(Math.Log(Size(low))) < 3; i++)
            low -= 2;
        for (var i = 0; i < 60 && Size(low) < 1 && loop.PolesInS.Contains(Complex.Zero); i++)
            low -= 2;
        for (var i = 0; i < 60 && Size(high) > 1e-3 && loop.PolesInS.Count > loop.ZerosInS.Count; i++)
            high += 2;
        var steps = (int)Math.Ceiling((high - low) / Math.Log(10) * PerDecade);
        // About a root near the axis the curve turns within a hair of its frequency.
        var near = loop.PolesInS.Concat(loop.ZerosInS).Where(r => r.Imaginary > 0)
            .SelectMany(r => Enumerable.Range(-20, 41).Select(k => r.Imaginary + (k * Math.Abs(r.Real) / 4))).Where(w => w > 0).Select(w => Math.Log(w)).ToArray();
        Array.Sort(near);
        // There the gain has no end.
        var onAxis = loop.PolesInS.Where(p => p.Real == 0).Select(p => p.Imaginary).ToArray();
        List<double> places = new(steps + 1 + near.Length);
        var k = 0;
        for (var i = 0; i <= steps; i++)
        {
            var even = low + ((high - low) * i / steps);
            for (; k < near.Length && near[k] < even; k++)
                Put(near[k]);
            Put(even);
        }

        for (; k < near.Length; k++)
            Put(near[k]);
        return [.. places];

        void Put(double u)
        {
            if (places.Count > 0 && places[^1] == u)
                return;
            if (onAxis.Length == 0 || !onAxis.Contains(Math.Exp(u)))
                places.Add(u);
        }
    }
}
