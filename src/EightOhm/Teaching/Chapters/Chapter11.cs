using EightOhm.Feedback;
using EightOhm.Quantities;
using EightOhm.SecondStages;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Teaching.Chapters;

/// <summary>The second stage.</summary>
internal static class Chapter11
{
    public static CourseChapter Of { get; } = new("11", "the second stage",
    [
        new("11-standing-current", ExerciseLevel.WarmUp, StandingCurrent),
        new("11-limited-fault", ExerciseLevel.WarmUp, LimitedFault),
        new("11-unlimited-fault", ExerciseLevel.Steps, UnlimitedFault),
        new("11-early-effect", ExerciseLevel.Steps, EarlyEffect),
        new("11-sticking", ExerciseLevel.Steps, Sticking),
        new("11-second-stage", ExerciseLevel.Design, Stage),
    ]);

    private static Exercise StandingCurrent(Numbers n)
    {
        var SR = n.Pick(40.V_per_us, 30.V_per_us, 50.V_per_us);
        var (C, C_s) = (n.Pick(100.pF, 120.pF, 82.pF), 20.pF);
        var I_B = 0.1.mA;
        return Exercise.Ask($"A second stage has {C} of compensation and {C_s} of stray capacitance at its output, and feeds {I_B} into the followers' bases. What standing current does {SR} need?", () => StageCurrent.Needed(SR, C, C_s, I_B))
            .Slip(SR * C, "That charges the compensation alone: strays and bases take current too.")
            .Slip(SR * C + I_B, $"The {C_s} at the output must be charged as well.")
            .Hints(
                "What has to be charged when the output moves, and what else takes current?",
                "Slope times capacitance is a current: C·dv/dt.",
                "Both capacitances together, then the bases.");
    }

    private static Exercise LimitedFault(Numbers n)
    {
        var V = n.Pick(56.V, 48.V, 62.V);
        var R_E = n.Pick(22.Ohm, 27.Ohm, 18.Ohm);
        var V_BE = 0.65.V;
        return Exercise.Ask($"A transistor across the emitter resistor of {R_E} limits the second stage's current at {V_BE}. A short holds the output at ground; the rail is {V}. What does the second stage dissipate?", () => StageHeat.LimitedFault(V, V_BE, R_E))
            .Slip(2 * StageHeat.LimitedFault(V, V_BE, R_E), "That is rail to rail; with the output at ground the stage stands at one rail.")
            .Slip(V_BE * (V_BE / R_E), "That is in the emitter resistor; the transistor has all the rest of the rail.")
            .Hints(
                "What current makes the drop at which the limiter acts?",
                "With the output at ground, how much voltage is across the stage?",
                $"{V_BE} over {R_E}, times the rail.");
    }

    private static Exercise UnlimitedFault(Numbers n)
    {
        var V = n.Pick(56.V, 48.V, 62.V);
        var I_tail = n.Pick(4.mA, 3.mA, 5.mA);
        var (h_FE, R_E) = (100.0, 22.Ohm);
        return Exercise.Ask($"The same stage without its limiter, its emitter resistor {R_E}, no follower in front. The pair gives its tail current, {I_tail}, into a transistor of h_FE {h_FE}; a short holds the output at ground; the rail is {V}. What would the transistor dissipate?", () => StageHeat.UnlimitedFault(V, I_tail, h_FE, R_E, 0))
            .Slip(V * I_tail, "That is the tail current itself; the transistor multiplies it.")
            .Slip(StageHeat.UnlimitedFault(V, I_tail / 2, h_FE, R_E, 0), "With a mirror all of the tail current goes into the second stage, not half.")
            .Slip(V * (h_FE * I_tail), "The emitter resistor has a part of the rail at such a current, and of the heat.")
            .Hints(
                "How much base current does the first stage give when it is driven to its end?",
                "The collector carries h_FE times as much; what does the emitter resistor leave of the rail?",
                $"{h_FE} times {I_tail}, at {V} less what that makes in {R_E}.");
    }

    private static Exercise EarlyEffect(Numbers n)
    {
        var (I, h_FE, V_A) = (n.Pick(10.mA, 8.mA, 12.mA), 100.0, 100.V);
        var (V, V_p) = (46.V, 40.V);
        var g_m1 = 1 / 60.Ohm;
        var G = 23.6.ratio;
        ElectricCurrent i = SummingNode.EarlyHarmonic(2, I, h_FE, V_A, V, V_p);
        return Exercise.Ask($"A bare second stage ({I}, h_FE {h_FE}, Early voltage {V_A}) swings {V_p} peak about {V}: its base current has a second harmonic of {i:3}. The pair has 16.67 mS, the amplifier a gain of {G.Ratio:3}. What second harmonic does this make, of {V_p} at the output? The loop gain is 55.", () => SummingNode.AtOutput(i, g_m1, G, V_p))
            .Slip(LoopErrors.AfterGain(SummingNode.AtOutput(i, g_m1, G, V_p), 55), "It is at the summing node: no loop gain divides it.")
            .Slip(SummingNode.AtOutput(i, g_m1, 1.ratio, V_p), "The error at the input comes out times the gain.")
            .Hints(
                "Who must supply this current, and what voltage does it need for that?",
                "The pair: v = i/g_m. Where does that voltage stand, seen from the loop?",
                "At the input, beside the signal. So it has the signal's gain.")
            .Step(() => i / g_m1);
    }

    private static Exercise Sticking(Numbers n)
    {
        var tau_s = n.Pick(1.us, 0.8.us, 1.5.us);
        var (I_f, I_n) = (n.Pick(1.mA, 2.mA, 4.mA), 0.1.mA);
        return Exercise.Ask($"In clipping a second stage's base gets {I_f} where its collector needs {I_n}; its storage time constant is {tau_s}. The drive goes. How long does it stick to its rail?", () => Recovery.Time(tau_s, I_f, I_n))
            .Slip(tau_s * Log10(I_f / I_n), "That is the logarithm to base 10; charge falls by e in each time constant.")
            .Slip(tau_s * (I_f / I_n), "Charge does not fall in a straight line: ten times too much is no ten time constants.")
            .Hints(
                "How does the stored charge fall when nothing feeds it?",
                "As e^(−t/τ). Until when is the transistor saturated?",
                $"Until only what {I_n} keeps up is left.");
    }

    private static Exercise Stage(Numbers n)
    {
        var SR = n.Pick(40.V_per_us, 38.V_per_us, 36.V_per_us);
        var V = 56.V;
        var (C, C_s, V_BE) = (120.pF, 20.pF, 0.65.V);
        return Exercise.Choose<ElectricCurrent, ElectricResistance>(
            $"Choose standing current I and emitter resistor R of a second stage on {V}, with {C} of compensation, {C_s} of strays and a limiter at {V_BE}. It must slew at {SR} with half as much again to spare, idle at no more than 0.6 W, dissipate no more than 1.8 W in a fault, and the limiter must leave it alone up to twice its standing current.",
            "I",
            "R",
            (I, R) =>
            [
                Criterion.AtLeast("standing current over what the slew rate needs", I / StageCurrent.Needed(SR, C, C_s, 0.A), 1.5, "More standing current: the slope takes nearly all of it."),
                Criterion.AtMost("dissipation at idle", StageHeat.Idle(V, I), 0.6.W, "Less standing current."),
                Criterion.AtMost("dissipation in a fault", StageHeat.LimitedFault(V, V_BE, R), 1.8.W, "A larger emitter resistor limits at less current."),
                Criterion.AtLeast("limit over the standing current", StageHeat.LimitedCurrent(V_BE, R) / I, 2.0, "A smaller emitter resistor: the limiter would act on signal."),
            ])
            .Hints(
                "Two limits hold the current between them, two the resistor.",
                "The fault sets the least resistor, twice the standing current the greatest.",
                $"{SR} into both capacitances is the least current; then half as much again.")
            .Step($"The slope alone needs {StageCurrent.Needed(SR, C, C_s, 0.A):3}; in a fault 1.8 W at {V} is a limit of {1.8.W / V:3}.")
            .Example(9.5.mA, 22.Ohm)
            .Pitfall("standing current over what the slew rate needs", 5.mA, 22.Ohm)
            .Pitfall("dissipation at idle", 12.mA, 22.Ohm)
            .Pitfall("dissipation in a fault", 9.5.mA, 15.Ohm)
            .Pitfall("limit over the standing current", 9.5.mA, 47.Ohm);
    }
}
