using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;

namespace EightOhm.SecondStages;

/// <summary>A capacitance from the output of an inverting stage to its input, as the input sees it.</summary>
public static partial class MillerEffect
{
    private const string Source = "D. A. Neamen, Electronic Circuit Analysis and Design, ch. 12: Miller capacitance";

    /// <summary>The capacitance that the input sees: C·(1 + A).</summary>
    /// <param name="C">From output to input; 0 F or more.</param>
    /// <param name="A">Gain of the inverting stage, as a magnitude; 0 or more.</param>
    /// <returns>The capacitance to ground, in F.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    /// <example><code>MillerEffect.InputCapacitance(30.pF, 1000.ratio)   // 30.03 nF</code></example>
    [Formula(Source, Symbol = "C_M")]
    [RecordName("miller-effect.input-capacitance")]
    public static ElectricCapacitance InputCapacitance(ElectricCapacitance C, Gain A)
    {
        Guard.NotNegative(C);
        Guard.NotNegative(A, hint: "Give the magnitude; that the stage inverts is in the formula.");
        return C * (1 + A.Ratio);
    }

    /// <summary>The pole that it makes with the resistance there: 1/(2π·R·C).</summary>
    /// <param name="R">All resistance at the stage's input; greater than 0 Ω.</param>
    /// <param name="C">All capacitance there; greater than 0 F.</param>
    /// <returns>The pole, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "f_1")]
    [RecordName("miller-effect.pole")]
    public static Frequency Pole(ElectricResistance R, ElectricCapacitance C)
    {
        Guard.Positive(R);
        Guard.Positive(C);
        return 1 / (2 * pi * R * C);
    }
}
