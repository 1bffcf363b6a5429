using EightOhm.Devices;
using EightOhm.Feedback;
using EightOhm.InputStages;
using EightOhm.Noise;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Teaching.Chapters;

/// <summary>Input stage, offset and slew.</summary>
internal static class Chapter10
{
    public static CourseChapter Of { get; } = new("10", "input stage, offset, slew",
    [
        new("10-transconductance", ExerciseLevel.WarmUp, Transconductance),
        new("10-base-current", ExerciseLevel.WarmUp, BaseCurrent),
        new("10-slew-at-crossover", ExerciseLevel.Steps, SlewAtCrossover),
        new("10-third-harmonic", ExerciseLevel.Steps, ThirdHarmonic),
        new("10-servo-authority", ExerciseLevel.Steps, Authority),
        new("10-input-stage", ExerciseLevel.Design, InputStage),
    ]);

    private static Exercise Transconductance(Numbers n)
    {
        var I_tail = n.Pick(4.mA, 2.mA, 3.mA);
        var R_deg = n.Pick(47.Ohm, 33.Ohm, 22.Ohm);
        var T = 25.degC;
        var r_e = Junction.ThermalVoltage(T) / (I_tail / 2);
        return Exercise.Ask($"A pair with a mirror has a tail current of {I_tail} and {R_deg} in each emitter, at {T}. What is its transconductance, output current over differential input?", () => InputPair.Transconductance(r_e, R_deg))
            .Slip(1 / (2 * (r_e + R_deg)), "That is one half alone; the mirror adds the other half's change.")
            .Slip(1 / (Junction.ThermalVoltage(25.degC) / I_tail + R_deg), "Each transistor carries half of the tail current.")
            .Slip(1 / r_e, "That leaves out the resistors in the emitters.")
            .Slip(1 / R_deg, "That leaves out the transistors' own r_e.")
            .Hints(
                "First r_e of one transistor, V_T over its own current.",
                "With a mirror it is one over the sum of r_e and the resistor.",
                $"r_e is {r_e:3}.")
            .Step(() => Junction.ThermalVoltage(T) / (I_tail / 2));
    }

    private static Exercise BaseCurrent(Numbers n)
    {
        var I_tail = n.Pick(4.mA, 2.mA, 3.mA);
        var h_FE = n.Pick(300.0, 200.0, 400.0);
        ElectricResistance R_a = 96.Ohm, R_b = n.Pick(10.kOhm, 22.kOhm, 4.7.kOhm);
        var I_B = I_tail / 2 / h_FE;
        return Exercise.Ask($"A pair with a tail current of {I_tail} and a current gain of {h_FE} has a bias resistor of {R_b} at one base and a divider of {R_a} at the other. What offset do the base currents make at the input?", () => OffsetVoltage.FromBaseCurrents(I_B, R_a, R_b))
            .Slip(2 * I_B * (R_b - R_a), "Each transistor carries half of the tail current.")
            .Slip(I_B * R_a, "The divider's is the small part; the bias resistor decides.")
            .Slip(I_tail / 2 * (R_b - R_a), "That is the collector current; the base takes the h_FE-th of it.")
            .Hints(
                "What current flows into one base?",
                "The two drops are of one sign and subtract.",
                $"The base current is {I_B:3}.")
            .Step($"Half the tail current over {h_FE} is {I_B:3}.");
    }

    private static Exercise SlewAtCrossover(Numbers n)
    {
        var I_tail = n.Pick(4.mA, 3.mA, 5.mA);
        var R_deg = n.Pick(47.Ohm, 68.Ohm, 100.Ohm);
        var f_x = n.Pick(1.MHz, 1.2.MHz, 0.8.MHz);
        var G = Gain.FromRatio(n.Pick(24.0, 20.0, 28.0));
        var r_e = Junction.ThermalVoltage(25.degC) / (I_tail / 2);
        ElectricConductance g_m = InputPair.Transconductance(r_e, R_deg), g_bare = InputPair.Transconductance(r_e, 0.Ohm);
        return Exercise.Ask($"A pair with a mirror, {I_tail} of tail current and {R_deg} in each emitter (25 °C), charges the compensation capacitor of an amplifier with a gain of {G.Ratio}. The loop gain is one at {f_x}. What is the slew rate?", () => SlewRate.Available(I_tail, MillerLoop.CapacitorFor(g_m, f_x, G)))
            .Slip(SlewRate.Available(I_tail, MillerLoop.CapacitorFor(g_bare, f_x, G)), "That is the slew rate without the resistors in the emitters.")
            .Slip(InputPair.SlewRateOfHalf(I_tail, MillerLoop.CapacitorFor(g_m, f_x, G)), "With a mirror the whole tail current reaches the capacitor.")
            .Slip(SlewRate.Available(I_tail, MillerLoop.CapacitorFor(g_m, f_x, 1.ratio)), "The loop gain has the divider in it: the capacitor is smaller by the gain.")
            .Slip(SlewRate.Available(I_tail, MillerLoop.CapacitorFor(g_m, f_x, G)) / (2 * pi), "A factor 2π is missing: the crossover is in hertz.")
            .Hints(
                "First the capacitor: transconductance over 2π times capacitance, divided by the gain, is the crossover.",
                "The slew rate is tail current over capacitor.",
                $"The capacitor is {MillerLoop.CapacitorFor(g_m, f_x, G):3}.")
            .Step(() => MillerLoop.CapacitorFor(g_m, f_x, G));
    }

    private static Exercise ThirdHarmonic(Numbers n)
    {
        var C = n.Pick(100.pF, 150.pF, 82.pF);
        var V_p = n.Pick(40.V, 36.V);
        ElectricCurrent I_tail = 4.mA;
        var f = 20.kHz;
        var G = n.Pick(24.0, 20.0, 28.0).ratio;
        var V_T = Junction.ThermalVoltage(25.degC);
        var u = PairDistortion.Share(f, V_p, C, I_tail);
        var none = Ratio.Zero;
        var x = u.DecimalFractions;
        return Exercise.Ask($"A balanced pair with a mirror and {I_tail} of tail current charges {C} in a loop with a gain of {G.Ratio}. What third harmonic does it leave at the output, of the fundamental, at {f} and {V_p} peak (25 °C)?", () => PairDistortion.ThirdHarmonic(V_T, u, none, G, V_p))
            .Within(5.percent)
            .Slip(Ratio.FromDecimalFractions(x * x / 12), "That is the distortion of the hyperbolic tangent itself; inside the loop the pair is told its current.")
            .Slip(Ratio.FromDecimalFractions(V_T / V_p * x * x * x / 6), "It stands at the summing node: it comes out times the gain.")
            .Slip(Ratio.FromDecimalFractions(2 * (V_T / V_p) * x * x * x / 6 * G.Ratio), "A factor two: 2·V_T·artanh has a cubic part of 2·V_T·u³/3, and cos³ has a quarter of it in its third harmonic.")
            .Hints(
                "Which share of the tail current does the capacitor take at that slope?",
                "For a small share u the pair's input has a third harmonic of V_T·u³/6; it comes out times the gain.",
                $"The share is {u:3}.")
            .Step(() => PairDistortion.Share(f, V_p, C, I_tail));
    }

    private static Exercise Authority(Numbers n)
    {
        var V_max = n.Pick(12.V, 10.V, 9.V);
        var R_f = n.Pick(2.2.kOhm, 4.7.kOhm, 1.kOhm);
        var R_g = n.Pick(100.Ohm, 220.Ohm, 47.Ohm);
        var R_inj = n.Pick(10.kOhm, 22.kOhm, 4.7.kOhm);
        var share = Parallel(R_f, R_g) / (R_inj + Parallel(R_f, R_g));
        return Exercise.Ask($"A servo reaches {V_max} either way and feeds the inverting input through {R_inj}; the divider there is {R_f} and {R_g}. What offset at the input can it undo at most?", () => DcServo.Authority(V_max, R_f, R_g, R_inj))
            .Slip(V_max * (R_f / R_inj), "That is what it moves at the output; the offset is asked at the input.")
            .Slip(V_max * (R_f / (R_inj + R_f)), "Both resistors of the divider stand in parallel there, since the output is held at 0 V.")
            .Slip(V_max * share * 2, "One way, not both together.")
            .Hints(
                "The output is held at 0 V, so the divider's two resistors lie in parallel at the inverting input.",
                "What is left is a divider of that and the servo's resistor.",
                $"In parallel they are {Parallel(R_f, R_g):3}.")
            .Step(() => Parallel(R_f, R_g));
    }

    private static Exercise InputStage(Numbers n)
    {
        var I_tail = n.Pick(4.mA, 3.mA);
        var G = n.Pick(24.0, 20.0);
        var f_most = n.Pick(1.2.MHz, 1.MHz);
        var SR_least = n.Pick(30.V_per_us, 25.V_per_us);
        var e_most = n.Pick(1.7.nV_rtHz, 1.8.nV_rtHz);
        var T = 25.degC;
        var r_e = Junction.ThermalVoltage(T) / (I_tail / 2);
        var C_ok = 0.95 * I_tail / SR_least;
        var R_ok = 1.04 / (2 * pi * G) * (1 / (C_ok * f_most)) - r_e;
        return Exercise.Choose<ElectricResistance, ElectricCapacitance>(
            $"Choose a resistor for each emitter of a pair with a mirror, {I_tail} of tail current, and the compensation capacitor, for an amplifier with a gain of {G}: the loop gain may be one at {f_most} at most, the slew rate must be {SR_least} at least, and the two emitter resistors together may make {e_most} at most, at {T}.",
            "R_deg",
            "C_dom",
            (R_deg, C_dom) =>
            {
                Guard.Positive(R_deg);
                Guard.Positive(C_dom);
                var f_x = InputPair.Transconductance(r_e, R_deg) / (2 * pi * C_dom) / G;
                return
                [
                    Criterion.AtMost("crossover", f_x, f_most, "The loop is too fast: a larger capacitor, or more resistance in the emitters."),
                    Criterion.AtLeast("slew rate", SlewRate.Available(I_tail, C_dom), SR_least, "It slews: a smaller capacitor, and more resistance in the emitters to keep the crossover."),
                    Criterion.AtMost("noise of the emitter resistors", PairNoise.OfBoth(R_deg, T), e_most, "The resistors in the emitters are too noisy: there is such a thing as too much degeneration."),
                ];
            })
            .Hints(
                "The slew rate sets the most that the capacitor may be.",
                $"With {I_tail} that is {I_tail / SR_least:3}.",
                "The crossover then sets the least that r_e and the resistor may be together, the noise the most.")
            .Step($"{I_tail} and {SR_least} allow {I_tail / SR_least:3}; {e_most} of two resistors allows {ThermalNoise.EquivalentResistance(e_most, T) / 2:3} in each emitter.")
            .Example(R_ok, C_ok)
            .Pitfall("crossover", R_ok / 4, C_ok)
            .Pitfall("slew rate", R_ok, 3 * C_ok)
            .Pitfall("noise of the emitter resistors", 220.Ohm, C_ok);
    }
}
