using EightOhm.Devices;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Tests.Thermal;

/// <summary>Idle current on a thermal network: at rest, after a burst, past the runaway threshold.</summary>
public class BiasTrackingTests
{
    private static readonly ElectricPotential Rail = 46.V;
    private static readonly ElectricCurrent Idle = 103.8.mA;

    [Fact]
    public void At_rest_nothing_moves()
    {
        var run = Stage(sensorAtSink: true).Follow(300.s, []);
        Assert.All(run.IdleCurrent.Y, i => Assert.Equal(Idle.Amperes, i, 1e-9));
        Assert.Null(run.RanAwayAt);
    }

    [Fact]
    public void After_a_burst_the_current_is_high_for_a_while_and_comes_back()
    {
        var stage = Stage(sensorAtSink: true);
        var run = stage.Follow(900.s, [HeatProfile.Burst(stage.Junctions[0], 30.W, 60.s, 180.s)]);
        var after = Enumerable.Range(0, run.IdleCurrent.Seconds.Count).First(k => run.IdleCurrent.Seconds[k] > 184);
        Assert.InRange(run.IdleCurrent.Y[after] / Idle.Amperes, 1.02, 1.5);
        Assert.Equal(1, run.Last / Idle, 0.02);
        Assert.True(run.Greatest > Idle && run.Least.Amperes > 0.9 * Idle.Amperes);
        Assert.Contains("a transistor", run.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void One_multiplier_for_six_junctions_on_the_sink_starves_the_stage_as_the_sink_warms()
    {
        double AfterTwentyMinutes(double factor)
        {
            var stage = Stage(sensorAtSink: true, factor);
            return stage.Follow(1200.s, [HeatProfile.Constant(stage.Junctions[0], 30.W)]).Last.Amperes;
        }

        // During the music the junction is hotter than the sink knows; three times the drift takes more than that away.
        Assert.True(AfterTwentyMinutes(3) < 0.7 * Idle.Amperes, $"{AfterTwentyMinutes(3)} A");
        Assert.True(AfterTwentyMinutes(1) > Idle.Amperes);
    }

    [Fact]
    public void Past_the_runaway_threshold_it_runs_away_and_before_it_it_comes_back()
    {
        // The junction alone on 4 K/W, which the spreader does not follow.
        var net = new ThermalNetwork(35.degC);
        var junction = net.Node("junction", 5.J_per_K);
        net.Link(junction, net.Ambient, 4.K_per_W);
        var stage = new BiasTracking(net, [junction], new BiasSensor(junction, 0.mV_per_K), Rail, Idle, 0.2725.Ohm, 2.1.mV_per_K);
        var V_T = Junction.ThermalVoltage(stage.Design["junction"]);
        var back = Runaway.RunawayThresholdCurrent(Rail, 4.K_per_W, 2.1.mV_per_K, 0.2725.Ohm, stage.Design["junction"], Idle);
        Assert.True(Runaway.LoopGain(Rail, 4.K_per_W, 2.1.mV_per_K, 0.2725.Ohm, 0.Ohm, V_T, Idle) < 1);

        // Heated from outside until the current is a little less, or a little more, then left alone.
        NodeTemperatures Heated(double share) => net.Steady(new Heat(junction, share * (Rail * back)));
        var returns = stage.Follow(3000.s, [], Heated(0.97));
        Assert.Null(returns.RanAwayAt);
        Assert.Equal(Idle.Amperes, returns.Last.Amperes, 1e-4);
        var runs = stage.Follow(3000.s, [], Heated(1.03));
        Assert.NotNull(runs.RanAwayAt);
        Assert.True(runs.Last > back);
        Assert.Contains("Runs away", runs.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1e-3)]
    [InlineData(1e-4)]
    [InlineData(1e-6)]
    public void With_a_loop_gain_of_almost_one_it_runs_away_just_above_idle(double spare)
    {
        var V_T = Junction.ThermalVoltage(55.degC);
        ThermalResistance theta = 1.K_per_W * ((1 - spare) / Runaway.LoopGain(Rail, 1.K_per_W, 2.1.mV_per_K, 0.2725.Ohm, 0.Ohm, V_T, Idle));
        var back = Runaway.RunawayThresholdCurrent(Rail, theta, 2.1.mV_per_K, 0.2725.Ohm, 55.degC, Idle);
        Assert.InRange(back / Idle, 1, 1 + (20 * spare));
        var there = Runaway.Threshold(Rail, theta, 2.1.mV_per_K, 0.2725.Ohm, 55.degC, Idle, 150.degC);
        Assert.Equal(back, there.Current);
        Assert.Equal(55 + (theta.Si * Rail.Volts * (back - Idle).Amperes), there.JunctionThere!.Value.DegreesCelsius, 1e-9);
        var balance = Runaway.Resting(back, Rail, theta, 2.1.mV_per_K, 0.2725.Ohm, 55.degC, Idle);
        Assert.Equal(balance.Left.Volts, balance.Right.Volts, 1e-12);
    }

    [Fact]
    public void A_spreader_later_than_the_allowed_lag_leaves_no_resting_place()
    {
        var V_T = 28.28.mV;
        var one = Runaway.UnityLoopGainCurrent(Runaway.GreatestGain(Rail, 3.58.K_per_W, 2.1.mV_per_K, 0.22.Ohm, 0.0525.Ohm), 0.22.Ohm, 0.0525.Ohm, V_T);
        var lag = Runaway.AllowedLag(one, Idle, V_T, 2.1.mV_per_K);
        Assert.Equal(7.83, lag.Kelvins, 0.01);
        // With that lag the drive of the heat and of the lag are just taken up at the current of gain one.
        var error = (2.1.mV_per_K * lag) + (2.1.mV_per_K * (3.58.K_per_W * (Rail * (one - Idle))));
        Assert.Equal(one.Amperes, BiasDrift.Current(error, Idle, 0.2725.Ohm, V_T).Amperes, 1e-6);
        Assert.Throws<RefusedValueException>(() => Runaway.RunawayThresholdCurrent(Rail, 3.58.K_per_W, 2.1.mV_per_K, 0.2725.Ohm, 55.degC, 0.8.A));
        Assert.Throws<RefusedValueException>(() => Runaway.RunawayThresholdCurrent(Rail, 1.K_per_W, 2.1.mV_per_K, 0.2725.Ohm, 55.degC, Idle));
    }

    [Fact]
    public void Halving_the_step_quarters_the_error()
    {
        var stage = Stage(sensorAtSink: true);
        double End(double fineness) => stage.Follow(0.2.s, [HeatProfile.Burst(stage.Junctions[0], 30.W, 0.05.s, 0.1.s)], points: 1, fineness: fineness).Last.Amperes;
        var best = End(5e-4);
        Assert.Equal(best, End(0.02), 1e-4 * best);
        Assert.InRange((End(0.04) - best) / (End(0.02) - best), 3, 5);
    }

    [Fact]
    public void What_cannot_be_tracked_is_refused()
    {
        var stage = Stage(sensorAtSink: true);
        Assert.Throws<RefusedValueException>(() => new BiasTracking(stage.Network, [], new BiasSensor(stage.Sensor, 2.1.mV_per_K), Rail, Idle, 0.27.Ohm, 2.1.mV_per_K));
        Assert.Throws<ArgumentException>(() => new BiasTracking(stage.Network, stage.Junctions, new BiasSensor(stage.Network.Ambient, 2.1.mV_per_K), Rail, Idle, 0.27.Ohm, 2.1.mV_per_K));
        Assert.Throws<RefusedValueException>(() => new BiasTracking(stage.Network, stage.Junctions, new BiasSensor(stage.Sensor, 2.1.mV_per_K), Rail, Idle, 0.Ohm, 2.1.mV_per_K));
        Assert.Throws<RefusedValueException>(() => stage.Follow(0.s, []));
        Assert.Throws<RefusedValueException>(() => new SpreaderSplit(1.V, 0.6.V, 2.1.mV_per_K, 2));
    }

    [Fact]
    public void What_the_drivers_give_way_is_shared_by_resistor_and_slope()
    {
        // Each on a path of its own, so that all settles to what is easily written down: the output at 30 W on 1 K/W, the driver 0.6 W above its idle heat on 20 K/W.
        var (stage, driver) = OnPathsOfTheirOwn();
        var run = stage.Follow(3000.s, [HeatProfile.Constant(stage.Junctions[0], 30.W), HeatProfile.Constant(driver, 1.5.W)]);
        var error = 2.1e-3 * (30 - (46 * 0.1038) + (20 * (1.5 - 0.9)));
        var slope = 8.617333262e-5 * (273.15 + 35 + 30);
        var settled = run.Last.Amperes;
        Assert.Equal(error, (slope * Math.Log(settled / 0.1038)) + ((settled - 0.1038) * 0.2725), 1e-9);

        // Halved by hand: V_T = 29.1395 mV, an error of 78.1729 mV.
        Assert.Equal(0.2833051, settled, 1e-6);
        // Without the junctions' slope all of it stands on the resistor, and the current comes out a third too high.
        Assert.True(0.1038 + (error / 0.2725) > 1.35 * settled);
        // Nor is it the outputs' own drift alone.
        Assert.True(settled > 1.25 * stage.Follow(3000.s, [HeatProfile.Constant(stage.Junctions[0], 30.W)]).Last.Amperes);
    }

    [Fact]
    public void At_rest_the_drivers_move_nothing_and_a_quieter_one_keeps_its_idle_heat()
    {
        var (stage, driver) = OnPathsOfTheirOwn();
        Assert.Equal(35 + (20 * 0.9), stage.Design["driver"].DegreesCelsius, 1e-9);
        foreach (var heat in new HeatProfile[][] { [], [HeatProfile.Constant(driver, 0.5.W)] })
            Assert.All(stage.Follow(300.s, heat).IdleCurrent.Y, i => Assert.Equal(Idle.Amperes, i, 1e-9));
    }

    [Fact]
    public void Without_drivers_it_is_what_it_was_to_the_last_bit()
    {
        var stage = Stage(sensorAtSink: true);
        var run = stage.Follow(900.s, [HeatProfile.Burst(stage.Junctions[0], 30.W, 60.s, 180.s)]);
        // Written down before there were drivers.
        Assert.Equal([0.2416176942742127, 0.10350413627916197, 0.10375242716936668, 0.24146851074750666],
            [run.Greatest.Amperes, run.Least.Amperes, run.Last.Amperes, run.IdleCurrent.Y[1487 / 2]]);
        Assert.Empty(stage.Drivers);
    }

    [Fact]
    public void A_driver_has_a_junction_of_its_own()
    {
        var (stage, driver) = OnPathsOfTheirOwn();
        BiasTracking With(params DriverJunction[] drivers) => new(stage.Network, stage.Junctions, new BiasSensor(stage.Sensor, 0.mV_per_K), Rail, Idle, 0.2725.Ohm, 2.1.mV_per_K) { Drivers = drivers };
        Assert.Throws<ArgumentException>(() => With(new DriverJunction(stage.Junctions[0], 2.1.mV_per_K, 1.W)));
        Assert.Throws<ArgumentException>(() => With(new(driver, 2.1.mV_per_K, 1.W), new(driver, 2.1.mV_per_K, 1.W)));
        Assert.Throws<ArgumentException>(() => With(new DriverJunction(stage.Network.Ambient, 2.1.mV_per_K, 1.W)));
        Assert.Throws<ArgumentException>(() => With(new DriverJunction(new ThermalNetwork(35.degC).Node("elsewhere", 1.J_per_K), 2.1.mV_per_K, 1.W)));
        Assert.Throws<RefusedValueException>(() => new DriverJunction(driver, -2.1.mV_per_K, 1.W));
        Assert.Throws<RefusedValueException>(() => new DriverJunction(driver, 2.1.mV_per_K, -1.W));
    }

    private static (BiasTracking Stage, HeatNode Driver) OnPathsOfTheirOwn()
    {
        var net = new ThermalNetwork(35.degC);
        HeatNode junction = net.Node("junction", 5.J_per_K), driver = net.Node("driver", 1.J_per_K);
        net.Link(junction, net.Ambient, 1.K_per_W);
        net.Link(driver, net.Ambient, 20.K_per_W);
        return (new BiasTracking(net, [junction], new BiasSensor(junction, 0.mV_per_K), Rail, Idle, 0.2725.Ohm, 2.1.mV_per_K)
        {
            Drivers = [new(driver, 2.1.mV_per_K, 0.9.W)],
        }, driver);
    }

    private static BiasTracking Stage(bool sensorAtSink, double factor = 1)
    {
        var net = new ThermalNetwork(35.degC);
        HeatNode junction = net.Node("junction", 0.05.J_per_K), housing = net.Node("case", 6.J_per_K), sink = net.Node("sink", 400.J_per_K), sensor = net.Node("sensor", 3.J_per_K);
        net.Link(junction, housing, 0.83.K_per_W);
        net.Link(housing, sink, 0.35.K_per_W);
        net.Link(sink, net.Ambient, 0.9.K_per_W);
        net.Link(sensor, sink, 2.K_per_W);
        return new BiasTracking(net, [junction], new BiasSensor(sensorAtSink ? sensor : housing, factor * 2.1.mV_per_K), Rail, Idle, 0.2725.Ohm, 2.1.mV_per_K);
    }
}
