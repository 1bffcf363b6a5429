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
    public static PeriodicHeat Sampled(IReadOnlyList<double> samples, Duration period)
    {
        ArgumentNullException.ThrowIfNull(samples);
        Guard.AtLeast(samples.Count, 2, "the number of samples");
        var n = samples.Count;
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
    /// <param name="on">How long; greater than 0 s.</param>
    /// <param name="off">How long the rest; greater than 0 s.</param>
    /// <param name="rest">The power of the rest, such as the idle heat; 0 W or more.</param>
    /// <param name="points">Instants in each of the two at which the temperature is told; 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static PeriodicHeat Bursts(Power P, Duration on, Duration off, Power rest = default, int points = 100)
    {
        double high = (double)Guard.Positive(P).Watts, low = (double)Guard.NotNegative(rest).Watts;
        double a = Guard.Positive(on).Seconds / Guard.Between(points, 1, 1 << 22), b = Guard.Positive(off).Seconds / points;
        var power = Enumerable.Range(0, 2 * points).Select(i => i < points ? high : low).ToArray();
        return new PeriodicHeat([.. power.Select((_, i) => i < points ? a : b)], power, power);
    }

    /// <summary>The heat of one transistor of a class-B stage that plays a sine into a resistive load: its half-wave, then nothing.</summary>
    /// <remarks>i·(V − v) with the load's current shared by the pairs; what the emitter resistors take is counted as the transistor's (the safe side); no bias.</remarks>
    /// <param name="V">One rail (not rail to rail), without ripple; greater than 0 V.</param>
    /// <param name="V_p">Peak output voltage (not rms); from 0 V to the rail.</param>
    /// <param name="R">Load, resistive; greater than 0 Ω.</param>
    /// <param name="n">Pairs in parallel; 1 or more.</param>
    /// <param name="f">Frequency of the sine; greater than 0 Hz.</param>
    /// <param name="samples">Samples in the period, a multiple of 4; 8 or more. The peak rise is right to about 10/samples².</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static PeriodicHeat ClassBSine(ElectricPotential V, ElectricPotential V_p, ElectricResistance R, int n, Frequency f, int samples = 2000)
    {
        double rail = Guard.Positive(V).Volts, peak = Guard.Between(V_p, default, V, hint: "The output cannot swing past its rail.").Volts;
        double load = Guard.Positive(R).Ohms, period = 1 / Guard.Positive(f).Hertz;
        Guard.Positive(n);
        Guard.Between(samples, 8, 1 << 24);
        if (samples % 4 != 0)
            Guard.Refuse(nameof(samples), samples, "a multiple of 4", "The half-wave's ends and its crest must fall on samples.");
        var volts = new double[samples];
        for (var i = 1; i < samples / 2; i++)
            volts[i] = peak * Math.Sin(2 * Math.PI * i / samples);
        return ClassB(V, volts, R, n, Duration.FromSeconds(period));
    }

    /// <summary>The heat of one transistor of a class-B stage that plays a piece of music over and over into a resistive load.</summary>
    /// <remarks>As <see cref="ClassBSine"/>; the transistor is of the side that gives positive outputs.</remarks>
    /// <param name="V">One rail (not rail to rail), without ripple; greater than 0 V.</param>
    /// <param name="volts">Output voltage in V at equal intervals, two samples or more; none beyond the rails.</param>
    /// <param name="R">Load, resistive; greater than 0 Ω.</param>
    /// <param name="n">Pairs in parallel; 1 or more.</param>
    /// <param name="length">How long the piece is; greater than 0 s.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static PeriodicHeat ClassB(ElectricPotential V, IReadOnlyList<double> volts, ElectricResistance R, int n, Duration length)
    {
        double rail = Guard.Positive(V).Volts, load = Guard.Positive(R).Ohms * Guard.Positive(n);
        ArgumentNullException.ThrowIfNull(volts);
        var power = new double[volts.Count];
        for (var i = 0; i < power.Length; i++)
        {
            var v = volts[i];
            if (!(Math.Abs(v) <= rail))
                Guard.Refuse($"sample {i + 1}", ElectricPotential.FromVolts(v), $"within ±{QuantityFormat.Short(V)}", "The output cannot swing past its rail: scale the piece, or clip it first.");
            power[i] = v > 0 ? (rail - v) * v / load : 0;
        }

        return Sampled(power, length);
    }
}
