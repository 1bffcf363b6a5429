using EightOhm.Devices;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.SafeAreas;
using EightOhm.Supply;
using EightOhm.Tests.Devices;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Tests.OutputStages;

/// <summary>How far the bias may be off, what it does be off by, and what drivers have to do.</summary>
public class BiasWindowTests
{
    private static readonly EmitterFollowerStage Stage = new(8.Ohm, 3, 0.22.Ohm) { InternalResistance = 52.5.mOhm, Junction = 55.degC };

    [Fact]
    public void The_promise_is_just_kept_at_both_ends()
    {
        var best = Stage.LeastDistortionBias(40.V);
        var promise = Ratio.FromDecimalFractions(1.5 * best.StaticThd.DecimalFractions);
        var window = Stage.BiasWindow(40.V, promise);
        double Thd(ElectricCurrent i) => Stage.DistortionAt([i], 40.V).Thd[0].Y.DecimalFractions;
        Assert.Equal(1, Thd(window.Least) / promise.DecimalFractions, 1e-5);
        Assert.Equal(1, Thd(window.Greatest!.Value) / promise.DecimalFractions, 1e-5);
        Assert.True(window.Least < window.Best && window.Best < window.Greatest);
        Assert.True(Thd(window.Least * 0.99) > promise.DecimalFractions);
        Assert.True(Thd(window.Greatest.Value * 1.01) > promise.DecimalFractions);
        Assert.True(window.Holds(window.Least, window.Best));
        Assert.False(window.Holds(window.Best, window.Greatest.Value * 1.01));
        var refused = Assert.Throws<ShortfallException>(() => Stage.BiasWindow(40.V, Ratio.FromDecimalFractions(0.5 * best.StaticThd.DecimalFractions)));
        Assert.Contains("the best bias", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_generous_promise_has_no_upper_end() => Assert.Null(Stage.BiasWindow(40.V, 5.percent).Greatest);

    [Fact]
    public void A_band_is_not_symmetric_and_widens_a_warm_up()
    {
        var V_T = Junction.ThermalVoltage(55.degC);
        var band = IdleBand.Of(103.8.mA, 0.2725.Ohm, V_T, 10.mV);
        Assert.True(band.Greatest - band.Nominal > band.Nominal - band.Least);
        // Linear: 10 mV over R_E + r_int + V_T/I_q.
        Assert.Equal(10e-3 / (0.2725 + (V_T.Volts / 0.1038)), (band.Greatest - band.Least).Amperes / 2, 5e-4);
        // Ten kelvin late by 2.1 mV/K on two junctions: one on a multiplier of 5.7 junctions' worth would pull 5.7/2 times a junction's share.
        Assert.Equal(21, BiasDrift.TrackingError(2.1.mV_per_K, 10.K, 2, 2.1.mV_per_K, 0.K, 2).Millivolts, 1e-9);
        Assert.Equal(0, BiasDrift.TrackingError(2.1.mV_per_K, 10.K, 2, 2.1.mV_per_K, 10.K, 2).Millivolts, 1e-9);
        Assert.True(BiasDrift.TrackingError(2.1.mV_per_K, 10.K, 5.7, 2.1.mV_per_K, 10.K, 2) < 0.V);
    }

    [Fact]
    public void Drivers_see_the_rail_and_the_other_sides_peak()
    {
        Transistor Card(string name) => Transistor.Load(Path.Combine(Cards.Folder, $"{name}.json"));
        var stage = new OutputStage(Card("output-npn"), Card("output-pnp"), 3, 0.22.Ohm, RailLine.Constant(46.V)) { IdleCurrent = 103.8.mA, Drivers = new(Card("driver-npn"), Card("driver-pnp"), 47.Ohm), PreDrivers = new(Card("driver-npn"), Card("driver-pnp"), 300.Ohm) };
        var area = new SafeArea(Card("driver-npn")).For(60.degC, SafeArea.Dc);
        var (driver, pre) = (SafeAreaUtilisation.OfDriver(area, stage, 1, 4.Ohm, 45.deg), SafeAreaUtilisation.OfDriver(area, stage, 2, 4.Ohm, 45.deg));
        Assert.True(driver.Use > pre.Use);
        Assert.True(SafeAreaUtilisation.OfDriver(area, stage, 1, 8.Ohm, 0.deg).Use < driver.Use);
        Assert.Throws<RefusedValueException>(() => SafeAreaUtilisation.OfDriver(area, stage, 3, 4.Ohm, 45.deg));
        Assert.Throws<RefusedValueException>(() => SafeAreaUtilisation.OfDriver(area, stage with { Drivers = null, PreDrivers = null }, 1, 4.Ohm, 45.deg));
        var worst = stage.WorstDriving(4.Ohm, 45.deg);
        Assert.Equal(2, worst.Count);
        Assert.True(worst[0].Heat >= stage.Driving(30.V, 4.Ohm, 45.deg)[0].Heat);
        Assert.True(worst[0].PeakCurrent > worst[1].PeakCurrent);
        Assert.Empty((stage with { Drivers = null, PreDrivers = null }).WorstDriving(4.Ohm, 0.deg));
    }

    [Fact]
    public void A_bridge_dissipates_four_times_what_one_stage_does()
    {
        Assert.Equal(4, (double)(BridgedStage.WorstDissipation(46.V, 8.Ohm, 30.deg) / ClassB.Worst(46.V, 8.Ohm, 30.deg)), 1e-12);
        Assert.Equal(4, (double)(BridgedStage.LoadPower(40.V, 8.Ohm, 0.deg) / ClassB.LoadPower(40.V, 8.Ohm, 0.deg)), 1e-12);
    }
}
