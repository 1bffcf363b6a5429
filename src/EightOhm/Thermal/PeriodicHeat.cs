using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>One period of a power that repeats for ever, straight between its corners.</summary>
public sealed class PeriodicHeat
{
    private PeriodicHeat(double[] lengths, double[] from, double[] to)
    {
        (Lengths, From, To) = (lengths, from, to);
        double period = 0, energy = 0;
        for (var i = 0; i < lengths.Length; i++)
        {
            period += lengths[i];
            energy += lengths[i] * (from[i] + to[i]) / 2;
        }

        (Period, Mean) = (Duration.FromSeconds(period), Power.FromWatts(energy / period));
        Peak = Power.FromWatts(Math.Max(from.Max(), to.Max()));
    }

    /// <summary>The period.</summary>
    [Explaining.Symbol("T")]
    public Duration Period { get; }

    /// <summary>The mean power.</summary>
    [Explaining.Symbol("P_avg")]
    public Power Mean { get; }

    /// <summary>The highest power.</summary>
    [Explaining.Symbol("P_p")]
    public Power Peak { get; }

    /// <summary>The lengths of the pieces, s, and the powers at their begins and ends, W.</summary>
    internal double[] Lengths { get; }

    internal double[] From { get; }

    internal double[] To { get; }

    /// <summary>A waveform sampled at equal intervals, straight from sample to sample and from the last one to the first.</summary>
    /// <param name="samples">The power, at least two samples of 0 W or more.</param>
    /// <param name="period">The period; greater than 0 s.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static PeriodicHeat Sampled(IReadOnlyList<Power> samples, Duration period)
    {
        ArgumentNullException.ThrowIfNull(samples);
        return Sampled([.. samples.Select(p => (double)p.Watts)], period);
    }

    /// <summary>The same from samples in W.</summary>
    internal static PeriodicHeat Sampled(double[] samples, Duration period)
    {
        Guard.AtLeast(samples.Length, 2, "the number of samples");
        var n = samples.Length;
        var step = Guard.Positive(period).Seconds / n;
        var lengths = new double[n];
        var from = new double[n];
        var to = new double[n];
        for (var i = 0; i < n; i++)
        {
            lengths[i] = step;
            from[i] = Guard.NotNegative(samples[i], $"sample {i + 1} in W", "A transistor makes heat; it takes none up.");
            to[(i + n - 1) % n] = from[i];
        }

        return new PeriodicHeat(lengths, from, to);
    }

    /// <summary>A power that is on for a while, off for a while, and so on: bursts.</summary>
    /// <param name="P">While on; greater than 0 W.</param>
    /// <param name="on">How long it is on; greater than 0 s.</param>
    /// <param name="duty">Its share of the period, on over on and off; between 0 % and 100 %.</param>
    /// <param name="rest">The power of the rest, such as the idle dissipation; 0 W or more.</param>
    /// <param name="points">Instants in each of the two at which the temperature is told; 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static PeriodicHeat Bursts(Power P, Duration on, Ratio duty, Power rest = default, int points = 100)
    {
        double high = (double)Guard.Positive(P).Watts, low = (double)Guard.NotNegative(rest).Watts;
        var share = Guard.Positive(duty).DecimalFractions;
        if (!(share < 1))
            Guard.Refuse(nameof(duty), duty, "below 100 %", "A power that is always on is a steady one: HeatPath.Junction.");
        double a = Guard.Positive(on).Seconds / Guard.Between(points, 1, 1 << 22), b = a * (1 - share) / share;
        var power = Enumerable.Range(0, 2 * points).Select(i => i < points ? high : low).ToArray();
        return new PeriodicHeat([.. power.Select((_, i) => i < points ? a : b)], power, power);
    }
}
