using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Teaching.Chapters;

/// <summary>Heat and what it does to the idle current.</summary>
internal static class Chapter08
{
    public static CourseChapter Of { get; } = new("08", "heat and tracking",
    [
        new("08-sink-temperature", ExerciseLevel.WarmUp, SinkTemperature),
        new("08-one-multiplier", ExerciseLevel.WarmUp, OneMultiplier),
        new("08-junction-rise", ExerciseLevel.Steps, JunctionRise),
        new("08-sink-at-high-mains", ExerciseLevel.Steps, SinkAtHighMains),
        new("08-idle-shift", ExerciseLevel.Steps, IdleShift),
        new("08-runaway-current", ExerciseLevel.Steps, RunawayCurrent),
        new("08-sink", ExerciseLevel.Design, Sink),
    ]);

    private static Exercise SinkTemperature(Numbers n)
    {
        var P = n.Pick(60.W, 40.W, 80.W);
        var theta = n.Pick(0.5.K_per_W, 0.39.K_per_W, 0.68.K_per_W);
        var T_a = n.Pick(30.degC, 25.degC, 35.degC);
        return Exercise.Ask($"A heat sink of {theta} carries {P} in air of {T_a}. How warm does it get?", () => T_a + (P * theta))
            .Slip(Temperature.FromDegreesCelsius((P * theta).Kelvins), "That is the rise above the air; add the air's own temperature.")
            .Slip(Temperature.FromDegreesCelsius(T_a.DegreesCelsius + ((double)P.Watts / theta.Si)), "A thermal resistance multiplies the heat; it does not divide it.")
            .Hints(
                "How much above the air, for each watt?",
                "The rise is the power times the thermal resistance.");
    }

    private static Exercise JunctionRise(Numbers n)
    {
        var P = n.Pick(90.W, 72.W, 60.W);
        var devices = n.Pick(6, 4, 8);
        var theta_SA = n.Pick(0.5.K_per_W, 0.4.K_per_W);
        var theta_JC = n.Pick(0.8.K_per_W, 0.7.K_per_W);
        var theta_CS = 0.4.K_per_W;
        return Exercise.Ask($"{devices} transistors on a sink of {theta_SA} dissipate {P} together; each has {theta_JC} to its case and {theta_CS} to the sink. How far is a junction above the air?", () => P * theta_SA + P / devices * (theta_JC + theta_CS))
            .Slip(P * (theta_SA + theta_JC + theta_CS), "That sends all the heat through one junction; each has its share.")
            .Slip(P / devices * (theta_SA + theta_JC + theta_CS), "That gives the sink one device's heat; it carries all of them.")
            .Slip(P * theta_SA, "That is the sink; the junction is above it.")
            .Hints(
                "Which heat goes through the sink, and which through one transistor?",
                "The sink carries all of it, each junction its share: two rises in series.",
                $"The sink is {P * theta_SA} above the air.")
            .Step(() => P * theta_SA)
            .Step(() => P / devices * (theta_JC + theta_CS));
    }

    private static Exercise SinkAtHighMains(Numbers n)
    {
        var P = n.Pick(100.W, 80.W, 70.W);
        var x = 10.percent;
        var T_J = 125.degC;
        var T_a = n.Pick(35.degC, 40.degC);
        var devices = n.Pick(6, 8, 4);
        var theta_JC = 0.8.K_per_W;
        var theta_CS = n.Pick(0.4.K_per_W, 0.3.K_per_W);
        var P_other = 0.W;
        var P_high = ClassB.AtHighMains(P, x);
        ThermalResistance For(Power heat) => SharedSink.AllowedSink(T_J, T_a, heat, devices, P_other, theta_JC, theta_CS);
        return Exercise.Ask(
                $"{devices} transistors dissipate {P} together at nominal mains; each has {theta_JC} to its case and {theta_CS} to the sink. What may the thermal resistance of the sink be, for junctions of {T_J} in air of {T_a}, at mains {x} high?",
                () => SharedSink.AllowedSink(T_J, T_a, P_high, devices, P_other, theta_JC, theta_CS))
            .Slip(For((1 + x) * P), "That takes 1.1 times the heat; rail and current rise: 1.21 times.")
            .Slip(For(P), "That is the sink for nominal mains.")
            .Slip(SharedSink.AllowedSink(T_J, T_a, P_high / devices, 1, P_other, theta_JC, theta_CS), "That is a sink for one of them; they all share it.")
            .Hints(
                "How does the heat of class B go with the rails?",
                "With their square. Then: what rise is left for the sink when a transistor's own is taken off?",
                $"At high mains it is {P_high}; each transistor has 1/{devices} of it.")
            .Step(() => ClassB.AtHighMains(P, x));
    }

    private static Exercise IdleShift(Numbers n)
    {
        var tc = n.Pick(2.mV_per_K, 2.2.mV_per_K);
        var dT = n.Pick(5.K, 4.K, 6.K);
        var R_E = n.Pick(0.22.Ohm, 0.33.Ohm, 0.18.Ohm);
        var r_int = 0.06.Ohm;
        var V_T = 28.mV;
        var I_q = n.Pick(100.mA, 80.mA, 120.mA);
        return Exercise.Ask(
                $"The spreader is {dT} too cold for the junctions, at {tc}. By how much is an idle current of {I_q} too high, by the slope alone? R_E is {R_E}, r_int {r_int}, V_T {V_T}.",
                () => BiasDrift.IdleCurrentShiftLinear(tc, dT, R_E, r_int, V_T, I_q))
            .Slip(tc * dT / (R_E + r_int), "r_e is forgotten: V_T over the current holds it back as well.")
            .Slip(tc * dT / R_E, "Only R_E is in that; r_int and r_e hold the current back as well.")
            .Slip(BiasDrift.Current(tc * dT, I_q, R_E + r_int, V_T) - I_q, "That is the exponential, and nearer the truth; the slope is asked.")
            .Hints(
                "How many millivolts too much does the spreader give?",
                "They stand across everything in the loop of one transistor: R_E, r_int, and the junction's r_e.",
                $"{tc * dT} across R_E + r_int + V_T/I.")
            .Step(() => tc * dT)
            .Step(() => Crossover.EmitterResistance(V_T, I_q));
    }

    private static Exercise OneMultiplier(Numbers n)
    {
        var V_BB = n.Pick(3.76.V, 3.9.V, 2.5.V);
        var V_BE = n.Pick(0.62.V, 0.6.V, 0.64.V);
        var tc = n.Pick(2.1.mV_per_K, 2.2.mV_per_K, 2.mV_per_K);
        return Exercise.Ask($"One V_BE multiplier on the sink holds the whole bias of {V_BB}, with a V_BE of {V_BE} that falls by {tc}. By how much does the bias fall for each kelvin of the sink?", () => VbeMultiplier.Factor(V_BB, V_BE) * tc)
            .Slip(2 * tc, "That is what the two hot junctions ask for; the multiplier gives more.")
            .Slip(tc, "That is its own V_BE alone, and it multiplies it.")
            .Hints(
                "How many times its V_BE does it hold?",
                "What multiplies V_BE multiplies its fall as well.")
            .Step(() => VbeMultiplier.Factor(V_BB, V_BE));
    }

    private static Exercise RunawayCurrent(Numbers n)
    {
        var V = n.Pick(46.V, 50.V, 48.V);
        var theta = n.Pick(3.58.K_per_W, 3.4.K_per_W, 3.7.K_per_W);
        var tc = 2.1.mV_per_K;
        var R_E = n.Pick(0.22.Ohm, 0.18.Ohm);
        var r_int = 52.5.mOhm;
        var V_T = 28.3.mV;
        var A_max = Runaway.GreatestGain(V, theta, tc, R_E, r_int);
        return Exercise.Ask(
                $"The spreader has come off its sink, so that {theta} lie between a junction and where it listens. A transistor stands {V} and its V_BE falls by {tc}; R_E is {R_E}, r_int {r_int}, V_T {V_T}. At which current does the loop gain of the heat reach one?",
                () => Runaway.UnityLoopGainCurrent(A_max, R_E, r_int, V_T))
            .Slip(Runaway.UnityLoopGainCurrent(Runaway.GreatestGain(V, theta, tc, R_E, default), R_E, default, V_T), "r_int is forgotten: it holds the current back beside R_E.")
            .Slip(Crossover.EqualGainCurrent(V_T, R_E, r_int), "That is the current of equal gain, of the crossover; the gain round the heat is asked.")
            .Hints(
                "The gain is V·θ·tc over all that is in series. What in that series depends on the current?",
                "r_e is V_T over the current: at a very large current only R_E and r_int are left.",
                $"At a very large current the gain is {A_max:3}; at the current asked r_e brings it down to one.")
            .Step(() => Runaway.GreatestGain(V, theta, tc, R_E, r_int));
    }

    private static Exercise Sink(Numbers n)
    {
        var P = n.Pick(70.W, 60.W);
        var x = 10.percent;
        var T_a = 35.degC;
        var theta_JC = 0.8.K_per_W;
        var theta_CS = n.Pick(0.4.K_per_W, 0.5.K_per_W);
        var P_high = ClassB.AtHighMains(P, x);
        var T_J = 110.degC;
        var T_S = 80.degC;
        return Exercise.Choose<int, ThermalResistance>(
            $"An output stage dissipates {P} at nominal mains. Choose the number of its transistors n (each {theta_JC} to its case, {theta_CS} to the sink) and the sink's thermal resistance R: at mains {x} high and {T_a} of air, junctions of {T_J} at most, a sink of {T_S} at most, no more than 8 transistors in pairs, and a sink of 0.3 K/W or more, for a better one needs a fan.",
            "n",
            "R",
            (devices, R) =>
            [
                Criterion.AtMost("junction", SharedSink.Junction(T_a, P_high, Guard.AtLeast(devices, 1), default, theta_JC, theta_CS, R), T_J, "More transistors, or a better sink."),
                Criterion.AtMost("sink", T_a + (P_high * R), T_S, "A better sink: all of the heat goes through it, however many transistors there are."),
                Criterion.AtMost("transistors", devices, 8, "There is no space for so many."),
                Criterion.AtMost("transistors left without a partner", devices % 2, 0, "They come in pairs: an even number."),
                Criterion.AtLeast("thermal resistance of the sink", R, 0.3.K_per_W, "Such a sink needs a fan."),
            ])
            .Hints(
                "High mains first: the heat goes with the square.",
                "The sink's own limit gives its thermal resistance; what is left up to the junction gives the number.",
                $"The sink may be {T_S - T_a} above the air with {P_high}.")
            .Step(() => ClassB.AtHighMains(P, x))
            .Example(6, 0.45.K_per_W)
            .Pitfall("sink", 8, 0.68.K_per_W)
            .Pitfall("junction", 2, 0.45.K_per_W);
    }
}
