using EightOhm.Feedback;
using EightOhm.OutputNetworks;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Teaching.Chapters;

/// <summary>The output network.</summary>
internal static class Chapter14
{
    public static CourseChapter Of { get; } = new("14", "the output network",
    [
        new("14-zobel-heat", ExerciseLevel.WarmUp, ZobelHeat),
        new("14-damping-of-a-coil", ExerciseLevel.WarmUp, DampingOfCoil),
        new("14-output-inductance", ExerciseLevel.Steps, OutputInductance),
        new("14-coil", ExerciseLevel.Steps, Coil),
        new("14-resonance", ExerciseLevel.Steps, Resonance),
        new("14-output-network", ExerciseLevel.Design, Network),
    ]);

    private static Exercise ZobelHeat(Numbers n)
    {
        var V_rms = n.Pick(28.28.V, 24.V, 34.V);
        var (f, R, C) = (20.kHz, n.Pick(10.Ohm, 8.2.Ohm), 100.nF);
        return Exercise.Ask($"{R} and {C} in series stand across an output of {V_rms} rms at {f}. What does the resistor dissipate?", () => Zobel.Dissipation(V_rms, f, R, C))
            .Slip(V_rms * V_rms / R, "That is the resistor alone across the output; the capacitor takes most of the voltage.")
            .Slip(2 * Zobel.Dissipation(V_rms, f, R, C), "That takes the rms voltage for a peak's and doubles it; the figure given is rms.")
            .Hints(
                "What current flows through both?",
                "The capacitor has 1/(2π·f·C); it stands at a right angle to the resistor.",
                "V²·R/(R² + X²).");
    }

    private static Exercise DampingOfCoil(Numbers n)
    {
        var L = n.Pick(1.uH, 2.uH, 1.5.uH);
        var (f, R_L, R) = (20.kHz, 8.Ohm, 10.Ohm);
        return Exercise.Ask($"A coil of {L} with {R} across it lies in front of {R_L}. What damping factor does it leave at {f}, with everything else perfect?", () => DampedCoil.DampingFactor(f, R_L, L, R))
            .Slip(R_L / (f * L), "2π is missing in the reactance.")
            .Slip(R_L / R, $"At {f} the coil, not the {R} across it, is the way.")
            .Hints(
                "What impedance has the coil there?",
                "2π·f·L; the resistor beside it hardly matters yet.",
                "The load over it.");
    }

    private static Exercise OutputInductance(Numbers n)
    {
        var r_o = n.Pick(0.15.Ohm, 0.2.Ohm, 0.1.Ohm);
        var f_x = n.Pick(1.1.MHz, 0.9.MHz);
        return Exercise.Ask($"An output stage of {r_o} stands in a loop that crosses at {f_x}. Above the open-loop pole its output impedance rises with frequency: as that of which inductance?", () => LoopResistance.Inductance(r_o, f_x))
            .Slip(ElectricInductance.FromHenries(r_o.Ohms / f_x.Hertz), "2π is missing.")
            .Slip(ElectricInductance.FromHenries(8 / (2 * Math.PI * f_x.Hertz)), "That is the load's resistance; the output stage's own is meant.")
            .Hints(
                "How large is the loop gain at a frequency well below the crossover?",
                "f_x/f. So the output impedance is r_o·f/f_x.",
                "An inductance has 2π·f·L: compare.");
    }

    private static Exercise Coil(Numbers n)
    {
        var turns = n.Pick(14, 12, 16);
        var (D, l) = (11.5.mm, n.Pick(19.mm, 16.mm));
        return Exercise.Ask($"{turns} turns of one layer have a mean diameter of {D} and are {l} long. What inductance is that?", () => AirCoil.Inductance(turns, D, l))
            .Slip(AirCoil.Inductance(turns, D, l) / turns, "It goes with the square of the turns.")
            .Slip(AirCoil.Inductance(turns, D, l) * 25.4, "The formula wants inches.")
            .Hints(
                "D²·n²/(18·D + 40·l), in inches, gives microhenries.",
                $"{D} are {D.Inches:3} inches.",
                $"{l} are {l.Inches:3} inches.");
    }

    private static Exercise Resonance(Numbers n)
    {
        var (L, C) = (n.Pick(1.uH, 2.uH), n.Pick(2.2.uF, 1.uF));
        return Exercise.Ask($"A loudspeaker cable and its crossover look like {C}, and the output coil has {L}. At what frequency do the two resonate?", () => 1 / (2 * pi * Sqrt(L * C)))
            .Slip(1 / Sqrt(L * C), "That is the angular frequency, in radians per second.")
            .Slip(1 / (2 * pi * Sqrt(L * C / 1000)), "A decade or three off: micro times micro is 10⁻¹².")
            .Hints(
                "A resonance: where both reactances are alike.",
                "2π·f·L = 1/(2π·f·C).",
                "f = 1/(2π·√(L·C)).");
    }

    private static Exercise Network(Numbers n)
    {
        var (f, R_L) = (20.kHz, 4.Ohm);
        var C = n.Pick(2.2.uF, 1.5.uF, 2.uF);
        return Exercise.Choose<ElectricInductance, ElectricResistance>(
            $"Choose a coil L and the resistor R across it. The level into {R_L} may fall by 0.05 dB at {f}, a damping factor of 40 (of 8 Ω) must be left there, and with {C} beside 8 Ω the peak at the terminals, of a perfect amplifier, may not pass 12 dB. Below 0.5 µH the followers are no longer kept off such a load.",
            "L",
            "R",
            (L, R) =>
            [
                Criterion.AtLeast("inductance", L, 0.5.uH, "More inductance: the loop must be kept off the capacitor."),
                Criterion.AtLeast("level at 20 kHz", DampedCoil.Level(f, R_L, L, R), (-0.05).dB, "Less inductance."),
                Criterion.AtLeast("damping factor at 20 kHz", DampedCoil.DampingFactor(f, 8.Ohm, L, R), 40.0, "Less inductance, or a smaller resistor across it."),
                Criterion.AtMost("peak with the capacitor", new OutputNetwork { Inductance = L, DampingResistor = R }.WithCapacitors(8.Ohm, [C]).Highest!.Peak!.Value, 12.dB, "A smaller resistor across the coil damps the resonance."),
            ])
            .Hints(
                "The damping factor bounds the coil, the peak the resistor.",
                "At resonance the coil's own impedance is √(L/C): under an ohm. What does a resistor of ten ohms across it do?",
                "Little. A resistor of a few times √(L/C) damps.")
            .Step($"1 µH and {C} have √(L/C) of {Sqrt(1.uH / C):3}; a resistor of a few ohms is in reach of that.")
            .Example(1.uH, 2.2.Ohm)
            .Pitfall("inductance", 0.3.uH, 2.2.Ohm)
            .Pitfall("level at 20 kHz", 20.uH, 10.Ohm)
            .Pitfall("damping factor at 20 kHz", 3.3.uH, 4.7.Ohm)
            .Pitfall("peak with the capacitor", 1.uH, 22.Ohm);
    }
}
