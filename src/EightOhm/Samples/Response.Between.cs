using System.Numerics;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Samples;

/// <content>Between the points: values, unwrapped phase, crossings.</content>
public sealed partial class Response<T>
{
    // A phase that steps by more than this from point to point is looked at between them; and so are points farther apart than this ratio, between which whole turns could hide.
    private const double LargeStep = Math.PI / 3, LargeRatio = 1.05;

    private const int DeepestHalving = 24;

    /// <summary>The frequencies at which the unwrapped phase passes an angle, rad, or that and whole turns from it.</summary>
    internal IEnumerable<double> PhaseCrossings(double angle)
    {
        var phase = phases.Value;
        for (var i = 1; i < hertz.Length; i++)
        {
            double low = Math.Min(phase[i - 1], phase[i]), high = Math.Max(phase[i - 1], phase[i]);
            var first = Math.Ceiling((low - angle) / Math.Tau);
            for (var turn = first; angle + (turn * Math.Tau) < high; turn++)
            {
                var target = angle + (turn * Math.Tau);
                if (low < target || i == 1)
                    yield return Root(i, f => PhaseOf(f) - target);
            }
        }
    }

    /// <summary>The frequencies at which the magnitude passes a level.</summary>
    internal IEnumerable<double> CrossingsOf(double level)
    {
        for (var i = 1; i < hertz.Length; i++)
        {
            double a = Complex.Abs(values[i - 1]) - level, b = Complex.Abs(values[i]) - level;
            if (b == 0 && i < hertz.Length - 1)
                continue; // the next interval begins there
            if (a == 0 || b == 0 || a * b < 0)
                yield return Root(i, f => Complex.Abs(Value(f)) - level);
        }
    }

    /// <summary>The value at a frequency that is inside.</summary>
    internal Complex Value(double f)
    {
        if (exact is not null)
            return exact(f);
        var i = After(f);
        var t = Share(i, f);
        double a = Complex.Abs(values[i - 1]), b = Complex.Abs(values[i]);
        var magnitude = a > 0 && b > 0 ? Math.Exp(((1 - t) * Math.Log(a)) + (t * Math.Log(b))) : ((1 - t) * a) + (t * b);
        return Complex.FromPolarCoordinates(magnitude, ((1 - t) * phases.Value[i - 1]) + (t * phases.Value[i]));
    }

    /// <summary>The unwrapped phase at a frequency that is inside, rad.</summary>
    internal double PhaseOf(double f)
    {
        var i = After(f);
        if (exact is null)
            return hertz.Length == 1 ? phases.Value[0] : phases.Value[i - 1] + (Share(i, f) * (phases.Value[i] - phases.Value[i - 1]));
        // From the nearer point, so that the step is short.
        var near = hertz.Length == 1 || Share(i, f) < 0.5 ? Math.Max(i - 1, 0) : i;
        return phases.Value[near] + Turned(hertz[near], values[near], f, Value(f), 0);
    }

    private double[] Unwrapped()
    {
        var phase = new double[values.Length];
        phase[0] = values[0].Phase;
        for (var i = 1; i < phase.Length; i++)
            phase[i] = phase[i - 1] + Turned(hertz[i - 1], values[i - 1], hertz[i], values[i], 0);
        return phase;
    }

    // By how much the phase turns from one frequency to another: shortest way, found by halving where the way is long.
    private double Turned(double f1, Complex v1, double f2, Complex v2, int depth)
    {
        if (v1 == Complex.Zero || v2 == Complex.Zero)
            return 0;
        var step = (v2 / v1).Phase;
        if (exact is null || (Math.Abs(step) < LargeStep && f2 < f1 * LargeRatio && f1 < f2 * LargeRatio) || depth >= DeepestHalving)
            return step;
        var middle = Math.Sqrt(f1 * f2);
        var there = exact(middle);
        return Turned(f1, v1, middle, there, depth + 1) + Turned(middle, there, f2, v2, depth + 1);
    }

    private double Inside(Frequency f)
    {
        var number = f.Hertz;
        if (!(number >= hertz[0] && number <= hertz[^1]))
            Guard.Refuse(nameof(f), f, $"from {QuantityFormat.Short(Frequency.FromHertz(hertz[0]))} to {QuantityFormat.Short(Frequency.FromHertz(hertz[^1]))}", "Outside its points the response is not known: compute it over a wider range.");
        return number;
    }

    private Frequency Corner(Frequency f, bool up)
    {
        var from = Inside(f);
        double level = Complex.Abs(Value(from)), low = level / Math.Sqrt(2), high = level * Math.Sqrt(2);
        var crossings = CrossingsOf(low).Concat(CrossingsOf(high)).Where(c => up ? c > from : c < from).DefaultIfEmpty(double.NaN);
        var corner = up ? crossings.Min() : crossings.Max();
        return double.IsNaN(corner)
            ? throw new InvalidOperationException($"{(up ? "Up to" : "Down to")} {QuantityFormat.Short(Frequency.FromHertz(up ? hertz[^1] : hertz[0]))} the magnitude has not changed by 3 dB from that at {QuantityFormat.Short(f)}. Compute the response over a wider range.")
            : Frequency.FromHertz(corner);
    }

    // The index of the point after a frequency, 1 or more.
    private int After(double f)
    {
        var i = Array.BinarySearch(hertz, f);
        return Math.Clamp(i >= 0 ? i : ~i, Math.Min(1, hertz.Length - 1), hertz.Length - 1);
    }

    private double Share(int i, double f) => i == 0 ? 0 : Math.Log(f / hertz[i - 1]) / Math.Log(hertz[i] / hertz[i - 1]);

    private double Root(int i, Func<double, double> of)
    {
        double a = hertz[i - 1], b = hertz[i], at = of(a);
        if (at == 0)
            return a;
        for (var step = 0; step < 200; step++)
        {
            var middle = Math.Sqrt(a * b);
            if (middle <= a || middle >= b)
                break;
            var there = of(middle);
            if (there == 0)
                return middle;
            (a, b, at) = Math.Sign(there) == Math.Sign(at) ? (middle, b, there) : (a, middle, at);
        }

        return Math.Sqrt(a * b);
    }
}
