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

    // The angular frequency at each, in rad/s.
    private readonly double[] radians;

    // The gain at each, where it is asked for: what a crossing of −180° and the highest value are found from.
    private Complex[]? gains;

    public LoopScan(TransferFunction loop)
    {
        this.loop = loop;
        (places, radians) = Places();
    }

    private Complex[] Gains => gains ??= Looks(loop.At);

    public IReadOnlyList<GainCrossing> GainCrossings() =>
        [.. Ones().Select(u => new GainCrossing(Hertz(u), Margin(loop.PhaseAt(Math.Exp(u)))))];

    public IReadOnlyList<PhaseCrossing> PhaseCrossings() =>
        [.. Turns().Select(u => new PhaseCrossing(Hertz(u), Gain.FromRatio(Size(u)))).Where(c => c.LoopGain.Ratio > Nothing)];

    public (Frequency At, double Peak) SensitivityPeak() => Highest(x => 1 / Complex.Abs(1 + x));

    /// <summary>The highest of something that hangs on the complex gain.</summary>
    public (Frequency At, double Peak) Highest(Func<Complex, double> of)
    {
        var best = 0;
        var gains = Gains;
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
        var looks = loop.DelaySeconds == 0 ? Gains : gains ?? Looks(loop.WithoutDelay);
        var before = OverOne(looks, 0);
        for (var i = 1; i < looks.Length; i++)
        {
            var here = OverOne(looks, i);
            if (before * here < 0 && Brent.TryFindRoot(Level, places[i - 1], places[i], 1e-13, 200, out var root))
                yield return root;
            else if (here == 0)
                yield return places[i];
            before = here;
        }
    }

    // Only its sign counts, and a delay turns a gain without making it larger, but for rounding: so near to one, or so large, the delay is taken in.
    private double OverOne(Complex[] looks, int i)
    {
        var over = Size(looks[i]) - 1;
        return Math.Abs(over) is > 1e-9 and < 1e300 ? over : Size(loop.At(radians[i])) - 1;
    }

    private Complex[] Looks(Func<double, Complex> gain)
    {
        var looks = new Complex[radians.Length];
        for (var i = 0; i < looks.Length; i++)
        {
            if (i % Between == 0)
                Work.Checkpoint();
            looks[i] = gain(radians[i]);
        }

        return looks;
    }

    // Between two looks the phase, counted through, may pass −180° less any number of turns.
    private IEnumerable<double> Turns()
    {
        double AboveAt(double w) => (loop.PhaseAt(w) + Math.PI) / (2 * Math.PI);
        double Above(double u) => AboveAt(Math.Exp(u));
        var gains = Gains;
        var before = AboveAt(radians[0]);
        for (var i = 1; i < places.Length; i++)
        {
            if (i % Between == 0)
                Work.Checkpoint();
            var here = AboveAt(radians[i]);
            var (low, high) = (Math.Min(before, here), Math.Max(before, here));
            for (var turn = Math.Ceiling(low); turn <= high && high - low < 50; turn++)
                if (turn > low && turn < high && Brent.TryFindRoot(u => Above(u) - turn, places[i - 1], places[i], 1e-13, 200, out var root))
                    yield return root;
            before = here;
            if (Size(gains[i]) < Nothing * 1e-2 && i > places.Length / 2)
                yield break;
        }
    }

    private (double[] Places, double[] Radians) Places()
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
        List<double> places = new(steps + 1 + near.Length), radians = new(steps + 1 + near.Length);
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
        return ([.. places], [.. radians]);

        void Put(double u)
        {
            if (places.Count > 0 && places[^1] == u)
                return;
            var w = Math.Exp(u);
            if (onAxis.Length > 0 && onAxis.Contains(w))
                return;
            places.Add(u);
            radians.Add(w);
        }
    }
}
