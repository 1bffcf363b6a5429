using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Feedback;

/// <summary>Two-pole compensation: two capacitors in series instead of one, a resistor from their middle to ground.</summary>
/// <remarks>Below the zero the loop gain falls by 40 dB a decade, above it as with one pole of the series capacitance. The resistor's current goes to a rail or to
/// ground: to the one that the second stage's emitter goes to, else that rail's ripple comes in.</remarks>
public static partial class TwoPole
{
    private const string Source = "derived from the node equation of the T network into a virtual ground, Y = s²·R·C_1·C_2/(1 + s·R·(C_1 + C_2)); C. K. Alexander & M. N. O. Sadiku, Fundamentals of Electric Circuits, 5th ed., ch. 14";

    /// <summary>The one capacitor that it amounts to far above the zero: C_1·C_2/(C_1 + C_2).</summary>
    /// <remarks>Slew rate and crossover go by this one.</remarks>
    /// <param name="C_1">One capacitor; greater than 0 F.</param>
    /// <param name="C_2">The other; greater than 0 F.</param>
    /// <returns>The series capacitance, in F.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>TwoPole.SeriesCapacitance(100.pF, 1.nF)   // 90.91 pF</code></example>
    [Formula(Source, Symbol = "C_s")]
    [RecordName("two-pole.series-capacitance")]
    public static ElectricCapacitance SeriesCapacitance(ElectricCapacitance C_1, ElectricCapacitance C_2)
    {
        Guard.Positive(C_1);
        Guard.Positive(C_2);
        return C_1 / (C_1 + C_2) * C_2;
    }

    /// <summary>The zero: 1/(2π·R·(C_1 + C_2)). Both capacitors count, the smaller alone would put it far too high.</summary>
    /// <param name="R">The resistor from the middle to ground; greater than 0 Ω.</param>
    /// <param name="C_1">One capacitor; greater than 0 F.</param>
    /// <param name="C_2">The other; greater than 0 F.</param>
    /// <returns>The zero, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>TwoPole.ZeroFrequency(1.kOhm, 100.pF, 1.nF)   // 144.7 kHz</code></example>
    [Formula(Source, Symbol = "f_z")]
    [RecordName("two-pole.zero-frequency")]
    public static Frequency ZeroFrequency(ElectricResistance R, ElectricCapacitance C_1, ElectricCapacitance C_2)
    {
        Guard.Positive(R);
        Guard.Positive(C_1);
        Guard.Positive(C_2);
        return 1 / (2 * pi * R * (C_1 + C_2));
    }

    /// <summary>How much more loop gain there is at a frequency than with the one capacitor: √(1 + (f_z/f)²).</summary>
    /// <remarks>Until the second stage's own gain ends it, at low frequency.</remarks>
    /// <param name="f_z">The zero; greater than 0 Hz.</param>
    /// <param name="f">The frequency; greater than 0 Hz.</param>
    /// <returns>The ratio of the two loop gains, 1 or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>TwoPole.MoreGain(144.7.kHz, 20.kHz)   // 7.304</code></example>
    [Formula(Source, Symbol = "k_T")]
    [RecordName("two-pole.more-gain")]
    public static Gain MoreGain(Frequency f_z, Frequency f)
    {
        Guard.Positive(f_z);
        Guard.Positive(f);
        var x = f_z / f;
        return Gain.FromRatio(Sqrt(1 + x * x));
    }

    /// <summary>What the zero still takes from the phase margin at the crossover: 90° − arctan(f_x/f_z).</summary>
    /// <param name="f_z">The zero; greater than 0 Hz.</param>
    /// <param name="f_x">The loop crossover; greater than 0 Hz.</param>
    /// <returns>The loss of phase margin beside one pole, 0 to 90, in degrees.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "phi_z")]
    [RecordName("two-pole.phase-cost")]
    public static Angle PhaseCost(Frequency f_z, Frequency f_x)
    {
        Guard.Positive(f_z);
        Guard.Positive(f_x);
        return ArcTan(f_z / f_x);
    }
}
