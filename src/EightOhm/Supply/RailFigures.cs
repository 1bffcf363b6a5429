using EightOhm.Explaining;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>One rail in its periodic steady state.</summary>
/// <remarks>Currents through the rail's diodes, which is the winding's current where one winding serves one rail.</remarks>
public record RailFigures
{
    internal RailFigures()
    {
    }

    /// <summary>Mean of the rail.</summary>
    [Symbol("V_dc")]
    public ElectricPotential Mean { get; internal init; }

    /// <summary>The lowest that the rail gets: what an amplifier has to live with.</summary>
    [Symbol("V_min")]
    public ElectricPotential Minimum { get; internal init; }

    /// <summary>The highest that the rail gets.</summary>
    [Symbol("V_max")]
    public ElectricPotential Maximum { get; internal init; }

    /// <summary>Ripple, peak to peak: maximum less minimum.</summary>
    [Symbol("V_r")]
    public ElectricPotential Ripple => Maximum - Minimum;

    /// <summary>The lowest rail while the load is within 2 % of its own peak; the minimum for a load that has no peak.</summary>
    [Symbol("V_own")]
    public ElectricPotential VoltageAtLoadPeak { get; internal init; }

    /// <summary>Mean of the load current, and so of the winding current after rectification.</summary>
    [Symbol("I_dc")]
    public ElectricCurrent LoadMean { get; internal init; }

    /// <summary>The charging current, rms.</summary>
    [Symbol("I_rms")]
    public ElectricCurrent WindingRms { get; internal init; }

    /// <summary>The charging current's peak.</summary>
    [Symbol("I_pk")]
    public ElectricCurrent WindingPeak { get; internal init; }

    /// <summary>Rms over dc: how much more the winding is heated than the load current would.</summary>
    public double RmsOverDc => LoadMean.Amperes > 0 ? WindingRms / LoadMean : 0;

    /// <summary>The part of a half-cycle, of 180°, in which the rail is charged; the mean over the period's half-cycles.</summary>
    [Symbol("theta_c")]
    public Angle ConductionAngle { get; internal init; }

    /// <summary>The reservoir's ripple current, rms.</summary>
    [Symbol("I_C")]
    public ElectricCurrent CapacitorRipple { get; internal init; }

    internal IRailSolution Solution { get; init; } = null!;

    /// <summary>The rail's waveform over one cycle of the mains, or over the period that signal and mains share when that is longer.</summary>
    /// <param name="points">How many points; 2 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than two points.</exception>
    [Worked("the solved rail at instants evenly spaced over one cycle")]
    public RailWaveform OverOneCycle(int points = 801) => Solution.Waveform(points);
}
