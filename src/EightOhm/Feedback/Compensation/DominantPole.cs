using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;

namespace EightOhm.Feedback;

/// <summary>Compensation by a shunt capacitor: one pole so low that the next one lies at the crossover.</summary>
/// <remarks>The margin of 45° that the rule promises is that of two poles; each further pole and zero takes its part (see <see cref="LoopStability.Of"/> of the finished loop).</remarks>
public static partial class DominantPole
{
    private const string Source = "S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 8: dominant-pole compensation";

    /// <summary>The pole that puts the crossover at the next pole: f_2/(A_0·B_fb).</summary>
    /// <param name="f_2">The next pole; greater than 0 Hz.</param>
    /// <param name="A_0">Open-loop gain at 0 Hz; greater than 0.</param>
    /// <param name="B_fb">The fraction fed back; greater than 0, up to 1.</param>
    /// <returns>The dominant pole, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>DominantPole.For(1.MHz, 100.dB, 1)   // 10 Hz</code></example>
    [Formula(Source, Symbol = "f_d")]
    [RecordName("dominant-pole.for")]
    public static Frequency For(Frequency f_2, Gain A_0, double B_fb)
    {
        Guard.Positive(f_2);
        Guard.Positive(A_0);
        Guard.Between(Guard.Positive(B_fb), 0, 1, nameof(B_fb));
        return f_2 / (A_0.Ratio * B_fb);
    }

    /// <summary>The capacitor of a corner with a resistance: 1/(2π·R·f).</summary>
    /// <param name="R">The resistance in the node; greater than 0 Ω.</param>
    /// <param name="f">The corner; greater than 0 Hz.</param>
    /// <returns>The capacitor, in F.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "C")]
    [RecordName("dominant-pole.capacitor")]
    public static ElectricCapacitance Capacitor(ElectricResistance R, Frequency f)
    {
        Guard.Positive(R);
        Guard.Positive(f);
        return 1 / R / (2 * pi * f);
    }

    /// <summary>The resistor in series with the capacitor whose zero stands on the next pole: 1/(2π·C·f_2).</summary>
    /// <param name="C">The capacitor; greater than 0 F.</param>
    /// <param name="f_2">The pole to be covered; greater than 0 Hz.</param>
    /// <returns>The resistor, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source + ", pole-zero", Symbol = "R_C")]
    [RecordName("dominant-pole.zero-resistor")]
    public static ElectricResistance ZeroResistor(ElectricCapacitance C, Frequency f_2)
    {
        Guard.Positive(C);
        Guard.Positive(f_2);
        return 1 / (2 * pi * f_2 * C);
    }
}
