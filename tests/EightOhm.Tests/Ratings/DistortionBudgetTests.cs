using EightOhm.Quantities;
using EightOhm.Ratings;
using UnitsNet;

namespace EightOhm.Tests.Ratings;

public class DistortionBudgetTests
{
    private static readonly DistortionSource Outputs = new("output stage", 10.ppm, 30.ppm, 2.ppm, 100.ppm), Pair = new("input pair", 5.ppm, 6.ppm);

    [Fact]
    public void Harmonics_of_one_order_add_by_magnitude_and_orders_by_squares()
    {
        var budget = new DistortionBudget(20.kHz, 80.kHz, [Outputs, Pair]);
        Assert.Equal([15.0, 36, 2], budget.Orders.Select(d => Math.Round(d.PartsPerMillion, 9)));
        Assert.Equal(Math.Sqrt((15 * 15) + (36 * 36) + 4), budget.Total.PartsPerMillion, 1e-9);
        // Squares throughout would say less, magnitudes throughout more, and each alone the least.
        Assert.True(budget.Total.PartsPerMillion > 1.1 * Math.Sqrt(100 + 900 + 4 + 25 + 36));
        Assert.True(budget.Total.PartsPerMillion < 10 + 30 + 2 + 5 + 6);
        Assert.Equal(Math.Sqrt(61), budget.Alone(Pair).PartsPerMillion, 1e-9);
    }

    // Two sines of one frequency: in phase their peaks add, and no other phase makes more.
    [Fact]
    public void No_phase_makes_more_than_the_magnitudes()
    {
        double Amplitude(double phase)
        {
            const int N = 1024;
            var (a, b) = (0.0, 0.0);
            for (var i = 0; i < N; i++)
            {
                var t = 6 * Math.PI * i / N;
                var v = (30 * Math.Sin(t)) + (6 * Math.Sin(t + phase));
                (a, b) = (a + (v * Math.Sin(t) * 2 / N), b + (v * Math.Cos(t) * 2 / N));
            }

            return Math.Sqrt((a * a) + (b * b));
        }

        var third = new DistortionBudget(20.kHz, 80.kHz, [Outputs, Pair]).Orders[1].PartsPerMillion;
        Assert.Equal(third, Amplitude(0), 1e-9);
        Assert.All(Enumerable.Range(0, 36), k => Assert.True(Amplitude(k * Math.PI / 18) <= third + 1e-9));
    }

    [Fact]
    public void What_lies_beyond_the_bandwidth_does_not_count()
    {
        Assert.Equal(3, new DistortionBudget(20.kHz, 80.kHz, [Outputs]).Orders.Count);
        Assert.Equal(4, new DistortionBudget(20.kHz, 100.kHz, [Outputs]).Orders.Count);
        Assert.Equal(0, new DistortionBudget(20.kHz, 30.kHz, [Outputs]).Total.PartsPerMillion);
        Assert.Equal(0, Pair.Harmonic(7).PartsPerMillion);
    }

    [Fact]
    public void Equality_is_by_the_sources()
    {
        DistortionBudget Of(params DistortionSource[] s) => new(20.kHz, 80.kHz, s);
        Assert.Equal(Of(Outputs, Pair), Of(Outputs, new("input pair", 5.ppm, 6.ppm)));
        Assert.Equal(Of(Outputs).GetHashCode(), Of(Outputs).GetHashCode());
        Assert.NotEqual(Of(Outputs), Of(Pair));
    }

    [Fact]
    public void What_is_no_budget_is_refused_with_what_to_do()
    {
        Assert.Contains("\"input pair\" stands in the budget twice", Assert.Throws<ArgumentException>(() => new DistortionBudget(20.kHz, 80.kHz, [Pair, Pair])).Message, StringComparison.Ordinal);
        Assert.Contains("at least one source", Assert.Throws<ArgumentException>(() => new DistortionBudget(20.kHz, 80.kHz, [])).Message, StringComparison.Ordinal);
        Assert.Contains("Give its magnitude", Assert.Throws<RefusedValueException>(() => new DistortionSource("pair", (-5).ppm)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => new DistortionSource(" ", 5.ppm));
        Assert.Throws<RefusedValueException>(() => new DistortionBudget(20.Hz, 80.kHz, [Pair]));
        Assert.Throws<RefusedValueException>(() => Pair.Harmonic(1));
    }
}
