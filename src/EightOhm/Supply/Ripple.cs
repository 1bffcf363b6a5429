using EightOhm.Explaining;
using EightOhm.Quantities;
using EightOhm.Ratings;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Supply;

/// <summary>What is left of the rail's ripple at the output, as hum.</summary>
/// <remarks>A rejection stated at the output leaves V/R; one referred to the input leaves V·G/R. The name says which: for a gain of 23.6 they are 27.5 dB apart.</remarks>
public static partial class Ripple
{
    /// <summary>Harmonic h of a sawtooth ripple: V_pp/(π·h), peak (not rms). Its fundamental is twice the mains.</summary>
    /// <param name="V_pp">Ripple, peak to peak; 0 V or more.</param>
    /// <param name="h">Harmonic of twice the mains: 1 for 100 Hz in a 50 Hz country; 1 or more.</param>
    /// <returns>The voltage of the harmonic, peak, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>Ripple.SawtoothHarmonic(3.V, 1)   // 954.9 mV</code></example>
    [Formula("Fourier series of a sawtooth", Symbol = "V_h")]
    [RecordName("ripple.sawtooth-harmonic")]
    public static ElectricPotential SawtoothHarmonic(ElectricPotential V_pp, int h)
    {
        Guard.NotNegative(V_pp);
        Guard.Positive(h);
        return V_pp / (pi * h);
    }

    /// <summary>What ripple leaves at the output when the rejection is stated at the output: V/R_out.</summary>
    /// <param name="V">The ripple, peak to peak or one harmonic, peak or rms; 0 V or more.</param>
    /// <param name="R_out">Rejection stated at the output at that frequency, such as 103.7.dB; greater than 0.</param>
    /// <returns>In the ripple's own measure, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("rejection is disturbance over what is left of it at the output", Symbol = "V_hum")]
    [RecordName("ripple.at-output-by-output-referred")]
    public static ElectricPotential AtOutputByOutputReferred(ElectricPotential V, Gain R_out)
    {
        return Rejection.LeftAtOutput(V, R_out);
    }

    /// <summary>What ripple leaves at the output when the rejection is referred to the input: V·G/R_in.</summary>
    /// <param name="V">The ripple, peak to peak or one harmonic, peak or rms; 0 V or more.</param>
    /// <param name="R_in">Rejection referred to the input at that frequency, such as 100.dB; greater than 0.</param>
    /// <param name="G">Closed-loop gain; greater than 0.</param>
    /// <returns>In the ripple's own measure, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 5: power-supply rejection is referred to the input", Symbol = "V_hum")]
    [RecordName("ripple.at-output-by-input-referred")]
    public static ElectricPotential AtOutputByInputReferred(ElectricPotential V, Gain R_in, Gain G)
    {
        var R_out = Rejection.OutputReferred(R_in, G);
        return Rejection.LeftAtOutput(V, R_out);
    }

    /// <summary>How far the hum is below rated output: V_rated/V_hum, with its decibels.</summary>
    /// <param name="V_rated">Rated output; greater than 0 V.</param>
    /// <param name="V_hum">Hum at the output, in the same measure (both rms or both peak); greater than 0 V.</param>
    /// <returns>The distance to rated output, a ratio of voltages.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula("common practice, no source: hum below rated output", Symbol = "S_hum")]
    [RecordName("ripple.below-rated")]
    public static Gain BelowRated(ElectricPotential V_rated, ElectricPotential V_hum)
    {
        Guard.Positive(V_rated);
        Guard.Positive(V_hum);
        return Gain.FromRatio(V_rated / V_hum);
    }
}
