using EightOhm.Protection;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Teaching.Chapters;

/// <summary>Limiters and the dc detector.</summary>
internal static class Chapter09
{
    public static CourseChapter Of { get; } = new("09", "protection",
    [
        new("09-limit-at-zero", ExerciseLevel.WarmUp, LimitAtZero),
        new("09-limit-warm", ExerciseLevel.WarmUp, LimitWarm),
        new("09-limit-at-the-rail", ExerciseLevel.Steps, LimitAtRail),
        new("09-detector-tau", ExerciseLevel.Steps, DetectorTau),
        new("09-trip-time", ExerciseLevel.Steps, TripTime),
        new("09-detector", ExerciseLevel.Design, Detector),
    ]);

    private static Exercise LimitAtZero(Numbers n)
    {
        var (R_1, R_2, R_3) = (n.Pick(220.Ohm, 270.Ohm, 180.Ohm), n.Pick(390.Ohm, 470.Ohm), 22.kOhm);
        var R_E = n.Pick(0.22.Ohm, 0.27.Ohm, 0.33.Ohm);
        var V_BE = 0.65.V;
        var V = 0.V;
        return Exercise.Ask(Network($"What is the limit of each emitter current with 0 V across the transistor, at 25 °C ({V_BE})?", R_1, R_2, R_3, R_E), () => LimiterLocus.SingleSlope(V_BE, R_1, R_2, R_3, R_E, V))
            .Slip(LimiterLocus.SingleSlope(0.53.V, R_1, R_2, R_3, R_E, V), "That is a sense junction at 85 °C, with 0.53 V; 25 °C is meant.")
            .Slip(V_BE / R_E, "That leaves the divider out: the base sees part of the drop.")
            .Hints(
                "What part of the emitter resistor's voltage does the base of the sense transistor see?",
                "R_1 above, R_2 (with R_3 beside it) below: a divider.",
                "The sense transistor acts when its part of the drop is its V_BE.");
    }

    private static Exercise LimitAtRail(Numbers n)
    {
        var (R_1, R_2, R_3) = (n.Pick(220.Ohm, 200.Ohm, 180.Ohm), 390.Ohm, n.Pick(22.kOhm, 27.kOhm));
        var R_E = n.Pick(0.22.Ohm, 0.27.Ohm, 0.33.Ohm);
        var V_BE = 0.65.V;
        var V = n.Pick(46.V, 42.V, 36.V);
        return Exercise.Ask(Network($"What is the limit of each emitter current with {V} across the transistor, at 25 °C ({V_BE})?", R_1, R_2, R_3, R_E), () => LimiterLocus.SingleSlope(V_BE, R_1, R_2, R_3, R_E, V))
            .Slip(LimiterLocus.SingleSlope(0.53.V, R_1, R_2, R_3, R_E, V), "That is a sense junction at 85 °C, with 0.53 V; 25 °C is meant.")
            .Slip(LimiterLocus.SingleSlope(V_BE, R_1, R_2, 1e9.Ohm, R_E, V), "The branch of R_3 is forgotten: it brings the voltage across the transistor in.")
            .Hints(
                "Two currents meet at the base of the sense transistor: from the emitter resistor and, through R_3, from the voltage across the transistor.",
                "At the limit the base stands at V_BE: write the sum of the currents there.",
                $"R_3 brings about {V}/R_3; it helps the drop across {R_E}.");
    }

    private static Exercise LimitWarm(Numbers n)
    {
        var I = n.Pick(2.A, 3.A, 2.5.A);
        var V_0 = 0.65.V;
        var tc = Literals.get_mV_per_K(-2);
        var T_0 = 25.degC;
        var T = n.Pick(75.degC, 65.degC, 85.degC);
        var V_T = LimiterLocus.SenseVoltage(V_0, tc, T, T_0);
        return Exercise.Ask($"A plain limiter acts at {I} with its sense junction at {T_0}, where V_BE is {V_0}; V_BE falls by 2 mV for each kelvin. Where does it act at {T}?", () => I * (V_T / V_0))
            .Slip(I * ((2 * V_0 - V_T) / V_0), "The sign: a warmer junction needs less voltage, so it acts sooner.")
            .Slip(I * (LimiterLocus.SenseVoltage(V_0, tc, T, 0.degC) / V_0), $"That counts from 0 °C; the junction was at {T_0} before.")
            .Slip(I, "V_BE moves with its junction, and the limit with it.")
            .Hints(
                "Does a warmer junction need more voltage or less?",
                $"How many kelvins from {T_0} to {T}, and how many millivolts is that?",
                "The limit goes with V_BE.")
            .Step(() => LimiterLocus.SenseVoltage(V_0, tc, T, T_0));
    }

    private static Exercise DetectorTau(Numbers n)
    {
        var V_p = n.Pick(40.V, 36.V, 45.V);
        var f = n.Pick(10.Hz, 15.Hz, 20.Hz);
        var V_th = 0.65.V;
        return Exercise.Ask($"A dc detector of one pole acts at {V_th}. What time constant lets a note of {V_p} peak at {f} just pass?", () => DcDetector.OnePoleTau(V_p, f, V_th))
            .Slip(1 / (2 * pi * f), $"That puts the corner at {f}, where 71 % of the note still passes.")
            .Slip(DcDetector.OnePoleTau(V_p / Sqrt(2), f, V_th), "That takes the rms voltage; the threshold meets the peak.")
            .Slip(V_p / V_th / f, "2π is missing: a pole passes 1/(2π·f·τ) of a note far above it.")
            .Hints(
                "By what factor must the pole weaken the note?",
                "Far above its corner a pole passes about 1/(2π·f·τ).",
                $"{V_p} must come down to {V_th}: a factor of {V_p / V_th:3}.");
    }

    private static Exercise TripTime(Numbers n)
    {
        var V = n.Pick(46.V, 42.V, 36.V);
        var V_th = 0.65.V;
        var tau = n.Pick(0.979.s, 0.68.s, 1.2.s);
        return Exercise.Ask($"A dc detector has one pole of {tau} and acts at {V_th}. How soon does it act after {V} of dc at the output?", () => DcDetector.OnePoleTrip(V, V_th, tau))
            .Slip(DcDetector.OnePoleTrip(V, V_th, 1 / (2 * pi * 10.Hz)), "So quick is a corner at 10 Hz, 16 ms, and it trips on music.")
            .Slip(tau, $"After one RC it is at 63 % of {V}; {V_th} comes far sooner.")
            .Slip(DcDetector.TwoPoleTrip(V, V_th, 0.124.s), "That is two poles of 0.124 s; this is one.")
            .Slip(tau * Ln(V / V_th), "That is a discharge down to the threshold; here the capacitor charges up to it.")
            .Hints(
                "A capacitor charges towards the dc; when does it pass the threshold?",
                "V·(1 − e^(−t/τ)) = V_th.",
                $"The threshold is {Ratio.FromDecimalFractions(V_th / V):2} of the dc: nearly the straight beginning of the curve.");
    }

    private static Exercise Detector(Numbers n)
    {
        var V_p = n.Pick(40.V, 36.V);
        var f = n.Pick(10.Hz, 12.Hz);
        var V = n.Pick(46.V, 42.V);
        var t = 25.ms;
        var V_stay = 1.5.V;
        return Exercise.Choose<Duration, ElectricPotential>(
            $"Choose the time constant τ and the threshold V of a dc detector with one pole. A note of {V_p} peak at {f} must not trip it, with a fifth to spare; {V} of dc must trip it within {t}; and a dc below the threshold, which stays on the loudspeaker, may be {V_stay} at most. A threshold below 0.5 V is not to be made with a junction.",
            "τ",
            "V",
            (tau, V_th) =>
            [
                Criterion.AtLeast("time constant over what the note needs", tau / DcDetector.OnePoleTau(V_p, f, V_th), 1.2, "A longer time constant or a higher threshold: the note trips it."),
                Criterion.AtMost("time to trip", DcDetector.OnePoleTrip(V, V_th, tau), t, "A shorter time constant or a lower threshold: the loudspeaker waits too long."),
                Criterion.AtMost("threshold", V_th, V_stay, "So much dc may stay on the loudspeaker for good: a lower threshold."),
                Criterion.AtLeast("threshold, lower side", V_th, 0.5.V, "A junction does not act so low."),
            ])
            .Hints(
                "The note wants τ·V large, the trip wants it small: look at the product.",
                "Nearly: the note needs τ·V ≥ V_p/(2π·f), the trip comes after τ·V/V_dc.",
                $"With a threshold of 1 V the note needs {DcDetector.OnePoleTau(V_p, f, 1.V):3}, and a fifth more.")
            .Step($"At 1 V the note needs {DcDetector.OnePoleTau(V_p, f, 1.V):3}; a fifth more trips on {V} in {DcDetector.OnePoleTrip(V, 1.V, 1.2 * DcDetector.OnePoleTau(V_p, f, 1.V)):3}.")
            .Example(0.85.s, 1.V)
            .Pitfall("time constant over what the note needs", 0.1.s, 1.V)
            .Pitfall("time to trip", 5.s, 1.V)
            .Pitfall("threshold", 0.4.s, 3.V);
    }

    private static ExerciseText Network(ExerciseText question, ElectricResistance R_1, ElectricResistance R_2, ElectricResistance R_3, ElectricResistance R_E) =>
        $"A limiter senses the drop of an emitter resistor of {R_E} through {R_1} (R_1) and {R_2} (R_2), with {R_3} (R_3) from the collector. {question.ToString()}";
}
