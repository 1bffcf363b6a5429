using CsCheck;
using EightOhm.Devices;
using EightOhm.OutputStages;
using EightOhm.Protection;
using EightOhm.Quantities;
using EightOhm.SafeAreas;
using EightOhm.Tests.Devices;
using UnitsNet;

namespace EightOhm.Tests.Protection;

public class LimiterTests
{
    private readonly VoltageCurrentLimiter tern = new(220.Ohm, 390.Ohm, 22.kOhm, 0.22.Ohm);

    [Fact]
    public void Forward_and_back_are_the_same() =>
        Gen.Select(Gen.Double[50, 1000], Gen.Double[100, 5000], Gen.Double[5e3, 200e3], Gen.Double[0.05, 1], Gen.Double[0, 40], Gen.Double[5, 60]).Sample((r1, r2, r3, re, va, step) =>
        {
            var limiter = new VoltageCurrentLimiter(r1.Ohm, r2.Ohm, r3.Ohm, re.Ohm);
            ElectricPotential a = va.V, b = (va + step).V;
            if (limiter.CurrentAt(b).Amperes <= 0)
                return; // blocked: no second point on the line
            var back = VoltageCurrentLimiter.Through(r1.Ohm, re.Ohm, a, limiter.CurrentAt(a), b, limiter.CurrentAt(b));
            Assert.Equal(1, back.ToOutput.Ohms / r2, 6);
            Assert.Equal(1, back.ToRail.Ohms / r3, 6);
            // A second slope as well: the line through a point below its knee is the line again.
            var raised = limiter.WithSecondSlope(20.kOhm, 46.V);
            Assert.Equal(20e3, limiter.RaisedTo(46.V, 10.V, LimiterLocus.DoubleSlope(0.65.V, r1.Ohm, r2.Ohm, r3.Ohm, 20.kOhm, re.Ohm, 46.V, 10.V)).SecondSlope!.Value.Ohms, 0.01);
            Assert.True(raised.CurrentAt(10.V) > limiter.CurrentAt(10.V));
            Assert.Equal(limiter.CurrentAt(47.V).Amperes, raised.CurrentAt(47.V).Amperes, 12); // beyond the knee at 46.65 V
        });

    [Fact]
    public void Over_the_transistor_s_own_voltage_it_is_the_same_locus() =>
        Gen.Select(Gen.Double[0, 120], Gen.Bool, Gen.Double[-10, 100]).Sample((v, two, t) =>
        {
            var limiter = two ? tern.WithSecondSlope(15.kOhm, 46.V) : tern;
            var i = limiter.CurrentAtTransistor(v.V, t.degC);
            Assert.Equal(limiter.CurrentAt((v + (0.22 * i.Amperes)).V, t.degC).Amperes, i.Amperes, 9);
        });

    [Fact]
    public void A_warm_sense_junction_allows_less()
    {
        // 3.00 A cold on 0.65 V, 0.53 V at 85 °C.
        var plain = new VoltageCurrentLimiter(100.Ohm, null, 1e9.Ohm, (0.65 / 3).Ohm);
        Assert.Equal(3.00, plain.CurrentAt(0.V, 25.degC).Amperes, 0.005);
        Assert.Equal(2.45, plain.CurrentAt(0.V, 85.degC).Amperes, 0.005);
        Assert.Contains("keep it off the heat", Assert.Throws<RefusedValueException>(() => tern.CurrentAt(0.V, 351.degC)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_the_line_comes_to_nothing_the_limiter_blocks()
    {
        var zero = LimiterLocus.ZeroAt(0.65.V, 220.Ohm, 390.Ohm, 22.kOhm);
        Assert.Equal(102.3, zero.Volts, 0.05);
        Assert.Equal(0, tern.CurrentAt(103.V).Amperes);
        Assert.True(tern.CurrentAt(102.V).Amperes > 0);
    }

    /// <summary>A foldback regulator limits by the same network, its R_4 without a diode: I = (V_o·R_3 + V_s·(R_3 + R_4))/(R_sc·R_4), as the LM723's sheets give it.</summary>
    [Fact]
    public void Foldback_of_a_regulator_is_the_second_slope_alone() =>
        Gen.Select(Gen.Double[100, 5e3], Gen.Double[100, 20e3], Gen.Double[0.5, 50], Gen.Double[0, 30]).Sample((r3, r4, rsc, vo) =>
        {
            var foldback = ((vo * r3) + (0.65 * (r3 + r4))) / (rsc * r4);
            var none = 1e15.Ohm;
            Assert.Equal(1, LimiterLocus.DoubleSlope(0.65.V, r3.Ohm, none, none, r4.Ohm, rsc.Ohm, 40.V, (40 - vo).V).Amperes / foldback, 9);
        });

    [Fact]
    public void Points_that_do_not_fall_are_refused() =>
        Assert.Contains("must fall while the voltage rises", Assert.Throws<RefusedValueException>(() => VoltageCurrentLimiter.Through(220.Ohm, 0.22.Ohm, 0.V, 3.A, 46.V, 4.A)).Message, StringComparison.Ordinal);

    [Fact]
    public void Too_small_an_emitter_resistor_is_told_by_how_much_and_the_least_one_works()
    {
        var shortfall = Assert.Throws<ShortfallException>(() => VoltageCurrentLimiter.Through(220.Ohm, 0.1.Ohm, 0.V, 4.65.A, 46.V, 2.56.A));
        Assert.StartsWith("The emitter resistor R_E is short by 40.6", shortfall.Message, StringComparison.Ordinal);
        Assert.Contains("these points need 141 mΩ and it is 100 mΩ", shortfall.Message, StringComparison.Ordinal);
        var least = VoltageCurrentLimiter.Through(220.Ohm, 0.1411.Ohm, 0.V, 4.65.A, 46.V, 2.56.A);
        Assert.Equal(4.65, least.CurrentAt(0.V).Amperes, 9);
        Assert.Equal(2.56, least.CurrentAt(46.V).Amperes, 9);
    }

    [Fact]
    public void A_second_slope_beyond_its_knee_or_below_the_first_is_refused()
    {
        Assert.Contains("Beyond the knee", Assert.Throws<RefusedValueException>(() => tern.RaisedTo(46.V, 47.V, 5.A)).Message, StringComparison.Ordinal);
        Assert.Contains("The single slope allows as much already", Assert.Throws<RefusedValueException>(() => tern.RaisedTo(46.V, 10.V, 2.A)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_verdict_says_where_and_why_it_does_not_pass()
    {
        var area = new SafeArea(Transistor.Load(Cards.Output)).For(80.degC, 100.ms);
        LoadEllipse[] loads = [new(46.V, 37.95.V, 4.Ohm, 45.deg, 0.22.Ohm, 3)];
        var good = tern.Against(area, loads, 25.degC, 25.degC);
        Assert.StartsWith("Passes: the tightest is the safe area: passes, 1.05 at 62.", good.Says, StringComparison.Ordinal);
        // Without its slope the limiter of the same short-circuit current leaves the area.
        var flat = new VoltageCurrentLimiter(220.Ohm, 390.Ohm, 1e6.Ohm, 0.22.Ohm).Against(area, loads, 25.degC, 25.degC);
        Assert.False(flat.Passes);
        Assert.StartsWith("Does not pass: the limiter lets the transistor out of its safe area at 200 V", flat.Says, StringComparison.Ordinal);
        Assert.Equal(200, flat.Where.Volts, 6);
        // No further than it may conduct, it is nearer.
        Assert.Equal(83.95, new VoltageCurrentLimiter(220.Ohm, 390.Ohm, 1e6.Ohm, 0.22.Ohm).Against(area, loads, 25.degC, 25.degC, 83.95.V).Where.Volts, 6);
        Assert.Contains("the limiter's, 220 mΩ", Assert.Throws<RefusedValueException>(() => tern.Against(area, [new(46.V, 37.95.V, 4.Ohm, 45.deg, 0.33.Ohm, 3)], 25.degC, 85.degC)).Message, StringComparison.Ordinal);
        Assert.Contains("the coldest", Assert.Throws<RefusedValueException>(() => tern.Against(area, loads, 85.degC, 25.degC)).Message, StringComparison.Ordinal);
    }
}
