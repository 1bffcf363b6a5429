using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Ratings;

/// <summary>Dynamic headroom: how much more a short burst may be than the rated continuous power, into the same load.</summary>
/// <remarks>It is kept as the ratio of voltages with its decibels: 2 dB is 26 % more voltage and 58 % more power.</remarks>
public static partial class DynamicHeadroom
{
    /// <summary>Dynamic headroom of a burst: √(P_burst/P_rated), in decibels 10·log₁₀ of the powers.</summary>
    /// <param name="P_burst">Burst power; greater than 0 W.</param>
    /// <param name="P_rated">Rated continuous power into the same load; greater than 0 W.</param>
    /// <returns>The headroom as a ratio of voltages.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A power is not positive.</exception>
    /// <example><code>DynamicHeadroom.Of(150.W, 100.W)   // 1.225</code></example>
    [Formula("common practice, no source: ten times the logarithm of burst over rated power", Symbol = "H")]
    [RecordName("dynamic-headroom.of")]
    public static Gain Of(Power P_burst, Power P_rated)
    {
        Guard.Positive(P_burst);
        Guard.Positive(P_rated);
        return Gain.FromRatio(Sqrt((double)(P_burst / P_rated)));
    }

    /// <summary>The burst power: P_rated·H².</summary>
    /// <param name="P_rated">Rated continuous power; greater than 0 W.</param>
    /// <param name="H">Dynamic headroom, for example 2.dB; greater than 0.</param>
    /// <returns>The power of the burst, average over its sine, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula("common practice, no source: ten times the logarithm of burst over rated power", Symbol = "P_burst")]
    [RecordName("dynamic-headroom.burst-power")]
    public static Power BurstPower(Power P_rated, Gain H)
    {
        Guard.Positive(P_rated);
        Guard.Positive(H);
        return P_rated * (H.Ratio * H.Ratio);
    }

    /// <summary>How much more voltage the burst has than rated power: H − 1; 26 % for 2 dB.</summary>
    /// <param name="H">Dynamic headroom, for example 2.dB; greater than 0.</param>
    /// <returns>The rise over the rated voltage, as a fraction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The headroom is not positive.</exception>
    [Formula("common practice, no source: decibels of voltage", Symbol = "d_V")]
    [RecordName("dynamic-headroom.voltage-rise")]
    public static Ratio VoltageRise(Gain H)
    {
        Guard.Positive(H);
        return Ratio.FromDecimalFractions(H.Ratio - 1);
    }

    /// <summary>How much more power the burst has than rated: H² − 1; 58 % for 2 dB.</summary>
    /// <param name="H">Dynamic headroom, for example 2.dB; greater than 0.</param>
    /// <returns>The rise over the rated power, as a fraction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The headroom is not positive.</exception>
    [Formula("common practice, no source: decibels of power", Symbol = "d_P")]
    [RecordName("dynamic-headroom.power-rise")]
    public static Ratio PowerRise(Gain H)
    {
        Guard.Positive(H);
        return Ratio.FromDecimalFractions(H.Ratio * H.Ratio - 1);
    }
}
