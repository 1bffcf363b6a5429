using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>A dual-rail supply as it is when the switch closes: what <see cref="SoftStart"/> follows and <see cref="InrushPeaks"/> bounds.</summary>
public sealed record SwitchOn
{
    /// <summary>Describes a supply.</summary>
    /// <param name="line">Mains, rms; greater than 0 V.</param>
    /// <param name="mains">Mains frequency; greater than 0 Hz.</param>
    /// <param name="halfWinding">One half of the secondary without load, rms; greater than 0 V.</param>
    /// <param name="reservoir">Capacitance of one rail; greater than 0 F.</param>
    /// <param name="primary">Resistance of the primary and of the mains before it; greater than 0 Ω.</param>
    /// <param name="halfResistance">Resistance of one half of the secondary, with diode and ESR; greater than 0 Ω.</param>
    /// <param name="diode">Drop of one diode while charging; 0 V or more, below the peak of the winding.</param>
    /// <param name="limiter">The limiter; <see cref="InrushLimiter.None"/> for none.</param>
    /// <param name="bypass">When the limiter is bypassed; greater than 0 s, at most 60 s.</param>
    /// <param name="idle">What each rail feeds meanwhile; 0 A or more. None unless given.</param>
    /// <param name="closes">Where in the mains period the switch closes, 90.deg at the peak of the mains; the peak of the mains unless given.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public SwitchOn(
        ElectricPotential line,
        Frequency mains,
        ElectricPotential halfWinding,
        ElectricCapacitance reservoir,
        ElectricResistance primary,
        ElectricResistance halfResistance,
        ElectricPotential diode,
        InrushLimiter limiter,
        Duration bypass,
        ElectricCurrent idle = default,
        Angle? closes = null)
    {
        Line = Guard.Positive(line);
        Mains = Guard.Positive(mains);
        HalfWinding = Guard.Positive(halfWinding);
        Reservoir = Guard.Positive(reservoir);
        Primary = Guard.Positive(primary, hint: "Without any resistance the peak has no bound; give the winding and the mains before it.");
        HalfResistance = Guard.Positive(halfResistance);
        Diode = Guard.NotNegative(diode);
        Guard.Positive(Math.Sqrt(2) * HalfWinding - diode, nameof(halfWinding), "The peak of the winding must be above the diode's drop.");
        ArgumentNullException.ThrowIfNull(limiter);
        Limiter = limiter;
        Bypass = Guard.Between(Guard.Positive(bypass), default, Duration.FromSeconds(60));
        Idle = Guard.NotNegative(idle);
        Closes = closes ?? Angle.FromDegrees(90);
    }

    /// <summary>Mains, rms.</summary>
    public ElectricPotential Line { get; }

    /// <summary>Mains frequency.</summary>
    public Frequency Mains { get; }

    /// <summary>One half of the secondary without load, rms.</summary>
    public ElectricPotential HalfWinding { get; }

    /// <summary>Capacitance of one rail.</summary>
    public ElectricCapacitance Reservoir { get; }

    /// <summary>Resistance of the primary and of the mains before it.</summary>
    public ElectricResistance Primary { get; }

    /// <summary>Resistance of one half of the secondary.</summary>
    public ElectricResistance HalfResistance { get; }

    /// <summary>Drop of one diode.</summary>
    public ElectricPotential Diode { get; }

    /// <summary>The limiter.</summary>
    public InrushLimiter Limiter { get; }

    /// <summary>When the limiter is bypassed.</summary>
    public Duration Bypass { get; }

    /// <summary>What each rail feeds meanwhile.</summary>
    public ElectricCurrent Idle { get; }

    /// <summary>Where in the mains period the switch closes.</summary>
    public Angle Closes { get; }

    /// <summary>Primary turns over those of one half of the secondary.</summary>
    public double Turns => Line / HalfWinding;

    /// <summary>The same supply at another mains: line and emf go with it, copper, diodes, limiter and what is fed meanwhile stay.</summary>
    /// <param name="deviation">Mains over nominal, less one: 10.percent for high mains, (−10).percent for low; above −100 %.</param>
    /// <returns>A switch-on at that mains.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mains is not positive, or the winding's peak falls below the drop.</exception>
    public SwitchOn AtMains(Ratio deviation)
    {
        var m = MainsDeviation.Factor(deviation);
        return new(m * Line, Mains, m * HalfWinding, Reservoir, Primary, HalfResistance, Diode, Limiter, Bypass, Idle, Closes);
    }

    /// <summary>The same supply without its limiter.</summary>
    public SwitchOn Unlimited() => new(Line, Mains, HalfWinding, Reservoir, Primary, HalfResistance, Diode, InrushLimiter.None, Bypass, Idle, Closes);

    /// <summary>The same supply with another limiter, and bypassed at another time.</summary>
    /// <param name="limiter">The limiter.</param>
    /// <param name="bypass">When it is bypassed; greater than 0 s, at most 60 s; as before when not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time is out of range.</exception>
    public SwitchOn With(InrushLimiter limiter, Duration? bypass = null) => new(Line, Mains, HalfWinding, Reservoir, Primary, HalfResistance, Diode, limiter, bypass ?? Bypass, Idle, Closes);
}
