using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>Whether a rectifier's diode survives the surge of a switch-on, by its peak and by its I²t.</summary>
public sealed record SurgeVerdict
{
    private SurgeVerdict(ElectricCurrent peak, ElectricCurrent allowed, JouleIntegral pulse, JouleIntegral rated) =>
        (Peak, AllowedPeak, Pulse, AllowedPulse) = (peak, allowed, pulse, rated);

    /// <summary>The surge's peak in a diode.</summary>
    [Symbol("I_s")]
    public ElectricCurrent Peak { get; }

    /// <summary>The peak allowed for a half-cycle of this mains: the rating brought to its length.</summary>
    [Symbol("I_FSM")]
    public ElectricCurrent AllowedPeak { get; }

    /// <summary>I²t of the surge's greatest half-cycle in a diode.</summary>
    [Symbol("W_s")]
    public JouleIntegral Pulse { get; }

    /// <summary>I²t of the rating.</summary>
    [Symbol("W_FSM")]
    public JouleIntegral AllowedPulse { get; }

    /// <summary>The larger share of the two ratings that the surge uses; 1 or less survives.</summary>
    [Symbol("u")]
    public double Use => Math.Max(Peak / AllowedPeak, Pulse.Si / AllowedPulse.Si);

    /// <summary>Whether both are within the rating.</summary>
    public bool Survives => Use <= 1;

    /// <summary>Judges a diode of a dual-rail supply at a switch-on.</summary>
    /// <param name="run">The switch-on, followed through time at the mains and the phase that count.</param>
    /// <param name="I_FSM">Rated surge of one diode, the peak of one half-sine; greater than 0 A.</param>
    /// <param name="t">The length of that half-sine, such as 8.3.ms; greater than 0 s.</param>
    /// <returns>The verdict, of the greater of both surges: the first charge, and the bypass of the limiter.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Worked("the greatest current and the greatest half-cycle's I²t of the followed switch-on, in a diode, held against the rating")]
    public static SurgeVerdict Judge(SoftStart run, ElectricCurrent I_FSM, Duration t)
    {
        ArgumentNullException.ThrowIfNull(run);
        var half = Duration.FromSeconds(0.5 / run.Mains.Hertz);
        return new(run.DiodePeak, DiodeSurge.AtLength(I_FSM, t, half), run.DiodePulse, DiodeSurge.RatedIntegral(I_FSM, t));
    }

    /// <summary>The verdict in words.</summary>
    public override string ToString() => Survives
        ? $"survives: {QuantityFormat.Short(Peak)} and {QuantityFormat.Short(Pulse)} where {QuantityFormat.Short(AllowedPeak)} and {QuantityFormat.Short(AllowedPulse)} are allowed"
        : $"does not survive: {QuantityFormat.Short(Peak)} and {QuantityFormat.Short(Pulse)} where {QuantityFormat.Short(AllowedPeak)} and {QuantityFormat.Short(AllowedPulse)} are allowed; limit the inrush more, or take a larger rectifier";
}
