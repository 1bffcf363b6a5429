using EightOhm.Quantities;
using EightOhm.Ratings;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Teaching.Chapters;

/// <summary>What a specification says.</summary>
internal static class Chapter01
{
    public static CourseChapter Of { get; } = new("01", "the specification",
    [
        new("01-peak-current", ExerciseLevel.WarmUp, PeakCurrent),
        new("01-headroom-voltage", ExerciseLevel.WarmUp, HeadroomVoltage),
        new("01-burst-power", ExerciseLevel.Steps, BurstPower),
        new("01-noise-volts", ExerciseLevel.Steps, NoiseVolts),
        new("01-swing-and-current", ExerciseLevel.Design, SwingAndCurrent),
    ]);

    private static Exercise PeakCurrent(Numbers n)
    {
        var P = n.Pick(180.W, 150.W, 130.W);
        var R = n.Pick(4.Ohm, 3.Ohm, 5.Ohm);
        var V_100 = new OutputRating(100.W, 8.Ohm).PeakVoltage;
        return Exercise.Ask($"A sheet promises 100 W in 8 Ω and {P} in {R}. What peak current does the second line need?", () => Sqrt(2 * P / R))
            .Slip(Sqrt(P / R), "That is the rms current; the peak of a sine is √2 more.")
            .Slip(V_100 / R, "That is the current at the peak voltage of 100 W in 8 Ω; the second line has another voltage.")
            .Hints(
                "Use the second line alone; its voltage is not that of the first.",
                "P = I²·R gives the rms current, and a sine's peak is √2 more.");
    }

    private static Exercise HeadroomVoltage(Numbers n)
    {
        var H = n.Pick(2.dB, 1.5.dB, 2.5.dB, 3.dB);
        return Exercise.Ask($"A dynamic headroom of {H:dB}: by what share does the output voltage rise in a burst?", () => DynamicHeadroom.VoltageRise(H))
            .Within(4.percent)
            .Slip(DynamicHeadroom.PowerRise(H), "That is the rise in power; the voltage rises by the root of it.")
            .Slip(Ratio.FromPercent(H.Decibels), "A decibel is not a percent.")
            .Slip(Ratio.FromDecimalFractions(H.Ratio), "That is the new voltage over the old; the rise is what comes on top.")
            .Hints(
                "Turn the decibels into a ratio of voltages.",
                "20·log₁₀ of the ratio are the decibels; the rise is the ratio less 1.");
    }

    private static Exercise BurstPower(Numbers n)
    {
        var P = n.Pick(120.W, 80.W, 150.W);
        var R = n.Pick(6.Ohm, 8.Ohm, 4.Ohm);
        var H = n.Pick(2.dB, 1.5.dB, 2.5.dB);
        var P_burst = DynamicHeadroom.BurstPower(P, H);
        var V_steady = Sqrt(2 * P * R);
        return Exercise.Ask($"{P} in {R} with a dynamic headroom of {H:dB}. What is the peak voltage of a burst?", () => Sqrt(2 * P_burst * R))
            .Slip(V_steady, "That is the peak of the steady rating, without the headroom.")
            .Slip(Sqrt(P_burst * R), "That is the rms voltage of the burst.")
            .Slip(V_steady * (H.Ratio * H.Ratio), "The decibels are counted twice: a power rises by 10^(dB/10), its voltage by 10^(dB/20).")
            .Hints(
                "First the power of the burst, then its voltage.",
                "The burst's power is 10^(dB/10) times the rated power.",
                $"A peak is √(2·P·R), here with {R} and the burst's power.")
            .Step(() => DynamicHeadroom.BurstPower(P, H));
    }

    private static Exercise NoiseVolts(Numbers n)
    {
        var P = n.Pick(80.W, 60.W, 120.W);
        var R = n.Pick(8.Ohm, 6.Ohm, 4.Ohm);
        var SNR = n.Pick(108.dB, 104.dB, 114.dB);
        var V_rated = Sqrt(P * R);
        return Exercise.Ask($"A signal-to-noise ratio of {SNR:dB} below {P} in {R}. What noise voltage stands at the output, rms?", () => V_rated / SNR)
            .Within(6.percent)
            .Slip(V_rated / PowerOfTen(SNR.Decibels / 10), "That takes 10·log₁₀ for voltages; they take 20.")
            .Slip(Sqrt(2 * P * R) / SNR, "That starts from the peak; noise and its reference are rms.")
            .Slip(1.V / SNR, "That starts from 1 V; the sheet starts from the rated power.")
            .Hints(
                "First the rms voltage of the rated power.",
                "So many decibels below it: divide by 10^(dB/20).",
                $"The rated voltage is {V_rated:3} rms.")
            .Step(() => Sqrt(P * R));
    }

    private static Exercise SwingAndCurrent(Numbers n)
    {
        var P_8 = n.Pick(80.W, 60.W, 120.W);
        var P_4 = 1.6 * P_8;
        var R_8 = 8.Ohm;
        var R_4 = 4.Ohm;
        var V_8 = Sqrt(2 * P_8 * R_8);
        var I_4 = Sqrt(2 * P_4 / R_4);
        var V_most = 1.1 * V_8;
        var I_most = 1.25 * I_4;
        return Exercise.Choose<ElectricPotential, ElectricCurrent>(
            $"Choose the peak voltage V and the peak current I that an output must reach: {P_8} in {R_8} and {P_4} in {R_4}, with V at most {V_most:3} and I at most {I_most:3}, for every volt and ampere more is heat and cost.",
            "V",
            "I",
            (V, I) =>
            [
                Criterion.AtLeast($"power in {QuantityFormat.Short(R_8)}", Power(V, I, R_8), P_8, "Look at which gives out first at this load: the voltage, or the current?"),
                Criterion.AtLeast($"power in {QuantityFormat.Short(R_4)}", Power(V, I, R_4), P_4, "Half the load asks for more current; is it the voltage or the current that stops it?"),
                Criterion.AtMost("peak voltage", V, V_most, "More voltage than the loads ask for is heat in the output stage."),
                Criterion.AtMost("peak current", I, I_most, "More current than the loads ask for is paid for in transistors."),
            ])
            .Hints(
                "Each load asks for a voltage and a current; make the list of four.",
                "The higher load sets the voltage, the lower the current.",
                $"The current of {P_4} in {R_4} is √(2·P/R).")
            .Step($"{P_8} in {R_8} ask for {V_8:3} and {V_8 / R_8:3}; {P_4} in {R_4} for {I_4 * R_4:3} and {I_4:3}, all peak.")
            .Example(1.04 * V_8, 1.1 * I_4)
            .Pitfall($"power in {QuantityFormat.Short(R_4)}", 1.04 * V_8, V_8 / R_8)
            .Pitfall($"power in {QuantityFormat.Short(R_8)}", Sqrt(P_8 * R_8), 1.1 * I_4);
    }

    private static Power Power(ElectricPotential V, ElectricCurrent I, ElectricResistance R)
    {
        var V_p = UnitMath.Min(Guard.Positive(V), Guard.Positive(I) * R);
        return V_p * V_p / R / 2;
    }
}
