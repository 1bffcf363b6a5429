using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>A supply that has idled long and is asked for a burst: how far the rail sags, and how it comes back.</summary>
/// <remarks>The burst begins at the zero of its sine and at the worst moment of the mains. Both rails of a dual supply play, each its own half.</remarks>
public sealed record SupplyBurst
{
    internal const int Moments = 10;
    internal const double MostCycles = 1e5;

    private readonly BurstMarch march;
    private readonly double begins;

    internal SupplyBurst(RailNetwork idle, ElectricCurrent peak, Frequency signal, Duration length)
    {
        (Peak, Signal, Length) = (Guard.Positive(peak, nameof(peak)), Guard.Positive(signal, nameof(signal)), Guard.Positive(length, nameof(length)));
        Guard.Between(length.Seconds, 0.5 / signal.Hertz, 60, nameof(length), "A burst lasts from half a cycle of its signal to a minute.");
        Guard.Between(length.Seconds * signal.Hertz, 0.5, MostCycles, "the cycles of the burst", "A shorter burst, or a lower signal, tells as much.");
        march = new BurstMarch(idle);
        var worst = (Lowest: double.PositiveInfinity, VoltageAtLoadPeak: double.PositiveInfinity, U1: 0.0, U2: 0.0);
        for (var k = 0; k < Moments; k++)
        {
            var moment = idle.Half * k / Moments;
            if (march.Play(peak.Amperes, signal.Hertz, length.Seconds, moment) is var played && played.VoltageAtLoadPeak < worst.VoltageAtLoadPeak)
                (worst, begins) = (played, moment);
        }

        if (!(worst.Lowest > 0))
            throw new ShortfallException("The rail", ElectricPotential.FromVolts(-worst.Lowest), $"a burst of {QuantityFormat.Short(peak)} peak over {QuantityFormat.Short(length)} would draw it {QuantityFormat.Short(ElectricPotential.FromVolts(-worst.Lowest))} below zero", "Take a larger reservoir, a shorter burst or a lower peak.");
        Idle = ElectricPotential.FromVolts(march.IdleMean);
        Lowest = ElectricPotential.FromVolts(worst.Lowest);
        VoltageAtLoadPeak = ElectricPotential.FromVolts(worst.VoltageAtLoadPeak);
        Recovery = Duration.FromSeconds(march.Recovery(begins, length.Seconds, worst.U1, worst.U2));
    }

    /// <summary>Peak of the half-waves.</summary>
    [Symbol("I_p")]
    public ElectricCurrent Peak { get; }

    /// <summary>Frequency of the burst.</summary>
    [Symbol("f")]
    public Frequency Signal { get; }

    /// <summary>How long it lasts.</summary>
    [Symbol("t_b")]
    public Duration Length { get; }

    /// <summary>Mean of the rail at idle.</summary>
    [Symbol("V_idle")]
    public ElectricPotential Idle { get; }

    /// <summary>The lowest rail of the whole burst.</summary>
    [Symbol("V_min")]
    public ElectricPotential Lowest { get; }

    /// <summary>The lowest rail while that rail is within 2 % of its own peak: what the burst can count on.</summary>
    [Symbol("V_own")]
    public ElectricPotential VoltageAtLoadPeak { get; }

    /// <summary>Time after the burst in which the valley of the ripple makes up all but 1/e of what it lost.</summary>
    [Symbol("tau")]
    public Duration Recovery { get; }

    /// <summary>The first rail over time, from 20 ms before the burst; the burst begins at zero.</summary>
    /// <param name="after">How long to watch after the burst; 0 s or more.</param>
    /// <param name="points">How many points; 2 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Worked("the solved rail at instants evenly spaced over the time")]
    public RailWaveform OverTime(Duration after, int points = 2001)
    {
        Guard.NotNegative(after);
        Guard.Between(points, 2, 1_000_000);
        return march.Waveform(Peak.Amperes, Signal.Hertz, Length.Seconds, begins, 0.02, after.Seconds, points);
    }
}
