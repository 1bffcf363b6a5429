using EightOhm.Display.Figures;

namespace EightOhm.Display.Tests.Figures;

public sealed class SweepTests
{
    [Fact]
    public void Points_of_a_logarithmic_sweep_have_equal_ratios_and_exact_ends()
    {
        var points = Sweep.Log(20, 200e3);
        Assert.Equal((81, 20.0, 200e3), (points.Length, points[0], points[^1]));
        for (var i = 1; i < points.Length; i++)
            Assert.Equal(Math.Pow(10, 0.05), points[i] / points[i - 1], 1e-12);
    }

    [Fact]
    public void A_sweep_shorter_than_a_step_has_its_two_ends() => Assert.Equal([10.0, 10.1], Sweep.Log(10, 10.1));

    [Theory]
    [InlineData(0, 1, 20)]
    [InlineData(-1, 1, 20)]
    [InlineData(10, 10, 20)]
    [InlineData(10, double.PositiveInfinity, 20)]
    [InlineData(double.NaN, 1, 20)]
    [InlineData(1, 10, 0)]
    public void Ends_that_no_logarithm_has_are_refused(double from, double to, int perDecade) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Sweep.Log(from, to, perDecade));
}
