using EightOhm.Devices;
using EightOhm.Protection;
using EightOhm.Quantities;
using EightOhm.SafeAreas;
using EightOhm.Tests.Devices;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Tests.Protection;

/// <summary>How long a transistor stands a short, and whether the table of faults believes that somebody ends it.</summary>
public class FaultEnduranceTests
{
    private static readonly SafeArea Area = new(Transistor.Load(Cards.Output));
    private static readonly FosterImpedance Impedance = new((0.08.K_per_W, 1.2.ms), (0.17.K_per_W, 11.ms), (0.33.K_per_W, 70.ms), (0.25.K_per_W, 500.ms));

    [Fact]
    public void A_sustained_short_with_the_limiter_at_work_is_not_for_ever()
    {
        // 2.37 A at 50 V against a dc area of 1.67 A at 80 °C: 100 ms are allowed, dc is not.
        var hold = FaultEndurance.Of(Area, 50.V, 2.37.A, 80.degC, Impedance);
        Assert.False(hold.ForEver);
        Assert.Equal(1.67, Area.LimitAt(50.V, SafeArea.Dc, 80.degC).Amperes, 0.02);
        Assert.True(hold.BySafeArea >= 100.ms, hold.ToString());
        Assert.Equal(134.56, hold.ByJunction!.Value.Milliseconds, 0.01);
        Assert.Equal(hold.Longest, hold.ByJunction < hold.BySafeArea ? hold.ByJunction : hold.BySafeArea);
        Assert.Equal(hold.Longest!.Value.Seconds / 2, hold.ActionTime()!.Value.Seconds, 1e-12);
    }

    [Fact]
    public void The_longest_pulse_just_allows_the_point()
    {
        var between = 0.5 * (Area.LimitAt(60.V, 100.ms, 60.degC).Amperes + Area.LimitAt(60.V, SafeArea.Dc, 60.degC).Amperes);
        Assert.Equal(100.ms, FaultEndurance.Of(Area, 60.V, between.A, 60.degC).BySafeArea);
        Assert.Equal(0.s, FaultEndurance.Of(Area, 60.V, 14.A, 60.degC).Longest);
        Assert.True(FaultEndurance.Of(Area, 60.V, 0.3.A, 60.degC, Impedance).ForEver);
        Assert.Null(FaultEndurance.Of(Area, 60.V, 0.3.A, 60.degC, Impedance).ActionTime());
        Assert.Throws<RefusedValueException>(() => FaultEndurance.Of(Area, 500.V, 1.A, 60.degC));
    }

    [Fact]
    public void A_power_that_never_reaches_the_rise_has_no_time()
    {
        Assert.Null(Impedance.TimeTo(83.01.K, 100.W));
        Assert.NotNull(Impedance.TimeTo(82.9.K, 100.W));
        foreach (var t in new[] { 1e-5, 1e-3, 0.05, 3 })
            Assert.Equal(1, Impedance.TimeTo(100.W * Impedance.At(t.s), 100.W)!.Value.Seconds / t, 1e-8);
    }

    [Fact]
    public void A_fault_is_answered_only_in_time()
    {
        var table = FaultTable.Empty
            .Within("sustained short", "detector opens the relay", 60.ms, 134.ms, "switch off and on")
            .Within("dc at the output", "relay opens", 200.ms, 100.ms, "by itself")
            .Within("over-temperature", "nothing yet", null, 10.s, "by itself");
        Assert.Equal([.. table.Missing, "dc at the output", "over-temperature"], table.Unanswered);
        Assert.DoesNotContain("sustained short", table.Missing);
        Assert.Equal(100.ms, table.Lines[1].Short);
        Assert.True(table.Within("a fault that may last", "nobody", null, null, "by itself").Lines[^1].Answered);
        Assert.Contains("sustained short", FaultTable.Empty.Missing);
    }
}
