using EightOhm.Devices;
using EightOhm.Feedback;
using EightOhm.InputStages;
using EightOhm.Noise;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Teaching.Chapters;

/// <summary>Noise, whole.</summary>
internal static class Chapter13
{
    public static CourseChapter Of { get; } = new("13", "noise, whole",
    [
        new("13-base-current", ExerciseLevel.WarmUp, BaseCurrent),
        new("13-bare-mirror", ExerciseLevel.WarmUp, BareMirror),
        new("13-best-current", ExerciseLevel.Steps, BestCurrent),
        new("13-low-end", ExerciseLevel.Steps, LowEnd),
        new("13-quiet-stage", ExerciseLevel.Design, QuietStage),
    ]);

    private static Exercise BaseCurrent(Numbers n)
    {
        var I_C = n.Pick(2.mA, 1.mA, 3.mA);
        var h_FE = n.Pick(300.0, 200.0, 500.0);
        var r_pi = h_FE * (Junction.ThermalVoltage(25.degC) / I_C);
        return Exercise.Ask($"What noise current has the base of a transistor with {I_C} of collector current and a current gain of {h_FE}, as a density?", () => PairNoise.BaseCurrent(I_C, h_FE))
            .Slip(ThermalNoise.CurrentDensity(r_pi, 25.degC), "r_π is a slope, no resistor: it makes no thermal noise. The base current's shot noise is less by √2.")
            .Slip(ShotNoise.CurrentDensity(I_C), "That is the noise of the collector current.")
            .Slip(ShotNoise.CurrentDensity(I_C) / h_FE, "The current is divided by the current gain, so its noise by the root of it.")
            .Hints(
                "The base current is a current across a junction.",
                "Shot noise: √(2·q·I), with the base's current.",
                $"The base current is {I_C / h_FE:3}.")
            .Step($"{I_C} over {h_FE} is {I_C / h_FE:3}.");
    }

    private static Exercise BareMirror(Numbers n)
    {
        var I_C = n.Pick(2.mA, 1.mA, 3.mA);
        var R_deg = n.Pick(47.Ohm, 100.Ohm, 22.Ohm);
        var T = 25.degC;
        var none = 0.Ohm;
        var r_e = Junction.ThermalVoltage(T) / I_C;
        var bare = MirrorNoise.AtInput(T, none, none, r_e, r_e, R_deg);
        return Exercise.Ask($"A mirror without any resistor loads a pair with {R_deg} in each emitter; all four transistors carry {I_C}, at {T}. What noise does the mirror make at the input of the pair?", () => MirrorNoise.AtInput(T, none, none, r_e, r_e, R_deg))
            .Slip(Sqrt(2) * bare, "That takes r_e for a resistor. Its shot noise is that of half the resistance.")
            .Slip(bare / Sqrt(2), "That is one of its two transistors.")
            .Slip(PairNoise.CollectorShot(r_e, I_C), "That is through r_e alone: the mirror's current meets r_e and the resistor.")
            .Hints(
                "No resistor is not no noise: both collectors have their shot noise.",
                "The two currents add as squares; at the input they stand times r_e and the resistor together.",
                $"r_e is {r_e:3}, one current {ShotNoise.CurrentDensity(I_C):3}.")
            .Step(() => ShotNoise.CurrentDensity(I_C));
    }

    private static Exercise BestCurrent(Numbers n)
    {
        var h_FE = n.Pick(300.0, 200.0, 500.0);
        var R_a = n.Pick(1.kOhm, 680.Ohm, 2.2.kOhm);
        var R_b = n.Pick(200.Ohm, 150.Ohm);
        var V_T = Junction.ThermalVoltage(25.degC);
        return Exercise.Ask($"The bases of a pair with a current gain of {h_FE} see {R_a} and {R_b}, their own base and emitter resistors included. Which collector current of each makes the least noise, at 25 °C?", () => PairNoise.BestCollectorCurrent(V_T, h_FE, R_a, R_b))
            .Slip(V_T * Sqrt(h_FE) / R_a, "That is for a single transistor on one side: in a pair both collectors and both bases make noise.")
            .Slip(2 * PairNoise.BestCollectorCurrent(V_T, h_FE, R_a, R_b), "That is the tail current.")
            .Hints(
                "Shot noise of the collectors falls with the current, that of the bases rises.",
                "It is least where both are equal: 4·q·V_T²/I and 2·q·I/h_FE·(R_a² + R_b²).");
    }

    private static Exercise LowEnd(Numbers n)
    {
        var C_c = n.Pick(10.uF, 4.7.uF);
        ElectricResistance R_1 = 100.Ohm, R_b = n.Pick(10.kOhm, 22.kOhm);
        ElectricCapacitance none = 0.pF;
        var f = 20.Hz;
        var T = 25.degC;
        var Z = SourceImpedance.Magnitude(f, R_1, none, C_c, R_b);
        return Exercise.Ask($"An input has {R_1} in series, {C_c} of coupling and {R_b} to ground at the base. What thermal noise does this network make at {f}, {T}, its input shorted?", () => ThermalNoise.VoltageDensity(SourceImpedance.Resistance(f, R_1, none, C_c, R_b), T))
            .Within(3.percent)
            .Slip(ThermalNoise.VoltageDensity(Parallel(R_1, R_b), T), "That takes the capacitor for a short, which it is not at this frequency.")
            .Slip(ThermalNoise.VoltageDensity(Z, T), "A capacitor is silent: only the real part of the impedance makes noise.")
            .Slip(ThermalNoise.VoltageDensity(R_b, T), "That is the bias resistor with nothing in parallel.")
            .Hints(
                "A network makes the thermal noise of the real part of its impedance.",
                "Series: the resistor and the capacitor; in parallel the bias resistor. Take the real part.",
                $"The magnitude is {Z:3}; the real part is less.");
    }

    private static Exercise QuietStage(Numbers n)
    {
        var G = n.Pick(24.0, 20.0);
        var e_most = n.Pick(2.2.nV_rtHz, 2.3.nV_rtHz);
        var V = n.Pick(28.V, 25.V);
        var P_most = 0.5.W;
        var SR_least = 25.V_per_us;
        ElectricCurrent I_tail = 4.mA;
        var f_x = 1.MHz;
        var T = 25.degC;
        var r_e = Junction.ThermalVoltage(T) / (I_tail / 2);
        return Exercise.Choose<ElectricResistance, ElectricResistance>(
            $"Choose the divider's lower resistor R_g (the upper one follows from a gain of {G}) and the resistor R_deg in each emitter of a pair with a mirror and {I_tail} of tail current: divider, emitter resistors and the collectors' shot noise may make {e_most} together, at {T}; the upper resistor may dissipate {P_most} with {V} rms at the output; and the slew rate at a crossover of {f_x} must be {SR_least} at least.",
            "R_g",
            "R_deg",
            (R_g, R_deg) =>
            {
                Guard.Positive(R_g);
                Guard.Positive(R_deg);
                var R_f = (G - 1) * R_g;
                var V_f = V * (R_f / (R_f + R_g));
                return
                [
                    Criterion.AtMost("noise", ThermalNoise.VoltageDensity(Parallel(R_f, R_g) + 2 * R_deg + r_e, T), e_most, "Fewer ohms: those of the divider count once, those in the emitters twice."),
                    Criterion.AtMost("dissipation of the upper resistor", V_f * V_f / R_f, P_most, "A larger divider: nearly the whole output stands across its upper resistor."),
                    Criterion.AtLeast("slew rate", SlewRate.Available(I_tail, MillerLoop.CapacitorFor(InputPair.Transconductance(r_e, R_deg), f_x, Gain.FromRatio(G))), SR_least, "More resistance in the emitters: it buys a smaller capacitor."),
                ];
            })
            .Hints(
                "The dissipation sets the least divider, the slew rate the least degeneration; what is left of the noise is yours.",
                $"{e_most} is {ThermalNoise.EquivalentResistance(e_most, T):3} in all, of which the transistors' shot noise takes {r_e:3}.",
                "Degeneration counts twice.")
            .Step($"{e_most} is the noise of {ThermalNoise.EquivalentResistance(e_most, T):3} at {T}.")
            .Example(120.Ohm, 47.Ohm)
            .Pitfall("noise", 220.Ohm, 100.Ohm)
            .Pitfall("dissipation of the upper resistor", 33.Ohm, 47.Ohm)
            .Pitfall("slew rate", 120.Ohm, 10.Ohm);
    }
}
