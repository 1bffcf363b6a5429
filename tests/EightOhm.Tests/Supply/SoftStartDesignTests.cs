using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Tests.Supply;

/// <summary>The limiter and its bypass with an idle current, and what a diode sees.</summary>
public class SoftStartDesignTests
{
    private static SwitchOn On(ElectricCurrent idle, double ohms = 27) =>
        new(230.V, 50.Hz, 37.1.V, 30.mF, 2.25.Ohm, 0.085.Ohm, 0.9.V, InrushLimiter.Resistor(ElectricResistance.FromOhms(ohms)), 1.s, idle);

    [Fact]
    public void Idle_current_leaves_a_second_surge_however_long_one_waits()
    {
        var settled = SoftStartDesign.AfterSettling(On(0.7.A));
        var longer = SoftStart.Of(On(0.7.A).With(InrushLimiter.Resistor(27.Ohm), 6.s));
        Assert.Equal(1, settled.BypassPeak / longer.BypassPeak, 0.005);
        Assert.True(settled.BypassPeak > 5.A);
        Assert.True(SoftStartDesign.AfterSettling(On(0.A)).BypassPeak < 0.3.A);
        var refused = Assert.Throws<ShortfallException>(() => SoftStartDesign.LeastDelay(On(0.7.A), settled.BypassPeak / 2));
        Assert.Contains("smaller limiter", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_least_delay_is_just_enough()
    {
        ElectricCurrent most = 9.5.A;
        var delay = SoftStartDesign.LeastDelay(On(0.7.A), most);
        ElectricCurrent After(Duration t) => SoftStart.Of(On(0.7.A).With(InrushLimiter.Resistor(27.Ohm), t)).BypassPeak;
        Assert.True(After(delay) <= most);
        Assert.True(After(delay - 10.ms) > most);
    }

    [Fact]
    public void The_window_of_the_resistor_is_bounded_by_both_surges()
    {
        var window = SoftStartDesign.Resistors(On(0.7.A), 12.A);
        Assert.True(window.Open, window.ToString());
        ElectricResistance least = window.Least, largest = window.Largest!.Value;
        Assert.Equal(12, SoftStart.Of(On(0.7.A, least.Ohms)).Peak.Amperes, 0.03);
        Assert.Equal(12, SoftStartDesign.AfterSettling(On(0.7.A, largest.Ohms)).BypassPeak.Amperes, 0.05);
        Assert.Null(SoftStartDesign.Resistors(On(0.A), 12.A).Largest);
        // Less than the second surge of any resistor that holds the first one.
        var shut = SoftStartDesign.Resistors(On(0.7.A), 6.A);
        Assert.False(shut.Open, shut.ToString());
        Assert.Contains("none for", shut.ToString(), StringComparison.Ordinal);
        Assert.True(shut.Short > 0.Ohm);
    }

    [Fact]
    public void A_diode_carries_half_the_turns_ratio_times_the_primary()
    {
        var run = SoftStart.Of(On(0.7.A));
        Assert.Equal(230 / 37.1 / 2 * Math.Max(run.Peak.Amperes, run.BypassPeak.Amperes), run.DiodePeak.Amperes, 1e-9);
        Assert.True(run.GreatestHalfCycle.Si < run.WholePulse.Si);
        var small = SurgeVerdict.Judge(run, 20.A, 8.3.ms);
        Assert.False(small.Survives);
        Assert.Contains("does not survive", small.ToString(), StringComparison.Ordinal);
        var large = SurgeVerdict.Judge(run, 400.A, 8.3.ms);
        Assert.True(large.Survives);
        Assert.Equal(400 * Math.Sqrt(0.83), large.AllowedPeak.Amperes, 1e-9);
    }

    [Fact]
    public void A_fuse_ignores_what_is_below_its_first_gate()
    {
        var slow = new FuseOpening([new(2.1, 120.s), new(2.75, 10.s), new(4, 3.s), new(10, 300.ms)]);
        // A failed bypass: the rms current of full load through the limiter.
        Assert.Null(slow.Latest(4.A, 2.3.A));
        Assert.Equal(3.s, slow.Latest(4.A, 20.A));
        Assert.Equal(20 / 4.0, slow.LargestRating(20.A, 5.s)!.Value.Amperes, 1e-12);
        Assert.Null(slow.LargestRating(20.A, 100.ms));
        Assert.Throws<RefusedValueException>(() => new FuseOpening([new(4, 3.s), new(2.1, 120.s)]));
        Assert.Throws<RefusedValueException>(() => new FuseOpening([new(2.1, 3.s), new(4, 120.s)]));
        Assert.Throws<RefusedValueException>(() => new FuseOpening([]));
    }
}
