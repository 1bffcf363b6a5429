namespace EightOhm.Numerics;

/// <summary>The highest value of a curve with several tops over a range: looks at equal distances, then a golden section about the best of them.</summary>
internal static class Scan
{
    // Of values that differ by rounding alone the earlier look's stands, so that a flat curve has one answer.
    private const double Tie = 1e-12;

    /// <summary>Finds it. A peak narrower than a step may be missed; of equal values the one nearest to <paramref name="to"/> is taken.</summary>
    /// <param name="value">The curve.</param>
    /// <param name="from">One end of the range, which may be the higher one.</param>
    /// <param name="to">The other end.</param>
    /// <param name="steps">How many steps the looks make; 1 or more.</param>
    /// <param name="width">How narrow the golden section makes its interval.</param>
    public static (double X, double Value) Highest(Func<double, double> value, double from, double to, int steps, double width)
    {
        var (best, at) = (double.NegativeInfinity, to);
        var step = (to - from) / steps;
        for (var i = steps; i >= 0; i--)
        {
            Work.Checkpoint();
            var x = i == steps ? to : from + (step * i);
            if (value(x) is var v && v > best + (Tie * Math.Abs(v)))
                (best, at) = (v, x);
        }

        var (low, high) = (Math.Min(from, to), Math.Max(from, to));
        var top = GoldenSection.Highest(value, Math.Max(low, at - Math.Abs(step)), Math.Min(high, at + Math.Abs(step)), width);
        return top.Value > best + (Tie * Math.Abs(best)) ? (top.At, top.Value) : (at, best);
    }

    /// <summary>The first step of a range, upwards, at whose end a curve is above zero: a bracket for a root search. Null where it is at none.</summary>
    /// <param name="value">The curve; at or below zero where the range begins.</param>
    /// <param name="from">Where the range begins.</param>
    /// <param name="to">Where it ends; a range of no length has no step.</param>
    /// <param name="steps">How many steps; 1 or more. A crossing and its return within one are not seen.</param>
    /// <param name="first">The first step looked at, from 1.</param>
    public static (double Low, double High)? FirstAbove(Func<double, double> value, double from, double to, int steps, int first = 1)
    {
        for (var i = first; i <= steps; i++)
        {
            var (low, high) = (from + ((to - from) * (i - 1) / steps), from + ((to - from) * i / steps));
            if (high > low && value(high) > 0)
                return (low, high);
        }

        return null;
    }

    /// <summary>The least of a periodic curve: looks at equal distances over one period, then on either side of the best at ever halved distances.</summary>
    /// <remarks>For a curve whose every value is costly: a few more looks than a golden section, but none twice and no bracket to keep.</remarks>
    /// <param name="value">The curve.</param>
    /// <param name="period">Its period.</param>
    /// <param name="looks">How many looks over it; 1 or more.</param>
    /// <param name="fineness">The part of the period at which the halving ends.</param>
    /// <param name="enough">A value below this ends the search at once.</param>
    public static (double X, double Value) LeastOfPeriod(Func<double, double> value, double period, int looks, double fineness, double enough = double.NegativeInfinity)
    {
        double best = 0, least = double.PositiveInfinity, step = period / looks;
        for (var k = 0; k < looks && !(least < enough); k++)
            Look(k * step);
        for (step /= 2; step > period * fineness && !(least < enough); step /= 2)
        {
            var from = best;
            Look(from - step);
            Look(from + step);
        }

        return (best, least);

        void Look(double x)
        {
            Work.Checkpoint();
            if (value(x) is var v && v < least)
                (best, least) = (x, v);
        }
    }
}
