using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Quantities;

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

    [Fact]
    public void A_sweep_of_quantities_is_the_sweep_of_their_numbers_with_its_ends_as_given()
    {
        var f = Sweep.Log(20.Hz, 20.kHz);
        Assert.Equal((61, 20.Hz, 20.kHz), (f.Length, f[0], f[^1]));
        Assert.Equal(Sweep.Log(20, 20e3), f.Select(x => x.Hertz));
        Assert.Equal([0.V, 10.V, 20.V, 30.V, 40.V], Sweep.Linear(0.V, 40.V, 5));
        Assert.Equal([40.V, 20.V, 0.V], Sweep.Linear(40.V, 0.V, 3));
        Assert.Equal([25.degC, 50.degC, 75.degC], Sweep.Linear(25.degC, 75.degC, 3));
        Assert.Equal([5.W, 10.W, 15.W, 20.W], Sweep.Step(5.W, 20.W, by: 5.W));
        Assert.Equal([0.1, 0.2, 0.3], Sweep.Step(0.1, 0.3, by: 0.1), (a, b) => Math.Abs(a - b) < 1e-12);
        Assert.Equal([1.V, 3.V], Sweep.Step(1.V, 4.V, by: 2.V));
        Assert.Equal([100.Hz, 1.kHz, 10.kHz], Sweep.Decades(20.Hz, 20.kHz));
        Assert.Equal([1.Hz, 10.Hz], Sweep.Decades(1.Hz, 10.Hz));
    }

    [Fact]
    public void What_cannot_be_swept_is_refused_in_words()
    {
        Assert.Contains("above 0", Assert.Throws<ArgumentOutOfRangeException>(() => Sweep.Log(0.Hz, 1.kHz)).Message, StringComparison.Ordinal);
        Assert.Contains("Sweep.Linear", Assert.Throws<ArgumentException>(() => Sweep.Log(20.degC, 40.degC)).Message, StringComparison.Ordinal);
        Assert.Contains("40 V", Assert.Throws<ArgumentOutOfRangeException>(() => Sweep.Linear(40.V, 40.V)).Message, StringComparison.Ordinal);
        Assert.Contains("the step was 0 W", Assert.Throws<ArgumentOutOfRangeException>(() => Sweep.Step(5.W, 20.W, by: 0.W)).Message, StringComparison.Ordinal);
        Assert.Contains("a million", Assert.Throws<ArgumentOutOfRangeException>(() => Sweep.Step(0.V, 1.kV, by: 1.nV)).Message, StringComparison.Ordinal);
        Assert.Contains("not be below", Assert.Throws<ArgumentOutOfRangeException>(() => Sweep.Decades(1.kHz, 1.Hz)).Message, StringComparison.Ordinal);
    }
}
