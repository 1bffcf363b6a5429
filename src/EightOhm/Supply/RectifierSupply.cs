using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>One rail from one winding: full-wave rectifier, reservoir, load, in the time domain.</summary>
/// <remarks>
/// A sine behind a resistance, diodes that take a constant drop and a resistance, a reservoir with its series resistance. It also stands
/// for either of two equally loaded rails from a centre-tapped winding with one bridge: then give one half's emf and
/// <see cref="SourceResistance.OfRail"/>. No leakage inductance: real pulses are a little lower and longer.
/// </remarks>
public sealed partial class RectifierSupply
{
    /// <summary>Makes a supply.</summary>
    /// <param name="secondary">Emf of the winding, rms: its voltage without load; greater than 0 V. A nameplate's voltage is at full load: see <see cref="SourceResistance.NoLoad"/>.</param>
    /// <param name="mains">Mains frequency; greater than 0 Hz.</param>
    /// <param name="sourceResistance">Winding with the reflected primary and the wires; greater than 0 Ω.</param>
    /// <param name="drop">Of all diodes that conduct at once (two in a bridge on one winding, one a rail in a dual supply); 0 V or more, below the emf's peak.</param>
    /// <param name="reservoir">The reservoir; greater than 0 F.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public RectifierSupply(ElectricPotential secondary, Frequency mains, ElectricResistance sourceResistance, ElectricPotential drop, ElectricCapacitance reservoir)
    {
        Secondary = Guard.Positive(secondary, nameof(secondary));
        Mains = Guard.Positive(mains, nameof(mains));
        Resistance = Guard.Positive(sourceResistance, nameof(sourceResistance), "A real winding has some: a few percent of its voltage at its rated current.");
        Drop = Guard.Between(drop, default, secondary * Math.Sqrt(2), nameof(drop), "The diodes cannot take more than the peak of the winding.");
        Reservoir = Guard.Positive(reservoir, nameof(reservoir), "Without a reservoir there is no rail to speak of.");
    }

    /// <summary>Emf of the winding, rms.</summary>
    public ElectricPotential Secondary { get; }

    /// <summary>Mains frequency.</summary>
    public Frequency Mains { get; }

    /// <summary>Resistance of the source, the reflected primary included.</summary>
    public ElectricResistance Resistance { get; }

    /// <summary>Drop of the diodes in the path.</summary>
    public ElectricPotential Drop { get; }

    /// <summary>The reservoir.</summary>
    public ElectricCapacitance Reservoir { get; }

    /// <summary>Series resistance of the reservoir; 0 Ω or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is negative.</exception>
    public ElectricResistance CapacitorEsr { get; init => field = Guard.NotNegative(value, nameof(CapacitorEsr)); }

    /// <summary>Resistance of the diodes in the path, beside their drop; 0 Ω or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is negative.</exception>
    public ElectricResistance DiodeResistance { get; init => field = Guard.NotNegative(value, nameof(DiodeResistance)); }

    /// <summary>The rail and the winding when everything has settled.</summary>
    /// <remarks>
    /// Playing half-waves are solved as such where signal and mains share a period (20 Hz with 50 Hz, 1 kHz with 50 Hz); where
    /// they do not and the signal is above 500 Hz, by their mean current, and <see cref="SteadySupply.ByMeanCurrent"/> says so.
    /// </remarks>
    /// <param name="load">What the rail gives away.</param>
    /// <exception cref="ArgumentOutOfRangeException">The load is more than the winding can carry, or a low signal shares no period with the mains.</exception>
    /// <exception cref="InvalidOperationException">No steady state was found; the message gives the last state.</exception>
    public SteadySupply SteadyState(LoadCurrent load)
    {
        ArgumentNullException.ThrowIfNull(load);
        var halves = CommonPeriod.HalfCycles(Mains.Hertz, load.Signal.Hertz);
        var network = Network(halves > 0 ? load : load.AsMean());
        SupplySolver.RefuseOverload(network, load.Mean.Amperes, network.Own);
        var (figures, _, _) = SupplySolver.Solve(network, Math.Max(1, halves));
        return new SteadySupply(figures) { Secondary = Secondary, Supply = this, Load = load, ByMeanCurrent = halves == 0 };
    }

    internal RailNetwork Network(LoadCurrent load) => new()
    {
        Rails = 1,
        Peak = Secondary.Volts * Math.Sqrt(2),
        Omega = 2 * Math.PI * Mains.Hertz,
        Drop = Drop.Volts,
        Own = Resistance.Ohms + DiodeResistance.Ohms,
        Shared = 0,
        C = Reservoir.Farads,
        Esr = CapacitorEsr.Ohms,
        Load1 = load.OnRail(1),
        SignalOmega = 2 * Math.PI * load.Signal.Hertz,
        SignalPhase = load.Phase.Radians,
    };
}
