using System.Numerics;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Feedback;

/// <summary>A harmonic made after the gain, and what the loop leaves of it.</summary>
/// <param name="Number">2 for the second harmonic, and so on.</param>
/// <param name="Frequency">Its own frequency.</param>
/// <param name="Before">Without feedback, of the fundamental, at the same output.</param>
/// <param name="LoopGain">The loop gain at its own frequency.</param>
/// <param name="After">What is left: divided by |1 + T| there.</param>
public sealed record LoopHarmonic(
    [property: Symbol("n")] int Number,
    [property: Symbol("f_n")] Frequency Frequency,
    [property: Symbol("d_n")] Ratio Before,
    [property: Symbol("T_n")] Gain LoopGain,
    [property: Symbol("d_CLn")] Ratio After);

/// <summary>Harmonics made after the gain, each divided by the loop gain at its own frequency and not at the fundamental's.</summary>
/// <remarks>Errors at the summing node are not divided: <see cref="LoopErrors.AtSummingNode"/>. Near crossover |1 + T| may be below one, and the loop then raises a harmonic.</remarks>
public sealed record LoopHarmonics
{
    private LoopHarmonics(IReadOnlyList<LoopHarmonic> harmonics) => Harmonics = harmonics;

    /// <summary>The harmonics, the lowest first.</summary>
    public IReadOnlyList<LoopHarmonic> Harmonics { get; }

    /// <summary>All together before: the root of the sum of squares.</summary>
    [Symbol("d")]
    public Ratio Before => Whole(h => h.Before);

    /// <summary>All together that are left: the root of the sum of squares.</summary>
    [Symbol("d_CL")]
    public Ratio After => Whole(h => h.After);

    /// <summary>Divides harmonics by a loop.</summary>
    /// <param name="T">The loop gain, of a stable loop.</param>
    /// <param name="f">The fundamental; greater than 0 Hz.</param>
    /// <param name="harmonics">The second, third, fourth … of the fundamental, without feedback; 0 for one that is not there. Up to 1000.</param>
    /// <returns>Each harmonic before and after, and all together.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency or a harmonic is out of range.</exception>
    /// <exception cref="ArgumentException">There is no harmonic, or there are too many.</exception>
    /// <exception cref="InvalidOperationException">The loop is unstable, and divides nothing.</exception>
    [Worked("each harmonic over |1 + T| at its own frequency; together the root of the sum of squares")]
    public static LoopHarmonics Of(TransferFunction T, Frequency f, IReadOnlyList<Ratio> harmonics)
    {
        ArgumentNullException.ThrowIfNull(T);
        ArgumentNullException.ThrowIfNull(harmonics);
        Guard.Positive(f);
        if (harmonics.Count is 0 or > 1000)
            throw new ArgumentException($"Give from 1 to 1000 harmonics, beginning with the second (were {harmonics.Count}).", nameof(harmonics));
        if (!T.Sensitivity().IsStable)
            throw new InvalidOperationException($"This loop is {LoopStability.Of(T)}. It divides no harmonics.");
        return new([.. harmonics.Select((d, i) => One(T, f, i + 2, Guard.NotNegative(d, nameof(harmonics))))]);
    }

    private static LoopHarmonic One(TransferFunction T, Frequency f, int n, Ratio d)
    {
        var at = T.Value(n * f);
        return new(n, n * f, d, Gain.FromRatio(at.Magnitude), d / Complex.Abs(1 + at));
    }

    private Ratio Whole(Func<LoopHarmonic, Ratio> part) => Ratio.FromDecimalFractions(Math.Sqrt(Harmonics.Sum(h => part(h).DecimalFractions * part(h).DecimalFractions)));
}
