using EightOhm.Noise;
using EightOhm.Quantities;
using EightOhm.Ratings;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Teaching.Chapters;

/// <summary>Noise, a first look.</summary>
internal static class Chapter03
{
    public static CourseChapter Of { get; } = new("03", "noise, first look",
    [
        new("03-noise-of-a-resistor", ExerciseLevel.WarmUp, Resistor),
        new("03-one-pole", ExerciseLevel.WarmUp, OnePole),
        new("03-two-sources", ExerciseLevel.Steps, TwoSources),
        new("03-snr-at-one-watt", ExerciseLevel.Steps, AtOneWatt),
        new("03-feedback-divider", ExerciseLevel.Design, Divider),
    ]);

    private static Exercise Resistor(Numbers n)
    {
        var R = n.Pick(10.kOhm, 4.7.kOhm, 22.kOhm, 47.kOhm);
        var T = 25.degC;
        var B = 20.kHz;
        var e_n = ThermalNoise.VoltageDensity(R, T);
        return Exercise.Ask($"What noise does {R} at {T} make in a bandwidth of {B}, rms?", () => ThermalNoise.Voltage(R, T, B))
            .Slip(e_n * Sqrt(B) * Sqrt(B / 1.Hz), "The root of the bandwidth is forgotten: the voltage goes with √B.")
            .Slip(e_n * Sqrt(pi / 2 * B), "That takes the bandwidth for a corner; it is the noise bandwidth already.")
            .Slip(Sqrt(2) * e_n * Sqrt(B), "Noise has no peak that √2 could give; the rms is asked.")
            .Slip(e_n * Sqrt(B) / 2, "4·k·T·R stands under the root; a factor 4 is forgotten.")
            .Hints(
                "A resistor's noise density is √(4·k·T·R).",
                "T in kelvins; the voltage is the density times √B.",
                $"The density is {e_n:3}; √{B} is about 141 √Hz.")
            .Step(() => ThermalNoise.VoltageDensity(R, T));
    }

    private static Exercise OnePole(Numbers n)
    {
        var e_n = n.Pick(3.3.nV_rtHz, 4.7.nV_rtHz, 2.2.nV_rtHz, 10.nV_rtHz);
        var f_c = n.Pick(20.kHz, 100.kHz, 50.kHz);
        return Exercise.Ask($"{e_n} goes through one pole at {f_c}. What noise comes out, rms?", () => e_n * Sqrt(pi / 2 * f_c))
            .Slip(e_n * Sqrt(f_c), "That takes the corner for the noise bandwidth, π/2 times as wide.")
            .Slip(pi / 2 * (e_n * Sqrt(f_c)), "The factor π/2 belongs to the bandwidth, so it stands under the root.")
            .Hints(
                "One pole lets some noise through above its corner.",
                "Its noise bandwidth is π/2 times the corner.");
    }

    private static Exercise TwoSources(Numbers n)
    {
        var R = n.Pick(1.kOhm, 2.2.kOhm, 680.Ohm);
        var e_a = n.Pick(3.3.nV_rtHz, 4.7.nV_rtHz, 2.7.nV_rtHz);
        var T = 25.degC;
        var e_R = ThermalNoise.VoltageDensity(R, T);
        return Exercise.Ask($"An amplifier of {e_a} (its current noise is small) has a source of {R} at {T}. What is the noise density of both together?", () => Sqrt((e_a * e_a) + (e_R * e_R)))
            .Slip(e_a + e_R, "Noises that know nothing of each other add as powers, not as voltages.")
            .Slip(e_R, "That is the resistor alone.")
            .Slip(e_a, "That is the amplifier alone.")
            .Hints(
                "First the density of the resistor, √(4·k·T·R).",
                "Two sources that know nothing of each other: square, add, take the root.",
                $"The resistor has {e_R:3}.")
            .Step(() => ThermalNoise.VoltageDensity(R, T));
    }

    private static Exercise AtOneWatt(Numbers n)
    {
        var SNR = n.Pick(120.dB, 112.dB, 116.dB);
        var P = n.Pick(100.W, 50.W, 160.W);
        return Exercise.Ask($"A signal-to-noise ratio of {SNR:dB} holds at {P}. What is it at 1 W into the same load?", () => SnrReference.AtPower(SNR, P, Literals.get_W(1)))
            .Within(0.5.dB)
            .Slip(SNR / ((double)(P / 1.W)).ratio, "That is 20 times the logarithm; a ratio of powers takes 10.")
            .Slip(SNR, "The noise stays, but the signal is smaller.")
            .Slip(SnrReference.AtPower(SNR, 1.W, P), "A smaller signal over the same noise is a smaller ratio.")
            .Hints(
                "The noise stays; the signal falls. By how many decibels?",
                "A ratio of powers is 10·log₁₀.");
    }

    private static Exercise Divider(Numbers n)
    {
        var A = n.Pick(24.0, 20.0, 30.0);
        var e_most = n.Pick(2.nV_rtHz, 2.2.nV_rtHz, 1.8.nV_rtHz);
        var V = n.Pick(28.V, 25.V);
        var P_most = 0.25.W;
        var T = 25.degC;
        return Exercise.Choose<ElectricResistance, ElectricResistance>(
            $"Choose the feedback resistors: R_f from the output, R_g to ground, for a closed-loop gain 1 + R_f/R_g of {A} within 3 %. Their thermal noise at {T}, that of R_f and R_g in parallel, may be {e_most} at most; R_f may dissipate {P_most} at most with {V} rms at the output.",
            "R_f",
            "R_g",
            (R_f, R_g) =>
            {
                Guard.Positive(R_f);
                Guard.Positive(R_g);
                var V_f = V * (R_f / (R_f + R_g));
                return
                [
                    Criterion.AtLeast("gain", 1 + (R_f / R_g), 0.97 * A, "The gain is too low: a larger R_f or a smaller R_g."),
                    Criterion.AtMost("gain, upper side", 1 + (R_f / R_g), 1.03 * A, "The gain is too high: a smaller R_f or a larger R_g."),
                    Criterion.AtMost("noise of the two", ThermalNoise.VoltageDensity(Parallel(R_f, R_g), T), e_most, "Smaller resistors, both by the same factor: it is nearly R_g alone that makes the noise."),
                    Criterion.AtMost("dissipation of R_f", V_f * V_f / R_f, P_most, "Larger resistors, both by the same factor: nearly the whole output stands across R_f."),
                ];
            })
            .Hints(
                "The noise sets the most that R_g may be, the dissipation the least that R_f may be.",
                $"{e_most} is the noise of {ThermalNoise.EquivalentResistance(e_most, T):3}.",
                $"R_f is {A - 1} times R_g; check V²/R_f.")
            .Step($"{e_most} is the noise of {ThermalNoise.EquivalentResistance(e_most, T):3} at {T}, and {V} rms across R_f alone make {P_most} in {V * V / P_most:3}.")
            .Example((A - 1) * 180.Ohm, 180.Ohm)
            .Pitfall("noise of the two", (A - 1) * 1.kOhm, 1.kOhm)
            .Pitfall("dissipation of R_f", (A - 1) * 47.Ohm, 47.Ohm);
    }
}
