using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.InputStages;

/// <summary>Current mirrors: what they owe to base current, to unlike devices and to their output voltage.</summary>
public static partial class CurrentMirror
{
    /// <summary>Output over input current of a plain mirror with an area ratio m: m/(1 + (1 + m)/h_FE).</summary>
    /// <param name="m">Ratio of the emitter areas, output over input; greater than 0.</param>
    /// <param name="h_FE">Current gain; 1 or more.</param>
    /// <returns>The ratio of the currents, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>CurrentMirror.Transfer(1, 50)   // 0.9615</code></example>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 6: the simple mirror with base currents", Symbol = "k_m")]
    [RecordName("current-mirror.transfer")]
    public static double Transfer(double m, double h_FE)
    {
        Guard.Positive(m);
        Guard.Between(h_FE, 1, 1e9);
        return m / (1 + 1 / h_FE + m / h_FE);
    }

    /// <summary>Output over input current of an equal mirror whose base currents come through a follower: 1/(1 + 2/(h_FE·(h_FE + 1))).</summary>
    /// <param name="h_FE">Current gain of all three; 1 or more.</param>
    /// <returns>The ratio of the currents, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The gain is out of range.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 6: mirror with base-current compensation", Symbol = "k_m")]
    [RecordName("current-mirror.transfer-with-follower")]
    public static double TransferWithFollower(double h_FE)
    {
        Guard.Between(h_FE, 1, 1e9);
        return 1 / (1 + 2 / (h_FE * (h_FE + 1)));
    }

    /// <summary>The largest area ratio for an error by base current: (1/(1 − x) − 1)·h_FE − 1.</summary>
    /// <param name="x">Error allowed, of the ratio; greater than 0, below 1.</param>
    /// <param name="h_FE">Current gain; 1 or more.</param>
    /// <returns>The ratio, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or even the smallest mirror errs by more.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 6, solved for the ratio", Symbol = "m")]
    [RecordName("current-mirror.largest-ratio")]
    public static double LargestRatio(Ratio x, double h_FE)
    {
        Guard.Between(x.DecimalFractions, 1e-9, 0.999, nameof(x));
        Guard.Between(h_FE, 1, 1e9);
        Guard.Positive((1 / (1 - x) - 1) * h_FE - 1, "the ratio that is left", "Base current alone errs by more: a follower for the base currents, or more current gain.");
        return (1 / (1 - x) - 1) * h_FE - 1;
    }

    /// <summary>The error by unlike junctions, with resistors in the emitters: V_T·ln(1 + x)/(V_T + I·R_m).</summary>
    /// <remarks>First order. Without a resistor the currents stand as the saturation currents do; each 26 mV across the resistor halves, thirds … that.</remarks>
    /// <param name="V_T">Thermal voltage; greater than 0 V.</param>
    /// <param name="x">By how much one saturation current is above the other; above −1.</param>
    /// <param name="I">Current of one side; greater than 0 A.</param>
    /// <param name="R_m">Resistor in each emitter; 0 Ω or more.</param>
    /// <returns>The error of the output current, as a fraction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Gray, Hurst, Lewis & Meyer, Analysis and Design of Analog Integrated Circuits, ch. 4: matching with emitter degeneration", Symbol = "epsilon_m")]
    [RecordName("current-mirror.error-of-mismatch")]
    public static Ratio ErrorOfMismatch(ElectricPotential V_T, Ratio x, ElectricCurrent I, ElectricResistance R_m)
    {
        Guard.Positive(V_T);
        Guard.Between(x.DecimalFractions, -0.999, 1e6, nameof(x));
        Guard.Positive(I);
        Guard.NotNegative(R_m);
        return Ratio.FromDecimalFractions(Ln(1 + x) * V_T / (V_T + I * R_m));
    }

    /// <summary>The error by unlike resistors: y·I·R_m/(V_T + I·R_m).</summary>
    /// <param name="V_T">Thermal voltage; greater than 0 V.</param>
    /// <param name="y">By how much one resistor is above the other; 0 or more.</param>
    /// <param name="I">Current of one side; greater than 0 A.</param>
    /// <param name="R_m">Resistor in each emitter; 0 Ω or more.</param>
    /// <returns>The error of the output current, as a fraction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Gray, Hurst, Lewis & Meyer, Analysis and Design of Analog Integrated Circuits, ch. 4: matching with emitter degeneration", Symbol = "epsilon_R")]
    [RecordName("current-mirror.error-of-resistors")]
    public static Ratio ErrorOfResistors(ElectricPotential V_T, Ratio y, ElectricCurrent I, ElectricResistance R_m)
    {
        Guard.Positive(V_T);
        Guard.NotNegative(y);
        Guard.Positive(I);
        Guard.NotNegative(R_m);
        return y * (I * R_m / (V_T + I * R_m));
    }
}
