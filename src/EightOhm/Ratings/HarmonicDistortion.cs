using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Ratings;

/// <summary>Total harmonic distortion from a list of harmonics, as ratios to the fundamental, as powers, or in decibels below it.</summary>
/// <remarks>Over the fundamental (THD_F) unless the name says over the total (THD_R), which analysers with a notch show; above 10 % the two part. Harmonics add in power: never as plain numbers or decibels.</remarks>
public static partial class HarmonicDistortion
{
    private const string Source = "R. L. Boylestad & L. Nashelsky, Electronic Devices and Circuit Theory, 11th ed., sec. 12.6: amplifier distortion";

    /// <summary>From the harmonics over the fundamental: √(D_2² + D_3² + …).</summary>
    /// <param name="D">Each harmonic's amplitude over the fundamental's; 0 or more, one or more of them.</param>
    /// <returns>The total harmonic distortion over the fundamental, as a fraction.</returns>
    /// <exception cref="ArgumentException">There is no harmonic.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Their sum of squares is out of range.</exception>
    /// <example><code>HarmonicDistortion.OfRatios([30.ppm, 40.ppm])   // 50 ppm</code></example>
    [Formula(Source, Symbol = "THD")]
    [RecordName("harmonic-distortion.of-ratios")]
    public static Ratio OfRatios(IReadOnlyList<Ratio> D)
    {
        var squares = Sum(D, d => d.DecimalFractions * d.DecimalFractions);
        Guard.Finite(squares, "the sum of the harmonics' squares");
        return Ratio.FromDecimalFractions(Sqrt(squares));
    }

    /// <summary>From the powers in the load: √(ΣP_h/P_1).</summary>
    /// <param name="P_h">Power of each harmonic in the load; together 0 W or more.</param>
    /// <param name="P_1">Power of the fundamental; greater than 0 W.</param>
    /// <returns>The total harmonic distortion over the fundamental, as a fraction.</returns>
    /// <exception cref="ArgumentException">There is no harmonic.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source + "; the same in powers", Symbol = "THD")]
    [RecordName("harmonic-distortion.of-powers")]
    public static Ratio OfPowers(IReadOnlyList<Power> P_h, Power P_1)
    {
        Guard.Positive(P_1);
        var P_sum = Sum(P_h, p => p);
        Guard.NotNegative(P_sum, "the harmonics' powers together");
        return Ratio.FromDecimalFractions(Sqrt((double)(P_sum / P_1)));
    }

    /// <summary>From levels in decibels over the fundamental: √(Σ10^(L/10)).</summary>
    /// <param name="L">Level of each harmonic over the fundamental, in dB, usually negative; from −400 to 60.</param>
    /// <returns>The total harmonic distortion over the fundamental, as a fraction.</returns>
    /// <exception cref="ArgumentException">There is no harmonic.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A level is out of range.</exception>
    [Formula(Source + "; the same in decibels", Symbol = "THD")]
    [RecordName("harmonic-distortion.of-decibels")]
    public static Ratio OfDecibels(IReadOnlyList<double> L)
    {
        var squares = Sum(L, l => PowerOfTen(l / 10));
        Guard.Between(squares, 0.0, 1e6, "the sum of the harmonics' powers over the fundamental's", "A harmonic is below the fundamental: were the signs forgotten?");
        return Ratio.FromDecimalFractions(Sqrt(squares));
    }

    /// <summary>Over the total instead of the fundamental: THD/√(1 + THD²).</summary>
    /// <param name="THD">Over the fundamental; 0 or more.</param>
    /// <returns>The distortion over the total signal, as a fraction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">It is negative.</exception>
    [Formula("D. Shmilovitz, On the definition of total harmonic distortion and its effect on measurement interpretation, IEEE Trans. Power Delivery 20 (2005)", Symbol = "THD_R")]
    [RecordName("harmonic-distortion.over-total")]
    public static Ratio OverTotal(Ratio THD)
    {
        Guard.NotNegative(THD);
        var d = THD.DecimalFractions;
        return Ratio.FromDecimalFractions(d / Sqrt(1 + d * d));
    }

    /// <summary>The power of fundamental and harmonics together: (1 + THD²)·P_1.</summary>
    /// <param name="P_1">Power of the fundamental; 0 W or more.</param>
    /// <param name="THD">Over the fundamental; 0 or more.</param>
    /// <returns>The power together, average, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    [Formula(Source, Symbol = "P")]
    [RecordName("harmonic-distortion.power")]
    public static Power TotalPower(Power P_1, Ratio THD)
    {
        Guard.NotNegative(P_1);
        Guard.NotNegative(THD);
        var d = THD.DecimalFractions;
        return (1 + d * d) * P_1;
    }
}
