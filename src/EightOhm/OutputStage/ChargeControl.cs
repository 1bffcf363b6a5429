using EightOhm.Quantities;
using EightOhm.Working;
using UnitsNet;
using static EightOhm.Quantities.Constants;

namespace EightOhm.OutputStage;

/// <summary>The charge that a transistor stores with its current, and what it costs the drivers to move it in and out.</summary>
/// <remarks>Charge control with one time, 1/(2π·f_T). f_T falls at high current and low voltage, so take it there. Junction capacitances come on top.</remarks>
public static partial class ChargeControl
{
    private const string Source = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 5: base charge τ_F·i_C, with τ_F = 1/(2π·f_T)";

    /// <summary>The charge stored with a collector current: I_C/(2π·f_T).</summary>
    /// <param name="I_C">Collector current of all transistors of a side; 0 A or more.</param>
    /// <param name="f_T">Transition frequency at that current; greater than 0 Hz.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "Q")]
    public static ElectricCharge Stored(ElectricCurrent I_C, Frequency f_T)
    {
        Guard.NotNegative(I_C);
        Guard.Positive(f_T);
        var tau_F = 1 / (2 * pi * f_T);
        return I_C * tau_F;
    }

    /// <summary>The peak current that moves the charge of a sine: dQ/dt, I_p·f/f_T. It is greatest as the current passes zero, and it must go out as well as in.</summary>
    /// <param name="I_p">Peak of the sine's current; 0 A or more.</param>
    /// <param name="f">Its frequency; 0 Hz or more.</param>
    /// <param name="f_T">Transition frequency of the outputs; greater than 0 Hz.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source + "; the slope of a sine, 2π·f·I_p", Symbol = "I_ch")]
    public static ElectricCurrent Current(ElectricCurrent I_p, Frequency f, Frequency f_T)
    {
        Guard.NotNegative(I_p);
        Guard.NotNegative(f);
        Guard.Positive(f_T);
        return I_p * (f / f_T);
    }

    /// <summary>The frequency at which the charge current reaches the drivers' standing current: f_T·I_D/I_p. Above it one side is not off before the other is on.</summary>
    /// <param name="I_D">Standing current of the drivers, which pulls the charge out; greater than 0 A.</param>
    /// <param name="I_p">Peak of the sine's current; greater than 0 A.</param>
    /// <param name="f_T">Transition frequency of the outputs; greater than 0 Hz.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "f_lim")]
    public static Frequency LimitFrequency(ElectricCurrent I_D, ElectricCurrent I_p, Frequency f_T)
    {
        Guard.Positive(I_D);
        Guard.Positive(I_p);
        Guard.Positive(f_T);
        return f_T * (I_D / I_p);
    }
}
