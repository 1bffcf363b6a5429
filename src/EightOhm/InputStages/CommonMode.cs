using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.InputStages;

/// <summary>What a pair makes of a voltage on both inputs: its rejection, and how its tail source decides it.</summary>
/// <remarks>An amplifier that does not invert has its whole input signal as common mode.</remarks>
public static partial class CommonMode
{
    private const string Neamen = "D. A. Neamen, Electronic Circuit Analysis and Design, ch. 11";

    /// <summary>Gain from both inputs to the difference of unequal collector resistors: R_C/(2·R_EE)·x.</summary>
    /// <param name="R_C">Resistor at each collector; greater than 0 Ω.</param>
    /// <param name="R_EE">Output resistance of the tail source; greater than 0 Ω.</param>
    /// <param name="x">By how much one collector resistor is above the other; 0 or more.</param>
    /// <returns>The common-mode gain, a magnitude.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 7", Symbol = "A_cm")]
    [RecordName("common-mode.gain")]
    public static Gain GainOf(ElectricResistance R_C, ElectricResistance R_EE, Ratio x)
    {
        Guard.Positive(R_C);
        Guard.Positive(R_EE);
        Guard.NotNegative(x);
        return Gain.FromRatio(R_C / (2 * R_EE) * x.DecimalFractions);
    }

    /// <summary>Rejection of a pair of which one collector is taken: (1 + (1 + h_FE)·I_tail·R_EE/(h_FE·V_T))/2.</summary>
    /// <param name="h_FE">Current gain; 1 or more.</param>
    /// <param name="I_tail">Tail current; greater than 0 A.</param>
    /// <param name="R_EE">Output resistance of the tail source; greater than 0 Ω.</param>
    /// <param name="V_T">Thermal voltage; greater than 0 V.</param>
    /// <returns>The common-mode rejection ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Neamen, Symbol = "CMRR")]
    [RecordName("common-mode.rejection")]
    public static Gain RejectionOf(double h_FE, ElectricCurrent I_tail, ElectricResistance R_EE, ElectricPotential V_T)
    {
        Guard.Between(h_FE, 1, 1e9);
        Guard.Positive(I_tail);
        Guard.Positive(R_EE);
        Guard.Positive(V_T);
        return Gain.FromRatio((1 + (1 + h_FE) / h_FE * (I_tail * R_EE / V_T)) / 2);
    }

    /// <summary>The tail source's output resistance for a rejection: (2·CMRR − 1)·V_T·h_FE/((1 + h_FE)·I_tail).</summary>
    /// <param name="CMRR">The rejection wanted; greater than one half.</param>
    /// <param name="h_FE">Current gain; 1 or more.</param>
    /// <param name="I_tail">Tail current; greater than 0 A.</param>
    /// <param name="V_T">Thermal voltage; greater than 0 V.</param>
    /// <returns>The output resistance, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>CommonMode.TailResistanceFor(90.dB, 100, 0.8.mA, 26.mV)   // 2.035 MΩ</code></example>
    [Formula(Neamen + ", solved for the resistance", Symbol = "R_EE")]
    [RecordName("common-mode.tail-resistance-for")]
    public static ElectricResistance TailResistanceFor(Gain CMRR, double h_FE, ElectricCurrent I_tail, ElectricPotential V_T)
    {
        Guard.Positive(CMRR.Ratio * 2 - 1, "2·CMRR − 1", "A pair rejects by one half without any tail source.");
        Guard.Between(h_FE, 1, 1e9);
        Guard.Positive(I_tail);
        Guard.Positive(V_T);
        return (2 * CMRR.Ratio - 1) * (h_FE / (1 + h_FE)) * (V_T / I_tail);
    }

    /// <summary>Resistance of both inputs together to ground: (h_FE + 1)·(R_EE∥r_o/2).</summary>
    /// <param name="h_FE">Current gain; 1 or more.</param>
    /// <param name="R_EE">Output resistance of the tail source; greater than 0 Ω.</param>
    /// <param name="r_o">Output resistance of each device of the pair; greater than 0 Ω.</param>
    /// <returns>The common-mode input resistance, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 7", Symbol = "R_icm")]
    [RecordName("common-mode.input-resistance")]
    public static ElectricResistance InputResistance(double h_FE, ElectricResistance R_EE, ElectricResistance r_o)
    {
        Guard.Between(h_FE, 1, 1e9);
        return (h_FE + 1) * Parallel(R_EE, r_o / 2);
    }

    /// <summary>The frequency from which the tail's capacitance spoils the rejection: 1/(2π·R_EE·C_o).</summary>
    /// <param name="R_EE">Output resistance of the tail source; greater than 0 Ω.</param>
    /// <param name="C_o">Capacitance at the emitters; greater than 0 F.</param>
    /// <returns>The zero of the common-mode gain, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>CommonMode.Zero(10.MOhm, 1.pF)   // 15.92 kHz</code></example>
    [Formula(Neamen, Symbol = "f_z")]
    [RecordName("common-mode.zero")]
    public static Frequency Zero(ElectricResistance R_EE, ElectricCapacitance C_o)
    {
        Guard.Positive(R_EE);
        Guard.Positive(C_o);
        return 1 / (2 * pi * (R_EE * C_o));
    }

    /// <summary>What stands at the emitters beside that capacitance: R_EE∥(r_pi + R_B)/(2·(1 + h_FE)).</summary>
    /// <param name="R_EE">Output resistance of the tail source; greater than 0 Ω.</param>
    /// <param name="r_pi">h_FE·V_T/I_C of one device; greater than 0 Ω.</param>
    /// <param name="R_B">Resistance at each base; 0 Ω or more.</param>
    /// <param name="h_FE">Current gain; 1 or more.</param>
    /// <returns>The resistance, in Ω; with the capacitance the pole of the common-mode gain.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Neamen, Symbol = "R_eq")]
    [RecordName("common-mode.emitter-resistance")]
    public static ElectricResistance EmitterResistance(ElectricResistance R_EE, ElectricResistance r_pi, ElectricResistance R_B, double h_FE)
    {
        Guard.Positive(r_pi);
        Guard.NotNegative(R_B);
        Guard.Between(h_FE, 1, 1e9);
        return Parallel(R_EE, (r_pi + R_B) / (2 * (1 + h_FE)));
    }
}
