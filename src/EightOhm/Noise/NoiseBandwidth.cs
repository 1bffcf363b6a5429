using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Noise;

/// <summary>The width of the ideal low pass that lets as much white noise through as a real one.</summary>
/// <remarks>
/// Four low passes, and no two have the same ratio of noise bandwidth to corner. A cascade of equal stages is
/// <see cref="OfIdenticalPolesByPole"/> where the corner of one stage is known and <see cref="OfIdenticalPolesByCorner"/> where that of
/// the whole is; <see cref="OfButterworth"/> is a filter of that name. Tables "order against 1.57, 1.22, 1.16 …" are for identical poles.
/// </remarks>
public static partial class NoiseBandwidth
{
    private const string OrderHint = "Give the number of poles; beyond ten, measure the response and integrate its square.";

    /// <summary>Noise bandwidth of n identical real poles, from the corner of one of them: f_p·√π·Γ(n − ½)/(2·Γ(n)).</summary>
    /// <remarks>One pole: π/2·f_p. Each further pole narrows the whole: two have π/4·f_p.</remarks>
    /// <param name="f_p">The corner of each pole alone (not of the whole); greater than 0 Hz.</param>
    /// <param name="n">The number of poles, from 1 to 10.</param>
    /// <returns>The noise bandwidth, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The corner is not positive or the order not from 1 to 10.</exception>
    [Formula("definition of noise bandwidth: Franco, Design with Operational Amplifiers …, 3rd ed., ch. 7; derived, ∫₀^∞ df/(1 + (f/f_p)²)ⁿ", Symbol = "B")]
    [RecordName("noise-bandwidth.of-identical-poles-by-pole")]
    public static Frequency OfIdenticalPolesByPole(Frequency f_p, int n)
    {
        Guard.Positive(f_p);
        Guard.Between(n, 1, 10, hint: OrderHint);
        return f_p * (Sqrt(pi) * Gamma(n - 0.5) / (2 * Gamma(n)));
    }

    /// <summary>Noise bandwidth of n identical real poles, from the −3 dB frequency of the whole.</summary>
    /// <remarks>Per hertz of that frequency 1.571, 1.220, 1.155, 1.129, 1.114 … for one pole and more. Not a Butterworth's.</remarks>
    /// <param name="f_3dB">The frequency at which all poles together are 3 dB down (a factor √½); greater than 0 Hz.</param>
    /// <param name="n">The number of poles, from 1 to 10.</param>
    /// <returns>The noise bandwidth, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not positive or the order not from 1 to 10.</exception>
    [Formula("as OfIdenticalPolesByPole; derived, (1 + (f_3dB/f_p)²)ⁿ = 2 for the pole", Symbol = "B")]
    [RecordName("noise-bandwidth.of-identical-poles-by-corner")]
    public static Frequency OfIdenticalPolesByCorner(Frequency f_3dB, int n)
    {
        Guard.Positive(f_3dB);
        Guard.Between(n, 1, 10, hint: OrderHint);
        var f_p = f_3dB / Sqrt(Math.Pow(2, 1.0 / n) - 1);
        return OfIdenticalPolesByPole(f_p, n);
    }

    /// <summary>Noise bandwidth of two real poles at different frequencies: π/2·f₁·f₂/(f₁ + f₂).</summary>
    /// <remarks>Always below π/2 times the lower pole; with both alike it is <see cref="OfIdenticalPolesByPole"/> of two.</remarks>
    /// <param name="f_1">The corner of one pole; greater than 0 Hz.</param>
    /// <param name="f_2">The corner of the other pole; greater than 0 Hz.</param>
    /// <returns>The noise bandwidth, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A corner is not positive.</exception>
    /// <example><code>NoiseBandwidth.OfUnequalPoles(20.kHz, 80.kHz)   // 25.13 kHz</code></example>
    [Formula("definition of noise bandwidth: Franco, Design with Operational Amplifiers …, 3rd ed., ch. 7; derived, ∫₀^∞ df/((1 + (f/f₁)²)·(1 + (f/f₂)²))", Symbol = "B")]
    [RecordName("noise-bandwidth.of-unequal-poles")]
    public static Frequency OfUnequalPoles(Frequency f_1, Frequency f_2)
    {
        Guard.Positive(f_1);
        Guard.Positive(f_2);
        return pi / 2 * f_1 * (f_2 / (f_1 + f_2));
    }

    /// <summary>Noise bandwidth of a Butterworth low pass of order n: f_3dB·(π/2n)/sin(π/2n).</summary>
    /// <remarks>Per hertz of its corner 1.571, 1.111, 1.047, 1.026, 1.017 … for the first order and up. Not that of n identical poles.</remarks>
    /// <param name="f_3dB">The filter's −3 dB frequency; greater than 0 Hz.</param>
    /// <param name="n">The order, from 1 to 10.</param>
    /// <returns>The noise bandwidth, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not positive or the order not from 1 to 10.</exception>
    /// <example><code>NoiseBandwidth.OfButterworth(20.kHz, 2)   // 22.21 kHz</code></example>
    [Formula("definition of noise bandwidth: Franco, Design with Operational Amplifiers …, 3rd ed., ch. 7; derived, ∫₀^∞ df/(1 + (f/f_3dB)²ⁿ)", Symbol = "B")]
    [RecordName("noise-bandwidth.of-butterworth")]
    public static Frequency OfButterworth(Frequency f_3dB, int n)
    {
        Guard.Positive(f_3dB);
        Guard.Between(n, 1, 10, hint: OrderHint);
        var phi = pi / (2 * n);
        return f_3dB * (phi / Math.Sin(phi));
    }
}
