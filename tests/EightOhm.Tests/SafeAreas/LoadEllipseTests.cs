using CsCheck;
using EightOhm.Devices;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.SafeAreas;
using EightOhm.Supply;
using EightOhm.Tests.Devices;
using UnitsNet;

namespace EightOhm.Tests.SafeAreas;

public class LoadEllipseTests
{
    private static readonly SafeArea Area = new(Transistor.Load(Cards.Output));

    [Fact]
    public void A_resistor_s_ellipse_is_a_line()
    {
        var trace = new LoadEllipse(46.V, 40.V, 8.Ohm, 0.deg, 0.Ohm, 1).Trace();
        var (v, i) = (trace.X, trace.Y);
        foreach (var (x, y) in v.Zip(i))
            Assert.Equal(46 - (8 * y), x, 9);
        Assert.Equal(5, i.Max(), 12);
    }

    [Fact]
    public void A_reactance_takes_its_peak_current_with_the_whole_rail_on_the_transistor()
    {
        var trace = new LoadEllipse(46.V, 40.V, 8.Ohm, 90.deg, 0.Ohm, 1).Trace();
        var (v, i) = (trace.X, trace.Y);
        Assert.Equal(46, v[90], 9);
        Assert.Equal(5, i[90], 12);
        Assert.Equal(86, v[^1], 9); // the other side's peak still on it when it begins or ends to conduct
    }

    [Fact]
    public void Inductive_and_capacitive_loads_trace_the_same_ellipse_and_are_used_alike()
    {
        var area = Area.For(80.degC, 100.ms);
        Gen.Double[0, 90].Sample(phi =>
            Assert.Equal(SafeAreaUtilisation.Of(area, Load(phi, 3)).Use, SafeAreaUtilisation.Of(area, Load(-phi, 3)).Use), iter: 20);
    }

    [Fact]
    public void Use_goes_with_one_over_the_pairs_but_for_the_drop_of_the_emitter_resistors()
    {
        var area = Area.For(80.degC, SafeArea.Dc);
        Gen.Select(Gen.Double[0, 80], Gen.Int[1, 6], Gen.Int[1, 6]).Sample(
            (phi, a, b) =>
            {
                double ua = SafeAreaUtilisation.Of(area, Load(phi, a, 0)).Use, ub = SafeAreaUtilisation.Of(area, Load(phi, b, 0)).Use;
                Assert.Equal(1, ua * a / (ub * b), 9);
                // A drop takes voltage off the transistor: never more use.
                Assert.True(SafeAreaUtilisation.Of(area, Load(phi, a, 0.2)).Use <= ua * (1 + 1e-9));
            },
            iter: 20);
    }

    [Fact]
    public void The_worst_into_a_resistor_is_at_half_the_rail_and_not_at_full_swing()
    {
        var use = SafeAreaUtilisation.Of(Area.For(80.degC, SafeArea.Dc), Load(0, 3));
        Assert.Equal(23, use.Voltage.Volts, 0.01);
        Assert.Equal(SafeAreaBound.Dissipation, use.SetBy);
        Assert.Equal(1, use.Level.DecimalFractions);
        Assert.True(use.Output < 23.V); // less the drop of R_E
    }

    /// <summary>On one rail the half-waves of lower levels fill the inside of the full one's, so none of them can be worse: found by the search, and here by traces.</summary>
    [Fact]
    public void No_lower_level_is_worse_while_the_rail_stands() =>
        Gen.Select(Gen.Double[0, 90], Gen.Double[0.05, 1], Gen.Double[25, 120], Gen.Bool).Sample(
            (phi, level, temperature, dc) =>
            {
                var area = Area.For(temperature.degC, dc ? SafeArea.Dc : 100.ms);
                var load = Load(phi, 3);
                var use = SafeAreaUtilisation.Of(area, load);
                Assert.Equal(1, use.Level.DecimalFractions, 6);
                var trace = load.Trace(2001, level);
                var (v, i) = (trace.X, trace.Y);
                Assert.True(v.Zip(i, (x, y) => y / area.LimitAt(x.V).Amperes).Max() <= use.Use * (1 + 1e-9));
            },
            iter: 30);

    [Fact]
    public void A_rail_that_rises_at_a_lower_level_can_make_it_worse()
    {
        // 38 V peak on 46 V against 36 V peak on the 50 V that the supply gives then.
        var area = Area.For(80.degC, 100.ms);
        Assert.True(SafeAreaUtilisation.Of(area, new(50.V, 36.V, 4.Ohm, 45.deg, 0.22.Ohm, 3)).Use > SafeAreaUtilisation.Of(area, new(46.V, 38.V, 4.Ohm, 45.deg, 0.22.Ohm, 3)).Use);
    }

    [Fact]
    public void A_stage_whose_rail_stands_uses_its_area_as_its_ellipse_at_full_swing() =>
        Gen.Select(Gen.Double[0, 80], Gen.Int[1, 5], Gen.Bool).Sample(
            (phi, n, dc) =>
            {
                var area = Area.For(80.degC, dc ? SafeArea.Dc : 100.ms);
                var stage = new StageDissipation(46.V, n, 0.22.Ohm);
                var full = stage.FullSwing(4.Ohm, phi.deg) * (1 - 1e-9);
                var use = SafeAreaUtilisation.Of(area, stage, 4.Ohm, phi.deg);
                Assert.Equal(SafeAreaUtilisation.Of(area, new(46.V, full, 4.Ohm, phi.deg, 0.22.Ohm, n)).Use, use.Use, 1e-6 * use.Use);
            },
            iter: 20);

    /// <summary>A dense scan over levels, each on its own rail, does not beat it.</summary>
    [Fact]
    public void A_stage_whose_rail_sags_is_worst_at_a_level_that_no_scan_beats() =>
        Gen.Select(Gen.Double[0, 80], Gen.Double[0.5, 25], Gen.Bool).Sample(
            (phi, sag, dc) =>
            {
                var area = Area.For(80.degC, dc ? SafeArea.Dc : 100.ms);
                ElectricPotential Rail(ElectricPotential level) => (50 - (sag * level.Volts / 50)).V;
                var stage = new StageDissipation(RailLine.Through([(0.A, 50.V), ((12.5 / Math.PI).A, (50 - sag).V), ((17.5 / Math.PI).A, (50 - (1.4 * sag)).V)], 51.V), 3, 0.22.Ohm);
                var full = stage.FullSwing(4.Ohm, phi.deg).Volts * (1 - 1e-9);
                var use = SafeAreaUtilisation.Of(area, stage, 4.Ohm, phi.deg);
                var scan = Enumerable.Range(1, 400).Max(i => UseByTrace(area, Rail((full * i / 400).V), (full * i / 400).V, phi));
                Assert.InRange(use.Use, scan * (1 - 1e-9), scan * 1.001);
                // Less than full swing played is never worse, and high mains never better.
                Assert.True(SafeAreaUtilisation.Of(area, stage, 4.Ohm, phi.deg, (0.7 * full).V).Use <= use.Use * (1 + 1e-9));
                Assert.True(SafeAreaUtilisation.Of(area, stage.AtMains(10.percent), 4.Ohm, phi.deg).Use > use.Use);
            },
            iter: 8);

    [Fact]
    public void A_peak_above_full_swing_is_refused() =>
        Assert.Contains("at most 45.17 V", Assert.Throws<RefusedValueException>(() => SafeAreaUtilisation.Of(Area.For(80.degC, SafeArea.Dc), new StageDissipation(46.V, 3, 0.22.Ohm), 4.Ohm, 0.deg, 45.5.V)).Message, StringComparison.Ordinal);

    [Fact]
    public void A_rail_below_the_swing_is_refused() =>
        Assert.Contains("38.65 V or more", Assert.Throws<RefusedValueException>(() => new LoadEllipse(38.V, 37.95.V, 4.Ohm, 0.deg, 0.22.Ohm, 3)).Message, StringComparison.Ordinal);

    [Fact]
    public void A_phase_beyond_a_right_angle_is_refused() =>
        Assert.Contains("from −90° to 90° (was 91°)", Assert.Throws<RefusedValueException>(() => new LoadEllipse(46.V, 37.95.V, 4.Ohm, 91.deg, 0.22.Ohm, 3)).Message, StringComparison.Ordinal);

    [Fact]
    public void No_load_at_all_is_refused() =>
        Assert.Contains("greater than 0 Ω", Assert.Throws<RefusedValueException>(() => new LoadEllipse(46.V, 37.95.V, 0.Ohm, 0.deg, 0.22.Ohm, 3)).Message, StringComparison.Ordinal);

    [Fact]
    public void Rails_that_the_transistor_cannot_stand_are_refused() =>
        Assert.Contains("at most 200 V (V_CEO of Course output npn)", Assert.Throws<RefusedValueException>(() => SafeAreaUtilisation.Of(Area.For(25.degC, SafeArea.Dc), new LoadEllipse(110.V, 100.V, 8.Ohm, 0.deg, 0.22.Ohm, 3))).Message, StringComparison.Ordinal);

    [Fact]
    public void Heat_or_current_decides_where_it_is_the_greatest()
    {
        var load = Load(0, 1);
        Assert.Equal((1, "nothing: one pair passes all three"), (PairCount.Decide(Area, new(46.V, 20.V, 8.Ohm, 0.deg, 0.22.Ohm, 1), 25.degC, 100.ms).Pairs, PairCount.Decide(Area, new(46.V, 20.V, 8.Ohm, 0.deg, 0.22.Ohm, 1), 25.degC, 100.ms).Decides));
        Assert.Equal("peak current", PairCount.Decide(Area, load, 25.degC, 100.ms, mostEach: 2.A).Decides);
        Assert.Equal(5, PairCount.Decide(Area, load, 25.degC, 100.ms, mostEach: 2.A).ByCurrent);
        var hot = PairCount.Decide(Area, load, 80.degC, 100.ms, averageDissipation: 500.W, mostJunction: 125.degC);
        Assert.Equal(("average dissipation", 5), (hot.Decides, hot.Pairs)); // 500 W over 2·5 is 50 W, and 45 K over 0.83 K/W is 54.2 W
        Assert.Equal(54.2, (double)hot.DissipationAllowed.Watts, 0.05);
        var short_of = Assert.Throws<ShortfallException>(() => PairCount.Decide(Area, load, 80.degC, 100.ms, averageDissipation: 20_000.W));
        Assert.Contains("100 pairs of Course output npn is short by", short_of.Message, StringComparison.Ordinal);
        Assert.Equal(100 - (70 / 0.83), (double)Assert.IsType<Power>(short_of.By).Watts, 1e-9); // 20 kW over 200 against what a case at 80 °C allows
    }

    private static LoadEllipse Load(double phi, int n, double re = 0.22) => new(46.V, 37.95.V, 4.Ohm, phi.deg, re.Ohm, n);

    // By the trace of the half-wave, not by the search under test.
    private static double UseByTrace(DeratedArea area, ElectricPotential rail, ElectricPotential peak, double phi)
    {
        var trace = new LoadEllipse(rail, peak, 4.Ohm, phi.deg, 0.22.Ohm, 3).Trace(1001);
        var (v, i) = (trace.X, trace.Y);
        return v.Zip(i, (x, y) => y / area.LimitAt(Math.Max(x, 1e-3).V).Amperes).Max();
    }
}
