using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Ratings;

/// <summary>Peak, rms and their ratio, the crest factor.</summary>
public static partial class Crest
{
    /// <summary>The crest factor of a waveform: peak over rms; √2 (3.01 dB) for a sine, never below 1.</summary>
    /// <param name="V_pk">Peak voltage; not less than the rms.</param>
    /// <param name="V_rms">Rms voltage; greater than 0 V.</param>
    /// <returns>The crest factor, at least 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The rms is not positive, or above the peak.</exception>
    /// <example><code>Crest.Factor(40.V, 28.284271.V)   // 1.414</code></example>
    [Formula("C. K. Alexander & M. N. O. Sadiku, Fundamentals of Electric Circuits, 5th ed., ch. 11: peak and effective value", Symbol = "C_f")]
    [RecordName("crest.factor")]
    public static Gain Factor(ElectricPotential V_pk, ElectricPotential V_rms)
    {
        Guard.Positive(V_rms);
        Guard.Between(V_rms, 0.V, V_pk, hint: "No waveform has an rms above its peak; were the two exchanged, or the peak taken for peak to peak?");
        return Gain.FromRatio(V_pk / V_rms);
    }

    /// <summary>The peak of a waveform from its rms: C_f·V_rms.</summary>
    /// <param name="V_rms">Rms voltage; 0 V or more.</param>
    /// <param name="C_f">Crest factor; 1 (0 dB) or more.</param>
    /// <returns>The voltage, peak, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("C. K. Alexander & M. N. O. Sadiku, Fundamentals of Electric Circuits, 5th ed., ch. 11: peak and effective value", Symbol = "V_pk")]
    [RecordName("crest.peak")]
    public static ElectricPotential Peak(ElectricPotential V_rms, Gain C_f)
    {
        Guard.NotNegative(V_rms);
        Guard.Between(C_f, 1.ratio, 1e6.ratio);
        return V_rms * C_f;
    }

    /// <summary>The rms of a waveform from its peak: V_pk/C_f.</summary>
    /// <param name="V_pk">Peak voltage; 0 V or more.</param>
    /// <param name="C_f">Crest factor; 1 (0 dB) or more.</param>
    /// <returns>The voltage, rms, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("C. K. Alexander & M. N. O. Sadiku, Fundamentals of Electric Circuits, 5th ed., ch. 11: peak and effective value", Symbol = "V_rms")]
    [RecordName("crest.rms")]
    public static ElectricPotential Rms(ElectricPotential V_pk, Gain C_f)
    {
        Guard.NotNegative(V_pk);
        Guard.Between(C_f, 1.ratio, 1e6.ratio);
        return V_pk / C_f;
    }

    /// <summary>The crest factor of a sine: √2, 3.01 dB.</summary>
    [Formula("C. K. Alexander & M. N. O. Sadiku, Fundamentals of Electric Circuits, 5th ed., ch. 11: effective value of a sine", Symbol = "C_sine")]
    [RecordName("crest.of-sine")]
    public static Gain OfSine => Gain.FromRatio(Sqrt(2));
}
