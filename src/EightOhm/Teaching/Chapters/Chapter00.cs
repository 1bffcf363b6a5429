using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Teaching.Chapters;

/// <summary>Volts, amperes, watts and decibels.</summary>
internal static class Chapter00
{
    public static CourseChapter Of { get; } = new("00", "start here",
    [
        new("00-peak-current", ExerciseLevel.WarmUp, PeakCurrent),
        new("00-rms-voltage", ExerciseLevel.WarmUp, RmsVoltage),
        new("00-decibels", ExerciseLevel.WarmUp, Decibels),
        new("00-output-power", ExerciseLevel.Steps, OutputPower),
        new("00-gain", ExerciseLevel.Design, ChooseGain),
    ]);

    private static Exercise PeakCurrent(Numbers n)
    {
        var P = n.Pick(25.W, 40.W, 63.W, 160.W);
        var R = n.Pick(4.Ohm, 3.Ohm, 6.Ohm, 16.Ohm);
        return Exercise.Ask($"A sine makes {P} in {R}. What is its peak current?", () => Sqrt(2 * P / R))
            .Slip(Sqrt(P / R), "That is the rms current; the peak of a sine is √2 more.")
            .Slip(2 * Sqrt(2 * P / R), "That is from peak to peak, twice the peak.")
            .Hints(
                "Which current makes the power: the rms or the peak?",
                "P = I²·R holds for the rms current; find that first.",
                $"The rms current is √({P} / {R}); a sine's peak is √2 more.");
    }

    private static Exercise RmsVoltage(Numbers n)
    {
        var P = n.Pick(50.W, 25.W, 63.W, 160.W);
        var R = n.Pick(8.Ohm, 4.Ohm, 6.Ohm, 16.Ohm);
        return Exercise.Ask($"What rms voltage makes {P} in {R}?", () => Sqrt(P * R))
            .Slip(Sqrt(2 * P * R), "That is the peak; a power is made by the rms voltage.")
            .Slip(2 * Sqrt(2 * P * R), "That is from peak to peak, 2√2 times the rms.")
            .Hints(
                "Power, voltage and resistance: Ohm's law put into P = V·I.",
                "P = V²/R. Turn it over for V.");
    }

    private static Exercise Decibels(Numbers n)
    {
        var A = n.Pick(23.62, 31.5, 17.8, 42.2);
        return Exercise.Ask($"An amplifier makes {A} V out of 1 V. What is that gain in decibels?", A.ratio)
            .Within(0.5.dB)
            .Slip(Gain.FromPowerRatio(A), "That is 10 times the logarithm, for powers; voltages take 20.")
            .Slip(A.dB, "That reads the ratio itself as decibels.")
            .Hints(
                "Decibels are a logarithm. Which factor stands before it for voltages?",
                $"For voltages it is 20·log₁₀ of the ratio; log₁₀ {A} is a little more than 1.")
            .Step($"20·log₁₀ {A} = {A.ratio:dB}");
    }

    private static Exercise OutputPower(Numbers n)
    {
        var V_in = n.Pick(0.775.V, 0.5.V, 0.9.V, 1.2.V);
        var G = n.Pick(26.dB, 24.dB, 28.dB, 29.dB);
        var R = n.Pick(8.Ohm, 4.Ohm, 6.Ohm);
        var V_out = V_in * G;
        return Exercise.Ask($"An input of {V_in} rms, a gain of {G:dB}, a load of {R}. What power does the load get?", () => V_out * V_out / R)
            .Within(5.percent)
            .Slip(V_out * V_out / R / 2, "That takes the output for a peak; rms in times the gain is rms out.")
            .Slip(2 * (V_out * V_out / R), "That takes the peak of the output; the rms makes the power.")
            .Slip(V_in * V_in / R * G.Ratio, "The power goes with the square of the voltage gain.")
            .Slip(V_in * PowerOfTen(G.Decibels / 10) * (V_in * PowerOfTen(G.Decibels / 10)) / R, "That reads the decibels as 10·log₁₀ of voltages; voltages take 20.")
            .Hints(
                "Three steps: the gain as a ratio, the output voltage, the power.",
                "A gain of 20 dB is a ratio of 10; 6 dB more doubles it.",
                $"The ratio is {G}; the output is so many times {V_in}, still rms.")
            .Step($"{G:dB} is a ratio of {G:3}.")
            .Step(() => V_in * G);
    }

    private static Exercise ChooseGain(Numbers n)
    {
        var P = n.Pick(60.W, 80.W, 120.W);
        var R = n.Pick(8.Ohm, 6.Ohm);
        var V_rated = Sqrt(P * R);
        var V_in = n.Pick(0.9.V, 0.775.V, 1.1.V);
        var V_most = 2 * V_in;
        var V_clip = 2.5 * V_rated;
        return Exercise.Choose<Gain>(
            $"Choose a gain A. An input of {V_in} rms must drive the load of {R} to {P} at least, and an input of {V_most} must not ask the output for more than {V_clip:3} rms.",
            "A",
            A =>
            [
                Criterion.AtLeast("power at the rated input", V_in * A * (V_in * A) / R, P, "More gain: the rated input does not fill the output."),
                Criterion.AtMost("output asked for by the largest input", V_most * A, V_clip, "Less gain: the largest input asks for more than the limit."),
                Criterion.AtLeast("gain", A, 1.ratio, "A gain below 1, or one that inverts, is not meant here."),
            ])
            .Hints(
                "Each limit gives a gain: the one the least, the other the most.",
                $"The least is {V_rated:3} over {V_in}.",
                "Choose a round gain between the two, in decibels if you like.")
            .Step($"{P} in {R} are {V_rated:3} rms, so the gain is {(V_rated / V_in).ratio:3} at least and {(V_clip / V_most).ratio:3} at most.")
            .Example((1.1 * (V_rated / V_in)).ratio)
            .Pitfall("power at the rated input", (V_rated / V_in / Sqrt(2.0)).ratio)
            .Pitfall("output asked for by the largest input", (2 * (V_rated / V_in)).ratio);
    }
}
