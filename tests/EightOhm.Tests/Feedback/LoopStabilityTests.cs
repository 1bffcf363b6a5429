using EightOhm.Feedback;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Feedback;

public class LoopStabilityTests
{
    [Fact]
    public void A_phase_that_touches_minus_180_at_0_Hz_alone_is_stable()
    {
        // (10s + 1)/(s²·(s + 10)): a tool reported a gain margin of 0 at zero frequency. Its closed loop has s³ + 10s² + 10s + 1.
        var loop = TransferFunction.OfPolynomials([1, 10], [0, 0, 10, 1]);
        var stability = LoopStability.Of(loop);
        Assert.True(stability.IsStable);
        Assert.Empty(stability.PhaseCrossings);
        Assert.Null(stability.GainMargin);
        Assert.Null(stability.GainReductionMargin);
        double[] poles = [.. stability.ClosedLoopPoles.Select(p => p.Frequency.Hertz * 2 * Math.PI)];
        Assert.Equal(0.11252, poles[0], 1e-4);
        Assert.Equal(1, poles[1], 1e-9);
        Assert.Equal(8.88748, poles[2], 1e-4);
    }

    [Fact]
    public void An_unstable_loop_says_so_and_quotes_no_margin()
    {
        var pole = TransferFunction.Pole(100.kHz);
        var stability = LoopStability.Of(20 * pole * pole * pole);
        Assert.False(stability.IsStable);
        Assert.Null(stability.PhaseMargin);
        Assert.Null(stability.GainMargin);
        Assert.Null(stability.SensitivityPeak);
        var growing = Assert.Single(stability.UnstablePoles);
        Assert.True(growing.IsPair && growing.Damping < 0);
        Assert.StartsWith("unstable", stability.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("phase margin", stability.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_conditionally_stable_loop_has_a_margin_each_way()
    {
        // Two integrators more than one, taken back by two zeros before the crossover.
        var loop = TransferFunction.Integrator(10.kHz) * TransferFunction.Integrator(10.kHz) * TransferFunction.Integrator(10.kHz)
            * TransferFunction.Zero(1.kHz) * TransferFunction.Zero(1.kHz) * TransferFunction.Pole(10.MHz) * TransferFunction.Pole(10.MHz);
        var stability = LoopStability.Of(loop);
        Assert.True(stability.IsStable);
        Assert.Equal(2, stability.PhaseCrossings.Count);
        Assert.True(stability.GainMargin!.Value.Decibels > 10);
        Assert.True(stability.GainReductionMargin!.Value.Decibels > 10);
        // Less gain than that, and it is not.
        Assert.False(LoopStability.Of(loop * (0.9 / stability.GainReductionMargin.Value.Ratio)).IsStable);
        Assert.True(LoopStability.Of(loop * (1.1 / stability.GainReductionMargin.Value.Ratio)).IsStable);
        Assert.False(LoopStability.Of(loop * (1.1 * stability.GainMargin.Value.Ratio)).IsStable);
        Assert.True(LoopStability.Of(loop * (0.9 * stability.GainMargin.Value.Ratio)).IsStable);
    }

    [Fact]
    public void Every_crossing_is_found()
    {
        // A resonance beyond the crossover lifts the gain above one again.
        var loop = TransferFunction.Integrator(100.kHz) * TransferFunction.Pair(1.MHz, 50);
        var stability = LoopStability.Of(loop);
        Assert.Equal(3, stability.GainCrossings.Count);
        Assert.False(stability.IsStable);
        Assert.True(Math.Abs(LoopStability.Of(TransferFunction.Integrator(100.kHz)).PhaseMargin!.Value.Degrees - 90) < 1e-9);
    }

    [Fact]
    public void Three_frequencies_have_three_names()
    {
        var frequencies = UnityFrequencies.Of(TransferFunction.Integrator(26.6.MHz), TransferFunction.Constant(1 / 23.6));
        Assert.Equal(26.6e6, frequencies.OpenLoopUnity!.Value.Hertz, 1.0);
        Assert.Equal(26.6e6 / 23.6, frequencies.LoopCrossover!.Value.Hertz, 1.0);
        Assert.Equal(26.6e6 / 23.6, frequencies.ClosedLoopBandwidth!.Value.Hertz, 1.0);
    }

    [Fact]
    public void The_naive_margins_are_other_numbers()
    {
        // Case 19: 1.5 MHz, a pole at 8 MHz, 12 ns. At the asymptote's 1.5 MHz the phase would leave 72.90°.
        var loop = TransferFunction.Integrator(1.5.MHz) * TransferFunction.Pole(8.MHz) * TransferFunction.Delayed(12.ns);
        var stability = LoopStability.Of(loop);
        Assert.Equal(73.18, stability.PhaseMargin!.Value.Degrees, 5e-3);
        Assert.Equal(19.67, stability.GainMargin!.Value.Decibels, 5e-3);
        Assert.Equal(1.4751e6, stability.Crossover!.Value.Hertz, 50.0);
        Assert.Equal(1.244, stability.SensitivityPeak!.Value, 5e-4);
        Assert.Equal(4.27e6, stability.SensitivityPeakFrequency!.Value.Hertz, 5e3);
        Assert.True(Math.Abs(180 + loop.Phase(1.5.MHz).Degrees - 72.90) < 5e-3);
    }

    [Fact]
    public void Harmonics_are_each_divided_at_their_own_frequency()
    {
        Ratio[] before = [.. new[] { 40.0, 250, 0, 120, 0, 70, 0, 45 }.Select(x => x.ppm)];
        var left = LoopHarmonics.Of(TransferFunction.Integrator(1.11.MHz), 20.kHz, before);
        Assert.Equal(20.70, left.After.PartsPerMillion, 0.02);
        Assert.True(Math.Abs((left.Before / (1.11e6 / 2e4)).PartsPerMillion - 5.27) < 0.05); // all by the fundamental's loop gain
        var unstable = 1e6 * TransferFunction.Pole(1.kHz) * TransferFunction.Pole(1.kHz) * TransferFunction.Pole(1.kHz);
        Assert.Contains("unstable", Assert.Throws<InvalidOperationException>(() => LoopHarmonics.Of(unstable, 1.kHz, before)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Degeneration_buys_slew_rate_at_the_price_of_noise()
    {
        var points = SlewTrade.Over(1.15.MHz, 23.6.ratio, 4.mA, [0.Ohm, 22.Ohm, 47.Ohm, 100.Ohm]);
        foreach (var (point, picofarads) in points.Zip([457.0, 168, 98, 52]))
            Assert.InRange(point.Capacitor.Farads * 1e12, picofarads - 1, picofarads + 1);
        Assert.True(points.Zip(points.Skip(1)).All(p => p.First.SlewRate < p.Second.SlewRate && p.First.NoiseDensity < p.Second.NoiseDensity));
        // Undegenerated it is 4π·V_T·G for a hertz of crossover, whatever the tail current.
        Assert.Equal(7.62, points[0].SlewRate.VoltsPerSeconds / 1.15e6, 0.01);
    }

    [Fact]
    public void Output_inclusive_compensation_puts_the_followers_poles_into_the_inner_loop()
    {
        var amplifier = new MillerAmplifier
        {
            FirstTransconductance = (1.0 / 60).S, SecondTransconductance = 40.mS, Capacitor = 100.pF, InputResistance = 200.kOhm, InputCapacitance = 40.pF,
            OutputResistance = 100.kOhm, OutputCapacitance = 30.pF, Followers = TransferFunction.Pole(8.MHz) * TransferFunction.Pole(40.MHz), Feedback = TransferFunction.Constant(1 / 23.6),
        };
        Assert.True(LoopStability.Of(amplifier.OuterLoop()).IsStable);
        Assert.True(LoopStability.Of(amplifier.InnerLoop()).IsStable);
        // The same slow followers inside: the outer loop alone would look splendid, 90° of margin at 1.1 MHz.
        var inclusive = amplifier with { IsOutputInclusive = true };
        Assert.False(LoopStability.Of(inclusive.InnerLoop()).IsStable);
        Assert.False(LoopStability.Of(inclusive.OuterLoop()).IsStable);
        Assert.False(inclusive.ClosedLoop().IsStable);
    }
}
