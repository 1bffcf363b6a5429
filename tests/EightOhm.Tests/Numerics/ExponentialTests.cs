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

    // 1 − (1 − e^(−x))/x from mpmath 1.3.0, 50 digits: where the subtraction loses digits, where the series ends, and beyond.
    [Theory]
    [InlineData(1e-17, 1e-17, 5e-18)]
    [InlineData(1e-5, 9.99995000016666625e-06, 4.99998333337499992e-06)]
    [InlineData(0.0099, 0.00985115631704284844, 0.00493370534920722788)]
    [InlineData(0.0101, 0.0100491662841226987, 0.0050330411759704291)]
    [InlineData(2, 0.864664716763387308, 0.567667641618306346)]
    public void What_is_gone_after_a_step_and_the_weight_of_a_ramp(double x, double gone, double ramp)
    {
        Assert.Equal(gone, Decay.Gone(x), 2e-15 * gone);
        Assert.Equal(ramp, Decay.Ramp(x), 1e-12 * ramp);
    }

    [Fact]
    public void The_current_into_a_coil_begins_as_its_inductance_says() =>
        // V·t/L of 1 mH after 1e-20 s: 1 − e^(−t·R/L) subtracted would be nothing.
        Assert.Equal(1e-17, EightOhm.Loads.ImpulseArea.StepPerVolt(new EightOhm.Loads.SeriesNetwork(8, 1e-3, 1, 1, 0), 1e-20), 1e-30);

    [Fact]
    public void The_ends()
    {
        Assert.Equal((0, 0, 1), (Exponential.Expm1(0), Exponential.Log1p(0), Exponential.Expm1Over(0, 1)));
        Assert.Equal(-1, Exponential.Expm1(-800));
        Assert.Equal(double.PositiveInfinity, Exponential.Expm1(800));
    }
}
