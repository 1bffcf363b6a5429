namespace EightOhm.OutputStage;

/// <summary>The highest value of a function over a range: a scan, then a golden section about the best of it.</summary>
internal static class Highest
{
    private const double Golden = 0.6180339887498949;

    /// <summary>Finds it. A peak narrower than a step of the scan may be missed; of equal values the one at the far end is taken.</summary>
    public static (double X, double Value) Of(Func<double, double> value, double from, double to, int steps)
    {
        var (best, at) = (double.NegativeInfinity, to);
        var step = (to - from) / steps;
        for (var i = steps; i >= 0; i--)
        {
            Work.Checkpoint();
            var x = i == steps ? to : from + (step * i);
            if (value(x) is var v && v > best + (1e-12 * Math.Abs(v)))
                (best, at) = (v, x);
        }

        var (a, b) = (Math.Max(from, at - step), Math.Min(to, at + step));
        var (c, d) = (b - (Golden * (b - a)), a + (Golden * (b - a)));
        var (atC, atD) = (value(c), value(d));
        while (b - a > 1e-6 * (to - from))
        {
            if (atC > atD)
            {
                (b, d, atD) = (d, c, atC);
                c = b - (Golden * (b - a));
                atC = value(c);
            }
            else
            {
                (a, c, atC) = (c, d, atD);
                d = a + (Golden * (b - a));
                atD = value(d);
            }
        }

        var (inside, refined) = atC > atD ? (c, atC) : (d, atD);
        return refined > best + (1e-12 * Math.Abs(best)) ? (inside, refined) : (at, best);
    }
}
