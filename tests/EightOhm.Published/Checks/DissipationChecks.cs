using EightOhm.OutputStages;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>Heat of output stages against integration over the waveform.</summary>
[Checks]
public class DissipationChecks
{
    [Fact]
    public void Worst_heat_of_the_ideal_stage_over_phase()
    {
        var (V, Z) = (1.V, 1.Ohm);
        Check.Computed(Reference.Read("class-b.csv"), r => ClassB.Worst(V, Z, Degrees(r["phase_deg"])), "heat_over_V2_per_Z");
    }

    [Fact]
    public void Powers_at_a_level_and_the_worst_with_emitter_resistors_and_phase()
    {
        var rows = Reference.Read("class-b-stage.csv");
        Check.Computed(rows, r => ClassB.SupplyPower(Volts(r["V"]), Volts(r["V_p"]), Ohms(r["Z"])), "P_S");
        Check.Computed(rows, r => ClassB.RailCurrent(Volts(r["V_p"]), Ohms(r["Z"])), "I_rail");
        Check.Computed(rows, r => ClassB.LoadPower(Volts(r["V_p"]), Ohms(r["Z"]), Degrees(r["phi_deg"])), "P_L");
        Check.Computed(rows, r => ClassB.LoadPower(Volts(r["V_p"]), Ohms(r["Z"]), Degrees(r["phi_deg"])) + ClassB.ResistorHeat(Volts(r["V_p"]), Ohms(r["Z"]), Ohms(r["R_E"]), (int)r["n"]), "P_LR");
        Check.Computed(rows, r => ClassB.Heat(Volts(r["V"]), Volts(r["V_p"]), Ohms(r["Z"]), Degrees(r["phi_deg"]), Ohms(r["R_E"]), (int)r["n"]), "P_D");
        Check.Computed(rows, r => ClassB.Efficiency(Volts(r["V"]), Volts(r["V_p"]), Degrees(r["phi_deg"])), "eta");
        Check.Computed(rows, r => ClassB.FullSwing(Volts(r["V"]), Ohms(r["Z"]), Degrees(r["phi_deg"]), Ohms(r["R_E"]), (int)r["n"]), "V_full");
        Check.Computed(rows, r => ClassB.Worst(Volts(r["V"]), Ohms(r["Z"]), Degrees(r["phi_deg"]), Ohms(r["R_E"]), (int)r["n"]), "P_worst");
        Check.Computed(rows, r => ClassB.WorstOfOne(Volts(r["V"]), Ohms(r["Z"]), Degrees(r["phi_deg"]), Ohms(r["R_E"]), (int)r["n"]), "P_one");
        Check.Computed(rows, r => ClassB.WorstLevel(Volts(r["V"]), Ohms(r["Z"]), Degrees(r["phi_deg"]), Ohms(r["R_E"]), (int)r["n"]), "V_worst");
        Check.Computed(rows, r => ClassB.AtHighMains(Power.FromWatts(r["P_worst"]), Ratio.FromDecimalFractions(r["x"])), "P_high");
        Power one = 1.W;
        var tenth = 10.percent;
        Check.TradeFact(() => ClassB.AtHighMains(one, tenth), "1.21 W");
    }

    [Fact]
    public void The_peak_of_one_side()
    {
        var rows = Reference.Read("class-b-peak.csv");
        Check.Computed(rows, r => ClassB.PeakOfSide(Volts(r["V"]), LoadWithEmitterResistor.Magnitude(Ohms(r["Z"]), Degrees(r["phi_deg"]), Ohms(r["R_E"]), (int)r["n"]), LoadWithEmitterResistor.Phase(Ohms(r["Z"]), Degrees(r["phi_deg"]), Ohms(r["R_E"]), (int)r["n"])), "p_max");
        Check.Computed(rows, r => Volts(r["V"]) - ClassB.OutputAtPeak(Volts(r["V"]), LoadWithEmitterResistor.Phase(Ohms(r["Z"]), Degrees(r["phi_deg"]), Ohms(r["R_E"]), (int)r["n"])), "across");
    }

    [Fact]
    public void Class_AB_by_the_loop_of_its_bias()
    {
        Check.Computed(Reference.Read("side-currents.csv"), r => SideCurrents.OffSide(Amperes(r["I_o"]), Amperes(r["I_Q"]), Ohms(r["R"]), Volts(r["V_T"])), "i_off");
        Check.Computed(Reference.Read("side-currents.csv"), r => Volts(1) + SideCurrents.Law(Amperes(r["i_off"]), Amperes(r["I_o"]), Amperes(r["I_Q"]), Ohms(r["R"]), Volts(r["V_T"])).Left, "one_and_drop");
        var rows = Reference.Read("class-ab.csv");
        Check.Computed(rows, r => ClassAB.Heat(Volts(r["V"]), Volts(r["V_p"]), Ohms(r["Z"]), Degrees(r["phi_deg"]), Ohms(r["R_E"]), (int)r["n"], Amperes(r["I_q"]), Ohms(r["r_int"]), Volts(r["V_T"])), "P_D");
        Check.Computed(rows, r => ClassAB.Heat(Volts(r["V"]), Stage(r).Maximum(Ohms(r["Z"]), Degrees(r["phi_deg"])).Level, Ohms(r["Z"]), Degrees(r["phi_deg"]), Ohms(r["R_E"]), (int)r["n"], Amperes(r["I_q"]), Ohms(r["r_int"]), Volts(r["V_T"])), "P_worst");
        foreach (var r in rows.Rows)
            Assert.Equal(r["P_worst"], (double)Stage(r).Maximum(Ohms(r["Z"]), Degrees(r["phi_deg"])).Total.Watts, 1e-9 * r["P_worst"]);
    }

    [Fact]
    public void A_programme_by_a_sine_and_by_noise()
    {
        var rows = Reference.Read("programme-heat.csv");
        Check.Computed(rows, r => MusicDissipation.RmsCurrent(Power.FromWatts(r["P"]), Ohms(r["Z"]), Degrees(r["phi_deg"])), "I_rms");
        Check.Computed(rows, r => MusicDissipation.SineHeat(Volts(r["V"]), Power.FromWatts(r["P"]), Ohms(r["Z"]), Degrees(r["phi_deg"])), "sine");
        Check.Computed(rows, r => MusicDissipation.NoiseHeat(Volts(r["V"]), Power.FromWatts(r["P"]), Ohms(r["Z"]), Degrees(r["phi_deg"])), "noise");
        Check.Computed(rows, r => MusicDissipation.ClippedShare(Gain.FromRatio(r["crest"])), "clipped");
        foreach (var r in rows.Rows)
        {
            var heat = Stage(r).Noise(Power.FromWatts(r["P"]), Ohms(r["Z"]), Degrees(r["phi_deg"]));
            Assert.Equal(r["noise_AB"], (double)heat.Total.Watts, 1e-9 * r["noise_AB"]);
            Assert.Equal(r["crest"], heat.Room.Ratio, 1e-9 * r["crest"]);
        }

        var crest = Reference.Read("programme-crest.csv");
        Check.Computed(crest, r => MusicDissipation.PowerOf(Power.FromWatts(r["P_rated"]), Gain.FromRatio(r["C_f"])), "P");
        Check.Computed(crest, r => MusicDissipation.CrestFactor(Power.FromWatts(r["P_rated"]), Power.FromWatts(r["P"])), "C_f");
        Power rated = 8.W;
        var twelve = 12.04.dB;
        Check.TradeFact(() => MusicDissipation.PowerOf(rated, twelve), "1.00 W");
    }

    [Fact]
    public void Two_transistors_that_do_not_match()
    {
        var rows = Reference.Read("current-sharing.csv");
        Check.Computed(rows, r => CurrentSharing.Difference(Volts(r["dV"]), Amperes(r["I"]), Ohms(r["R"]), Volts(r["V_T"])), "exact");
        Check.Computed(rows, r => CurrentSharing.Loop(Amperes(r["exact"]), Volts(r["dV"]), Amperes(r["I"]), Ohms(r["R"]), Volts(r["V_T"])).Right, "dV");
        Check.Computed(rows, r => CurrentSharing.Spread(Volts(r["dV"]), Amperes(r["I"]), Ohms(r["R"]), Volts(r["V_T"])), "small");
        Check.Computed(rows, r => CurrentSharing.Matching(Amperes(r["small"]), Amperes(r["I"]), Ohms(r["R"]), Volts(r["V_T"])), "dV");
        Check.Computed(rows, r => CurrentSharing.LeastResistance(Volts(r["dV"]), Amperes(r["small"]), Amperes(r["I"]), Volts(r["V_T"])) + Ohms(1), "R_and_one");
    }

    [Fact]
    public void Drivers_and_the_charge_they_move()
    {
        var rows = Reference.Read("drivers.csv");
        Check.Computed(rows, r => Drivers.Heat(Volts(r["V"]), Volts(r["V_p"]), Ohms(r["Z"]), Degrees(r["phi_deg"]), r["h_FE"], Amperes(r["I_D"])), "heat");
        Check.Computed(rows, r => Drivers.WorstHeat(Volts(r["V"]), Ohms(r["Z"]), Degrees(r["phi_deg"]), r["h_FE"], Amperes(r["I_D"])), "worst");
        Check.Computed(rows, r => Drivers.BaseCurrent(Volts(r["V_p"]) / Ohms(r["Z"]), r["h_FE"]), "base");
        Check.Computed(rows, r => Drivers.Standing(Volts(r["V_bias"]), Ohms(r["R"])), "standing");
        foreach (var r in rows.Rows)
        {
            var load = Drivers.At(Volts(r["V"]), Volts(r["V_p"]), Ohms(r["Z"]), Degrees(r["phi_deg"]), (int)r["n"], i => r["h_FE"] / (1 + (i.Amperes / r["knee"])), Amperes(r["I_D"]));
            Assert.Equal(r["heat_droop"], (double)load.Heat.Watts, 1e-9);
            Assert.Equal(r["base_droop"], load.BaseCurrent.Amperes, 1e-12);
        }

        Check.Computed(Reference.Read("stored-charge.csv"), r => ChargeControl.Stored(Amperes(r["I_C"]), Frequency.FromHertz(r["f_T"])), "Q");
    }

    private static StageDissipation Stage(ReferenceRow r) => new(Volts(r["V"]), (int)r["n"], Ohms(r["R_E"]))
    {
        IdleCurrent = Amperes(r["I_q"]),
        InternalResistance = Ohms(r["r_int"]),
        Junction = Temperature.FromKelvins(r["V_T"] * 1.602176634e-19 / 1.380649e-23),
    };
}
