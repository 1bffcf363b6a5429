using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;

namespace EightOhm.OutputStages;

/// <summary>The charge in the bases of the outputs, which their drivers must bring and take away at high frequency.</summary>
/// <remarks>A conducting base holds I/(2·π·f_T); for a sine its rate of change peaks at I_p·f/f_T. Without it a static stage's harmonics are a lower bound.
/// One time, 1/(2π·f_T): f_T falls at high current and low voltage, so take it there. Junction capacitances come on top.</remarks>
public static partial class ChargeControl
{
    private const string StoredSource = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 5: base charge τ_F·i_C, with τ_F = 1/(2π·f_T)";

    private const string Source = "Gray, Hurst, Lewis & Meyer, Analysis and Design of Analog Integrated Circuits, 4th ed., ch. 1: base charge τ_F·I_C, τ_F = 1/(2π·f_T)";

    /// <summary>Peak current that charges and discharges the bases: I_p·f/f_T.</summary>
    /// <param name="I_p">Peak output current of the stage (not rms), all pairs; 0 A or more.</param>
    /// <param name="f">Frequency of the sine; 0 Hz or more.</param>
    /// <param name="f_T">Transition frequency of the outputs at that current; greater than 0 Hz.</param>
    /// <returns>The current, peak, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "I_Q")]
    [RecordName("charge-control.current")]
    public static ElectricCurrent Current(ElectricCurrent I_p, Frequency f, Frequency f_T)
    {
        Guard.NotNegative(I_p);
        Guard.NotNegative(f);
        Guard.Positive(f_T);
        return f / f_T * I_p;
    }

    /// <summary>The frequency at which that current is all of the drivers' standing current: f_T·I_dr/I_p. Above it the outputs do not turn off in time.</summary>
    /// <param name="I_dr">Standing current of the drivers, in the resistor between their emitters; greater than 0 A.</param>
    /// <param name="I_p">Peak output current of the stage (not rms), all pairs; greater than 0 A.</param>
    /// <param name="f_T">Transition frequency of the outputs at that current; greater than 0 Hz.</param>
    /// <returns>The frequency, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "f_Q")]
    [RecordName("charge-control.limit-frequency")]
    public static Frequency LimitFrequency(ElectricCurrent I_dr, ElectricCurrent I_p, Frequency f_T)
    {
        Guard.Positive(I_dr);
        Guard.Positive(I_p);
        Guard.Positive(f_T);
        return I_dr / I_p * f_T;
    }

    /// <summary>The charge stored with a collector current: I_C/(2π·f_T).</summary>
    /// <param name="I_C">Collector current of all transistors of a side; 0 A or more.</param>
    /// <param name="f_T">Transition frequency at that current; greater than 0 Hz.</param>
    /// <returns>The charge, in C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(StoredSource, Symbol = "Q")]
    [RecordName("charge-control.stored")]
    public static ElectricCharge Stored(ElectricCurrent I_C, Frequency f_T)
    {
        Guard.NotNegative(I_C);
        Guard.Positive(f_T);
        var tau_F = 1 / (2 * pi * f_T);
        return I_C * tau_F;
    }
}
