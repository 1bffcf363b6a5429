using EightOhm.Devices;
using EightOhm.Feedback;
using EightOhm.Noise;
using EightOhm.OutputStages;
using EightOhm.Protection;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using EightOhm.Ratings;
using EightOhm.SafeAreas;
using EightOhm.Thermal;
using UnitsNet;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>Bridged stages, bought sinks, bias errors, drivers, distortion and corners: makers' figures and other methods.</summary>
[Checks]
public class PartsChecks
{
    [Fact]
    public void Stages_in_bridge()
    {
        // A single supply of 5 V: each half works 2.5 V either way.
        ElectricPotential half = 2.5.V;
        var R_L = 8.Ohm;
        var resistive = 0.deg;
        Check.Against(() => BridgedStage.WorstDissipation(half, R_L, resistive), 2 * ClassB.Worst(half, R_L, resistive), "two stages with the whole load each",
            "633 mW", Source.Datasheet("STMicroelectronics, TS4995 datasheet", "p. 19, example: V_CC = 5 V, R_L = 8 Ω, maximum power dissipation"));
        var rows = Reference.Read("bridged.csv");
        Check.Computed(rows, r => BridgedStage.LoadOfHalf(Ohms(r["Z"])), "seen");
        Check.Computed(rows, r => BridgedStage.Swing(Volts(r["V_p"])), "swing");
        Check.Computed(rows, r => BridgedStage.LoadPower(Volts(r["V_p"]), Ohms(r["Z"]), Degrees(r["phi_deg"])), "P_L");
        Check.Computed(rows, r => BridgedStage.Dissipation(Volts(r["V"]), Volts(r["V_p"]), Ohms(r["Z"]), Degrees(r["phi_deg"]), Ohms(r["R_E"]), (int)r["n"]), "P_D");
        Check.Computed(rows, r => BridgedStage.WorstDissipation(Volts(r["V"]), Ohms(r["Z"]), Degrees(r["phi_deg"])), "worst");
    }

    [Fact]
    public void A_sink_at_another_rise()
    {
        var source = Source.Datasheet("Aavid Thermalloy, temperature correction considerations (aavid.com/thermal-tools/temperature-correct)", "correction factors for extrusions in natural convection");
        (double Rise, string Factor)[] table = [(75, "1.000 K/W"), (70, "1.017 K/W"), (60, "1.057 K/W"), (50, "1.106 K/W"), (40, "1.170 K/W"), (30, "1.257 K/W")];
        var unit = 1.K_per_W;
        var told = 75.K;
        // 50 K: 1.5^(1/4) is 1.10668; the maker cuts it off. The other five round to it.
        Check.Table(table.Where(x => x.Rise != 50).ToArray(), x => RatedSink.AtRise(unit, told, TemperatureDelta.FromKelvins(x.Rise)), x => x.Factor, source, "factors of 1 K/W told at 75 K");
        var fifty = 50.K;
        Check.Disagrees(() => RatedSink.AtRise(unit, told, fifty), "1.106 K/W", "1.10668 K/W", source, "The maker cuts 1.10668 off after three decimals.");
        var rows = Reference.Read("rated-sink.csv");
        Check.Computed(rows, r => RatedSink.AtRise(PerWatt(r["theta_0"]), Rise(r["dT_0"]), Rise(r["dT"])), "theta");
        Check.Computed(rows, r => RatedSink.Rise(PerWatt(r["theta_0"]), Rise(r["dT_0"]), Power.FromWatts(r["P"])), "rise");
        Check.Computed(rows, r => RatedSink.AtPower(PerWatt(r["theta_0"]), Rise(r["dT_0"]), Power.FromWatts(r["P"])), "theta_P");
        Check.Computed(rows, r => Thermostat.SinkLimit(Celsius(r["T_J"]), Power.FromWatts(r["P_1"]), PerWatt(r["theta_JC"]), PerWatt(r["theta_CS"])), "T_s");
    }

    [Fact]
    public void Errors_of_a_bias()
    {
        var rows = Reference.Read("bias-errors.csv");
        Check.Computed(rows, r => BiasDrift.SpreaderError(r["m"], Volts(r["dV"]), (int)r["n_j"]), "share");
        Check.Computed(rows, r => BiasDrift.TrackingError(Drift(r["tc"]), Rise(r["dT_J"]), r["m"], Drift(r["tc_s"]), Rise(r["dT_s"]), (int)r["n_j"]), "tracking");
        Check.Computed(rows, r => Leakage.ShareOfStanding((int)r["n"], Amperes(r["I_CBO"]), Amperes(r["I_D"])), "leak");
        Check.Computed(Reference.Read("bias-shift.csv"), r => BiasStability.Shift(BiasStability.ForLeakage(r["h"], Ohms(r["R_B"]), Ohms(r["R_E"])), Amperes(r["dI"]), BiasStability.ForBaseEmitterVoltage(r["h"], Ohms(r["R_B"]), Ohms(r["R_E"])), Volts(r["dV"])), "shift");
    }

    [Fact]
    public void Corners_fractions_and_harmonics()
    {
        var corners = Reference.Read("flicker-corner.csv");
        Check.Computed(corners, r => FlickerNoise.Corner(Density(r["e_1"]), Cycles(r["f_1"]), Density(r["e_2"]), Cycles(r["f_2"])), "corner");
        Check.Computed(corners, r => FlickerNoise.WhiteDensity(Density(r["e_1"]), Cycles(r["f_1"]), Density(r["e_2"]), Cycles(r["f_2"])), "white");

        var loops = Reference.Read("complex-fraction.csv");
        foreach (var r in loops.Rows)
        {
            var ours = ComplexFraction.Of(Gain.FromRatio(r["A"]), Degrees(r["phi_A"]), Gain.FromRatio(r["A_CL"]), Degrees(r["phi_CL"]));
            Assert.Equal(r["B"], ours.Magnitude, 1e-12);
            Assert.Equal(r["phi_B"], ours.Phase.Degrees, 1e-8);
            Assert.Equal(1, ours.LoopGain / r["T"], 1e-9);
            Assert.Equal(r["phi_T"], ours.LoopPhase.Degrees, 1e-8);
            Assert.Equal(1, ours.ReturnDifference / r["F"], 1e-9);
            if (r["phi_A"] == 0)
                Assert.Equal(r["B"], FeedbackLoop.FractionFor(Gain.FromRatio(r["A"]), Gain.FromRatio(r["A_CL"])), 1e-12);
        }

        Check.Computed(Reference.Read("real-fraction.csv"), r => FeedbackLoop.FractionFor(Gain.FromRatio(r["A"]), Gain.FromRatio(r["A_CL"])), "B");

        Ratio[] four = [2.percent, 1.5.percent, 0.5.percent, 0.3.percent];
        Check.Against(() => HarmonicDistortion.OfRatios(four), 4.3.percent, "the plain sum of the harmonics", "2.567 %", Source.Secondhand("Total harmonic distortion, formula (theprimecalculator.com)", "worked example: 0.02, 0.015, 0.005, 0.003 V of 1 V"));
        var rows = Reference.Read("harmonics.csv");
        Check.Computed(rows, r => HarmonicDistortion.OfRatios(Harmonics(r)), "THD", 1e-8);
        Check.Computed(rows, r => HarmonicDistortion.OfPowers(Powers(r), Power.FromWatts(r["P_1"])), "THD", 1e-8);
        Check.Computed(rows, r => HarmonicDistortion.OfDecibels(Decibels(r)), "THD", 1e-8);
        Check.Computed(rows, r => HarmonicDistortion.OverTotal(Ratio.FromDecimalFractions(r["THD"])), "THD_R", 1e-8);
        Check.Computed(rows, r => HarmonicDistortion.TotalPower(Power.FromWatts(r["P_1"]), Ratio.FromDecimalFractions(r["THD"])), "P");
    }

    [Fact]
    public void Drivers_over_the_whole_cycle()
    {
        Transistor npn = Card("output-npn"), pnp = Card("output-pnp"), up = Card("driver-npn"), down = Card("driver-pnp");
        var rows = Reference.Read("driver-area.csv");
        OutputStage Stage(ReferenceRow r) => new(npn, pnp, (int)r["n"], Ohms(r["R_E"]), EightOhm.Supply.RailLine.Constant(Volts(r["V"]))) { IdleCurrent = Amperes(r["I_q"]), Drivers = new(up, down, Ohms(r["R"])) };
        Check.Solved("SafeAreaUtilisation.OfDriver", rows, r => SafeAreaUtilisation.OfDriver(new SafeArea(up).For(Celsius(r["T_C"]), SafeArea.Dc), Stage(r), 1, Ohms(r["Z"]), Degrees(r["phi_deg"])).Use, "use", 1e-6);
        Check.Solved("OutputStage.WorstDriving", rows, r => (double)Stage(r).WorstDriving(Ohms(r["Z"]), Degrees(r["phi_deg"]))[0].Heat.Watts, "worst", 5e-5); // the table of h_FE has corners, which a quadrature of 64 points rounds
        Check.Solved("OutputStage.WorstDriving", rows, r => Stage(r).WorstDriving(Ohms(r["Z"]), Degrees(r["phi_deg"]))[0].PeakCurrent.Amperes, "I_pk", 1e-7);
    }

    [Fact]
    public void How_long_a_junction_stands_a_power()
    {
        var impedance = new FosterImpedance((0.08.K_per_W, 1.2.ms), (0.17.K_per_W, 11.ms), (0.33.K_per_W, 70.ms), (0.25.K_per_W, 500.ms));
        Check.Solved("FosterImpedance.TimeTo", Reference.Read("endurance.csv"), r => impedance.TimeTo((r["T_J"] - r["T_C"]).K, Volts(r["V"]) * Amperes(r["I"]))!.Value.Seconds, "t", 1e-8);
    }

    private static Transistor Card(string role) => Transistor.Load(Path.Combine(Repository.Root, "notebooks", "course", "cards", $"{role}.json"));

    private static Ratio[] Harmonics(ReferenceRow r) => [.. new[] { "D_2", "D_3", "D_4", "D_5" }.Select(c => Ratio.FromDecimalFractions(r[c]))];

    private static Power[] Powers(ReferenceRow r) => [.. new[] { "P_2", "P_3", "P_4", "P_5" }.Select(c => Power.FromWatts(r[c]))];

    private static double[] Decibels(ReferenceRow r) => [.. new[] { "L_2", "L_3", "L_4", "L_5" }.Select(c => r[c])];
}
