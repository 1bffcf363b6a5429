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

    private readonly TransferFunction loop;

    // Logarithms of the angular frequency, rising.
    private readonly double[] places;

    // The gain at each: what a crossing of one, of −180° and the highest value are all found from.
    private readonly Complex[] gains;

    public LoopScan(TransferFunction loop)
    {
        this.loop = loop;
        places = Places();
        gains = new Complex[places.Length];
        for (var i = 0; i < gains.Length; i++)
        {
            Work.Checkpoint();
            gains[i] = loop.At(Math.Exp(places[i]));
        }
    }

    public IReadOnlyList<GainCrossing> GainCrossings() =>
        [.. Ones().Select(u => new GainCrossing(Hertz(u), Margin(loop.PhaseAt(Math.Exp(u)))))];

    public IReadOnlyList<PhaseCrossing> PhaseCrossings() =>
        [.. Turns().Select(u => new PhaseCrossing(Hertz(u), Gain.FromRatio(Size(u)))).Where(c => c.LoopGain.Ratio > Nothing)];

    public (Frequency At, double Peak) SensitivityPeak() => Highest(x => 1 / Complex.Abs(1 + x));

    /// <summary>The highest of something that hangs on the complex gain.</summary>
    public (Frequency At, double Peak) Highest(Func<Complex, double> of)
    {
        var best = 0;
        var height = of(gains[0]);
        for (var i = 1; i < gains.Length; i++)
        {
            var here = of(gains[i]);
            if (here > height)
                (best, height) = (i, here);
        }

        var top = GoldenSection.Highest(u => of(loop.At(Math.Exp(u))), places[Math.Max(0, best - 1)], places[Math.Min(places.Length - 1, best + 1)], 1e-9);
        return top.Value > height ? (Hertz(top.At), top.Value) : (Hertz(places[best]), height);
    }

    private double Size(double u) => Size(loop.At(Math.Exp(u)));

    private static double Size(Complex gain) => Math.Max(gain.Magnitude, double.Epsilon);

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
        var before = Size(gains[0]) - 1;
        for (var i = 1; i < gains.Length; i++)
        {
            var here = Size(gains[i]) - 1;
            if (before * here < 0 && Brent.TryFindRoot(Level, places[i - 1], places[i], 1e-13, 200, out var root))
                yield return root;
            else if (here == 0)
                yield return places[i];
            before = here;
        }
    }

    // Between two looks the phase, counted through, may pass −180° less any number of turns.
    private IEnumerable<double> Turns()
    {
        double Above(double u) => (loop.PhaseAt(Math.Exp(u)) + Math.PI) / (2 * Math.PI);
        var before = Above(places[0]);
        for (var i = 1; i < places.Length; i++)
        {
            Work.Checkpoint();
            var here = Above(places[i]);
            var (low, high) = (Math.Min(before, here), Math.Max(before, here));
            for (var turn = Math.Ceiling(low); turn <= high && high - low < 50; turn++)
                if (turn > low && turn < high && Brent.TryFindRoot(u => Above(u) - turn, places[i - 1], places[i], 1e-13, 200, out var root))
                    yield return root;
            before = here;
            if (Size(gains[i]) < Nothing * 1e-2 && i > places.Length / 2)
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
        var even = Enumerable.Range(0, steps + 1).Select(i => low + ((high - low) * i / steps));
        // About a root near the axis the curve turns within a hair of its frequency.
        var near = loop.PolesInS.Concat(loop.ZerosInS).Where(r => r.Imaginary > 0)
            .SelectMany(r => Enumerable.Range(-20, 41).Select(k => r.Imaginary + (k * Math.Abs(r.Real) / 4))).Where(w => w > 0).Select(w => Math.Log(w));
        // There the gain has no end.
        var onAxis = loop.PolesInS.Where(p => p.Real == 0).Select(p => p.Imaginary).ToArray();
        double[] all = [.. even, .. near];
        Array.Sort(all);
        return [.. all.Where((u, i) => (i == 0 || u != all[i - 1]) && (onAxis.Length == 0 || !onAxis.Contains(Math.Exp(u))))];
    }
}
