using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;

namespace EightOhm.InputStages;

/// <summary>What an input stage delays a signal by: pair, cascode and mirror, each by the charge that its bases take.</summary>
/// <remarks>Far below f_T, as at the crossover of a loop: there a pole is as good as the delay 1/(2·π·f), which takes a little more of the margin than the pole does. Base resistances are left out.</remarks>
public static partial class InputDelay
{
    private const string Source = "Gray, Hurst, Lewis & Meyer, Analysis and Design of Analog Integrated Circuits, ch. 1 and 7: base charge I_C/(2·π·f_T); the time constants of a stage add";

    /// <summary>The delay of a pair with resistors in its emitters, driven by low impedances: R_deg/(R_deg + r_e)/(2·π·f_T).</summary>
    /// <remarks>The resistors set the emitter current, of which the base takes its part; without them the base is driven and nothing is late.</remarks>
    /// <param name="f_T">Transition frequency at its current; greater than 0 Hz.</param>
    /// <param name="r_e">Incremental emitter resistance of one transistor; greater than 0 Ω.</param>
    /// <param name="R_deg">Resistor in each emitter; 0 Ω or more.</param>
    /// <returns>The delay, in s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>InputDelay.OfPair(100.MHz, 9.1.Ohm, 39.Ohm)   // 1.29 ns</code></example>
    [Formula(Source, Symbol = "t_pair")]
    [RecordName("input-delay.of-pair")]
    public static Duration OfPair(Frequency f_T, ElectricResistance r_e, ElectricResistance R_deg)
    {
        Guard.Positive(f_T);
        Guard.Positive(r_e);
        Guard.NotNegative(R_deg);
        return R_deg / (R_deg + r_e) / (2 * pi * f_T);
    }

    /// <summary>The delay of a cascode, whose base stands still: 1/(2·π·f_T).</summary>
    /// <param name="f_T">Transition frequency at its current; greater than 0 Hz.</param>
    /// <returns>The delay, in s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not positive.</exception>
    /// <example><code>InputDelay.OfCascode(100.MHz)   // 1.592 ns</code></example>
    [Formula(Source, Symbol = "t_cas")]
    [RecordName("input-delay.of-cascode")]
    public static Duration OfCascode(Frequency f_T)
    {
        Guard.Positive(f_T);
        return 1 / (2 * pi * f_T);
    }

    /// <summary>The delay that an equal mirror adds to a pair, half of whose signal goes through it: (2/(2·π·f_T) + C_m·(r_e + R_m))/2.</summary>
    /// <param name="f_T">Transition frequency of both at their current; greater than 0 Hz.</param>
    /// <param name="C_m">At the mirror's input, to ground: collectors, wiring; 0 F or more.</param>
    /// <param name="r_e">Incremental emitter resistance of one transistor; greater than 0 Ω.</param>
    /// <param name="R_m">Resistor in each emitter; 0 Ω or more.</param>
    /// <returns>The delay, in s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>InputDelay.OfMirror(100.MHz, 10.pF, 9.1.Ohm, 330.Ohm)   // 3.287 ns</code></example>
    [Formula(Source, Symbol = "t_mir")]
    [RecordName("input-delay.of-mirror")]
    public static Duration OfMirror(Frequency f_T, ElectricCapacitance C_m, ElectricResistance r_e, ElectricResistance R_m)
    {
        Guard.Positive(f_T);
        Guard.NotNegative(C_m);
        Guard.Positive(r_e);
        Guard.NotNegative(R_m);
        return (2 / (2 * pi * f_T) + C_m * (r_e + R_m)) / 2;
    }
}
