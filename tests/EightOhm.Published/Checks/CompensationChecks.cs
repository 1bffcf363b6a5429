using EightOhm.Feedback;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

[Checks]
public class CompensationChecks
{
    [Fact]
    public void Dominant_pole_by_a_shunt_capacitor()
    {
        var (f_2, A) = (1.MHz, 100.dB);
        var R = 100.kOhm;
        Check.Check(() => DominantPole.For(f_2, A, 1), "10 Hz", Franco("Ex 8.8, p. 369"));
        Check.Check(() => DominantPole.Capacitor(R, DominantPole.For(f_2, A, 1)), "159 nF", Franco("Ex 8.8, p. 369"));
        Check.Check(() => DominantPole.For(f_2, A, 0.5), "20 Hz", Franco("Ex 8.8, p. 369"));
        Check.Check(() => DominantPole.Capacitor(R, DominantPole.For(f_2, A, 0.5)), "79.6 nF", Franco("Ex 8.8, p. 369"));
        var f_3 = 10.MHz;
        Check.Check(() => DominantPole.Capacitor(R, DominantPole.For(f_3, A, 1)), "15.9 nF", Franco("Ex 8.10, p. 373"), "the zero takes the place of the 1 MHz pole");
        Check.Check(() => DominantPole.ZeroResistor(DominantPole.Capacitor(R, DominantPole.For(f_3, A, 1)), f_2), "10 ohm", Franco("Ex 8.10, p. 373"));
    }

    [Fact]
    public void Miller_compensation_of_the_same_amplifier()
    {
        ElectricConductance g_m2 = 10.mS;
        ElectricResistance R_1 = 100.kOhm, R_2 = 50.kOhm;
        ElectricCapacitance C_1 = 15.92.pF, C_2 = 3.183.pF, one = 31.83.pF, half = 15.92.pF;
        var source = Franco("Ex 8.9, p. 370");
        Check.Check(() => MillerLoop.DominantPole(R_1, g_m2, R_2, one), "100 Hz", source);
        Check.Check(() => MillerLoop.InnerUnity(g_m2, one, C_1, C_2), "77 MHz", source);
        Check.Check(() => MillerLoop.DominantPole(R_1, g_m2, R_2, half), "200 Hz", source);
        Check.Check(() => MillerLoop.InnerUnity(g_m2, half, C_1, C_2), "71 MHz", source);
        var amplifier = Amplifier(one, 1);
        Check.Disagrees(() => LoopStability.Of(amplifier.OuterLoop()).PhaseMargin!.Value, "45 deg", "37.0 deg", source,
            "The aim of the rule. The finished amplifier has a pole at 77 MHz, one at 10 MHz and a zero in the right half-plane at 50 MHz besides.");
        var other = Amplifier(half, 0.5);
        Check.Disagrees(() => LoopStability.Of(other.OuterLoop()).PhaseMargin!.Value, "45 deg", "41.3 deg", source, "The same with half fed back: the zero lies at 100 MHz.");

        MillerAmplifier Amplifier(ElectricCapacitance c, double fraction) => new()
        {
            FirstTransconductance = 2.mS, SecondTransconductance = g_m2, Capacitor = c, InputResistance = R_1, InputCapacitance = C_1,
            OutputResistance = R_2, OutputCapacitance = C_2, Followers = TransferFunction.Pole(10.MHz), Feedback = TransferFunction.Constant(fraction),
        };
    }

    [Fact]
    public void Input_compensation_by_its_exact_margin()
    {
        // R1 10k, R2 100k, R_c 447.4 Ω between the inputs: the fraction fed back of a0 1e5, poles 10 kHz, 3 MHz, 30 MHz.
        var a = 1e5 * TransferFunction.Pole(10.kHz) * TransferFunction.Pole(3.MHz) * TransferFunction.Pole(30.MHz);
        var parallel = 1 / ((1 / 10e3) + (1 / 447.4));
        var loop = a * (parallel / (parallel + 100e3));
        Check.Disagrees(() => LoopStability.Of(loop).PhaseMargin!.Value, "45 deg", "39.5 deg", Franco("Ex 8.11, p. 375"), "The rule puts the crossover on the second pole; the third takes another 5.7°.");
        Check.Check(() => LoopStability.Of(loop).Crossover!.Value, "3 MHz", Franco("Ex 8.11, p. 375"));
    }

    [Fact]
    public void Unity_gain_of_integrated_amplifiers()
    {
        ElectricConductance folded = 0.8.mS;
        var load = 5.pF;
        Check.Check(() => MillerLoop.OpenLoopUnity(folded, load), "25.5 MHz", Sedra("Ex 9.2, p. 889"));
        ElectricCurrent tail = 200.uA, ia = 19.6.uA;
        Check.Check(() => SlewRate.Available(tail, load), "40 V/us", Sedra("Ex 9.2, p. 889"));
        var C = 30.pF;
        var source = Franco("Ex 6.7, p. 277");
        Check.Disagrees(() => SlewRate.Available(ia, C), "0.633 V/us", "0.653 V/us", source, "0.633 V/µs needs 19 µA; 19.6 µA over 30 pF is 0.653.");
        // g_m = I_A/(4·V_T) with V_T 26 mV.
        ElectricConductance g_m = ElectricConductance.FromSiemens(19.6e-6 / (4 * 0.026));
        Check.Check(() => MillerLoop.OpenLoopUnity(g_m, C), "1.00 MHz", source);
        ElectricPotentialChangeRate SR = 0.633.V_per_us;
        var fifth = 0.2.MHz;
        Check.Check(() => SlewRate.LargestStep(SR, fifth), "0.504 V", source, "with 1/5 fed back");
    }

    [Fact]
    public void An_ideal_second_stage_by_node_equations()
    {
        var rows = Reference.Read("ideal-miller.csv");
        Check.Computed(rows, r => MillerLoop.OpenLoopUnity(ElectricConductance.FromSiemens(r["g_m1"]), ElectricCapacitance.FromFarads(r["C"])), "f_ol", 1e-8);
        Check.Computed(rows, r => MillerLoop.Crossover(ElectricConductance.FromSiemens(r["g_m1"]), ElectricCapacitance.FromFarads(r["C"]), Gain.FromRatio(r["G"])), "f_x", 1e-8);
        Check.Computed(rows, r => MillerLoop.CapacitorFor(ElectricConductance.FromSiemens(r["g_m1"]), Frequency.FromHertz(r["f_x"]), Gain.FromRatio(r["G"])), "C", 1e-8);
        Check.Computed(rows, r => SlewRate.OfCrossover(Frequency.FromHertz(r["f_x"]), Gain.FromRatio(r["G"]), ElectricCurrent.FromAmperes(r["I"]), ElectricConductance.FromSiemens(r["g_m1"])), "SR", 1e-8);
        Check.Computed(rows, r => SlewRate.LargestStep(SlewRate.Available(ElectricCurrent.FromAmperes(r["I"]), ElectricCapacitance.FromFarads(r["C"])), Frequency.FromHertz(r["f_x"])), "V_crit");
        var inner = Reference.Read("inner-loop.csv");
        Check.Computed(inner, r => MillerLoop.InnerUnity(ElectricConductance.FromSiemens(r["g_m2"]), ElectricCapacitance.FromFarads(r["C"]), ElectricCapacitance.FromFarads(r["C_1"]), ElectricCapacitance.FromFarads(r["C_2"])), "f_in", 1e-8);
        Check.Computed(inner, r => MillerLoop.RightZero(ElectricConductance.FromSiemens(r["g_m2"]), ElectricCapacitance.FromFarads(r["C"])), "f_z");
    }

    [Fact]
    public void Both_loops_of_a_whole_amplifier_by_node_equations()
    {
        var rows = Reference.Read("miller-amplifier.csv");
        const string name = "MillerAmplifier.";
        Check.Solved(name + "OpenLoop", rows, r => Of(r).OpenLoop().Magnitude(20.kHz).Ratio, "A_20k", 1e-9);
        Check.Solved(name + "OuterLoop", rows, r => Of(r).OuterLoop().Magnitude(20.kHz).Ratio, "T_20k", 1e-9);
        Check.Solved(name + "OuterLoop", rows, r => LoopStability.Of(Of(r).OuterLoop()).Crossover!.Value.Hertz, "f_x", 1e-8);
        Check.Solved(name + "OuterLoop", rows, r => LoopStability.Of(Of(r).OuterLoop()).PhaseMargin!.Value.Degrees, "PM", 1e-7);
        Check.Solved(name + "InnerLoop", rows, r => Of(r).InnerLoop().Magnitude(20.kHz).Ratio, "inner_20k", 1e-9);
        Check.Solved(name + "InnerLoop", rows, r => LoopStability.Of(Of(r).InnerLoop()).Crossover!.Value.Hertz, "f_in", 1e-8);
        Check.Solved(name + "InnerLoop", rows, r => LoopStability.Of(Of(r).InnerLoop()).PhaseMargin!.Value.Degrees, "PM_in", 1e-7);
        Check.Solved("UnityFrequencies.Of", rows, r => UnityFrequencies.Of(Of(r).OpenLoop(), Of(r).Feedback).ClosedLoopBandwidth!.Value.Hertz, "f_CL", 1e-6);

        static MillerAmplifier Of(ReferenceRow r) => new()
        {
            FirstTransconductance = r["g_m1"].S, SecondTransconductance = r["g_m2"].S, Capacitor = ElectricCapacitance.FromFarads(r["C"]),
            SecondCapacitor = r["C_b"] > 0 ? ElectricCapacitance.FromFarads(r["C_b"]) : null, MiddleResistor = r["R_b"].Ohm, IsOutputInclusive = r["inclusive"] > 0,
            InputResistance = r["R_1"].Ohm, InputCapacitance = ElectricCapacitance.FromFarads(r["C_1"]), OutputResistance = r["R_2"].Ohm, OutputCapacitance = ElectricCapacitance.FromFarads(r["C_2"]),
            Followers = TransferFunction.Pole(r["f_p1"].Hz) * TransferFunction.Pole(r["f_p2"].Hz), Feedback = TransferFunction.Constant(r["B_fb"]),
        };
    }

    [Fact]
    public void The_T_network_and_the_divider_by_their_node_equations()
    {
        var rows = Reference.Read("two-pole.csv");
        Check.Computed(rows, r => TwoPole.SeriesCapacitance(ElectricCapacitance.FromFarads(r["C_1"]), ElectricCapacitance.FromFarads(r["C_2"])), "C_s");
        Check.Computed(rows, r => TwoPole.ZeroFrequency(ElectricResistance.FromOhms(r["R"]), ElectricCapacitance.FromFarads(r["C_1"]), ElectricCapacitance.FromFarads(r["C_2"])), "f_z");
        Check.Computed(rows, r => TwoPole.MoreGain(Frequency.FromHertz(r["f_z"]), Frequency.FromHertz(r["f"])), "more");
        Check.Computed(rows, r => TwoPole.PhaseCost(Frequency.FromHertz(r["f_z"]), Frequency.FromHertz(r["f"])), "cost");
        var lead = Reference.Read("lead-network.csv");
        Check.Computed(lead, r => LeadNetwork.ZeroFrequency(ElectricResistance.FromOhms(r["R_f"]), ElectricCapacitance.FromFarads(r["C_f"])), "f_z");
        Check.Computed(lead, r => LeadNetwork.PoleFrequency(ElectricResistance.FromOhms(r["R_f"]), ElectricResistance.FromOhms(r["R_g"]), ElectricCapacitance.FromFarads(r["C_f"]), ElectricCapacitance.FromFarads(r["C_n"])), "f_p");
        Check.Computed(lead, r => LeadNetwork.AgainstStray(ElectricCapacitance.FromFarads(r["C_n"]), ElectricResistance.FromOhms(r["R_g"]), ElectricResistance.FromOhms(r["R_f"])), "C_flat");
        Check.Computed(lead, r => LeadNetwork.CapacitorFor(ElectricResistance.FromOhms(r["R_f"]), Frequency.FromHertz(r["f_z"])), "C_f");
    }

    [Fact]
    public void Resistances_with_feedback()
    {
        ElectricResistance r_o = 100.Ohm, r_i = 1.4.kOhm, current = 1535.Ohm;
        var f_x = 100.kHz;
        Check.Check(() => LoopResistance.Inductance(r_o, f_x), "159 uH", Franco("Ex 6.5, p. 272"));
        Check.Check(() => LoopResistance.ShuntInput(r_i, 358.7 / 47), "162.2 ohm", Sedra("Ex 8.3, p. 821"));
        Check.Check(() => LoopResistance.ShuntInput(current, 201.45 * 3.4 / 13.4), "29.5 ohm", Sedra("Ex 8.4, p. 825"));
        var rows = Reference.Read("loop-resistances.csv");
        Check.Computed(rows, r => LoopResistance.Inductance(ElectricResistance.FromOhms(r["r"]), Frequency.FromHertz(r["f_x"])), "L");
        Check.Computed(rows, r => LoopResistance.ShuntInput(ElectricResistance.FromOhms(r["r"]), r["T"]), "shunt");
    }
}
