using EightOhm.Numerics;

namespace EightOhm.Tests.Numerics;

public class ExponentialTests
{
    // numpy 1.26, expm1 and log1p.
    [Theory]
    [InlineData(1e-17, 1e-17, 1e-17)]
    [InlineData(-1e-17, -1e-17, -1e-17)]
    [InlineData(1e-10, 1.00000000005e-10, 9.9999999995e-11)]
    [InlineData(1e-5, 1.0000050000166668e-05, 9.9999500003333318e-06)]
    [InlineData(-0.3, -0.25918177931828212, -0.35667494393873239)]
    [InlineData(0.7, 1.0137527074704766, 0.53062825106217038)]
    [InlineData(40, 2.3538526683701997e+17, 3.7135720667043080)]
    public void Small_differences_keep_their_digits(double x, double expm1, double log1p)
    {
        Assert.Equal(expm1, Exponential.Expm1(x), 1e-15 * Math.Abs(expm1));
        Assert.Equal(log1p, Exponential.Log1p(x), 1e-15 * Math.Abs(log1p));
        Assert.Equal(expm1 / x, Exponential.Expm1Over(x, Math.Exp(x)), 3e-13 * Math.Abs(expm1 / x));
    }

    [Fact]
    public void The_framework_s_own_lose_them() => Assert.Equal((0, 0), (double.ExpM1(1e-17), double.LogP1(1e-17)));

    [Fact]
    public void The_ends()
    {
        Assert.Equal((0, 0, 1), (Exponential.Expm1(0), Exponential.Log1p(0), Exponential.Expm1Over(0, 1)));
        Assert.Equal(-1, Exponential.Expm1(-800));
        Assert.Equal(double.PositiveInfinity, Exponential.Expm1(800));
    }
}
