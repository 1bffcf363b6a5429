using EightOhm.Feedback;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Teaching.Chapters;

/// <summary>Compensation and stability.</summary>
internal static class Chapter12
{
    public static CourseChapter Of { get; } = new("12", "compensation and stability",
    [
        new("12-crossover", ExerciseLevel.WarmUp, Crossover),
        new("12-slew-of-crossover", ExerciseLevel.WarmUp, SlewOfCrossover),
        new("12-phase-margin", ExerciseLevel.Steps, PhaseMargin),
        new("12-inner-loop", ExerciseLevel.Steps, InnerLoop),
        new("12-two-pole-zero", ExerciseLevel.Steps, TwoPoleZero),
        new("12-two-pole-gain", ExerciseLevel.Steps, TwoPoleGain),
        new("12-compensation", ExerciseLevel.Design, Compensation),
    ]);

    private static Exercise Crossover(Numbers n)
    {
        var R = n.Pick(60.Ohm, 75.Ohm, 50.Ohm);
        var C = n.Pick(100.pF, 120.pF, 82.pF);
        var G = 23.6.ratio;
        var g_m1 = 1 / R;
        return Exercise.Ask($"A pair with a mirror has {R} in all from each emitter on (r_e and degeneration); its capacitor is {C}, the amplifier's gain {G.Ratio:3}. At what frequency is the loop gain one?", () => MillerLoop.Crossover(g_m1, C, G))
            .Slip(MillerLoop.OpenLoopUnity(g_m1, C), "That is where the open-loop gain is one; the divider takes the gain out of the loop.")
            .Slip(MillerLoop.Crossover(g_m1 / 2, C, G), "A mirror gives both halves of the pair: 1/(r_e + R_E), not half of it.")
            .Hints(
                "What is the open-loop gain far above its first pole?",
                "g_m/(2π·f·C). And the loop gain is how much of that?",
                "That over the closed-loop gain is one at the crossover.");
    }

    private static Exercise SlewOfCrossover(Numbers n)
    {
        var f_x = n.Pick(1.1.MHz, 0.9.MHz, 1.3.MHz);
        var (G, I, R) = (23.6.ratio, 4.mA, n.Pick(60.Ohm, 80.Ohm));
        var g_m1 = 1 / R;
        return Exercise.Ask($"A loop crosses at {f_x} with a closed-loop gain of {G.Ratio:3}. Its pair with a mirror has a tail of {I} and {R} from each emitter on. What slew rate goes with that?", () => SlewRate.OfCrossover(f_x, G, I, g_m1))
            .Slip(SlewRate.OfCrossover(f_x, G, I / 2, g_m1), "A mirror makes all of the tail current available, not half.")
            .Slip(SlewRate.OfCrossover(f_x, 1.ratio, I, g_m1), "The gain is forgotten: the capacitor is smaller by it.")
            .Hints(
                "Which capacitor does the crossover ask for?",
                "C = g_m/(2π·G·f_x); and the slew rate is the tail current over it.",
                "So 2π·f_x·G times the tail current times the resistance.")
            .Step(() => MillerLoop.CapacitorFor(g_m1, f_x, G));
    }

    private static Exercise PhaseMargin(Numbers n)
    {
        var f_u = n.Pick(1.5.MHz, 1.2.MHz, 2.MHz);
        var (f_p, t_d) = (8.MHz, n.Pick(12.ns, 20.ns));
        TransferFunction one = TransferFunction.Integrator(f_u), pole = TransferFunction.Pole(f_p), delay = TransferFunction.Delayed(t_d);
        return Exercise.Ask($"A loop gain falls as {f_u} over f; the output stage adds a pole at {f_p} and a delay of {t_d}. What is the phase margin?", LoopStability.Of(one * pole * delay).PhaseMargin!.Value)
            .Slip(LoopStability.Of(one * pole).PhaseMargin!.Value, "The delay is forgotten: 360° for each period that it lasts.")
            .Slip(LoopStability.Of(one * delay).PhaseMargin!.Value, "The pole is forgotten.")
            .Hints(
                "An integrator alone leaves 90°. What do pole and delay take at the crossover?",
                "The pole takes arctan(f/f_p), the delay 360°·f·t.",
                $"The crossover is a little below {f_u}, because the pole lowers the gain there too.")
            .Step($"The crossover is {LoopStability.Of(one * pole * delay).Crossover!.Value:4}; there the pole takes {-pole.Phase(LoopStability.Of(one * pole * delay).Crossover!.Value):3} and the delay {-delay.Phase(LoopStability.Of(one * pole * delay).Crossover!.Value):3} from the integrator's 90°.");
    }

    private static Exercise InnerLoop(Numbers n)
    {
        var g_m2 = n.Pick(40.mS, 30.mS, 50.mS);
        var (C, C_1, C_2) = (100.pF, 40.pF, 30.pF);
        return Exercise.Ask($"A second stage of {g_m2} has {C} around it, {C_1} from its input and {C_2} from its output to ground. Where does the inner loop, through the capacitor alone, have a gain of one?", () => MillerLoop.InnerUnity(g_m2, C, C_1, C_2))
            .Slip(MillerLoop.RightZero(g_m2, C), "That is the zero in the right half-plane: the stage against its own capacitor.")
            .Slip(g_m2 / (2 * pi * C_2), "At its output the stage also drives the compensation and, in series, what is at its input.")
            .Hints(
                "Cut at the transistor's source: what does it drive, and how much comes back to its base?",
                "Back comes C/(C + C_1) of the output; it drives C_2 and beside it C and C_1 in series.",
                "g_m2 times what comes back, over 2π and all it drives.");
    }

    private static Exercise TwoPoleZero(Numbers n)
    {
        var R = n.Pick(1.kOhm, 1.2.kOhm, 820.Ohm);
        var (C_1, C_2) = (100.pF, n.Pick(1.nF, 680.pF));
        return Exercise.Ask($"Two-pole compensation: {C_1} and {C_2} in series, {R} from their middle to ground. Where is the zero above which it behaves as one pole?", () => TwoPole.ZeroFrequency(R, C_1, C_2))
            .Slip(1 / (2 * pi * R * C_1), "That takes the small capacitor alone; the resistor sees both, side by side.")
            .Slip(1 / (2 * pi * R * TwoPole.SeriesCapacitance(C_1, C_2)), "That takes them in series; at the middle they stand side by side.")
            .Hints(
                "What do the capacitors look like from their middle, with both far ends held still?",
                "They are in parallel there.",
                "1/(2π·R·(C_1 + C_2)).");
    }

    private static Exercise TwoPoleGain(Numbers n)
    {
        var (R, C_1, C_2) = (n.Pick(1.kOhm, 1.2.kOhm, 1.5.kOhm), 100.pF, 1.nF);
        var f = 20.kHz;
        var f_z = TwoPole.ZeroFrequency(R, C_1, C_2);
        return Exercise.Ask($"Its zero is at {f_z:4}. How much more loop gain is there at {f} than with the one capacitor that it amounts to far above the zero?", () => TwoPole.MoreGain(f_z, f))
            .Slip(TwoPole.MoreGain(1 / (2 * pi * R * C_1), f), "That is with the zero of the small capacitor alone.")
            .Slip(TwoPole.MoreGain(f_z, f) * TwoPole.MoreGain(f_z, f), "Below the zero it gains 20 dB for a decade over one pole, not 40.")
            .Hints(
                "One pole falls by 20 dB a decade, two by 40. How far is it from the zero to the signal?",
                "The ratio of the frequencies, nearly.",
                "Exactly √(1 + (f_z/f)²).");
    }

    private static Exercise Compensation(Numbers n)
    {
        var G = 23.6.ratio;
        var I_tail = n.Pick(4.mA, 4.2.mA, 4.4.mA);
        var r_e = 2 * 25.7.mV / I_tail;
        return Exercise.Choose<ElectricCapacitance, ElectricResistance>(
            $"Choose the capacitor C and the degeneration R (in each emitter) of a pair with a mirror and a tail of {I_tail}; the gain is {G.Ratio:3}, r_e {r_e:3}. The crossover must lie between 0.8 and 1.3 MHz, the slew rate be 30 V/µs at least, and both degenerations together make no more noise than 120 Ω would.",
            "C",
            "R",
            (C, R) =>
            [
                Criterion.AtMost("crossover", MillerLoop.Crossover(1 / (r_e + R), C, G), 1.3.MHz, "A larger capacitor or more degeneration: the followers' poles come near."),
                Criterion.AtLeast("crossover, lower side", MillerLoop.Crossover(1 / (r_e + R), C, G), 0.8.MHz, "A smaller capacitor or less degeneration: there is too little loop gain left."),
                Criterion.AtLeast("slew rate", SlewRate.Available(I_tail, C), 30.V_per_us, "A smaller capacitor; then more degeneration keeps the crossover."),
                Criterion.AtMost("degeneration as a noise resistance", 2 * R, 120.Ohm, "Less degeneration: it is heard as noise."),
            ])
            .Hints(
                "The slew rate sets the greatest capacitor. What degeneration does the crossover then ask for?",
                "The crossover goes as one over C·(r_e + R).",
                $"{I_tail} at 30 V/µs is {I_tail / 30.V_per_us:3} at most.")
            .Step($"With 100 pF a crossover of 1.1 MHz asks for 1/(2π·1.1 MHz·{G.Ratio:3}·100 pF) in all, {1 / (2 * pi * G.Ratio * 1.1.MHz * 100.pF):3}, of which {r_e:3} are r_e.")
            .Example(100.pF, 47.Ohm)
            .Pitfall("crossover", 47.pF, 47.Ohm)
            .Pitfall("crossover, lower side", 130.pF, 59.Ohm)
            .Pitfall("slew rate", 220.pF, 15.Ohm)
            .Pitfall("degeneration as a noise resistance", 68.pF, 82.Ohm);
    }
}
