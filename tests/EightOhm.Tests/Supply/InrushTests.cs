using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Tests.Supply;

/// <summary>The invented Tern switched on: 230 V, 2 × 37.1 V without load, 2 × 30 mF, 2.25 Ω before the core, 85 mΩ a half winding.</summary>
public class InrushTests
{
    [Fact]
    public void Both_worst_moments_with_and_without_the_limiter()
    {
        var peaks = InrushPeaks.Of(Tern(InrushLimiter.Resistor(27.Ohm)));
        Assert.Equal(10.35, peaks.CapacitorsLimited.Amperes, 0.005);
        Assert.Equal(82.3, peaks.Capacitors.Amperes, 0.05);
        Assert.Equal(144.6, peaks.Core.Amperes, 0.05);
        Assert.Equal("the core, switched on at zero", peaks.Governs);
        Assert.Equal(peaks.CoreLimited, peaks.Governing);
    }

    [Fact]
    public void The_limiter_takes_less_than_a_step_of_voltage_would_leave_in_it()
    {
        var run = SoftStart.Of(Tern(InrushLimiter.Resistor(27.Ohm)));
        Assert.Equal(55.2, run.LimiterEnergy.Joules, 0.05);
        Assert.Equal(0.341, run.TimeTo90Percent!.Value.Seconds, 0.0005);
        Assert.Equal(79.8, run.Stored.Joules, 0.05);
        Assert.Equal(69.7, run.LimiterEnergyByStep.Joules, 0.05); // the usual estimate, 26 % too much
        Assert.Equal(run.Pulse.Si * 27, run.LimiterEnergy.Joules, 1e-9);
        Assert.True(run.BypassPeak < run.Peak);
    }

    [Fact]
    public void A_bypass_that_comes_too_soon_makes_a_second_surge_or_is_refused()
    {
        var soon = SoftStart.Of(Tern(InrushLimiter.Resistor(27.Ohm), 0.35.s));
        Assert.True(soon.BypassPeak > 5 * SoftStart.Of(Tern(InrushLimiter.Resistor(27.Ohm))).BypassPeak);
        // Bypassed before 90 %: a figure says what the rails lack, and the run goes on.
        var early = SoftStart.Of(Tern(InrushLimiter.Resistor(27.Ohm), 0.2.s));
        Assert.Null(early.TimeTo90Percent);
        Assert.Equal((0.9 * early.FinalRail.Volts) - early.RailAtBypass.Volts, early.Short.Volts, 1e-9);
        Assert.True(early.Short > 1.V && early.BypassPeak > soon.BypassPeak);
        Assert.Equal(0, soon.Short.Volts);
    }

    [Fact]
    public void A_thermistor_warms_and_gives_way()
    {
        var cold = SoftStart.Of(Tern(InrushLimiter.Resistor(27.Ohm)));
        var warm = SoftStart.Of(Tern(InrushLimiter.Thermistor(27.Ohm, 3000, 2.5.J_per_K, 30.K_per_W)));
        Assert.True(warm.Peak > cold.Peak); // it has warmed before the second crest comes
        Assert.True(warm.LimiterAtBypass < 20.Ohm);
        Assert.True(warm.TimeTo90Percent < cold.TimeTo90Percent);
        var heavy = SoftStart.Of(Tern(InrushLimiter.Thermistor(27.Ohm, 3000, 1e9.J_per_K, 30.K_per_W)));
        Assert.Equal(cold.LimiterEnergy.Joules, heavy.LimiterEnergy.Joules, 1e-5); // one that does not warm is a resistor
    }

    [Fact]
    public void A_reservoir_that_follows_the_winding_stands_at_its_crest_less_Ohm_s_law()
    {
        // 20 µF behind some ohms charge in tens of microseconds: at the crest the path carries the idle current, and the sine through an RC of which 1/(1 + (ω·τ)²) is in phase.
        var on = new SwitchOn(230.V, 50.Hz, 30.V, 20.uF, 10.Ohm, 0.5.Ohm, 1.V, InrushLimiter.Resistor(60.Ohm), 40.ms, 2.A);
        var path = 0.5 + (2 * (10 + 60) / Math.Pow(230.0 / 30, 2));
        var turn = 100 * Math.PI * path * 20e-6;
        Assert.Equal((30 * Math.Sqrt(2) / (1 + (turn * turn))) - 1 - (2 * path), SoftStart.Of(on).RailAtBypass.Volts, 1e-3);
        Assert.Throws<RefusedValueException>(() => new SwitchOn(230.V, 50.Hz, 30.V, 20.uF, 10.Ohm, 0.5.Ohm, 1.V, InrushLimiter.None, 60.1.s));
    }

    [Fact]
    public void Switched_on_at_zero_the_capacitors_draw_less_at_first()
    {
        var zero = SoftStart.Of(new SwitchOn(230.V, 50.Hz, 37.1.V, 30.mF, 2.25.Ohm, 85.mOhm, 0.9.V, InrushLimiter.None, 1.s, closes: 0.deg));
        Assert.True(zero.Peak < SoftStart.Of(Tern(InrushLimiter.None)).Peak);
    }

    [Fact]
    public void A_failed_bypass_burns_the_limiter_while_playing() =>
        Assert.Equal(142.8, (double)Inrush.FailedBypassDissipation(2.3.A, 27.Ohm).Watts, 0.05);

    [Fact]
    public void A_supply_without_resistance_is_refused() =>
        Assert.Contains("no bound", Assert.Throws<RefusedValueException>(() => new SwitchOn(230.V, 50.Hz, 37.1.V, 30.mF, 0.Ohm, 85.mOhm, 0.9.V, InrushLimiter.None, 1.s)).Message, StringComparison.Ordinal);

    private static SwitchOn Tern(InrushLimiter limiter, Duration? bypass = null) =>
        new(230.V, 50.Hz, 37.1.V, 30.mF, 2.25.Ohm, 85.mOhm, 0.9.V, limiter, bypass ?? 1.s);
}
