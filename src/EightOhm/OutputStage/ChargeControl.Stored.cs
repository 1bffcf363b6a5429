using EightOhm.Quantities;
using EightOhm.Working;
using UnitsNet;
using static EightOhm.Quantities.Constants;

namespace EightOhm.OutputStage;

/// <summary>The charge that a transistor stores with its current, and what it costs the drivers to move it in and out.</summary>
/// <remarks>Charge control with one time, 1/(2π·f_T). f_T falls at high current and low voltage, so take it there. Junction capacitances come on top.</remarks>
public static partial class ChargeControl
{
    private const string StoredSource = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 5: base charge τ_F·i_C, with τ_F = 1/(2π·f_T)";

    /// <summary>The charge stored with a collector current: I_C/(2π·f_T).</summary>
    /// <param name="I_C">Collector current of all transistors of a side; 0 A or more.</param>
    /// <param name="f_T">Transition frequency at that current; greater than 0 Hz.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(StoredSource, Symbol = "Q")]
    public static ElectricCharge Stored(ElectricCurrent I_C, Frequency f_T)
    {
        Guard.NotNegative(I_C);
        Guard.Positive(f_T);
        var tau_F = 1 / (2 * pi * f_T);
        return I_C * tau_F;
    }
}
