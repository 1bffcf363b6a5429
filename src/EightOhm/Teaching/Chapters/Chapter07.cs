using EightOhm.Devices;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Teaching.Chapters;

/// <summary>Crossover and the idle current.</summary>
internal static class Chapter07
{
    public static CourseChapter Of { get; } = new("07", "crossover and bias",
    [
        new("07-emitter-resistance", ExerciseLevel.WarmUp, EmitterResistance),
        new("07-multiplier", ExerciseLevel.WarmUp, Multiplier),
        new("07-meter-reading", ExerciseLevel.Steps, MeterReading),
        new("07-output-resistance", ExerciseLevel.Steps, OutputResistance),
        new("07-larger-resistor", ExerciseLevel.Steps, LargerResistor),
        new("07-charge-limit", ExerciseLevel.Steps, ChargeLimit),
        new("07-bias", ExerciseLevel.Design, Bias),
    ]);

    private static Exercise EmitterResistance(Numbers n)
    {
        var I = n.Pick(80.mA, 50.mA, 120.mA, 33.mA);
        var T = n.Pick(60.degC, 70.degC, 50.degC);
        var V_T = Junction.ThermalVoltage(T);
        return Exercise.Ask($"What is the dynamic emitter resistance r_e of a transistor at {I} with its junction at {T}?", () => Crossover.EmitterResistance(V_T, I))
            .Slip(Crossover.EmitterResistance(Junction.ThermalVoltage(25.degC), I), "That is the thermal voltage of the room; the junction is warmer.")
            .Slip(0.65.V / I, "That is V_BE over the current; the slope of the exponential is asked, V_T over the current.")
            .Hints(
                "The slope of an exponential: which voltage stands over the current?",
                "V_T = k·T/q, with T in kelvins.",
                $"At {T} it is {V_T:3}.")
            .Step(() => Junction.ThermalVoltage(T));
    }

    private static Exercise MeterReading(Numbers n)
    {
        var T = n.Pick(75.degC, 65.degC, 85.degC);
        var R_E = n.Pick(0.22.Ohm, 0.27.Ohm, 0.18.Ohm);
        var r_int = 52.5.mOhm;
        var V_T = Junction.ThermalVoltage(T);
        return Exercise.Ask($"At the equal-gain current, what does a meter read across an emitter resistor of {R_E}, with the junctions at {T} and {r_int} inside each transistor?", () => Crossover.EmitterResistorDrop(V_T, R_E, r_int))
            .Slip(26.mV, "That is the rule: it knows neither heat nor r_int.")
            .Slip(Crossover.EmitterResistorDrop(Junction.ThermalVoltage(25.degC), R_E, r_int), "That is the thermal voltage of the room; the junction is warmer.")
            .Slip(V_T, "That stands across R_E and r_int together.")
            .Hints(
                "V_T stands across R_E and what is inside the transistor, together.",
                "The meter sees R_E's share of it.",
                $"V_T is {V_T:3} at {T}.")
            .Step(() => Junction.ThermalVoltage(T));
    }

    private static Exercise OutputResistance(Numbers n)
    {
        var V_T = n.Pick(28.3.mV, 29.mV, 27.5.mV);
        var I_q = n.Pick(60.mA, 45.mA, 75.mA);
        var pairs = n.Pick(2, 3, 4);
        var R = n.Pick(272.5.mOhm, 250.mOhm, 320.mOhm);
        var R_L = 8.Ohm;
        var A = Crossover.GainAtZero(R_L, V_T, I_q, R, pairs);
        var whole = Crossover.OutputResistance(A, R_L);
        return Exercise.Ask($"What is the output resistance of {pairs} pairs at zero output? V_T is {V_T}, each pair idles at {I_q}, R_E + r_int is {R}.", () => Crossover.OutputResistance(A, R_L))
            .Slip(2 * whole, "That is one side; at zero both conduct.")
            .Slip(R / (2 * pairs), "r_e is forgotten: each junction adds V_T/I.")
            .Slip(Crossover.EmitterResistance(V_T, I_q) / (2 * pairs), "That is the junctions alone; R is in series.")
            .Hints(
                "One transistor first: what does its emitter add to the resistor?",
                "r_e = V_T/I in series with R, for each transistor.",
                $"All {2 * pairs} transistors conduct at zero output, in parallel.")
            .Step(() => Crossover.EmitterResistance(V_T, I_q));
    }

    private static Exercise LargerResistor(Numbers n)
    {
        var V_T = n.Pick(28.3.mV, 29.mV, 27.5.mV);
        var R_1 = n.Pick(0.22.Ohm, 0.18.Ohm);
        var R_E = 2 * R_1;
        var r_int = 52.5.mOhm;
        var I_1 = Crossover.EqualGainCurrent(V_T, R_1, r_int);
        return Exercise.Ask($"With {R_1} the equal-gain current is {I_1:3} (V_T = {V_T}, r_int = {r_int}). What is it with {R_E}?", () => Crossover.EqualGainCurrent(V_T, R_E, r_int))
            .Slip(I_1 / 2, "Not quite half: what is inside did not double.")
            .Slip(I_1, "The voltage across R_E + r_int stays, not the current.")
            .Slip(V_T / R_E, "r_int is forgotten.")
            .Hints(
                "What stays: the current, or the voltage across R_E and r_int together?",
                "That voltage is V_T.");
    }

    private static Exercise Multiplier(Numbers n)
    {
        var V_BB = n.Pick(3.76.V, 2.5.V, 3.9.V);
        var V_BE = n.Pick(0.62.V, 0.6.V, 0.64.V);
        var I_R = n.Pick(2.mA, 3.mA, 1.5.mA);
        return Exercise.Ask($"A V_BE multiplier holds {V_BB} with a V_BE of {V_BE} and {I_R} through its two resistors. How large is the one from collector to base?", () => VbeMultiplier.UpperResistor(V_BB, V_BE, I_R))
            .Slip(V_BB / I_R, "That is both resistors together: V_BE stands across the other one.")
            .Slip(VbeMultiplier.LowerResistor(V_BE, I_R), "That is the one from base to emitter, which has V_BE across it.")
            .Hints(
                "Which resistor has V_BE across it, and what is left for the other?",
                "Base current left aside, one current goes through both.",
                $"{V_BB} less {V_BE} stand across it.");
    }

    private static Exercise ChargeLimit(Numbers n)
    {
        var I_dr = n.Pick(30.mA, 40.mA, 25.mA);
        var I_p = n.Pick(9.5.A, 7.A, 12.A);
        var f_T = n.Pick(10.MHz, 12.MHz, 8.MHz);
        return Exercise.Ask($"Drivers stand at {I_dr}; the outputs give {I_p} peak, with a transition frequency of {f_T} there. Up to which frequency can the drivers take the outputs' charge away in time, at best?", () => ChargeControl.LimitFrequency(I_dr, I_p, f_T))
            .Slip(ChargeControl.LimitFrequency(I_dr, I_p / Math.Sqrt(2), f_T), "That takes the rms current; the charge follows the current itself, and its peak is the most.")
            .Slip(ChargeControl.LimitFrequency(I_dr, I_p, f_T) / (2 * Math.PI), "The 2π of the charge is there twice: the charge is I/(2π·f_T), and a sine's slope has a 2π of its own.")
            .Hints(
                "How much charge does a conducting base hold, and how quickly does a sine change it?",
                "The charge is I/(2π·f_T); a sine of frequency f changes at most at 2π·f times its peak.",
                "The current that moves the charge is I·f/f_T at its peak; it may be the drivers' standing current at most.")
            .Step(() => ChargeControl.Stored(I_p, f_T));
    }

    private static Exercise Bias(Numbers n)
    {
        var pairs = n.Pick(3, 2);
        var V = n.Pick(45.V, 42.V);
        var V_T = Junction.ThermalVoltage(65.degC);
        var r_int = 50.mOhm;
        var R_L = 8.Ohm;
        var P_most = pairs * 12.W;
        var dA = 0.01.dB;
        var dI = 25.mA;
        var tc = 2.mV_per_K;
        var dT = 5.K;
        return Exercise.Choose<ElectricCurrent, ElectricResistance>(
            $"Choose the idle current I of each of {pairs} pairs on ±{V}, and the emitter resistor R_E. The gain at zero and far out (R_L = {R_L}, V_T = {V_T:3}, r_int = {r_int}) may differ by {dA:dB} at most; the idle power of the output stage may be {P_most}; and a spreader wrong by {dT}, at {tc}, may shift the idle current by {dI} at most (linear estimate).",
            "I",
            "R_E",
            (I, R_E) =>
            {
                Guard.Positive(I);
                Guard.Positive(R_E);
                var zero = Crossover.GainAtZero(R_L, V_T, I, R_E + r_int, pairs);
                var large = Crossover.LargeSignalGain(R_L, R_E + r_int, pairs);
                var step = Math.Round(Math.Abs((zero / large).Decibels), 4);
                return
                [
                    Criterion.AtMost("difference of the gains in dB", step, Math.Round(dA.Decibels, 4), zero < large ? "More idle current brings the gain at zero up." : "Less idle current: the gain at zero is above that far out."),
                    Criterion.AtMost("idle power", 2 * V * I * pairs, P_most, "Less idle current."),
                    Criterion.AtMost("shift of the idle current", BiasDrift.IdleCurrentShiftLinear(tc, dT, R_E, r_int, V_T, I), dI, "A larger emitter resistor holds the current back."),
                ];
            })
            .Hints(
                "For equal gains V_T stands across R_E + r_int at the idle current: the two choices go together.",
                "The idle power gives the most current, the shift the least resistance.",
                $"The idle power allows {P_most / pairs / V / 2:3} a pair.")
            .Step($"Equal gains want I·(R_E + r_int) = V_T, here {V_T:3}.")
            .Example(108.mA, 0.22.Ohm)
            .Pitfall("idle power", 200.mA, 0.1.Ohm)
            .Pitfall("shift of the idle current", 130.mA, 0.1.Ohm);
    }
}
