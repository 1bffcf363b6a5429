using EightOhm.OutputStages;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Teaching.Chapters;

/// <summary>Dissipation and the number of pairs.</summary>
internal static class Chapter06
{
    public static CourseChapter Of { get; } = new("06", "the output stage",
    [
        new("06-worst-level", ExerciseLevel.WarmUp, WorstLevel),
        new("06-music-efficiency", ExerciseLevel.WarmUp, Efficiency),
        new("06-each-transistor", ExerciseLevel.Steps, EachTransistor),
        new("06-current-at-zero", ExerciseLevel.Steps, CurrentAtZero),
        new("06-pairs", ExerciseLevel.Design, Pairs),
    ]);

    private static Exercise WorstLevel(Numbers n)
    {
        var P_full = n.Pick(200.W, 120.W, 150.W, 80.W);
        return Exercise.Ask($"Class B, a resistor for a load, ideal transistors: at full swing the load gets {P_full}. What does it get at the level at which the transistors are hottest?", () => 4 / (pi * pi) * P_full)
            .Slip(P_full, "At full swing the heat is past its peak.")
            .Slip(P_full / 2, "Near, but the heat is greatest at 2/π of the voltage.")
            .Slip(2 / pi * P_full, "2/π is the share of the voltage; the power goes with its square.")
            .Hints(
                "Not at full swing: the rails give more current then, but little voltage is left across the transistors.",
                "Supply power less load power, as a function of the output voltage: where is it greatest?",
                "At 2/π of the full voltage.");
    }

    private static Exercise Efficiency(Numbers n)
    {
        var x = n.Pick(8, 10, 5, 16);
        var V = 1.V;
        var phi = 0.deg;
        var V_p = V / Sqrt((double)x);
        return Exercise.Ask($"What is the efficiency of class B, into a resistor and without losses, at a sine of 1/{x} of full power?", () => ClassB.Efficiency(V, V_p, phi))
            .Slip(ClassB.Efficiency(V, V, phi), "That is at full swing.")
            .Slip(ClassB.Efficiency(V, V / x, phi), $"It goes with the voltage, and that falls by the root of {x} only.")
            .Hints(
                "At full swing it is π/4. With what does it fall?",
                "The load's power goes with V², the supply's with V.")
            .Step($"The output voltage is 1/√{x} of the full one.");
    }

    private static Exercise EachTransistor(Numbers n)
    {
        var V = n.Pick(50.V, 42.V, 46.V);
        var Z = n.Pick(4.Ohm, 6.Ohm, 3.Ohm);
        var pairs = n.Pick(2, 3, 4);
        var R_E = n.Pick(0.33.Ohm, 0.22.Ohm);
        var phi = 0.deg;
        return Exercise.Ask($"Class B on ±{V} drives {Z} with {pairs} pairs and emitter resistors of {R_E}. What is the worst dissipation of one transistor at a sine?", () => ClassB.WorstOfOne(V, Z, phi, R_E, pairs))
            .Slip(ClassB.WorstOfOne(V, Z, phi, default, pairs), "The emitter resistors are forgotten: in series with the load.")
            .Slip(ClassB.Worst(V, Z, phi, R_E, pairs) / pairs, "That is a pair; a pair is two transistors.")
            .Slip(ClassB.Worst(V, Z, phi, R_E, pairs), "That is all the transistors together.")
            .Slip(V * V / Z / 2 / (2 * pairs), "That shares out V²/2R, the load's power at full swing.")
            .Hints(
                "The whole stage first, then how many transistors share it.",
                "The worst of a resistive load is 2·V²/(π²·R); the emitter resistors are part of R and take a part of the heat.",
                $"{2 * pairs} transistors share it; {pairs} emitter resistors stand in parallel in each half.");
    }

    private static Exercise CurrentAtZero(Numbers n)
    {
        var V_p = n.Pick(40.V, 36.V, 45.V);
        var Z = n.Pick(8.Ohm, 6.Ohm, 4.Ohm);
        var pairs = n.Pick(3, 2, 4);
        var phi = n.Pick(30.deg, 35.deg, 55.deg, 60.deg);
        return Exercise.Ask($"{V_p} peak into {Z} at {phi}, {pairs} pairs. What current has one transistor of the side at work when the output passes 0 V?", () => V_p / Z * Sin(phi) / pairs)
            .Slip(V_p / Z / pairs, "That is its peak current, at another instant of the cycle.")
            .Slip(0.A, "Into a resistor; here the current is not in phase with the voltage.")
            .Slip(V_p / Z * Sin(phi), "That is the side's current; its transistors share it.")
            .Slip(V_p / Z * Cos(phi) / pairs, "That is at the crest of the voltage; at 0 V it is the sine of the angle.")
            .Hints(
                "Voltage and current are two sines, shifted by the angle of the load.",
                "When the one passes zero the other stands at the sine of the angle.",
                "Then share it among the transistors of one side.");
    }

    private static Exercise Pairs(Numbers n)
    {
        var V = n.Pick(45.V, 42.V, 48.V);
        var Z = 4.Ohm;
        var phi = n.Pick(45.deg, 40.deg);
        var P_most = n.Pick(25.W, 28.W);
        var I_most = 5.A;
        var V_most = 0.6.V;
        return Exercise.Choose<int, ElectricResistance>(
            $"Class B on ±{V} drives {Z} at {phi}. Choose the number of pairs n and the emitter resistor R_E: at the worst sine each transistor may dissipate {P_most}, the peak current of each may be {I_most}, and an emitter resistor may take {V_most} of the swing at that peak. Keep R_E at 0.1 Ω or more, for sharing, and n at 6 or fewer, for the space.",
            "n",
            "R_E",
            (pairs, R_E) =>
            {
                Guard.AtLeast(pairs, 1);
                Guard.NotNegative(R_E);
                var I = V / Z / pairs;
                return
                [
                    Criterion.AtMost("worst dissipation of each", ClassB.WorstOfOne(V, Z, phi, R_E, pairs), P_most, "More pairs: an angle makes the stage hotter than a resistor would."),
                    Criterion.AtMost("peak current of each", I, I_most, "More pairs share the current."),
                    Criterion.AtMost("voltage of an emitter resistor", I * R_E, V_most, "A smaller R_E, or more pairs."),
                    Criterion.AtLeast("emitter resistor", R_E, 0.1.Ohm, "Without some resistance the pairs do not share."),
                    Criterion.AtMost("pairs", pairs, 6, "Fewer pairs: there is no space for so many."),
                ];
            })
            .Hints(
                "Begin with the dissipation; it sets the number of pairs.",
                "The current limit alone needs V/Z over the limit; round up.",
                "With the pairs known, R_E follows from its voltage at the peak of each.")
            .Step($"The side's peak current is at most {V / Z:3}; all transistors together dissipate up to {ClassB.Worst(V, Z, phi):3} without emitter resistors.")
            .Example(5, 0.22.Ohm)
            .Pitfall("worst dissipation of each", 2, 0.1.Ohm)
            .Pitfall("voltage of an emitter resistor", 5, 0.47.Ohm);
    }
}
