using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Samples;

/// <summary>A quantity over time, sampled.</summary>
/// <typeparam name="T">The quantity.</typeparam>
public sealed class Waveform<T> : Curve<Duration, T>
    where T : struct
{
    /// <summary>A waveform from values at equal intervals, the first at 0 s.</summary>
    /// <param name="values">One or more.</param>
    /// <param name="interval">From one to the next; greater than 0 s.</param>
    /// <exception cref="ArgumentOutOfRangeException">The interval is not positive.</exception>
    /// <exception cref="ArgumentException">There is no value.</exception>
    public Waveform(IReadOnlyList<T> values, Duration interval)
        : base(Instants(values, interval), [.. values.Select(v => QuantityKinds.Of(typeof(T)).ToSi(v))])
    {
    }

    /// <summary>A waveform on arrays that are not copied: instants in s, values in the kind's own unit.</summary>
    internal Waveform(double[] seconds, double[] values)
        : base(seconds, values)
    {
    }

    /// <summary>The instants, s.</summary>
    public IReadOnlyList<double> Seconds => X;

    /// <summary>When the last value stands.</summary>
    public Duration End => Last;

    private static double[] Instants(IReadOnlyList<T> values, Duration interval)
    {
        ArgumentNullException.ThrowIfNull(values);
        var step = Guard.Positive(interval).Seconds;
        return [.. Enumerable.Range(0, values.Count).Select(i => step * i)];
    }
}
