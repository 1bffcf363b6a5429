using EightOhm.Explaining;
using EightOhm.Quantities;
using MathNet.Numerics.Integration;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Noise;

/// <summary>Frequency weighting A: how a sound level meter, and a noise figure "dBA", hears.</summary>
/// <remarks>The design goal of IEC 61672-1, without a meter's tolerances. Tables of it hold at the exact frequencies 1 kHz·10^(n/10),
/// not at the nominal ones: "12.5 Hz" is 12.589 Hz.</remarks>
public static partial class AWeighting
{
    // Corners from which IEC 61672-1 defines the poles: the ends at which weighting C is 3 dB down, and the high pass of A.
    private static readonly double Low = Math.Pow(10, 1.5), High = Math.Pow(10, 3.9), HighPass = Math.Pow(10, 2.45);

    /// <summary>The double pole of the low end, 20.599 Hz.</summary>
    [RecordName("a-weighting.f_1")]
    public static Frequency f_1 { get; } = Frequency.FromHertz(EndPole(-1));

    /// <summary>The lower pole of the high pass, 107.65 Hz.</summary>
    [RecordName("a-weighting.f_2")]
    public static Frequency f_2 { get; } = Frequency.FromHertz((3 - Math.Sqrt(5)) / 2 * HighPass);

    /// <summary>The upper pole of the high pass, 737.86 Hz.</summary>
    [RecordName("a-weighting.f_3")]
    public static Frequency f_3 { get; } = Frequency.FromHertz((3 + Math.Sqrt(5)) / 2 * HighPass);

    /// <summary>The double pole of the high end, 12.194 kHz.</summary>
    [RecordName("a-weighting.f_4")]
    public static Frequency f_4 { get; } = Frequency.FromHertz(EndPole(1));

    /// <summary>The frequency at which the response is 0 dB, 1 kHz.</summary>
    [RecordName("a-weighting.f_r")]
    public static Frequency f_r { get; } = Frequency.FromHertz(1000);

    /// <summary>The product of the poles, before it is made 0 dB at 1 kHz: 0.7943 there.</summary>
    /// <param name="f">The frequency; greater than 0 Hz.</param>
    /// <returns>The product, a plain number, 0.7943 at 1 kHz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not positive.</exception>
    [Formula("IEC 61672-1, annex E: analytical expression for A-weighting", Symbol = "R_A")]
    [RecordName("a-weighting.poles")]
    public static double Poles(Frequency f)
    {
        Guard.Positive(f);
        var x_1 = f_1 / f;
        var x_2 = f_2 / f;
        var x_3 = f_3 / f;
        var x_4 = f / f_4;
        return 1 / ((1 + x_1 * x_1) * Sqrt((1 + x_2 * x_2) * (1 + x_3 * x_3)) * (1 + x_4 * x_4));
    }

    /// <summary>The response at a frequency, 0 dB at 1 kHz; its decibels are those of the tables.</summary>
    /// <param name="f">The frequency; greater than 0 Hz.</param>
    /// <returns>The response, a gain of 1 at 1 kHz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not positive.</exception>
    [Formula("IEC 61672-1, annex E: analytical expression for A-weighting", Symbol = "A")]
    [RecordName("a-weighting.response")]
    public static Gain Response(Frequency f)
    {
        Guard.Positive(f);
        return Gain.FromRatio(Poles(f) / Poles(f_r));
    }

    /// <summary>The flat bandwidth that gives white noise the rms which A-weighting leaves of it: ∫A² df.</summary>
    /// <remarks>By numerical integration, to ten digits. All of it is 13.46 kHz; 12.47 kHz of that lie between 20 Hz and 20 kHz.</remarks>
    /// <param name="f_L">The lower edge of what is measured; 0 Hz or more.</param>
    /// <param name="f_H">The upper edge; not below the lower one, at most 1 GHz, which is as good as no edge.</param>
    /// <exception cref="ArgumentOutOfRangeException">The band is upside down or out of range.</exception>
    [RecordName("a-weighting.white-noise-bandwidth")]
    [Worked("∫A²df over the band, by Gauss-Legendre quadrature in panels along which the poles lie evenly", Source = "IEC 61672-1, annex E: the response")]
    public static Frequency WhiteNoiseBandwidth(Frequency f_L, Frequency f_H)
    {
        CheckBand(f_L, f_H);
        // With f = f₁·sinh u the poles lie evenly along u, and 0 Hz is not at infinity.
        double first = f_1.Hertz, one = Poles(f_r);
        double b1 = Square(f_1), b2 = Square(f_2), b3 = Square(f_3), b4 = Square(f_4);
        double Integrand(double u)
        {
            var f = first * Math.Sinh(u);
            var s = f * f;
            var low = s / (s + b1);
            var high = b4 / (s + b4);
            return low * low * s / (s + b2) * s / (s + b3) * high * high * first * Math.Cosh(u);
        }

        double from = Math.Asinh(f_L.Hertz / first), width = Math.Asinh(f_H.Hertz / first) - from;
        var panels = 1 + (int)(2 * width);
        var sum = 0.0;
        for (var i = 0; i < panels; i++)
            sum += GaussLegendreRule.Integrate(Integrand, from + (width * i / panels), from + (width * (i + 1) / panels), 20);
        return Frequency.FromHertz(sum / (one * one));
    }

    /// <summary>White noise of a density, A-weighted over a band, rms: e_n·√B_A, B_A the weighted bandwidth of the band.</summary>
    /// <param name="e_n">The white density; 0 V/√Hz or more.</param>
    /// <param name="f_L">The lower edge of what is measured; 0 Hz or more.</param>
    /// <param name="f_H">The upper edge; not below the lower one, at most 1 GHz.</param>
    /// <returns>The weighted noise, rms, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The band is upside down or out of range, or the density negative.</exception>
    [Formula("definition of noise bandwidth with the response of IEC 61672-1, annex E", Symbol = "E_A")]
    [RecordName("a-weighting.white-noise")]
    public static ElectricPotential WhiteNoise(VoltageNoiseDensity e_n, Frequency f_L, Frequency f_H)
    {
        Guard.NotNegative(e_n);
        var B_A = WhiteNoiseBandwidth(f_L, f_H);
        return e_n * Sqrt(B_A);
    }

    private static void CheckBand(Frequency f_L, Frequency f_H)
    {
        Guard.NotNegative(f_L);
        Guard.Between(f_H, default, Frequency.FromGigahertz(1));
        Guard.Between(f_L, default, f_H, hint: "The band is upside down: give its lower edge first, then its upper one.");
    }

    private static double Square(Frequency f) => f.Hertz * f.Hertz;

    // The squares of f₁ and f₄ are the roots of x² + b·x + c (IEC 61672-1, annex E), with weighting C half the power at both ends.
    private static double EndPole(int sign)
    {
        const double Reference = 1e6; // 1 kHz squared
        double d = Math.Sqrt(0.5), low = Low * Low, high = High * High;
        var b = (Reference + (low * high / Reference) - (d * (low + high))) / (1 - d);
        return Math.Sqrt((-b + (sign * Math.Sqrt((b * b) - (4 * low * high)))) / 2);
    }
}
