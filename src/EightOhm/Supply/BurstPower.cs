using EightOhm.Explaining;
using EightOhm.Quantities;
using EightOhm.Ratings;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>The largest unclipped burst of a length that a supply allows after long idle.</summary>
public sealed record BurstPower
{
    internal BurstPower(RailNetwork idle, ElectricResistance load, Duration length, ElectricPotential losses, int channels, Frequency signal)
    {
        double r = Guard.Positive(load, nameof(load)).Ohms, lost = Guard.NotNegative(losses, nameof(losses)).Volts, t = Guard.Positive(length, nameof(length)).Seconds;
        Guard.Positive(channels, nameof(channels));
        Guard.Between(t, 0.5 / Guard.Positive(signal, nameof(signal)).Hertz, 60, nameof(length), "A burst lasts from half a cycle of its signal to a minute.");
        Guard.Between(t * signal.Hertz, 0.5, SupplyBurst.MostCycles, "the cycles of the burst", "A shorter burst, or a lower signal, tells as much.");
        (Load, Length) = (load, length);
        var march = new BurstMarch(idle);
        var rail = 0.0;
        double Spare(double volts)
        {
            rail = double.PositiveInfinity;
            for (var k = 0; k < SupplyBurst.Moments; k++)
                rail = Math.Min(rail, march.Play(channels * volts / r, signal.Hertz, t, idle.Half * k / SupplyBurst.Moments).VoltageAtLoadPeak);
            return rail - lost - volts;
        }

        var top = march.IdleMean - lost;
        if (!(top > 0))
            throw Nothing(-top, march.IdleMean);
        if (Spare(top * 1e-3) is var least && !(least > 0))
            throw Nothing(-least, rail);
        if (!Brent.TryFindRoot(Spare, top * 1e-3, top * 1.05, 1e-6, 100, out var volts))
            throw new InvalidOperationException($"No burst was found whose peak leaves nothing of the rail: at {QuantityFormat.Short(ElectricPotential.FromVolts(top))} peak the rail spares {QuantityFormat.Short(ElectricPotential.FromVolts(Spare(top)))}.");
        Spare(volts);
        Peak = ElectricPotential.FromVolts(volts);
        Rail = ElectricPotential.FromVolts(rail);
        Power = Power.FromWatts(volts * volts / (2 * r));

        ShortfallException Nothing(double by, double rail) => new("The rail", ElectricPotential.FromVolts(Math.Max(by, 0)), $"it stands at {QuantityFormat.Short(ElectricPotential.FromVolts(rail))} and the losses of {QuantityFormat.Short(losses)} leave nothing for the load", "Raise the rail, or lower the losses.");
    }

    /// <summary>The burst's power in one channel, the average of its sine.</summary>
    [Symbol("P_burst")]
    public Power Power { get; }

    /// <summary>Its peak voltage.</summary>
    [Symbol("V_p")]
    public ElectricPotential Peak { get; }

    /// <summary>The lowest rail near the burst's peaks.</summary>
    [Symbol("V_own")]
    public ElectricPotential Rail { get; }

    /// <summary>The load.</summary>
    [Symbol("R_L")]
    public ElectricResistance Load { get; }

    /// <summary>How long the burst lasts.</summary>
    [Symbol("t_b")]
    public Duration Length { get; }

    /// <summary>Dynamic headroom over a rated power into the same load.</summary>
    /// <param name="rated">Rated continuous power of a channel; greater than 0 W.</param>
    /// <exception cref="ArgumentOutOfRangeException">The power is not positive.</exception>
    [Worked("DynamicHeadroom.Of the burst power over the rated power")]
    public Gain HeadroomOver(Power rated) => DynamicHeadroom.Of(Power, rated);
}
