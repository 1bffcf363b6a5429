using EightOhm.Devices;
using EightOhm.OutputStages;
using EightOhm.Protection;
using EightOhm.Quantities;
using EightOhm.SafeAreas;
using EightOhm.Tests.Devices;
using UnitsNet;

namespace EightOhm.Tests.Protection;

/// <summary>The limiter of the demo as its parts may come out, from rest, and into a short: what nominal parts on a sagged rail hide.</summary>
public class LimiterSpreadTests
{
    private static readonly VoltageCurrentLimiter Tern = new(220.Ohm, 390.Ohm, 22.kOhm, 0.22.Ohm);
    private static readonly SafeArea Card = new(Transistor.Load(Cards.Output));
    private static readonly DeratedArea Pulse = Card.For(80.degC, 100.ms), Dc = Card.For(80.degC, SafeArea.Dc);

    [Fact]
    public void A_spread_is_a_limiter_of_those_parts()
    {
        var off = Tern.WithSpread(5.percent, (-20).mV, 1.percent, (-1).percent, 2.percent);
        var built = new VoltageCurrentLimiter(222.2.Ohm, 386.1.Ohm, 22.44.kOhm, 0.231.Ohm, 0.63.V);
        foreach (var v in new[] { 0, 10, 46, 90 })
        {
            Assert.Equal(built.CurrentAt(v.V, 40.degC).Amperes, off.CurrentAt(v.V, 40.degC).Amperes, 1e-12);
            Assert.Equal(built.CurrentAtTransistor(v.V).Amperes, off.CurrentAtTransistor(v.V).Amperes, 1e-12);
        }

        Assert.Equal(27.54e3, Tern.WithSecondSlope(27.kOhm, 46.V).WithSpread(R_sl: 2.percent).SecondSlope!.Value.Ohms, 1e-6);
        Assert.Equal(Tern, Tern.WithSpread());
        Assert.Throws<RefusedValueException>(() => Tern.WithSpread(R_3: (-100).percent));
        Assert.Throws<RefusedValueException>(() => Tern.WithSpread(V_BE: (-650).mV));
    }

    [Fact]
    public void Ordinary_parts_use_up_both_margins()
    {
        LoadEllipse load = new(45.5.V, 37.95.V, 4.Ohm, 45.deg, 0.22.Ohm, 3);
        double nominalArea = Tern.MarginTo(Pulse, 25.degC).Margin, nominalLoad = Tern.MarginTo(load, 40.degC).Margin;
        Assert.True(nominalArea > 1 && nominalLoad > 1);
        // The locus over the rail goes with 1/R_E; the load is given with the nominal resistor.
        Assert.Equal(nominalLoad / 1.05, Tern.WithSpread(R_E: 5.percent).MarginTo(load, 40.degC).Margin, 1e-9);
        Assert.Equal(1.001, Tern.WithSpread(R_E: (-5).percent).MarginTo(Pulse, 25.degC).Margin, 0.003);
        Assert.True(Tern.WithSpread(R_E: 5.percent).MarginTo(load, 40.degC).Margin < 1);
        Assert.True(Tern.WithSpread(V_BE: 20.mV).MarginTo(Pulse, 25.degC).Margin < 1);
        Assert.True(Tern.WithSpread(V_BE: (-20).mV).MarginTo(load, 40.degC).Margin < 1);
        // The junction alone: 10 °C allows more than the area, 55 °C less than the load.
        Assert.True(Tern.MarginTo(Pulse, 10.degC).Margin < nominalArea && Tern.MarginTo(load, 55.degC).Margin < nominalLoad);
        // From rest, on a higher rail, the same peak needs the same current at more volts.
        LoadEllipse fromRest = new(50.1.V, 37.95.V, 4.Ohm, 45.deg, 0.22.Ohm, 3);
        Assert.True(Tern.MarginTo(fromRest, 40.degC).Margin < nominalLoad - 0.05);
    }

    [Fact]
    public void What_is_missing_is_the_current_of_one_transistor_there()
    {
        LoadEllipse steep = new(46.V, 37.95.V, 4.Ohm, 60.deg, 0.22.Ohm, 3);
        var verdict = Tern.Against(Pulse, [steep], 25.degC, 25.degC);
        var tight = verdict.Loads[0];
        Assert.Equal(tight.Other.Amperes - tight.Locus.Amperes, verdict.Short.Amperes, 1e-12);
        Assert.True(verdict.Short > 0.1.A);
        Assert.Equal(0, verdict.Area.Short.Amperes);
        Assert.Contains($"short by {QuantityFormat.Short(verdict.Short, 3)}", verdict.Says, StringComparison.Ordinal);
        Assert.Equal(0, Tern.Against(Pulse, [], 25.degC, 25.degC).Short.Amperes);
    }

    [Fact]
    public void A_short_that_lasts_is_held_against_the_dc_area()
    {
        var margin = Tern.MarginShorted(Dc, 50.1.V, 25.degC);
        var I = Tern.CurrentAt(50.1.V);
        Assert.Equal(I, margin.Locus);
        Assert.Equal(50.1 - (0.22 * I.Amperes), margin.Voltage.Volts, 1e-9);
        Assert.Equal(2.37, I.Amperes, 0.01);
        Assert.Equal(1.67, margin.Other.Amperes, 0.03);
        Assert.False(margin.Passes);
        Assert.Equal((margin.Locus - margin.Other).Amperes, margin.Short.Amperes, 1e-12);
        Assert.True(Tern.MarginShorted(Pulse, 50.1.V, 25.degC).Passes);
        // A limiter that blocks at the rail bears a short for ever.
        Assert.Equal(LimiterMargin.Most, Tern.MarginShorted(Dc, 103.V, 25.degC).Margin);
        Assert.InRange(new VoltageCurrentLimiter(1.MOhm, null, 1.kOhm, 0.22.Ohm, 0.5.V).MarginTo(Pulse, 25.degC, 100.V).Margin, 8, 9);
    }

    [Fact]
    public void The_stage_gives_what_acts_first()
    {
        Assert.Equal(13.95, AvailableCurrent.Of(3, 4.65.A, 300.mA, 60).Amperes, 1e-9);
        Assert.Equal(12, AvailableCurrent.Of(3, 4.65.A, 300.mA, 40).Amperes, 1e-9);
    }
}
