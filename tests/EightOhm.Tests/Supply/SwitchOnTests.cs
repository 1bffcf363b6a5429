using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Tests.Supply;

/// <summary>A switch-on with what flows meanwhile, at any mains, and its fuse.</summary>
public class SwitchOnTests
{
    private static readonly DualRailSupply Tern = new(new DualWinding(35.V, 6.percent, 800.VA), 50.Hz, 0.9.V, 30.mF) { DiodeResistance = 20.mOhm };

    [Fact]
    public void A_supply_knows_what_is_switched_on()
    {
        var on = Start(0.A);
        var turns = 230 / 37.1;
        Assert.Equal(turns, on.Turns, 1e-12);
        Assert.Equal(0.5 + (turns * turns * Tern.SharedResistance.Ohms), on.Primary.Ohms, 1e-12);
        Assert.Equal((Tern.HalfResistance + 20.mOhm).Ohms, on.HalfResistance.Ohms, 1e-12);
    }

    [Fact]
    public void Idle_current_and_high_mains_make_the_bypass_surge()
    {
        SoftStart none = SoftStart.Of(Start(0.A)), idle = SoftStart.Of(Start(0.7.A)), high = SoftStart.Of(Start(0.7.A).AtMains(10.percent));
        Assert.Equal(1.43, none.BypassPeak.Amperes, 0.01);
        Assert.Equal(2.01, none.Pulse.Si, 0.01);
        Assert.Equal(8.1, idle.BypassPeak.Amperes, 0.05);
        Assert.Equal(2.35, idle.Pulse.Si, 0.01);
        Assert.Equal(2.59, idle.WholePulse.Si, 0.01);
        Assert.Equal(3.06, high.WholePulse.Si, 0.01);
        Assert.True(none.BypassPulse.Si < 0.01 && idle.BypassPulse.Si > 0.2); // the surge that an unloaded start does not have
        Assert.True(idle.Short > 0.V && idle.TimeTo90Percent is null);
        Assert.Equal(1.1 * 230, Start(0.A).AtMains(10.percent).Line.Volts, 1e-9);
        Assert.Equal(1.1 * 37.1, Start(0.A).AtMains(10.percent).HalfWinding.Volts, 1e-9);
        Assert.Equal(Start(0.A).Primary, Start(0.A).AtMains(10.percent).Primary);
    }

    [Fact]
    public void A_fuse_says_what_it_lacks()
    {
        var pulse = SoftStart.Of(Start(0.7.A).AtMains(10.percent)).Pulse;
        var small = FuseVerdict.Judge(2.3.A, pulse, 2.5.A, new JouleIntegral(5), 75.percent, 100.percent, 22.percent);
        Assert.False(small.Holds);
        Assert.Equal((2.3 / 0.75) - 2.5, small.ShortRating.Amperes, 1e-12);
        Assert.Equal((pulse.Si / 0.22) - 5, small.ShortMelting.Si, 1e-12);
        Assert.Matches("rating is short by .* and the melting I²t is short by", small.ToString());
        var good = FuseVerdict.Judge(2.3.A, pulse, 4.A, new JouleIntegral(40), 75.percent, 100.percent, 22.percent);
        Assert.Equal((true, 0.0, 0.0), (good.Holds, good.ShortRating.Amperes, good.ShortMelting.Si));
        Assert.False(FuseVerdict.Judge(2.3.A, pulse, 4.A, new JouleIntegral(5), 75.percent, 100.percent, 22.percent).Holds);
        Assert.False(FuseVerdict.Judge(2.3.A, pulse, 3.A, new JouleIntegral(40), 75.percent, 100.percent, 22.percent).Holds);
    }

    [Fact]
    public void The_textbook_s_rectifier_takes_peak_before_ripple_and_refuses_them_exchanged()
    {
        Assert.Equal(Math.Sqrt(2 * 3 / 50.0), PeakRectifier.ConductionAngle(50.V, 3.V).Radians, 1e-12);
        foreach (var exchanged in new Func<object>[] { () => PeakRectifier.ConductionAngle(3.V, 50.V), () => PeakRectifier.HalfWavePeak(1.A, 3.V, 50.V), () => PeakRectifier.FullWavePeak(1.A, 3.V, 50.V), () => PeakRectifier.HalfWaveMean(1.A, 3.V, 50.V), () => PeakRectifier.HalfWaveReservoir(3.V, 8.Ohm, 50.Hz, 50.V) })
            Assert.Contains("were the two exchanged", Assert.Throws<RefusedValueException>(exchanged).Message, StringComparison.Ordinal);
    }

    private static SwitchOn Start(ElectricCurrent idle) => Tern.SwitchedOn(230.V, 0.5.Ohm, InrushLimiter.Resistor(27.Ohm), 1.s, idle);
}
