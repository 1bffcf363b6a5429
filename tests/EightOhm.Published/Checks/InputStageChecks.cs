using EightOhm.Devices;
using EightOhm.Feedback;
using EightOhm.InputStages;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>Pairs, mirrors and current sources of the textbooks, offsets and their cures.</summary>
[Checks]
public class InputStageChecks
{
    private static readonly Source Active = Neamen("Ex 11.13, p. 678"), Frequencies = Neamen("Ex 11.20, p. 702");

    [Fact]
    public void A_pair_with_emitter_resistors()
    {
        ElectricResistance R_C = 10.kOhm, R_E = 150.Ohm, r_e = 50.Ohm, R_EE = 200.kOhm, r_o = 200.kOhm;
        var h_FE = 100.0;
        var x = 2.percent;
        var source = Sedra("Ex 7.1, p. 690");
        Check.Check(() => InputPair.InputResistance(h_FE, r_e, R_E), "40 kohm", source, "printed 40k of 40.4k");
        Check.Check(() => InputPair.GainOf(R_C, h_FE, r_e, R_E), "50", source, "before the 5 kΩ of each base divide it");
        Check.Check(() => CommonMode.GainOf(R_C, R_EE, x), "5e-4", source);
        Check.Check(() => CommonMode.InputResistance(h_FE, R_EE, r_o), "6.7 Mohm", source);
    }

    [Fact]
    public void The_tail_source_for_a_rejection()
    {
        var (h_FE, I, V_T) = (100.0, 0.8.mA, 26.mV);
        var CMRR = 90.dB;
        var source = Neamen("Ex 11.8, p. 658");
        Check.Disagrees(() => CommonMode.TailResistanceFor(CMRR, h_FE, I, V_T), "2.03 Mohm", "2.0351 Mohm", source, "The book rounds the ratio of 90 dB to 3.16e4 on the way: 2.0329 MΩ.");
        var R_EE = 2.0351.MOhm;
        Check.Check(() => CommonMode.RejectionOf(h_FE, I, R_EE, V_T), "90 dB", source);
    }

    [Fact]
    public void The_resistances_of_a_pair()
    {
        var (h_FE, I_C, V_A, V_T) = (100.0, 0.25.mA, 100.V, 26.mV);
        var source = Neamen("Ex 11.9, p. 661");
        Check.Check(() => CurrentSource.OutputResistance(V_A, I_C), "400 kohm", source);
        ElectricResistance r_e = V_T / I_C, none = 0.Ohm;
        Check.Disagrees(() => InputPair.InputResistance(h_FE, r_e, none), "20.8 kohm", "21.008 kohm", source, "The book takes 2·r_π with r_π = β·V_T/I_C, that is β for β + 1.");
        ElectricResistance R_o = 200.kOhm, r_o = 400.kOhm;
        Check.Check(() => CommonMode.InputResistance(h_FE, R_o, r_o), "10.1 Mohm", source);
    }

    [Fact]
    public void A_pair_with_a_mirror_open_and_loaded()
    {
        var (I, V_T, V_A) = (0.2.mA, 26.mV, 100.V);
        ElectricConductance open = default, load = 10.uS;
        Check.Check(() => InputPair.GainWithMirror(I, V_T, V_A, V_A, open), "1923", Active);
        Check.Check(() => InputPair.GainWithMirror(I, V_T, V_A, V_A, load), "320.5", Active);
    }

    [Fact]
    public void Common_mode_gain_over_frequency()
    {
        ElectricResistance R_o = 10.MOhm, R_B = 500.Ohm, r_pi = 10.kOhm;
        var C_o = 1.pF;
        var h_FE = 100.0;
        Check.Check(() => CommonMode.Zero(R_o, C_o), "15.9 kHz", Frequencies);
        Check.Check(() => CommonMode.EmitterResistance(R_o, r_pi, R_B, h_FE), "51.98 ohm", Frequencies);
        Check.Check(() => CommonMode.Zero(CommonMode.EmitterResistance(R_o, r_pi, R_B, h_FE), C_o), "3.06 GHz", Frequencies);
    }

    [Fact]
    public void Offset_of_unlike_junctions()
    {
        var V_T = 26.mV;
        var x = 5.percent;
        Check.Check(() => OffsetVoltage.FromMismatch(V_T, x), "1.27 mV", Neamen("Ex 14.8, p. 895"));
    }

    [Fact]
    public void Offset_of_base_currents_with_one_base_grounded_and_with_equal_resistors()
    {
        var (I_B, I_OS, V_OS) = (3.uA, 0.5.uA, 1.mV);
        ElectricResistance none = 0.Ohm, R = 1.kOhm;
        var A = 200.ratio;
        var source = Malvino("Ex 17-8, p. 639");
        Check.Check(() => OffsetVoltage.AtOutput(OffsetVoltage.FromBaseCurrents(I_B, none, R) + OffsetVoltage.FromOffsetCurrent(I_OS, none, R) + V_OS, A), "850 mV", source);
        Check.Check(() => OffsetVoltage.AtOutput(OffsetVoltage.FromOffsetCurrent(I_OS, R, R) + V_OS, A), "300 mV", source);
    }

    [Fact]
    public void Offset_of_an_inverting_stage()
    {
        ElectricCurrent I_B = 80.nA, I_OS = 20.nA, less = 3.nA;
        ElectricResistance R_1 = 22.kOhm, R_2 = 2.2.MOhm, R_3 = 2.2.kOhm, R_4 = 220.kOhm, none = 0.Ohm;
        var source = Franco("Ex 5.1, p. 219");
        var G = 101.ratio;
        Check.Disagrees(() => OffsetVoltage.AtOutput(OffsetVoltage.FromBaseCurrents(I_B, none, Maths.Parallel(R_1, R_2)), G), "175 mV", "176.0 mV", source, "The book rounds down on the way: 101·80 nA·21.782 kΩ is 176.0 mV.");
        Check.Check(() => OffsetVoltage.AtOutput(OffsetVoltage.FromOffsetCurrent(I_OS, Maths.Parallel(R_1, R_2), Maths.Parallel(R_1, R_2)), G), "44 mV", source);
        Check.Check(() => OffsetVoltage.AtOutput(OffsetVoltage.FromOffsetCurrent(I_OS, Maths.Parallel(R_3, R_4), Maths.Parallel(R_3, R_4)), G), "4.4 mV", source);
        Check.Check(() => OffsetVoltage.AtOutput(OffsetVoltage.FromOffsetCurrent(less, Maths.Parallel(R_3, R_4), Maths.Parallel(R_3, R_4)), G), "0.7 mV", source);
    }

    [Fact]
    public void The_common_mode_range_of_a_pair()
    {
        ElectricPotential rail = 5.V, V_R = 2.V, V_sat = 0.2.V, V_BE = 0.7.V, V_C = 2.5.V, V_BC = 0.6.V;
        var source = Millman("Ex 15.2, p. 576");
        Check.Check(() => InputPair.LowestInput(rail, V_R, V_sat, V_BE), "-2.1 V", source);
        Check.Check(() => InputPair.HighestInput(rail, V_C, V_BC), "3.1 V", source);
    }

    [Fact]
    public void Widlar_sources_of_three_books()
    {
        ElectricPotential V_T = 26.mV, V_25 = 25.mV, ten = 10.V, twenty = 20.V, V_BE = 0.7.V;
        ElectricCurrent milliampere = 1.mA, twelve = 12.uA, small = 10.uA;
        var neamen = Neamen("Ex 10.4, p. 591");
        Check.Check(() => CurrentSource.ReferenceResistor(ten, V_BE, milliampere), "9.30 kohm", neamen);
        Check.Check(() => CurrentSource.WidlarResistor(V_T, milliampere, twelve), "9.58 kohm", neamen);
        Check.Check(() => CurrentSource.WidlarResistor(V_25, milliampere, small), "11.5 kohm", Sedra("Ex 6.14, p. 654"));
        ElectricCurrent two = 20.uA, four = 40.uA;
        var raja = Source.Companion("P. Raja, Integrated Circuits", "Ex 1.18, p. 47");
        Check.Check(() => CurrentSource.ReferenceResistor(twenty, V_BE, milliampere), "19.3 kohm", raja);
        Check.Check(() => CurrentSource.WidlarResistor(V_T, milliampere, two), "5.086 kohm", raja);
        Check.Check(() => CurrentSource.WidlarResistor(V_T, milliampere, four), "2.09 kohm", raja);
        var R = 9.58.kOhm;
        Check.Check(() => CurrentSource.WidlarCurrent(V_T, milliampere, R), "12.0 uA", neamen, "the example read backwards");
        Check.Computed(Reference.Read("widlar.csv"), r => CurrentSource.WidlarCurrent(Volts(r["V_T"]), Amperes(r["I_ref"]), Ohms(r["R"])), "I_O");
    }

    [Fact]
    public void A_junction_of_a_plain_mirror_at_a_hundredth_of_its_current()
    {
        var (V_0, I_0, I, V_T) = (0.7.V, 1.mA, 10.uA, 25.mV);
        var ten = 10.V;
        var source = Sedra("Ex 6.14, p. 654");
        Check.Check(() => CurrentSource.ReferenceResistor(ten, V_0 - CurrentSource.WidlarResistor(V_T, I_0, I) * I, I), "942 kohm", source);
    }

    [Fact]
    public void A_mirror_s_base_currents()
    {
        var x = 5.percent;
        var h_FE = 80.0;
        Check.Check(() => CurrentMirror.LargestRatio(x, h_FE), "3.21", Source.Companion("P. Raja, Integrated Circuits", "Ex 1.4, p. 19"));
        var source = Neamen("Ex 10.2, p. 582");
        ElectricCurrent I = 1.mA, I_O = 0.9615.mA;
        var fifty = 50.0;
        var one = 1.0;
        Check.Check(() => CurrentMirror.Transfer(one, fifty) * I, "0.962 mA", source);
        var V_A = 80.V;
        Check.Check(() => CurrentSource.OutputResistance(V_A, I_O), "83.2 kohm", source);
        var dV = 4.3.V;
        Check.Check(() => CurrentSource.Change(dV, CurrentSource.OutputResistance(V_A, I_O)), "0.052 mA", source);
    }

    [Fact]
    public void Resistances_of_current_sources_as_solved_circuits() => Check.Computed(
        Reference.Read("output-resistance.csv"), r => CurrentSource.OutputResistanceDegenerated(Ohms(r["r_o"]), Ohms(r["r_e"]), r["h_FE"], Ohms(r["R_E"])), "R_o");

    [Fact]
    public void An_input_network_as_a_solved_circuit()
    {
        var reference = Reference.Read("input-network.csv");
        Check.Computed(reference, r => InputNetwork.Level(Ohms(r["R_1"]), Farads(r["C_in"]), Farads(r["C_c"]), Ohms(r["R_b"])), "top");
        Check.Computed(reference, r => InputNetwork.LevelAt(Cycles(r["f"]), Ohms(r["R_1"]), Farads(r["C_in"]), Farads(r["C_c"]), Ohms(r["R_b"])), "level");
        Check.Computed(reference, r => InputNetwork.LowCorner(Ohms(r["R_1"]), Farads(r["C_in"]), Farads(r["C_c"]), Ohms(r["R_b"])), "low", 1e-8);
        Check.Computed(reference, r => InputNetwork.HighCorner(Ohms(r["R_1"]), Farads(r["C_in"]), Farads(r["C_c"]), Ohms(r["R_b"])), "high", 1e-8);
    }

    [Fact]
    public void A_pair_in_a_loop_makes_the_harmonics_of_its_exponentials()
    {
        var reference = Reference.Read("pair-distortion.csv");
        Check.Computed(reference, r => PairDistortion.ThirdHarmonic(Junction.ThermalVoltage(Celsius(r["celsius"])), Ratio.FromDecimalFractions(r["u"]), Ratio.FromDecimalFractions(r["delta"]), Gain.FromRatio(r["G"]), Volts(r["V_p"])), "H3", 1e-8);
        Check.Computed(reference, r => PairDistortion.SecondHarmonic(Junction.ThermalVoltage(Celsius(r["celsius"])), Ratio.FromDecimalFractions(r["u"]), Ratio.FromDecimalFractions(r["delta"]), Gain.FromRatio(r["G"]), Volts(r["V_p"])), "H2", 1e-8);
        // Degeneration moves nothing while the capacitor stays: rows that differ in R_deg alone have one answer.
        Assert.All(reference.Rows.GroupBy(r => (r["celsius"], r["u"], r["delta"])), g => Assert.Equal(g.First()["H3"], g.Last()["H3"], 1e-9 * g.First()["H3"]));
        var u = PairDistortion.Share(20.kHz, 40.V, 100.pF, 4.mA);
        var third = PairDistortion.ThirdHarmonic(Junction.ThermalVoltage(25.degC), u, Ratio.Zero, 23.6.ratio, 40.V).PartsPerMillion;
        Assert.Equal(5.0736, third, 2e-3);
        IsNot(third, 507, "the distortion of the hyperbolic tangent over the loop gain");
        IsNot(third, 1330, "the distortion of the hyperbolic tangent itself");
    }

    [Fact]
    public void At_one_crossover_degeneration_buys_a_smaller_capacitor()
    {
        // A loop of 1.15 MHz with 4 mA; capacitor and third harmonic at 20 kHz, 40 V peak.
        (double R_deg, double C, double Ppm)[] rows = [(0, 456.5, 636), (22, 168, 24.6), (47, 98, 4.76), (100, 52, 0.70)];
        var V_T = Junction.ThermalVoltage(25.degC);
        foreach (var (R_deg, C, ppm) in rows)
        {
            var c = MillerLoop.CapacitorFor(InputPair.Transconductance(V_T / 2.mA, Ohms(R_deg)), 1.15.MHz, 23.6.ratio);
            Assert.Equal(C, c.Picofarads, 0.5);
            var h = PairDistortion.ThirdHarmonic(V_T, PairDistortion.Share(20.kHz, 40.V, c, 4.mA), Ratio.Zero, 23.6.ratio, 40.V).PartsPerMillion;
            Assert.Equal(ppm, h, 0.01 * ppm);
        }

        // Without degeneration slew rate and crossover are one: 7.62 V/µs for each megahertz.
        Assert.Equal(7.620, SlewRate.Available(4.mA, MillerLoop.CapacitorFor(InputPair.Transconductance(V_T / 2.mA, 0.Ohm), 1.MHz, 23.6.ratio)).VoltsPerMicroseconds, 5e-4);
    }

    [Fact]
    public void A_servo_as_a_solved_circuit()
    {
        var reference = Reference.Read("servo.csv");
        Check.Computed(reference, r => DcServo.GainBeside(Ohms(r["R_f"]), Ohms(r["R_g"]), Ohms(r["R_inj"])), "gain");
        Check.Computed(reference, r => DcServo.Corner(Ohms(r["R_i"]), Farads(r["C_i"]), Ohms(r["R_f"]), Ohms(r["R_inj"])), "corner");
        Check.Computed(reference, r => DcServo.Authority(Volts(12), Ohms(r["R_f"]), Ohms(r["R_g"]), Ohms(r["R_inj"])), "authority");
        Check.Computed(reference, r => DcServo.OutputFor(Volts(0.0667), Ohms(r["R_f"]), Ohms(r["R_g"]), Ohms(r["R_inj"])), "output");
        Check.Computed(reference, r => DcServo.NoiseAtInput(Cycles(20), Density(1e-8), Celsius(25), Ohms(r["R_i"]), Farads(r["C_i"]), Ohms(r["R_f"]), Ohms(r["R_g"]), Ohms(r["R_inj"])), "noise");
        var corner = DcServo.Corner(1.MOhm, 220.nF, 2.26.kOhm, 10.kOhm).Hertz;
        IsNot(corner, 0.723, "the integrator's own corner");
    }

    [Fact]
    public void A_capacitor_in_the_divider_as_a_solved_circuit()
    {
        var reference = Reference.Read("feedback-capacitor.csv");
        Check.Computed(reference, r => FeedbackCapacitor.Across(Cycles(r["f"]), Volts(r["V_out"]), Ohms(r["R_f"]), Ohms(r["R_g"]), Farads(r["C_g"])), "V_C", 1e-6);
        Check.Computed(reference, r => FeedbackCapacitor.ForVoltage(Cycles(r["f"]), Volts(r["V_out"]), Volts(r["V_C"]), Ohms(r["R_f"]), Ohms(r["R_g"])), "C_g", 1e-6);
    }

    private static Source Neamen(string place) => Source.Companion("D. A. Neamen, Electronic Circuit Analysis and Design", place);

    private static Source Millman(string place) => Source.Companion("J. Millman & C. C. Halkias, Integrated Electronics", place);

    private static void IsNot(double ours, double mistaken, string mistake) =>
        Assert.True(Math.Abs((ours / mistaken) - 1) > 0.01, $"{ours} cannot be told from {mistake}.");
}
