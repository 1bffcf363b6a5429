using System.Numerics;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Samples;

/// <summary>A complex value over frequency: a gain, a loop gain, an impedance.</summary>
/// <remarks>A response that a circuit gives knows itself between its points too; one made from points is read between them straight in the logarithm of the
/// magnitude and in the phase, over the logarithm of the frequency. The phase is unwrapped: it has no jumps of 360°.</remarks>
/// <typeparam name="T">What the magnitude is: <see cref="Gain"/>, or <see cref="ElectricResistance"/> for an impedance.</typeparam>
public sealed partial class Response<T>
    where T : struct
{
    private static readonly QuantityKind Kind = QuantityKinds.Of(typeof(T));

    private readonly double[] hertz;
    private readonly Complex[] values;
    private readonly Func<double, Complex>? exact;
    private readonly Lazy<double[]> phases;

    /// <summary>A response from its points.</summary>
    /// <param name="frequencies">One or more, greater than 0 Hz, each above the one before.</param>
    /// <param name="values">As many complex values, finite; the magnitude in the unit in which its kind is kept (Ω).</param>
    /// <exception cref="ArgumentException">There are no points, or not as many of the one as of the other, or a value is not finite.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The frequencies do not rise.</exception>
    public Response(IReadOnlyList<Frequency> frequencies, IReadOnlyList<Complex> values)
        : this(Rising(frequencies), Taken(values), null)
    {
    }

    /// <summary>A response on arrays that are not copied, with what computes it between its points.</summary>
    internal Response(double[] hertz, Complex[] values, Func<double, Complex>? exact)
    {
        if (hertz.Length == 0 || hertz.Length != values.Length)
            throw new ArgumentException($"A response has one point or more, and as many values as frequencies (were {values.Length} and {hertz.Length}).", nameof(values));
        (this.hertz, this.values, this.exact) = (hertz, values, exact);
        phases = new(Unwrapped);
    }

    /// <summary>How many points.</summary>
    public int Count => hertz.Length;

    /// <summary>The frequencies, Hz.</summary>
    public IReadOnlyList<double> Hertz => hertz;

    /// <summary>The complex values.</summary>
    public IReadOnlyList<Complex> Values => values;

    /// <summary>The magnitude over frequency; of a gain it is shown in decibels too.</summary>
    public Curve<Frequency, T> Magnitude => new(hertz, [.. values.Select(Complex.Abs)]);

    /// <summary>The phase over frequency, without jumps.</summary>
    public Curve<Frequency, Angle> Phase => new(hertz, [.. phases.Value.Select(p => p * 180 / Math.PI)]);

    /// <summary>The magnitude in decibels, 20·log₁₀ of it, at each frequency.</summary>
    /// <exception cref="InvalidOperationException">A value is zero, which has no decibels.</exception>
    public IReadOnlyList<double> Decibels => [.. values.Select(v => Gain.FromRatio(Complex.Abs(v)).Decibels)];

    /// <summary>The complex value at a frequency.</summary>
    /// <param name="f">From the first to the last frequency.</param>
    /// <returns>The value there, its magnitude in the unit in which its kind is kept.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is outside the response.</exception>
    public Complex At(Frequency f) => Value(Inside(f));

    /// <summary>The magnitude at a frequency.</summary>
    /// <param name="f">From the first to the last frequency.</param>
    /// <returns>The magnitude there.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is outside the response.</exception>
    [Worked("the magnitude of the response: computed there, or read between its points")]
    public T MagnitudeAt(Frequency f) => Made(Complex.Abs(At(f)));

    /// <summary>The phase at a frequency, without jumps.</summary>
    /// <param name="f">From the first to the last frequency.</param>
    /// <returns>Degrees; below −180° where the phase has turned so far.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is outside the response.</exception>
    [Worked("the phase of the response, unwrapped from its first point")]
    public Angle PhaseAt(Frequency f) => Angle.FromRadians(PhaseOf(Inside(f)));

    /// <summary>The frequencies at which the magnitude passes a level.</summary>
    /// <param name="level">The level; greater than 0.</param>
    /// <returns>The frequencies, rising; none where it never does.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The level is not positive.</exception>
    public IReadOnlyList<Frequency> Crossings(T level) => [.. CrossingsOf(Positive(level)).Select(f => Frequency.FromHertz(f))];

    /// <summary>The next frequency above one at which the magnitude has changed by 3 dB (1/√2 of it, or √2 times it).</summary>
    /// <param name="f">Where the magnitude is taken that counts; within the response.</param>
    /// <returns>Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is outside the response.</exception>
    /// <exception cref="InvalidOperationException">Up to the last frequency it does not change by so much.</exception>
    [Worked("the next frequency at which the magnitude has changed by √2: the points, then halving the interval")]
    public Frequency UpperCorner(Frequency f) => Corner(f, up: true);

    /// <summary>The next frequency below one at which the magnitude has changed by 3 dB (1/√2 of it, or √2 times it).</summary>
    /// <param name="f">Where the magnitude is taken that counts; within the response.</param>
    /// <returns>Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is outside the response.</exception>
    /// <exception cref="InvalidOperationException">Down to the first frequency it does not change by so much.</exception>
    [Worked("the next frequency at which the magnitude has changed by √2: the points, then halving the interval")]
    public Frequency LowerCorner(Frequency f) => Corner(f, up: false);

    /// <summary>"response from 1 Hz to 100 MHz, 401 points".</summary>
    public override string ToString() =>
        $"response from {QuantityFormat.Short(Frequency.FromHertz(hertz[0]))} to {QuantityFormat.Short(Frequency.FromHertz(hertz[^1]))}, {Count} point{(Count == 1 ? "" : "s")}";

    private static T Made(double number) => (T)Kind.FromSi(number);

    private static double Positive(T level)
    {
        var number = Kind.ToSi(level);
        if (!(number > 0) || !double.IsFinite(number))
            Guard.Refuse(nameof(level), level, $"greater than {QuantityFormat.Short(Made(0))}", "A magnitude has no sign.");
        return number;
    }

    private static double[] Rising(IReadOnlyList<Frequency> frequencies)
    {
        ArgumentNullException.ThrowIfNull(frequencies);
        var hertz = new double[frequencies.Count];
        for (var i = 0; i < hertz.Length; i++)
        {
            hertz[i] = Guard.Positive(frequencies[i], $"frequency {i + 1}").Hertz;
            if (i > 0 && hertz[i] <= hertz[i - 1])
                Guard.Refuse($"frequency {i + 1}", frequencies[i], $"above the one before, {QuantityFormat.Short(frequencies[i - 1])}", "Give the frequencies in rising order, each once: Sweep.Log(20.Hz, 20.kHz).");
        }

        return hertz;
    }

    /// <summary>Frequencies as numbers: rising, each positive.</summary>
    internal static double[] Checked(IReadOnlyList<Frequency> frequencies) => frequencies is { Count: 0 }
        ? throw new ArgumentException("Give one frequency or more, for example Sweep.Log(20.Hz, 20.kHz).", nameof(frequencies))
        : Rising(frequencies);

    private static Complex[] Taken(IReadOnlyList<Complex> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        return values.All(Complex.IsFinite) ? [.. values] : throw new ArgumentException("A value of a response is not finite: find the division by zero that led to it.", nameof(values));
    }
}
