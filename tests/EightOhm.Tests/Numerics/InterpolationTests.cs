using EightOhm.Numerics;

namespace EightOhm.Tests.Numerics;

public class InterpolationTests
{
    private static readonly double[] Xs = [1, 2, 4, 8], Ys = [10, 0, 6, -2];

    [Theory]
    [InlineData(1, 10)]
    [InlineData(1.25, 7.5)]
    [InlineData(2, 0)]
    [InlineData(3, 3)]
    [InlineData(7, 0)]
    [InlineData(8, -2)]
    public void Lines_between_the_points(double x, double y) => Assert.Equal(y, Interpolation.Linear(Xs, Ys, x), 1e-12);

    [Theory]
    [InlineData(0, 20)]
    [InlineData(10, -6)]
    public void Outside_the_first_and_the_last_line_go_on(double x, double y) => Assert.Equal(y, Interpolation.Linear(Xs, Ys, x), 1e-12);

    [Fact]
    public void One_point_is_its_value_everywhere() => Assert.Equal(3, Interpolation.Linear([5], [3], 100));

    [Fact]
    public void The_least_of_a_period_is_found_between_the_looks()
    {
        var (x, value) = Scan.LeastOfPeriod(t => -Math.Cos(t - 1.234), 2 * Math.PI, 9, 1e-6);
        Assert.Equal(1.234, x, 1e-4);
        Assert.Equal(-1, value, 1e-8);
    }
}
