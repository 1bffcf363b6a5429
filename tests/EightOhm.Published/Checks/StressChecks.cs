using EightOhm.Published.Machine;
using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>What wears rectifier, reservoir, winding and fuse: makers' sheets and integrations.</summary>
[Checks]
public class StressChecks
{
    [Fact]
    public void Losses_of_a_rectifier()
    {
        var rows = Reference.Read("diode-loss.csv");
        Check.Computed(rows, r => RectifierDissipation.OfDiode(Volts(r["V_0"]), Ohms(r["r_T"]), Amperes(r["I_av"]), Amperes(r["I_rms"])), "P_diode");
        Check.Computed(rows, r => RectifierDissipation.OfRail((int)r["n"], Volts(r["V_0"]), Ohms(r["r_T"]), Amperes(r["I_dc"]), Amperes(r["I_rail"])), "P_rail");
        Check.Solved("DualRailSupply.SteadyState", Reference.Read("bridge-loss.csv"), Bridge, "P", 1e-5);
        Check.Solved("RectifierSupply.SteadyState", Reference.Read("exponential-loss.csv"), Exponential, "P", 1e-4);

        static double Bridge(ReferenceRow r) =>
            (double)(new DualRailSupply(Volts(r["emf"]), Cycles(r["f"]), Ohms(r["half"]), Ohms(r["shared"]), Volts(r["drop"]), Farads(r["C"])) { DiodeResistance = Ohms(r["r_D"]) }
                .SteadyState(RailCurrent.Constant(Amperes(r["I_p"])), RailCurrent.Constant(Amperes(r["I_n"]))).BridgeDissipation.Watts);

        static double Exponential(ReferenceRow r) =>
            (double)new RectifierSupply(Volts(r["emf"]), Cycles(r["f"]), Ohms(r["R_s"]), new ExponentialDiode(Amperes(r["I_s"]), r["n"], Celsius(r["t_C"]), (int)r["series"]), Farads(r["C"]))
                .SteadyState(RailCurrent.Constant(Amperes(r["I"]))).DiodeDissipation.Watts;
    }

    [Fact]
    public void Inverse_voltages_by_the_kind_of_rectifier()
    {
        var rows = Reference.Read("peak-inverse.csv");
        Check.Computed(rows, r => Transformer.HighestPeak(Volts(r["V_FL"]), Ratio.FromDecimalFractions(r["r_T"]), Ratio.FromDecimalFractions(r["x"])), "V_m");
        Check.Computed(rows, r => PeakInverse.HalfWave(Volts(r["V_m"]), Volts(r["V_D"])), "half_wave");
        Check.Computed(rows, r => PeakInverse.CentreTap(Volts(r["V_m"]), Volts(r["V_D"])), "centre_tap");
        Check.Computed(rows, r => PeakInverse.Bridge(Volts(r["V_m"]), Volts(r["V_D"])), "bridge");
        Check.Computed(rows, r => PeakInverse.DualRail(Volts(r["V_m"]), Volts(r["V_D"])), "dual");
    }

    [Fact]
    public void Surges_of_makers_and_of_a_switch_on()
    {
        ElectricCurrent large = 400.A, middle = 200.A, small = 120.A;
        var t = 8.3.ms;
        Check.Check(() => DiodeSurge.RatedIntegral(large, t), "664 A²s", Source.Datasheet("Lite-On, GBJ3506 thru GBJ3510 datasheet, Rev. 2", "maximum ratings: 400 A, 8.3 ms half-sine"));
        Check.Check(() => DiodeSurge.RatedIntegral(middle, t), "166 A²s", Source.Datasheet("GBU80 series datasheet (pdf.jiepei.com, gbu802)", "maximum ratings: 200 A, t < 8.3 ms"));
        Check.Check(() => DiodeSurge.RatedIntegral(small, t), "60 A²s", Source.Datasheet("Fagor, GBL02 … GBL10 datasheet, Jun-10", "maximum ratings: 120 A, 8.3 ms half-sine"));
        var rows = Reference.Read("diode-surge.csv");
        Check.Computed(rows, r => DiodeSurge.RatedIntegral(Amperes(r["I_FSM"]), Duration.FromSeconds(r["t_1"])), "rated");
        Check.Computed(rows, r => DiodeSurge.AtLength(Amperes(r["I_FSM"]), Duration.FromSeconds(r["t_1"]), Duration.FromSeconds(r["t_2"])), "I_2");
        Check.Computed(rows, r => DiodeSurge.OfPrimary(Amperes(r["I_p"]), r["N_r"]), "I_s");
        Check.Computed(rows, r => DiodeSurge.IntegralOfPrimary(new JouleIntegral(r["W_p"]), r["N_r"]), "W_s");
        var bypass = Reference.Read("bypass.csv");
        Check.Solved("SoftStart.Of", bypass, r => Run(r).Peak.Amperes, "peak", 1e-5);
        Check.Solved("SoftStart.Of", bypass, r => Run(r).BypassPeak.Amperes, "second", 1e-4);
        Check.Solved("SoftStart.Of", bypass, r => Run(r).Pulse.Si, "I2t", 1e-4);
        Check.Solved("SoftStart.Of", bypass, r => Run(r).BypassPulse.Si, "I2t_second", 1e-3);
        Check.Solved("SoftStart.Of", bypass, r => Run(r).GreatestHalfCycle.Si, "half_cycle", 1e-4);
    }

    private static SoftStart Run(ReferenceRow r) => SoftStart.Of(new SwitchOn(
        Volts(r["V_m"]), Cycles(r["f"]), Volts(r["V_half"]), Farads(r["C"]), Ohms(r["R_p"]), Ohms(r["R_h"]), Volts(r["V_D"]), InrushLimiter.Resistor(Ohms(r["R_lim"])), Duration.FromSeconds(r["bypass"]), Amperes(r["I_idle"])));

    [Fact]
    public void Ripple_current_and_life_of_a_reservoir()
    {
        var rows = Reference.Read("reservoir-stress.csv");
        Check.Computed(rows, r => ReservoirStress.Dissipation(Amperes(r["I"]), (int)r["n"], Ohms(r["R_s"])), "P");
        Check.Computed(rows, r => ReservoirStress.Rise(Power.FromWatts(r["P"]), PerWatt(r["theta"])), "rise");
        Check.Computed(rows, r => ReservoirStress.RiseByRating(Amperes(r["I_1"]), Amperes(r["I_R"]), Rise(r["dT_0"])), "rise_rated");
        Check.Computed(rows, r => ReservoirStress.Life(Duration.FromSeconds(r["L_0"]), Celsius(r["T_0"]), Celsius(r["T"])), "L");
        Check.Computed(rows, r => ReservoirStress.VoltageUse(Volts(r["V"]), Volts(r["V_R"])), "use");
    }

    [Fact]
    public void Windings_over_a_duty()
    {
        var rows = Reference.Read("winding-duty.csv");
        Check.Computed(rows, r => WindingDuty.Equivalent(Amperes(r["I_1"]), Ratio.FromDecimalFractions(r["d"]), Amperes(r["I_2"])), "I_eq");
        Check.Computed(rows, r => WindingDuty.Rating(Volts(r["V_FL"]), Amperes(r["I_eq"])), "S");
        Check.Computed(rows, r => WindingDuty.Allowed(Amperes(r["I_R"]), Amperes(r["I_1"]), Amperes(r["I_2"])), "allowed");
    }

    /// <summary>A gate table is read, not computed: what two makers print for time-lag fuses, and the current below which nobody promises anything.</summary>
    [Fact]
    public void Fuses_open_by_their_sheets()
    {
        // Sheet 5 as bel prints it for its type 5HT of 1 A to 3.15 A; sheet 3's limits as a seller of a time-lag fuse of 40 mA to 5 A lists them.
        var five = new FuseOpening([new(2.1, Duration.FromMinutes(30)), new(2.75, 80.s), new(4, 5.s), new(10, 100.ms)]);
        var three = new FuseOpening([new(2.1, 120.s), new(2.75, 10.s), new(4, 3.s), new(10, 300.ms)]);
        Assert.Equal(80.s, five.Latest(2.A, 5.5.A));
        Assert.Equal(80.s, five.Latest(2.A, 7.9.A));
        Assert.Equal(3.s, three.Latest(4.A, 16.A));
        Assert.Null(three.Latest(4.A, 6.A)); // 1.5 times: 60 min at least
    }
}
