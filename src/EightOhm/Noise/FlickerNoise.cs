using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Noise;

/// <summary>Noise that rises as 1/f (in power) below a corner and is white above it.</summary>
public static partial class FlickerNoise
{
    /// <summary>Noise voltage over a band, rms, of white noise with a 1/f corner: e_w·√(f_c·ln(f_H/f_L) + f_H − f_L).</summary>
    /// <remarks>The band has sharp edges: of a one-pole low pass, put π/2 times its corner for <paramref name="f_H"/>.</remarks>
    /// <param name="e_w">The density far above the corner; 0 V/√Hz or more.</param>
    /// <param name="f_c">The corner, where the 1/f part equals the white one; 0 Hz (white only) or more.</param>
    /// <param name="f_L">The lower edge of the band; greater than 0 Hz: 1/f noise down to 0 Hz has no end.</param>
    /// <param name="f_H">The upper edge of the band; not below the lower one.</param>
    /// <returns>The noise, rms, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The band is upside down or begins at 0 Hz, or a density or corner is negative.</exception>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 7", Symbol = "E_n")]
    [RecordName("flicker-noise.voltage")]
    public static ElectricPotential Voltage(VoltageNoiseDensity e_w, Frequency f_c, Frequency f_L, Frequency f_H)
    {
        Guard.NotNegative(e_w);
        Guard.NotNegative(f_c);
        Guard.Positive(f_L, hint: "1/f noise down to 0 Hz has no end: take one over the time you listen, for example 0.01.Hz for 100 s.");
        Guard.Between(f_L, default, f_H, hint: "The band is upside down: give its lower edge first, then its upper one.");
        var B_e = f_c * Ln(f_H / f_L) + (f_H - f_L);
        return e_w * Sqrt(B_e);
    }

    /// <summary>The density at a frequency: e_w·√(1 + f_c/f).</summary>
    /// <param name="e_w">The density far above the corner; 0 V/√Hz or more.</param>
    /// <param name="f_c">The corner, where the 1/f part equals the white one; 0 Hz (white only) or more.</param>
    /// <param name="f">The frequency; greater than 0 Hz.</param>
    /// <returns>The density, rms, in V/√Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 7", Symbol = "e_n")]
    [RecordName("flicker-noise.density")]
    public static VoltageNoiseDensity Density(VoltageNoiseDensity e_w, Frequency f_c, Frequency f)
    {
        Guard.NotNegative(e_w);
        Guard.NotNegative(f_c);
        Guard.Positive(f);
        return Sqrt(1 + f_c / f) * e_w;
    }

    /// <summary>The density of a current at a frequency: i_w·√(1 + f_c/f).</summary>
    /// <param name="i_w">The density far above the corner; 0 A/√Hz or more.</param>
    /// <param name="f_c">The corner, where the 1/f part equals the white one; 0 Hz (white only) or more.</param>
    /// <param name="f">The frequency; greater than 0 Hz.</param>
    /// <returns>The density, rms, in A/√Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 7", Symbol = "i_n")]
    [RecordName("flicker-noise.current-density")]
    public static CurrentNoiseDensity CurrentDensity(CurrentNoiseDensity i_w, Frequency f_c, Frequency f)
    {
        Guard.NotNegative(i_w);
        Guard.NotNegative(f_c);
        Guard.Positive(f);
        return Sqrt(1 + f_c / f) * i_w;
    }

    /// <summary>The corner from two densities of a datasheet: (e_1² − e_2²)/(e_2²/f_1 − e_1²/f_2).</summary>
    /// <remarks>Squares, not the densities themselves: the two kinds of noise add in power. Where e_2 is read far above the corner it is (e_1²/e_2² − 1)·f_1.</remarks>
    /// <param name="e_1">Density at f_1; greater than e_2.</param>
    /// <param name="f_1">The lower frequency; greater than 0 Hz.</param>
    /// <param name="e_2">Density at f_2; greater than 0 V/√Hz, and such that e_1 rises no faster than 1/f from it.</param>
    /// <param name="f_2">The higher frequency; greater than f_1.</param>
    /// <returns>The corner frequency, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The densities are not those of 1/f noise and white noise.</exception>
    /// <example><code>FlickerNoise.Corner(5.nV_rtHz, 10.Hz, 4.nV_rtHz, 1.kHz)   // 5.714 Hz</code></example>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 7: e² = e_w²·(f_c/f + 1), at two frequencies", Symbol = "f_c")]
    [RecordName("flicker-noise.corner")]
    public static Frequency Corner(VoltageNoiseDensity e_1, Frequency f_1, VoltageNoiseDensity e_2, Frequency f_2)
    {
        Guard.Positive(f_1);
        Guard.Positive(f_2 - f_1, nameof(f_2), "Give the lower frequency first.");
        Guard.Positive(e_2);
        Guard.Positive(e_1 - e_2, nameof(e_1), "1/f noise is higher at the lower frequency.");
        Guard.Positive(e_2 * e_2 - f_1 / f_2 * (e_1 * e_1), "the white part of the noise", "The density falls faster than 1/f noise can between the two: one of the readings, or another noise, is in the way.");
        var r = e_1 * e_1 / (e_2 * e_2);
        return (r - 1) / (1 - f_1 / f_2 * r) * f_1;
    }

    /// <summary>The white density behind two densities of a datasheet: √((e_2²·f_2 − e_1²·f_1)/(f_2 − f_1)).</summary>
    /// <param name="e_1">Density at f_1; not below e_2.</param>
    /// <param name="f_1">The lower frequency; greater than 0 Hz.</param>
    /// <param name="e_2">Density at f_2; greater than 0 V/√Hz, and such that e_1 rises no faster than 1/f from it.</param>
    /// <param name="f_2">The higher frequency; greater than f_1.</param>
    /// <returns>The white density, rms, in V/√Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The densities are not those of 1/f noise and white noise.</exception>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 7: e² = e_w²·(f_c/f + 1), at two frequencies", Symbol = "e_w")]
    [RecordName("flicker-noise.white-density")]
    public static VoltageNoiseDensity WhiteDensity(VoltageNoiseDensity e_1, Frequency f_1, VoltageNoiseDensity e_2, Frequency f_2)
    {
        Guard.Positive(f_1);
        Guard.Positive(f_2 - f_1, nameof(f_2), "Give the lower frequency first.");
        Guard.Positive(e_2);
        Guard.NotNegative(e_1 - e_2, nameof(e_1), "1/f noise is higher at the lower frequency.");
        Guard.Positive(e_2 * e_2 - f_1 / f_2 * (e_1 * e_1), "the white part of the noise", "The density falls faster than 1/f noise can between the two: one of the readings, or another noise, is in the way.");
        var x = f_1 / f_2;
        return Sqrt(1 / (1 - x) * (e_2 * e_2 - x * (e_1 * e_1)));
    }
}
