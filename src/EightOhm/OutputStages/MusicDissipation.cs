using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.OutputStages;

/// <summary>Music duty: the heat of an ideal class-B stage while a programme gives the load a mean power, by a sine and by Gaussian noise.</summary>
/// <remarks>The same power by another waveform is another heat: a class-B stage draws the mean of |i|, which is 0.900 of the rms for a sine and 0.798
/// for Gaussian noise. With emitter resistors, bias and sag: <see cref="StageDissipation.Sine"/> and <see cref="StageDissipation.Noise"/>.</remarks>
public static partial class MusicDissipation
{
    // Peaks at three times the rms: a Gaussian is beyond them 0.27 % of the time, and its mean |i| 0.1 % too high without the clipping.
    internal const double LeastRoom = 3;
    internal const string Clips = "Peaks above full swing would clip so often that the programme is no longer Gaussian: full swing must be 3 times the rms or more.";

    private const string Average = "C. K. Alexander & M. N. O. Sadiku, Fundamentals of Electric Circuits, 5th ed., ch. 11: average power";

    /// <summary>The rms current behind a power in a load with a phase: √(P/(Z·cos φ)).</summary>
    /// <param name="P">The load's mean power; 0 W or more.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −89.9° to 89.9°: a reactance takes no power.</param>
    /// <returns>The current, rms, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Average, Symbol = "I_rms")]
    [RecordName("music-dissipation.rms-current")]
    public static ElectricCurrent RmsCurrent(Power P, ElectricResistance Z, Angle phi)
    {
        Guard.NotNegative(P);
        Guard.Positive(Z);
        Guard.Between(phi, -89.9.deg, 89.9.deg, hint: "A pure reactance takes no power, and no current can be told from it.");
        return Sqrt(P / (Z * Cos(phi)));
    }

    /// <summary>Heat of both sides while a sine gives the load the power P: 2·√2/π·V·I_rms − P.</summary>
    /// <param name="V">One rail (not rail to rail) at that level; at least the peak.</param>
    /// <param name="P">The load's power; 0 W or more.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −89.9° to 89.9°.</param>
    /// <returns>The power dissipation of both sides together, average, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14: supply less load", Symbol = "P_D")]
    [RecordName("music-dissipation.sine-heat")]
    public static Power SineHeat(ElectricPotential V, Power P, ElectricResistance Z, Angle phi)
    {
        var I_rms = RmsCurrent(P, Z, phi);
        Guard.Between(V, I_rms * Z * Math.Sqrt(2), ElectricPotential.FromVolts(1e6), hint: "The rail must hold the sine's peak.");
        return 2 * Sqrt(2.0) / pi * (V * I_rms) - P;
    }

    /// <summary>Heat of both sides while Gaussian noise gives the load the power P: √(2/π)·V·I_rms − P.</summary>
    /// <remarks>The rail must be 3 times the rms or more, so that clipping is negligible (beyond: 0.27 % of the time, 0.1 % of the mean current). A
    /// level that varies heats less at the same mean power: the supply's part goes with the mean of the rms, which is below its root mean square.</remarks>
    /// <param name="V">One rail (not rail to rail) at that level; at least 3 times the rms.</param>
    /// <param name="P">The load's mean power; 0 W or more.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −89.9° to 89.9°.</param>
    /// <returns>The power dissipation of both sides together, average, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("derived: V times the mean of |i|, which is √(2/π) of a Gaussian's rms (A. Papoulis, Probability, Random Variables and Stochastic Processes, 3rd ed., ch. 5), less the load's power", Symbol = "P_D")]
    [RecordName("music-dissipation.noise-heat")]
    public static Power NoiseHeat(ElectricPotential V, Power P, ElectricResistance Z, Angle phi)
    {
        var I_rms = RmsCurrent(P, Z, phi);
        Guard.Between(V, I_rms * Z * LeastRoom, ElectricPotential.FromVolts(1e6), hint: Clips);
        return Sqrt(2 / pi) * (V * I_rms) - P;
    }

    /// <summary>The mean power of a programme whose peaks just reach those of the rated sine: 2·P_rated/C_f². An eighth for a crest factor of 4 (12 dB).</summary>
    /// <param name="P_rated">Rated power by a sine; 0 W or more.</param>
    /// <param name="C_f">Crest factor of the programme: peak over rms; 1 (0 dB) or more.</param>
    /// <returns>The power of the programme, average, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>MusicDissipation.PowerOf(100.W, 12.dB)   // 12.62 W</code></example>
    [Formula(Average + "; peak and effective value", Symbol = "P")]
    [RecordName("music-dissipation.power-of")]
    public static Power PowerOf(Power P_rated, Gain C_f)
    {
        Guard.NotNegative(P_rated);
        Guard.Between(C_f, 1.ratio, 1e6.ratio, hint: "No waveform has an rms above its peak.");
        return 2 * P_rated / (C_f.Ratio * C_f.Ratio);
    }

    /// <summary>The crest factor that a programme of mean power P may have before it clips: √(2·P_rated/P).</summary>
    /// <param name="P_rated">Rated power by a sine; greater than 0 W.</param>
    /// <param name="P">Mean power of the programme; greater than 0 W, at most twice the rated (a square wave).</param>
    /// <returns>The crest factor, peak over rms.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Average + "; peak and effective value", Symbol = "C_f")]
    [RecordName("music-dissipation.crest-factor")]
    public static Gain CrestFactor(Power P_rated, Power P)
    {
        Guard.Positive(P_rated);
        Guard.Positive(P);
        Guard.Between(P, default, 2 * P_rated, hint: "More than a square wave of the rated peak is not to be had.");
        return Gain.FromRatio(Sqrt((double)(2 * P_rated / P)));
    }

    /// <summary>The share of time that a Gaussian programme spends beyond a crest factor: erfc(C_f/√2).</summary>
    /// <param name="C_f">Crest factor that the swing allows; greater than 0.</param>
    /// <returns>The share of the time, 0 to 1, as a fraction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The crest factor is not positive.</exception>
    [Formula("A. Papoulis, Probability, Random Variables and Stochastic Processes, 3rd ed., ch. 4: the error function", Symbol = "d")]
    [RecordName("music-dissipation.clipped-share")]
    public static Ratio ClippedShare(Gain C_f)
    {
        Guard.Positive(C_f);
        return Ratio.FromDecimalFractions(Erfc(C_f.Ratio / Sqrt(2.0)));
    }
}
