using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Ratings;

/// <summary>Rejection of a disturbance such as supply ripple: a ratio above 1, stated at the output or referred to the input.</summary>
/// <remarks>Referred to the input it looks better by the gain, 27.5 dB for a gain of 23.6, for the same amplifier. A sheet must say which.</remarks>
public static partial class Rejection
{
    /// <summary>Output-referred rejection, disturbance over what it leaves at the output: R_in/G.</summary>
    /// <param name="R_in">Input-referred rejection, for example 100.dB; greater than 0.</param>
    /// <param name="G">Closed-loop gain; greater than 0.</param>
    /// <returns>The rejection, a ratio of voltages above 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 5: power-supply rejection is referred to the input", Symbol = "R_out")]
    [RecordName("rejection.output-referred")]
    public static Gain OutputReferred(Gain R_in, Gain G)
    {
        Guard.Positive(R_in);
        Guard.Positive(G);
        return R_in / G;
    }

    /// <summary>Input-referred rejection, disturbance over the input that would do the same: R_out·G.</summary>
    /// <param name="R_out">Output-referred rejection, for example 72.5.dB; greater than 0.</param>
    /// <param name="G">Closed-loop gain; greater than 0.</param>
    /// <returns>The rejection, a ratio of voltages above 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 5: power-supply rejection is referred to the input", Symbol = "R_in")]
    [RecordName("rejection.input-referred")]
    public static Gain InputReferred(Gain R_out, Gain G)
    {
        Guard.Positive(R_out);
        Guard.Positive(G);
        return R_out * G;
    }

    /// <summary>What a disturbance leaves at the output: V_d/R_out.</summary>
    /// <param name="V_d">The disturbance, rms, peak or peak to peak; 0 V or more.</param>
    /// <param name="R_out">Output-referred rejection; greater than 0.</param>
    /// <returns>The voltage at the output, in the disturbance's own measure, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("common practice, no source: rejection is disturbance over what is left of it", Symbol = "V_left")]
    [RecordName("rejection.left-at-output")]
    public static ElectricPotential LeftAtOutput(ElectricPotential V_d, Gain R_out)
    {
        Guard.NotNegative(V_d);
        Guard.Positive(R_out);
        return V_d / R_out;
    }
}
