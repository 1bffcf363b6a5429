using EightOhm.Devices;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.SafeAreas;
using EightOhm.Supply;
using EightOhm.Tests.Devices;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Tests.OutputStages;

/// <summary>One stage by its cards on a solved supply: what its views say belongs together.</summary>
public class OutputStageTests
{
    private static readonly Transistor Npn = Card("output-npn"), Pnp = Card("output-pnp"), DriverNpn = Card("driver-npn"), DriverPnp = Card("driver-pnp");

    private static readonly RailLine Rails = new DualRailSupply(new DualWinding(35.V, 6.percent, 800.VA), 50.Hz, 0.9.V, 30.mF) { DiodeResistance = 20.mOhm }.Line().OfOne(2, 0.7.A - (6 * 103.8.mA));

    private static readonly OutputStage Triple = new(Npn, Pnp, 3, 0.22.Ohm, Rails)
    {
        IdleCurrent = 103.8.mA,
        Drivers = new(DriverNpn, DriverPnp, 47.Ohm),
        PreDrivers = new(DriverNpn, DriverPnp, 300.Ohm),
        SourceImpedance = 1.kOhm,
    };

    [Fact]
    public void High_mains_costs_more_than_the_square_of_it()
    {
        // The copper does not move with the mains: 1.212 times the dissipation, not 1.193 (the loaded rail scaled).
        var (nominal, high) = (Triple.Dissipation, Triple.AtMains(10.percent).Dissipation);
        Assert.Equal(108.99, W(nominal.Maximum(4.Ohm).Total), 0.02);
        Assert.Equal(132.07, W(high.Maximum(4.Ohm).Total), 0.05);
        Assert.Equal(1.212, W(high.Maximum(4.Ohm).Total) / W(nominal.Maximum(4.Ohm).Total), 0.0005);
        Assert.Equal(175.9, W(high.Maximum(4.Ohm, 45.deg).Total), 0.05);
        var area = new SafeArea(Npn).For(80.degC, 100.ms);
        Assert.Equal(1.077, SafeAreaUtilisation.Of(area, Triple.AtMains(10.percent), 4.Ohm, 45.deg).Use, 0.002);
        Assert.Equal(0.751, SafeAreaUtilisation.Of(area, Triple, 4.Ohm, 45.deg, 37.95.V).Use, 0.001);
        Assert.Equal(Triple.AtMains(10.percent), Triple.AtMains(5.percent).AtMains(10.percent));
    }

    [Fact]
    public void The_views_take_from_the_cards_what_the_cards_say()
    {
        var stage = Triple.Transfer(4.Ohm, 37.95.V);
        Assert.Equal(Npn.GainAt((37.95 / 12).A), BetaDroop.CurrentGain(stage.Device.CurrentGain!.Value, (37.95 / 12).A, stage.Device.KneeCurrent!.Value), 1e-9);
        Assert.Equal(Pnp.GainAt((37.95 / 12).A), BetaDroop.CurrentGain(stage.Complement!.CurrentGain!.Value, (37.95 / 12).A, stage.Complement.KneeCurrent!.Value), 1e-9);
        Assert.Equal((80.0, 95.0), (stage.Device.CurrentGain, stage.Complement.CurrentGain));
        Assert.Equal(Npn.InternalEmitterResistance, stage.InternalResistance);
        Assert.Equal(30, stage.TransitionFrequency!.Value.Megahertz, 1e-9);
        Assert.Equal(103.8, Triple.EqualGainCurrent.Milliamperes, 0.05);

        // The bias stands two V_BE of each stage apart, at its own current.
        var bias = stage.BiasedAt(103.8.mA);
        var outputs = Npn.BaseEmitterVoltageAt(103.8.mA, 55.degC) + Pnp.BaseEmitterVoltageAt(103.8.mA, 55.degC) + (2 * 103.8.mA * 272.5.mOhm);
        Assert.Equal(outputs.Volts / 47, bias.DriverCurrent!.Value.Amperes, 0.02 * outputs.Volts / 47);
        var drivers = DriverNpn.BaseEmitterVoltageAt(bias.DriverCurrent.Value, 55.degC) + DriverPnp.BaseEmitterVoltageAt(bias.DriverCurrent.Value, 55.degC);
        Assert.Equal((outputs + drivers).Volts / 300, bias.PreDriverCurrent!.Value.Amperes, 0.03 * (outputs + drivers).Volts / 300);
    }

    [Fact]
    public void Unlike_cards_make_even_harmonics_and_like_ones_none()
    {
        var unlike = Triple.Transfer(4.Ohm, 37.95.V).BiasedAt(103.8.mA).Harmonics(37.95.V);
        Assert.InRange(unlike.Harmonic(2).PartsPerMillion, 10, 1000);
        var like = Triple.Transfer(4.Ohm, 37.95.V) is var t ? t with { Complement = t.Device, Drivers = t.Drivers! with { Complement = t.Drivers.Device }, PreDrivers = t.PreDrivers! with { Complement = t.PreDrivers.Device } } : null!;
        Assert.Equal(0, like.BiasedAt(103.8.mA).Harmonics(37.95.V).Harmonic(2).PartsPerMillion, 1e-6);
    }

    /// <summary>With a constant gain the source's impedance does no harm, so it is said; that is true of equal sides only.</summary>
    [Theory]
    [InlineData(1, 65, 47_100, 0)]
    [InlineData(2, 353, 4_000, 0)]
    [InlineData(3, 361, 394, 111)]
    public void A_constant_gain_is_harmless_for_equal_sides_only(int followers, double equal, double unequal, double second)
    {
        LargeSignalModel Side(double gain) => new() { Junction = 55.degC, InternalResistance = 52.5.mOhm, CurrentGain = gain };
        LargeSignalModel Driver(double gain) => new() { Junction = 55.degC, InternalResistance = 0.1.Ohm, CurrentGain = gain };
        EmitterFollowerStage Stage(double output, double driver) => new(4.Ohm, 3, 0.22.Ohm)
        {
            Source = 1.kOhm,
            Device = Side(80),
            Complement = Side(output),
            Drivers = followers > 1 ? new(47.Ohm) { Device = Driver(120), Complement = Driver(driver) } : null,
            PreDrivers = followers > 2 ? new(300.Ohm) { Device = Driver(120), Complement = Driver(driver) } : null,
        };
        FollowerHarmonics Of(EmitterFollowerStage stage) => stage.BiasedAt(103.85.mA).Harmonics(37.95.V, 50);
        Assert.Equal(equal, Of(Stage(80, 120)).StaticThd.PartsPerMillion, 0.01 * equal);
        var harmonics = Of(Stage(60, 90));
        Assert.Equal(unequal, harmonics.StaticThd.PartsPerMillion, 0.01 * unequal);
        if (second > 0)
            Assert.Equal(second, harmonics.Harmonic(2).PartsPerMillion, 0.01 * second);
    }

    [Fact]
    public void Drivers_give_the_bases_of_the_needier_side()
    {
        var loads = Triple.Driving(37.95.V, 4.Ohm, 45.deg);
        Assert.Equal(2, loads.Count);
        var needier = Math.Max(9.4875 / Npn.GainAt(3.1625.A), 9.4875 / Pnp.GainAt(3.1625.A));
        Assert.Equal(needier, loads[0].BaseCurrent.Amperes, 1e-9);
        Assert.Equal(loads[0].PeakCurrent.Amperes / Math.Min(DriverNpn.GainAt(loads[0].PeakCurrent), DriverPnp.GainAt(loads[0].PeakCurrent)), loads[1].BaseCurrent.Amperes, 1e-9);
        Assert.True(loads[1].Heat < loads[0].Heat);

        // With one gain it is the closed form.
        var rail = Triple.Dissipation.RailAt(37.95.V, 4.Ohm);
        Assert.InRange(W(loads[0].Heat), W(Drivers.Heat(rail, 37.95.V, 4.Ohm, 45.deg, 95, loads[0].PeakCurrent - loads[0].BaseCurrent)), W(Drivers.Heat(rail, 37.95.V, 4.Ohm, 45.deg, 9.4875 / needier, loads[0].PeakCurrent - loads[0].BaseCurrent)));
        Assert.Empty((Triple with { PreDrivers = null, Drivers = null }).Driving(20.V, 8.Ohm, 0.deg));
    }

    [Fact]
    public void Tracking_is_that_of_the_cards()
    {
        var net = new ThermalNetwork(35.degC);
        HeatNode junction = net.Node("junction", 0.05.J_per_K), sink = net.Node("sink", 400.J_per_K);
        net.Link(junction, sink, 1.18.K_per_W);
        net.Link(sink, net.Ambient, 0.9.K_per_W);
        var tracking = Triple.AtMains(10.percent).Tracking(net, [junction], new BiasSensor(sink, 2.1.mV_per_K));
        Assert.Equal(2.0968e-3, tracking.JunctionDrift.Si, 1e-7); // 2.1 mV/K at 0.1 A, and less at a higher current
        Assert.Equal(272.5, tracking.Resistance.Milliohms, 1e-9);
        Assert.Equal(Triple.AtMains(10.percent).Dissipation.Rail, tracking.Voltage);
    }

    [Fact]
    public void What_is_no_stage_is_refused()
    {
        Assert.Contains("give the npn first", Assert.Throws<ArgumentException>(() => new OutputStage(Pnp, Npn, 3, 0.22.Ohm, Rails)).Message, StringComparison.Ordinal);
        Assert.Contains("give the npn first", Assert.Throws<ArgumentException>(() => new StageDrivers(Npn, Npn, 47.Ohm)).Message, StringComparison.Ordinal);
        Assert.Contains("call the only ones Drivers", Assert.Throws<ArgumentException>(() => (Triple with { Drivers = null }).Transfer(8.Ohm, 40.V)).Message, StringComparison.Ordinal);
        Assert.Contains("table of h_FE does not reach", Assert.Throws<RefusedValueException>(() => Triple.Transfer(0.5.Ohm, 40.V)).Message, StringComparison.Ordinal);
        Assert.Contains("class B has no idle current", Assert.Throws<RefusedValueException>(() => (Triple with { IdleCurrent = 0.A }).Tracking(new ThermalNetwork(35.degC), [], null!)).Message, StringComparison.Ordinal);
    }

    private static Transistor Card(string name) => Transistor.Load(Path.Combine(Cards.Folder, $"{name}.json"));

    private static double W(Power p) => (double)p.Watts;
}
