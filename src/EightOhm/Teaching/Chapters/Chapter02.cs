using EightOhm.Devices;
using EightOhm.Feedback;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Teaching.Chapters;

/// <summary>An amplifier as a large op-amp: slew rate and feedback.</summary>
internal static class Chapter02
{
    public static CourseChapter Of { get; } = new("02", "a large op-amp",
    [
        new("02-slew-rate", ExerciseLevel.WarmUp, Needed),
        new("02-full-power-bandwidth", ExerciseLevel.Steps, FullPower),
        new("02-third-harmonic", ExerciseLevel.Steps, ThirdHarmonic),
        new("02-hum-at-the-input", ExerciseLevel.Steps, Hum),
        new("02-slew-and-loop-gain", ExerciseLevel.Design, SlewAndLoopGain),
    ]);

    private static Exercise Needed(Numbers n)
    {
        var V_p = n.Pick(35.V, 30.V, 45.V, 50.V);
        var f = n.Pick(20.kHz, 25.kHz, 40.kHz);
        return Exercise.Ask($"How steep is a sine of {V_p} peak at {f}, at its steepest?", () => SlewRate.Needed(f, V_p))
            .Slip(f * V_p, "2π is missing: the slope of a sine is 2π·f times its peak.")
            .Slip(2 * pi * f * (V_p / Sqrt(2)), "That takes the rms voltage; the steepest slope goes with the peak.")
            .Slip(4 * f * V_p, "That is the mean slope from trough to crest; the steepest is at the crossing.")
            .Hints(
                "The slope of sin(2π·f·t) is greatest where it crosses zero.",
                "The derivative brings down a factor 2π·f.");
    }

    private static Exercise FullPower(Numbers n)
    {
        var SR = n.Pick(40.V_per_us, 25.V_per_us, 60.V_per_us);
        var P = n.Pick(180.W, 120.W, 90.W);
        var R = n.Pick(4.Ohm, 8.Ohm, 6.Ohm);
        var V_p = Sqrt(2 * P * R);
        return Exercise.Ask($"What is the full-power bandwidth of {SR} at {P} in {R}?", () => SlewRate.FullPowerBandwidth(SR, V_p))
            .Slip(SlewRate.FullPowerBandwidth(SR, V_p / Sqrt(2)), "That takes the rms voltage; the steepest slope goes with the peak.")
            .Slip(SR / V_p, "2π is missing: the slope of a sine is 2π·f times its peak.")
            .Hints(
                "First the peak voltage of that power.",
                "Then the frequency at which the steepest slope, 2π·f·V, is the slew rate.",
                $"The peak is {V_p:3}; divide the slew rate by 2π times it.")
            .Step(() => Sqrt(2 * P * R));
    }

    private static Exercise ThirdHarmonic(Numbers n)
    {
        var T_1 = n.Pick(55.5, 30.0, 90.0);
        var d = n.Pick(0.1.percent, 0.2.percent, 0.05.percent);
        var T_3 = T_1 / 3;
        return Exercise.Ask($"An open loop makes {d} of third harmonic of 20 kHz. The loop gain is {T_1} at 20 kHz and falls with 1/f. How much third harmonic is left with feedback?", () => LoopErrors.AfterGainAbovePole(d, T_3))
            .Slip(LoopErrors.AfterGainAbovePole(d, T_1), "That is the loop gain at 20 kHz; the harmonic lies at 60 kHz.")
            .Slip(LoopErrors.AfterGain(d, T_3), "Nearly: above the pole T lags by 90°, and |1 + T| is √(1 + T²).")
            .Slip(d, "That is without feedback.")
            .Hints(
                "At which frequency does the third harmonic lie, and what is the loop gain there?",
                "Above its pole the loop gain lags by 90°: 1 + T is added at a right angle.",
                $"The loop gain at 60 kHz is {T_3:3}; divide by √(1 + T²).")
            .Step($"At 60 kHz the loop gain is {T_1} / 3 = {T_3:3}.");
    }

    private static Exercise Hum(Numbers n)
    {
        var V_h = n.Pick(1.mV, 0.5.mV, 2.mV);
        var A = n.Pick(23.62, 31.5, 17.8).ratio;
        var T = n.Pick(8000.0, 5000.0, 20000.0);
        return Exercise.Ask($"{V_h} of hum lies in series with the input; the closed-loop gain is {A}, the loop gain {T} at that frequency. How much hum comes out?", () => LoopErrors.AtSummingNode(V_h, A))
            .Slip(V_h / (1 + T), "That divides it by 1 + T, but the loop takes it for signal.")
            .Slip(LoopErrors.AtSummingNode(V_h, A) / (1 + T), "Times the gain, and there it stays: to the loop it is signal.")
            .Slip(V_h, "It is beside the signal, so it has the signal's gain.")
            .Hints(
                "Can the loop tell this hum from the signal?",
                "What lies in series with the input is treated like the input.");
    }

    private static Exercise SlewAndLoopGain(Numbers n)
    {
        var V_p = n.Pick(35.V, 40.V, 30.V);
        var f = 20.kHz;
        var SR = 3 * SlewRate.Needed(f, V_p);
        var A = 25.ratio;
        var T_least = 25.0;
        var f_most = 1.MHz;
        var V_T = Junction.ThermalVoltage(25.degC);
        return Exercise.Choose<ElectricCurrent, ElectricResistance, ElectricCapacitance>(
            $"An input pair with a tail current I, an emitter resistor R for each transistor (a current mirror is their load), and a compensation capacitor C behind it: the slew rate is I/C, the transconductance 1/(2·V_T/I + R). Choose I, R and C: a slew rate of {SR:3} at least, a loop gain of {T_least} at {f} at least with a closed-loop gain of {A}, and unity loop gain at {f_most} at most.",
            "I",
            "R",
            "C",
            (I, R, C) =>
            {
                Guard.Positive(I);
                Guard.NotNegative(R);
                Guard.Positive(C);
                var g_m = 1 / ((2 * V_T / I) + R);
                var f_1 = g_m / (2 * pi * C) / A.Ratio;
                return
                [
                    Criterion.AtLeast("slew rate", I / C, SR, "More tail current or a smaller capacitor."),
                    Criterion.AtLeast($"loop gain at {QuantityFormat.Short(f)}", f_1 / f, T_least, "More transconductance or a smaller capacitor: the loop crosses unity too low."),
                    Criterion.AtMost("frequency of unity loop gain", f_1, f_most, "Less transconductance or a larger capacitor: the output transistors do not follow so fast."),
                ];
            })
            .Hints(
                "Slew rate wants I/C; the loop wants g_m/C. The emitter resistor parts the two.",
                $"With a single pole the loop gain at {f} is the frequency of unity loop gain over {f}.",
                $"Begin with C of about 100 pF: I from the slew rate, then R from a unity frequency between {T_least * f} and {f_most}.")
            .Step($"V_T is {V_T:3} at 25 °C. Unity loop gain may lie from {T_least * f} to {f_most}.")
            .Example(2.4.mA, 100.Ohm, 100.pF)
            .Pitfall("frequency of unity loop gain", 2.4.mA, 0.Ohm, 100.pF)
            .Pitfall("slew rate", 0.5.mA, 0.Ohm, 150.pF);
    }
}
