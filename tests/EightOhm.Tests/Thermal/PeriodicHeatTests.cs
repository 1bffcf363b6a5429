using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Tests.Thermal;

public class PeriodicHeatTests
{
    private static readonly StageDissipation Three = new(46.V, 3, 0.Ohm), Single = new(46.V, 1, 0.Ohm);
    private static readonly FosterImpedance One = new((0.5.K_per_W, 0.1.s));
    private static readonly FosterImpedance Device = new((0.08.K_per_W, 1.2.ms), (0.17.K_per_W, 11.ms), (0.33.K_per_W, 70.ms), (0.25.K_per_W, 500.ms));

    [Theory]
    [InlineData(0.001, 0.009)]
    [InlineData(0.02, 0.48)]
    [InlineData(5, 5)]
    [InlineData(1e-7, 3e-7)]
    public void Bursts_on_one_time_constant_are_the_textbook_quotient(double on, double off)
    {
        var rise = One.Under(PeriodicHeat.Bursts(100.W, on.s, Ratio.FromDecimalFractions(on / (on + off))));
        double tau = 0.1, expected = 50 * (1 - Math.Exp(-on / tau)) / (1 - Math.Exp(-(on + off) / tau));
        Assert.Equal(expected, rise.Peak.Kelvins, 1e-7 * expected);
        if (on < 1)
            Assert.Equal(on, rise.PeakAt.Seconds, 1e-9 * on); // later it stays at the top
        Assert.Equal(expected * Math.Exp(-off / tau), rise.Minimum.Kelvins, 1e-7 * expected);
        Assert.Equal(50 * on / (on + off), rise.Mean.Kelvins, 1e-9);
    }

    [Fact]
    public void The_mean_over_the_period_is_that_of_the_mean_power()
    {
        var heat = Three.OverPeriod(30.V, 8.Ohm, 0.deg, 50.Hz);
        var rise = Device.Under(heat);
        Assert.Equal(rise.Mean.Kelvins, rise.Rise.Y.Average(), 1e-6);
        Assert.Equal(0.02, rise.Rise.End.Seconds, 1e-12);
        Assert.True(rise.Minimum < rise.Mean && rise.Mean < rise.Peak && rise.Peak < rise.PeakPowerForEver);
    }

    [Fact]
    public void At_a_high_frequency_only_the_mean_counts_and_at_a_low_one_the_peak()
    {
        double Over(double f) => Device.Under(Three.OverPeriod(29.28.V, 4.Ohm, 0.deg, f.Hz)) is var r ? r.Peak / r.Mean : 0;
        Assert.Equal(1, Over(20e3), 0.005);
        Assert.True(Over(20) > 1.39);
        Assert.True(Over(0.01) > 2.4);
    }

    [Fact]
    public void The_sampling_error_falls_with_the_square_of_the_samples()
    {
        double Peak(int n) => Device.Under(Three.OverPeriod(29.28.V, 4.Ohm, 0.deg, 20.Hz, n)).Peak.Kelvins;
        var best = Peak(32_000);
        Assert.Equal(best, Peak(2000), 1e-5 * best);
        Assert.InRange(Math.Abs(Peak(200) - best) / Math.Abs(Peak(400) - best), 2.5, 7);
    }

    [Fact]
    public void Noise_like_music_heats_otherwise_than_a_sine_of_the_same_power()
    {
        // 22.5 W in 4 Ω on 46 V: Gaussian levels make 64.55 W in both sides together, a sine 75.72 W.
        var sigma = Math.Sqrt(22.5 * 4);
        double[] levels = [.. Enumerable.Range(0, 20_000).Select(i => sigma * MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, (i + 0.5) / 20_000))];
        Assert.Equal(64.55, 2 * (double)Single.OverPiece(new([.. levels.Select(v => v.V)], (10.0 / 20_000).s), 4.Ohm).Mean.Watts, 0.03);
        Assert.Equal(75.72, 2 * (double)Single.OverPeriod((sigma * Math.Sqrt(2)).V, 4.Ohm, 0.deg, 20.Hz).Mean.Watts, 0.01);
    }

    [Fact]
    public void A_load_with_a_phase_heats_a_junction_far_more_than_its_mean_tells()
    {
        // 180 W into 4 Ω at 20 Hz on the rail of that level: 32.7 K above the case at 45°, and a resistor would make 17.9 K.
        var rated = new StageDissipation(45.43.V, 3, 0.22.Ohm);
        Assert.Equal(32.7, Device.Under(rated.OverPeriod(37.95.V, 4.Ohm, 45.deg, 20.Hz)).Peak.Kelvins, 0.05);
        Assert.Equal(17.9, Device.Under(rated.OverPeriod(37.95.V, 4.Ohm, 0.deg, 20.Hz)).Peak.Kelvins, 0.05);
        Assert.Equal(20.76, Device.Under(Three.OverPeriod((2 * 46 / Math.PI).V, 4.Ohm, 0.deg, 20.Hz)).Peak.Kelvins, 0.005);
    }

    [Fact]
    public void A_triangle_in_samples_is_exact()
    {
        // From 0 to 10 W and back in 2 s, told in 4 samples and in 400: the same lines.
        double Peak(int n) => One.Under(PeriodicHeat.Sampled([.. Enumerable.Range(0, n).Select(i => (10 - Math.Abs(10 - (20.0 * i / n))).W)], 2.s)).Rise.Y[(n / 2) - 1];
        Assert.Equal(Peak(400), Peak(4), 1e-10);
    }

    [Fact]
    public void What_is_no_heat_is_refused()
    {
        Assert.Contains("sample 2 in W", Assert.Throws<RefusedValueException>(() => PeriodicHeat.Sampled([1.W, -(1.W)], 1.s)).Message, StringComparison.Ordinal);
        Assert.Throws<RefusedValueException>(() => PeriodicHeat.Sampled([1.W], 1.s));
        Assert.Throws<RefusedValueException>(() => PeriodicHeat.Bursts(1.W, 0.s, 50.percent));
        Assert.Contains("below 100 %", Assert.Throws<RefusedValueException>(() => PeriodicHeat.Bursts(1.W, 1.s, 100.percent)).Message, StringComparison.Ordinal);
    }
}
