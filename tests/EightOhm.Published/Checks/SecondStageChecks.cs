using EightOhm.Devices;
using EightOhm.Feedback;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using EightOhm.SecondStages;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

[Checks]
public class SecondStageChecks
{
    [Fact]
    public void Miller_capacitance_and_its_pole()
    {
        ElectricCapacitance C = 30.pF, seen = 8.58.nF, thirty = 30.03.nF;
        Gain A = 285.ratio, thousand = 1000.ratio;
        ElectricResistance R = 1.7389.MOhm, half = 500.kOhm;
        Check.Check(() => MillerEffect.InputCapacitance(C, A), "8580 pF", Neamen("Ex 13.7, p. 838"));
        Check.Check(() => MillerEffect.Pole(R, seen), "10.7 Hz", Neamen("Ex 13.7, p. 838"));
        Check.Against(() => MillerEffect.InputCapacitance(C, thousand), thousand.Ratio * C * 1.003, "the capacitance three parts in a thousand too large", "30.03 nF", Neamen("Ex 12.23, p. 799"));
        Check.Check(() => MillerEffect.Pole(half, thirty), "10.6 Hz", Neamen("Ex 12.23, p. 799"));
    }

    [Fact]
    public void A_second_stage_of_two_transistors()
    {
        ElectricCurrent I = 0.54.mA, follower = 15.8.uA;
        ElectricResistance R_B = 50.kOhm, R_E = 100.Ohm, none = 0.Ohm, seen = 18.6.kOhm;
        ElectricPotential V_T = 26.mV, V_B = 0.654.V;
        Check.Check(() => StageGain.FollowerCurrent(I, 200, V_B, R_B), "15.8 uA", Neamen("Ex 13.2, p. 827"));
        var source = Neamen("Ex 13.4, p. 832");
        Check.Check(() => StageGain.InputResistance(I, 200, none, V_T), "9.63 kohm", source);
        Check.Check(() => Maths.Parallel(R_B, StageGain.InputResistance(I, 200, R_E, V_T)), "18.6 kohm", source, "with the 50 kΩ beside it");
        Check.Check(() => StageGain.InputResistance(follower, 200, none, V_T), "329 kohm", source);
        Check.Check(() => StageGain.InputResistance(follower, 200, seen, V_T), "4.07 Mohm", source, "from the rounded 18.6 kΩ, as the book goes on");
    }

    [Fact]
    public void Gain_of_a_cascode_and_a_common_emitter()
    {
        ElectricConductance g_m = 0.8.mS;
        ElectricResistance R = 6.4.MOhm, load = 4.kOhm;
        Check.Check(() => StageGain.Voltage(g_m, R), "5120", Sedra("Ex 9.2, p. 889"));
        // V_T 25 mV is 290.1 K; without a follower the source of 4 kΩ and r_π divide.
        var I = 1.mA;
        Temperature T = Temperature.FromKelvins(0.025 * 1.602176634e-19 / 1.380649e-23);
        ElectricResistance none = 0.Ohm, r_pi = 2.5.kOhm, source = 4.kOhm;
        Check.Check(() => StageGain.Voltage(StageGain.Transconductance(I, none, T), load) * (r_pi / (r_pi + source)), "61.5", Sedra("Ex 6.13, p. 642"));
    }

    [Fact]
    public void Currents_and_heat_by_balances()
    {
        var rows = Reference.Read("second-stage.csv");
        var forty = 40.V_per_us;
        Check.Computed(rows, r => StageCurrent.Needed(forty, ElectricCapacitance.FromFarads(r["C"]), ElectricCapacitance.FromFarads(r["C_s"]), ElectricCurrent.FromAmperes(r["I_B"])), "I_need");
        Check.Computed(rows, r => StageCurrent.SlewRate(ElectricCurrent.FromAmperes(r["I"]), ElectricCurrent.FromAmperes(r["I_B"]), ElectricCapacitance.FromFarads(r["C"]), ElectricCapacitance.FromFarads(r["C_s"])), "SR");
        Check.Computed(rows, r => StageHeat.Idle(ElectricPotential.FromVolts(r["V"]), ElectricCurrent.FromAmperes(r["I"])), "P_idle");
        Check.Computed(rows, r => StageHeat.LimitedCurrent(ElectricPotential.FromVolts(r["V_BE"]), ElectricResistance.FromOhms(r["R_E"])), "I_lim");
        Check.Computed(rows, r => StageHeat.LimitedFault(ElectricPotential.FromVolts(r["V"]), ElectricPotential.FromVolts(r["V_BE"]), ElectricResistance.FromOhms(r["R_E"])), "P_lim");
        Check.Computed(rows, r => StageHeat.UnlimitedCurrent(ElectricPotential.FromVolts(r["V"]), ElectricCurrent.FromAmperes(r["I_1"]), r["h_FE"], ElectricResistance.FromOhms(r["R_E"]), r["h_f"]), "I_unl");
        Check.Computed(rows, r => StageHeat.UnlimitedFault(ElectricPotential.FromVolts(r["V"]), ElectricCurrent.FromAmperes(r["I_1"]), r["h_FE"], ElectricResistance.FromOhms(r["R_E"]), r["h_f"]), "P_unl");
        Check.Computed(rows, r => StageGain.Transconductance(ElectricCurrent.FromAmperes(r["I"]), ElectricResistance.FromOhms(r["R_E"]), Temperature.FromDegreesCelsius(r["T_C"])), "g_m2");
        Check.Computed(rows, r => PushPull.Transconductance(ElectricCurrent.FromAmperes(r["I"]), ElectricResistance.FromOhms(r["R_E"]), Temperature.FromDegreesCelsius(r["T_C"])), "g_pp");
        Check.Computed(rows, r => PushPull.ClassACurrent(ElectricCurrent.FromAmperes(r["I"])) / 2, "I");
    }

    [Fact]
    public void Errors_at_the_summing_node_by_quadrature()
    {
        var single = Reference.Read("early-harmonics.csv");
        ElectricPotential psi = 0.75.V;
        Check.Computed(single, r => SummingNode.EarlyHarmonic((int)r["n"], ElectricCurrent.FromAmperes(r["I"]), r["h_FE"], ElectricPotential.FromVolts(r["V_A"]), ElectricPotential.FromVolts(r["V"]), ElectricPotential.FromVolts(r["V_p"])), "i_n", 1e-8);
        Check.Computed(single, r => SummingNode.Capacitance(ElectricCapacitance.FromFarads(r["C_0"]), ElectricPotential.FromVolts(r["V_0"]), ElectricPotential.FromVolts(r["V"]), psi, 0.33), "C");
        Check.Computed(single, r => SummingNode.AtOutput(ElectricCurrent.FromAmperes(r["i_n"]), ElectricConductance.FromSiemens(r["g_m1"]), Gain.FromRatio(r["G"]), ElectricPotential.FromVolts(r["V_p"])), "d", 1e-8);
        var rows = Reference.Read("summing-node.csv");
        const string name = "SecondStage.Errors";
        Check.Solved(name, rows, r => Or(r, Of(r).Harmonics[0].FromCapacitance), "C2", 1e-8);
        Check.Solved(name, rows, r => Or(r, Of(r).Harmonics[0].FromEarlyEffect), "A2", 1e-8);
        Check.Solved(name, rows, r => Or(r, Of(r).Harmonics[0].Together), "d2", 1e-8);
        Check.Solved(name, rows, r => Of(r).Harmonics[1].FromCapacitance.DecimalFractions, "C3", 1e-8);
        Check.Solved(name, rows, r => Of(r).Harmonics[1].FromEarlyEffect.DecimalFractions, "A3", 1e-8);
        Check.Solved(name, rows, r => Of(r).Harmonics[1].Together.DecimalFractions, "d3", 1e-8);

        // A push-pull stage has no second harmonic; the file has 1 there.
        static double Or(ReferenceRow r, Ratio second) => r["both"] > 0 ? 1 + second.DecimalFractions : second.DecimalFractions;
        static SummingNodeErrors Of(ReferenceRow r) => new SecondStage
        {
            Current = r["I"].A,
            RestVoltage = r["V"].V,
            OutputCapacitance = ElectricCapacitance.FromFarads(r["C_0"]),
            CapacitanceVoltage = r["V_0"].V,
            CurrentGain = r["h_FE"],
            EarlyVoltage = r["V_A"].V,
            FollowerGain = r["h_f"] > 0 ? r["h_f"] : null,
            IsPushPull = r["both"] > 0,
            Cascode = r["g_m2"] > 0
                ? new()
                {
                    Transconductance = r["g_m2"].S,
                    InputCapacitance = ElectricCapacitance.FromFarads(r["C_in"]),
                    OutputCapacitance = ElectricCapacitance.FromFarads(r["C_obc"]),
                    CurrentGain = r["h_FEc"],
                }
                : null,
        }.Errors(r["f"].Hz, r["V_p"].V, r["g_m1"].S, r["G"].ratio);
    }

    [Fact]
    public void Recovery_by_the_charge_that_is_left()
    {
        var rows = Reference.Read("recovery.csv");
        Check.Computed(rows, r => Recovery.Time(Duration.FromSeconds(r["tau_s"]), ElectricCurrent.FromAmperes(r["I_f"]), ElectricCurrent.FromAmperes(r["I_n"])), "t", 1e-8);
        Check.Computed(rows, r => Recovery.ShareOfCycle(Duration.FromSeconds(r["t"]), Frequency.FromHertz(r["f"])), "share");
    }

    [Fact]
    public void The_loop_of_a_whole_amplifier_by_the_node_matrices_of_its_circuits()
    {
        var rows = Reference.Read("whole-amplifier.csv");
        Check.Solved("AmplifierStages.At", rows, r => At(r).SecondTransconductance.Siemens, "g_m2", 1e-12);
        Check.Solved("AmplifierStages.At", rows, r => At(r).OuterLoop().Magnitude(20.kHz).Ratio, "T_20k", 1e-9);
        Check.Solved("AmplifierStages.At", rows, r => LoopStability.Of(At(r).OuterLoop()).Crossover!.Value.Hertz, "f_x", 1e-7);
        Check.Solved("AmplifierStages.At", rows, r => LoopStability.Of(At(r).OuterLoop()).PhaseMargin!.Value.Degrees, "PM", 1e-6);
    }

    private static MillerAmplifier At(ReferenceRow r) => new AmplifierStages
    {
        TailCurrent = r["I_tail"].A,
        Degeneration = r["R_deg"].Ohm,
        Transistor = Transistor.Load(Path.Combine(Repository.Root, "notebooks", "tern-100", "cards", "second-stage.json")),
        Current = r["I"].A,
        EmitterResistor = r["R_E"].Ohm,
        Temperature = r["T"].degC,
        FollowerCurrent = r["I_f"] > 0 ? r["I_f"].A : null,
        FollowerGain = r["h_f"],
        IsCascoded = r["cascode"] > 0,
        Capacitor = ElectricCapacitance.FromFarads(r["C"]),
        InputCapacitance = ElectricCapacitance.FromFarads(r["C_in"]),
        OutputResistance = r["R_2"].Ohm,
        OutputCapacitance = ElectricCapacitance.FromFarads(r["C_2"]),
        OutputPole = r["f_p1"].Hz,
        IdleCurrent = r["I_q0"].A,
        DriverPole = r["f_p2"].Hz,
        Feedback = r["B"],
    }.At(Ratio.FromDecimalFractions(r["x_C"]), Ratio.FromDecimalFractions(r["x_p"]), r["T_pair"].degC, r["I_q"].A, Duration.FromSeconds(r["t_d"]));
}
