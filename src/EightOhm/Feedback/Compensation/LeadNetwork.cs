using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Feedback;

/// <summary>A capacitor across the upper resistor of the feedback divider: it feeds back more, and earlier, at high frequency.</summary>
/// <remarks>The phase lead has its price: the divider's noise gain falls towards one, the loop's crossover rises with it, and whatever the output picks up at
/// radio frequencies goes straight to the input.</remarks>
public static partial class LeadNetwork
{
    private const string Source = "S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 8: feedback lead";

    /// <summary>The zero of the fraction fed back: 1/(2π·R_f·C_f).</summary>
    /// <param name="R_f">From the output to the inverting input; greater than 0 Ω.</param>
    /// <param name="C_f">Across it; greater than 0 F.</param>
    /// <returns>The zero, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "f_z")]
    [RecordName("lead-network.zero-frequency")]
    public static Frequency ZeroFrequency(ElectricResistance R_f, ElectricCapacitance C_f)
    {
        Guard.Positive(R_f);
        Guard.Positive(C_f);
        return 1 / (2 * pi * R_f * C_f);
    }

    /// <summary>The pole of the fraction fed back, above its zero by the closed-loop gain: 1/(2π·(R_f ∥ R_g)·(C_f + C_n)).</summary>
    /// <param name="R_f">From the output to the inverting input; greater than 0 Ω.</param>
    /// <param name="R_g">From the inverting input to ground; greater than 0 Ω.</param>
    /// <param name="C_f">Across R_f; 0 F or more.</param>
    /// <param name="C_n">Stray and input capacitance across R_g; 0 F or more, and not both 0 F.</param>
    /// <returns>The pole, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "f_p")]
    [RecordName("lead-network.pole-frequency")]
    public static Frequency PoleFrequency(ElectricResistance R_f, ElectricResistance R_g, ElectricCapacitance C_f, ElectricCapacitance C_n)
    {
        Guard.Positive(R_f);
        Guard.Positive(R_g);
        Guard.NotNegative(C_f);
        Guard.NotNegative(C_n);
        Guard.Positive(C_f + C_n, hint: "Without any capacitance the divider has no pole.");
        return 1 / (2 * pi * Parallel(R_f, R_g) * (C_f + C_n));
    }

    /// <summary>The capacitor of a zero: 1/(2π·R_f·f_z).</summary>
    /// <param name="R_f">From the output to the inverting input; greater than 0 Ω.</param>
    /// <param name="f_z">The zero wanted; greater than 0 Hz.</param>
    /// <returns>The capacitor, in F.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source + ", solved for C_f", Symbol = "C_f")]
    [RecordName("lead-network.capacitor-for")]
    public static ElectricCapacitance CapacitorFor(ElectricResistance R_f, Frequency f_z)
    {
        Guard.Positive(R_f);
        Guard.Positive(f_z);
        return 1 / R_f / (2 * pi * f_z);
    }

    /// <summary>The capacitor across R_f that makes stray capacitance at the inverting input harmless, zero upon pole: C_n·R_g/R_f.</summary>
    /// <param name="C_n">Stray and input capacitance across R_g; greater than 0 F.</param>
    /// <param name="R_g">From the inverting input to ground; greater than 0 Ω.</param>
    /// <param name="R_f">From the output to the inverting input; greater than 0 Ω.</param>
    /// <returns>The capacitor, in F.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>LeadNetwork.AgainstStray(16.pF, 100.Ohm, 2.26.kOhm)   // 708 fF</code></example>
    [Formula(Source + ", stray input capacitance", Symbol = "C_f")]
    [RecordName("lead-network.against-stray")]
    public static ElectricCapacitance AgainstStray(ElectricCapacitance C_n, ElectricResistance R_g, ElectricResistance R_f)
    {
        Guard.Positive(C_n);
        Guard.Positive(R_g);
        Guard.Positive(R_f);
        return R_g / R_f * C_n;
    }

    /// <summary>The fraction fed back over frequency: a divider with a capacitor across each of its resistors.</summary>
    /// <param name="R_f">From the output to the inverting input; greater than 0 Ω.</param>
    /// <param name="R_g">From the inverting input to ground; greater than 0 Ω.</param>
    /// <param name="C_f">Across R_f; 0 F or more.</param>
    /// <param name="C_n">Stray and input capacitance across R_g; 0 F or more.</param>
    /// <returns>A transfer function of order 0 or 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Worked("the divider R_g/(R_f + R_g) with its zero and its pole")]
    public static TransferFunction Divider(ElectricResistance R_f, ElectricResistance R_g, ElectricCapacitance C_f, ElectricCapacitance C_n)
    {
        var divider = TransferFunction.Constant(FeedbackLoop.Fraction(R_g, Guard.Positive(R_f)));
        if ((Guard.NotNegative(C_f) + Guard.NotNegative(C_n)).Farads == 0)
            return divider;
        var pole = TransferFunction.Pole(PoleFrequency(R_f, R_g, C_f, C_n));
        return C_f.Farads == 0 ? divider * pole : divider * TransferFunction.Zero(ZeroFrequency(R_f, C_f)) * pole;
    }
}
