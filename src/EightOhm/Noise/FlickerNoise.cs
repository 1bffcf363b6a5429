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
}
