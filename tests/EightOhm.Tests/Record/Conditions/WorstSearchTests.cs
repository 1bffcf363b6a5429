using CsCheck;
using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;

namespace EightOhm.Tests.Record;

public class WorstSearchTests
{
    private static readonly Conditions Square = new Conditions().Range("x", -1.0, 1.0).Range("y", -1.0, 1.0);

    [Fact]
    public void A_figure_that_goes_one_way_has_its_worst_at_an_end_to_the_last_bit()
    {
        var over = new Conditions().Range("x", 0.1, 0.7);
        var worst = over.Highest((double x) => 3 * x);
        Assert.Equal(3 * 0.7, worst.Value);
        Assert.Equal(0.7, Assert.Single(worst.Where).Value);
        Assert.Equal(3 * 0.1, over.Lowest((double x) => 3 * x).Value);
    }

    [Fact]
    public void A_worst_inside_a_range_is_found_wherever_it_is() =>
        Gen.Select(Gen.Double[0, 1], Gen.Double[0.2, 5]).Sample((place, width) =>
        {
            var over = new Conditions().Range("x", 0.0, 1.0);
            var smooth = over.Highest((double x) => Math.Exp(-Math.Pow((x - place) / width, 2)));
            Assert.Equal(1, smooth.Value!.Value, 1e-5);
            Assert.Equal(place, (double)smooth.Where[0].Value!, 1e-3);
            var corner = over.Lowest((double x) => 7 + Math.Abs(x - place));
            Assert.Equal(7, corner.Value!.Value, 1e-3);
        });

    // The naive search looks at corners and middle alone, and would say 0.75 for a top of 1.
    [Fact]
    public void Every_combination_is_not_the_corners_alone()
    {
        var worst = new Conditions().Range("x", 0.0, 1.0).Cases("n", 1, 2).Highest((double x, int n) => n * 4 * x * (1 - x) - (n * Math.Pow(x - 0.3, 2)));
        Assert.Equal(WorstMethod.EveryCombination, worst.Method);
        // The top of 4x(1 − x) − (x − 0.3)² is at x = 4.6/10, twice its value 0.968 counts.
        Assert.Equal(0.46, (double)worst.Where[0].Value!, 1e-3);
        Assert.Equal(2 * ((4 * 0.46 * 0.54) - (0.16 * 0.16)), worst.Value!.Value, 1e-7);
    }

    [Fact]
    public void Where_conditions_act_on_one_another_one_at_a_time_is_not_enough()
    {
        // In the middle neither x nor y alone moves a saddle.
        var saddle = Square.Highest((double x, double y) => x * y);
        Assert.Equal(1.0, saddle.Value);
        Assert.Equal(-1.0, Square.Lowest((double x, double y) => x * y).Value);
        // Parts that differ: the worst is one high and the other low.
        var mismatch = new Conditions().Spread("a", 5.percent).Spread("b", 5.percent).Highest((double a, double b) => Math.Abs(a - b));
        Assert.Equal(0.1, mismatch.Value!.Value, 1e-12);
    }

    // Six ranges are too many for every combination, and from the middle no single step leads off the saddle: the probes must.
    [Fact]
    public void A_search_is_not_held_by_a_saddle()
    {
        var six = Square.Range("a", 0.0, 1.0).Range("b", 0.0, 1.0).Range("c", 0.0, 1.0).Range("d", 0.0, 1.0);
        var worst = six.Highest((double x, double y, double a, double b, double c, double d) => (x * y) - (0.01 * (a + b + c + d)));
        Assert.Equal(WorstMethod.Search, worst.Method);
        Assert.Equal(1, worst.Value!.Value, 1e-12);
    }

    // The climb from the middle ends on a narrow top of 1.2 that holds it; no probe hits anything as high, but the best of them leads to 1.5.
    [Fact]
    public void A_search_is_not_content_with_the_first_top()
    {
        var axes = Enumerable.Range(0, 6).Select(i => (Condition)new RangeCondition($"x{i}", 0.0, 1.0, null)).ToList();
        var looks = new WorstLooks(p => new(Math.Max(1.2 * Math.Exp(-p.Sum(x => Math.Pow((x - 0.5) / 0.05, 2))), 1.5 - (0.6 * p.Sum(x => Math.Abs(x - 0.8)))), 0.0));
        new WorstSearch(axes, looks, Conditions.DefaultSeed).Run(true, false);
        Assert.Equal(1.5, looks.Highest.Look.Number, 1e-3);
    }

    [Fact]
    public void A_ridge_across_two_ranges_is_climbed_to_its_top()
    {
        var worst = Square.Highest((double x, double y) => 5 - (100 * Math.Pow(x - y, 2)) - Math.Pow(x + y - 1.2, 2));
        Assert.Equal(5, worst.Value!.Value, 1e-5);
        Assert.Equal(0.6, (double)worst.Where[0].Value!, 2e-3);
        Assert.Equal(0.6, (double)worst.Where[1].Value!, 2e-3);
    }

    [Fact]
    public void Both_ways_find_the_same_over_five_conditions()
    {
        var five = new Conditions().Range("x", -0.1, 0.1).Cases("z", 8.0, 4.0, 6.0).Range("phi", 0.0, 60.0).Range("t", 10.0, 35.0).Cases("n", 2, 3);
        // Enough spreads of no effect to make the combinations too many.
        var many = five.Spread("a", 5.percent).Spread("b", 5.percent).Spread("c", 5.percent);
        static double Figure(double x, double z, double phi, double t, int n) => t + ((1 + x) * (1 + x) * 400 / z / n * (1 + Math.Sin(2 * phi * Math.PI / 180)));
        var every = five.Highest((double x, double z, double phi, double t, int n) => Figure(x, z, phi, t, n));
        var searched = many.Highest((double x, double z, double phi, double t, int n, double a, double b, double c) => Figure(x, z, phi, t, n) * a * b * c / a / b / c);
        Assert.Equal((WorstMethod.EveryCombination, WorstMethod.Search), (every.Method, searched.Method));
        var known = 35 + (1.21 * 400 / 4 / 2 * 2);
        Assert.Equal(known, every.Value!.Value, 1e-6);
        Assert.Equal(known, searched.Value!.Value, 1e-6);
        Assert.Equal(every.Where.Select(w => w.Name), searched.Where.Take(5).Select(w => w.Name));
        foreach (var (a, b) in every.Where.Zip(searched.Where))
            Assert.Equal(Convert.ToDouble(a.Value, null), Convert.ToDouble(b.Value, null), 0.02);
    }

    [Fact]
    public void Twelve_conditions_with_a_worst_that_is_known()
    {
        double[] weight = [3, -2, 1, 5, -4, 2, 1, -1, 6, 2, -3, 1];
        var axes = weight.Select((_, i) => (Condition)(i % 3 == 0 ? new RangeCondition($"x{i}", 0.0, 1.0, null) : new SpreadCondition($"x{i}", 50.percent, null))).ToList();
        // Weights pull each to one end, but x0 has its top inside, where it depends on x1.
        double Figure(double[] p)
        {
            var sum = 0.0;
            for (var i = 1; i < weight.Length; i++)
                sum += weight[i] * (double)axes[i].At(p[i]);
            var x1 = (double)axes[1].At(p[1]);
            return sum - (20 * Math.Pow((double)axes[0].At(p[0]) - (0.3 * x1), 2));
        }

        var known = weight.Skip(1).Select((w, k) => (k + 1) % 3 == 0 ? Math.Max(w, 0) : w * (w > 0 ? 1.5 : 0.5)).Sum();
        var looks = new WorstLooks(p => new(Figure(p), 0.0));
        var search = new WorstSearch(axes, looks, 1);
        search.Run(true, false);
        Assert.Equal(WorstMethod.Search, search.Method);
        Assert.Equal(known, looks.Highest.Look.Number, 1e-5);
        Assert.InRange(looks.Count, 49, 400); // every combination would be 3⁴·2⁸ = 20 736
    }

    [Fact]
    public void Nothing_looked_at_is_worse_than_what_is_reported() =>
        Gen.Select(Gen.Double[-3, 3].Array[6], Gen.ULong).Sample((w, seed) =>
        {
            var (most, least) = (double.NegativeInfinity, double.PositiveInfinity);
            double Figure(double x, double y, int n, double a)
            {
                var f = (w[0] * Math.Sin(5 * x * w[1])) + (w[2] * y * x * n) + (w[3] * Math.Cos(7 * y)) + (w[4] * a * x) + (w[5] * n * y);
                (most, least) = (Math.Max(most, f), Math.Min(least, f));
                return f;
            }

            var over = Square.Cases("n", 1, 2, 3).Spread("a", 10.percent).WithSeed(seed);
            var high = over.Highest((double x, double y, int n, double a) => Figure(x, y, n, a));
            Assert.True(high.Value!.Value >= most - (1e-10 * Math.Abs(most)));
            // What is told along a condition is the figure there with the others at the worst that is reported, and not another.
            foreach (var (i, relief) in high.Relief.Index())
            {
                object[] at = [.. high.Where.Select((c, k) => k == i ? relief.Kindest.Value! : c.Value!)];
                Assert.Equal((double)relief.Value, Figure((double)at[0], (double)at[1], (int)at[2], (double)at[3]), 1e-12);
                Assert.True((double)relief.Value <= high.Value!.Value + (1e-10 * Math.Abs(most)));
            }

            (most, least) = (double.NegativeInfinity, double.PositiveInfinity);
            var low = over.Lowest((double x, double y, int n, double a) => Figure(x, y, n, a));
            Assert.True(low.Value!.Value <= least + (1e-10 * Math.Abs(least)));
        }, iter: 60);

    [Fact]
    public void The_same_search_gives_the_same_and_each_point_is_evaluated_once()
    {
        var over = Square.Range("u", 0.0, 1.0).Range("v", 0.0, 1.0).Range("w", 0.0, 1.0);
        HashSet<(double, double, double, double, double)> seen = [];
        var repeats = 0;
        double Figure(double x, double y, double u, double v, double w)
        {
            repeats += seen.Add((x, y, u, v, w)) ? 0 : 1;
            return Math.Sin(9 * x * y) + (u * v) - (w * x);
        }

        WorstCase Run(ulong seed) => over.WithSeed(seed).Highest((double x, double y, double u, double v, double w) => Figure(x, y, u, v, w));
        var first = Run(7);
        Assert.Equal(WorstMethod.Search, first.Method);
        Assert.Equal((0, first.Evaluations), (repeats, seen.Count));
        var second = Run(7);
        Assert.Equal((first.ToString(), first.Evaluations, first.Value, first.Seed), (second.ToString(), second.Evaluations, second.Value, 7UL));
        Assert.Equal(first.Relief, second.Relief);
        var before = seen.Count;
        Run(8);
        Assert.True(seen.Count > before); // other probes
    }

    [Fact]
    public void A_long_search_can_be_cancelled()
    {
        using var stop = new CancellationTokenSource();
        using var work = Work.Begin(stop.Token);
        var looks = 0;
        Assert.Throws<OperationCanceledException>(() => Square.Highest((double x, double y) =>
        {
            if (++looks == 3)
                stop.Cancel();
            return x + y;
        }));
        Assert.Equal(3, looks);
    }
}
