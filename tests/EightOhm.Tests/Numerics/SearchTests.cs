using CsCheck;
using EightOhm.Numerics;

namespace EightOhm.Tests.Numerics;

public class SearchTests
{
    [Fact]
    public void A_top_is_found_wherever_it_is_a_curve_or_a_corner() =>
        Gen.Select(Gen.Double[-10, 10], Gen.Double[0.1, 5], Gen.Double[0.1, 5]).Sample((place, left, right) =>
        {
            var smooth = GoldenSection.Highest(x => 3 - ((x - place) * (x - place)), place - left, place + right, 1e-12);
            Assert.Equal(3, smooth.Value, 1e-13);
            Assert.Equal(place, smooth.At, 3e-7); // a smooth top is flat: half the digits
            var corner = GoldenSection.Highest(x => -Math.Abs(x - place), place - left, place + right, 1e-12);
            Assert.Equal(place, corner.At, 2e-12);
            Assert.InRange(corner.At, corner.Low, corner.High);
            Assert.True(corner.High - corner.Low <= 1e-11);
        });

    [Fact]
    public void At_an_end_of_its_interval_the_top_is_neared_from_inside()
    {
        var top = GoldenSection.Highest(x => x, 0, 1, 1e-9);
        Assert.InRange(top.At, 1 - 1e-9, 1);
    }

    [Fact]
    public void A_search_stops_when_it_has_seen_enough_and_after_its_steps()
    {
        var curve = new Counted();
        var top = GoldenSection.Highest(ref curve, 0, 1, 50, enough: 0.5);
        Assert.True(top.Value > 0.5);
        Assert.Equal(2, curve.Looks);
        curve = new Counted();
        GoldenSection.Highest(ref curve, 0, 1, 10, enough: 2);
        Assert.Equal(12, curve.Looks);
    }

    [Fact]
    public void Of_several_tops_the_highest_is_found() =>
        Gen.Select(Gen.Double[0.02, 0.98], Gen.Double[0.02, 0.98]).Sample((high, low) =>
        {
            if (Math.Abs(high - low) < 0.1)
                return;
            double At(double x) => Math.Exp(-Math.Pow((x - high) / 0.02, 2)) + (0.9 * Math.Exp(-Math.Pow((x - low) / 0.02, 2)));
            var (x, value) = Scan.Highest(At, 0, 1, 100, 1e-9);
            Assert.Equal(high, x, 1e-5);
            Assert.Equal(1, value, 1e-9);
        });

    [Fact]
    public void The_ends_count_and_of_equal_values_the_last_is_named()
    {
        Assert.Equal((1.0, 1.0), Scan.Highest(x => x, 0, 1, 7, 1e-9));
        Assert.Equal((0.0, 1.0), Scan.Highest(x => 1 - x, 0, 1, 7, 1e-9));
        Assert.Equal((3.0, 5.0), Scan.Highest(_ => 5, 0, 3, 10, 1e-9));
        Assert.Equal((0.0, 5.0), Scan.Highest(_ => 5, 3, 0, 10, 1e-9));
    }

    [Fact]
    public void The_first_step_that_ends_above_zero_is_the_bracket()
    {
        Assert.Equal((2.0, 3.0), Scan.FirstAbove(x => (x - 2.5) * (6.5 - x), 0, 10, 10));
        Assert.Equal((0.0, 1.0), Scan.FirstAbove(x => x, 0, 10, 10));
        Assert.Equal((1.0, 2.0), Scan.FirstAbove(x => x, 0, 10, 10, first: 2));
        Assert.Null(Scan.FirstAbove(x => x - 10, 0, 10, 10));
        Assert.Null(Scan.FirstAbove(_ => 1, 3, 3, 10));
    }

    [Fact]
    public void Halving_finds_how_far_something_holds() =>
        Gen.Select(Gen.Double[-5, 5], Gen.Double[1e-3, 4], Gen.Int[-50, 50]).Sample((place, reach, whole) =>
        {
            var (low, high) = Halving.Narrowed(x => x <= place, place - reach, place + (reach / 3), 100, 1e-12);
            Assert.InRange(place, low, high);
            Assert.True(high - low <= 1e-12);
            Assert.Equal(whole, Halving.Last(n => n <= whole, whole - 17, whole + 40));
        });

    [Fact]
    public void Halving_stops_after_its_steps() => Assert.Equal((0.25, 0.5), Halving.Narrowed(x => x < 0.3, 0, 1, 2));

    [Theory]
    [InlineData(3e-300)]
    [InlineData(0.7)]
    [InlineData(4e305)]
    public void Halving_by_ratio_crosses_all_decades(double place)
    {
        var (low, high) = Halving.NarrowedByRatio(x => x <= place, 1e-308, 1e307);
        Assert.Equal(place, low, 2e-15 * place);
        Assert.Equal(place, high, 2e-15 * place);
    }

    private struct Counted : ICurve
    {
        public int Looks;

        public double At(double x)
        {
            Looks++;
            return x;
        }
    }
}
