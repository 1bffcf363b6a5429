using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>The band in which the idle current of one output transistor may be: over warm-up and spread of the bias spreader.</summary>
/// <param name="Least">The least.</param>
/// <param name="Nominal">As it is set.</param>
/// <param name="Greatest">The greatest.</param>
/// <example><code>var band = IdleBand.Of(tracking.Follow(3600.s, music), BiasDrift.SpreaderError(m, 5.mV, 2), V_T);
/// window.Holds(band.Least, band.Greatest)</code></example>
public sealed record IdleBand(
    [property: Symbol("I_min")] ElectricCurrent Least,
    [property: Symbol("I_q")] ElectricCurrent Nominal,
    [property: Symbol("I_max")] ElectricCurrent Greatest)
{
    /// <summary>The band about one current, for an error of the bias either way.</summary>
    /// <param name="I_q">The current without error; greater than 0 A.</param>
    /// <param name="R">All resistance in series with a junction: R_E and the transistor's own; 0 Ω or more.</param>
    /// <param name="V_T">Thermal voltage of the junctions; greater than 0 V.</param>
    /// <param name="V_d">The error of one junction's share of the bias voltage, either way; 0 V or more. Errors of one kind add, of several independent kinds too for a promise.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="InvalidOperationException">No current was found.</exception>
    [Worked("the idle current with the error either way, each by BiasDrift.Current")]
    public static IdleBand Of(ElectricCurrent I_q, ElectricResistance R, ElectricPotential V_T, ElectricPotential V_d)
    {
        Guard.NotNegative(V_d);
        return new(BiasDrift.Current(-V_d, I_q, R, V_T), I_q, BiasDrift.Current(V_d, I_q, R, V_T));
    }

    /// <summary>The band of a warm-up, widened by an error of the bias at its least and its greatest current.</summary>
    /// <param name="run">The idle current followed through time.</param>
    /// <param name="V_d">The error of one junction's share of the bias voltage, either way; 0 V or more.</param>
    /// <param name="V_T">Thermal voltage of the junctions; greater than 0 V.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or the stage ran away.</exception>
    /// <exception cref="InvalidOperationException">No current was found.</exception>
    [Worked("the least and the greatest current of the run, the error put on each by BiasDrift.Current")]
    public static IdleBand Of(BiasOverTime run, ElectricPotential V_d, ElectricPotential V_T)
    {
        ArgumentNullException.ThrowIfNull(run);
        Guard.NotNegative(V_d);
        if (run.RanAwayAt is { } when)
            Guard.Refuse(nameof(run), when, "a run that does not run away", "A bias that runs away has no band: couple the sensor better, or take larger emitter resistors.");
        return new(BiasDrift.Current(-V_d, run.Least, run.Of.Resistance, V_T), run.Of.IdleCurrent, BiasDrift.Current(V_d, run.Greatest, run.Of.Resistance, V_T));
    }

    /// <inheritdoc/>
    public override string ToString() => $"from {QuantityFormat.Short(Least)} to {QuantityFormat.Short(Greatest)} about {QuantityFormat.Short(Nominal)} a transistor";
}
