using EightOhm.Explaining;
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
    /// <param name="secondary">Emf of the winding, rms: its voltage without load; greater than 0 V. A nameplate's voltage is at full load: see <see cref="Transformer.NoLoadVoltage"/>.</param>
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

    /// <summary>Makes a supply whose diodes follow the exponential law.</summary>
    /// <param name="secondary">Emf of the winding, rms; greater than 0 V.</param>
    /// <param name="mains">Mains frequency; greater than 0 Hz.</param>
    /// <param name="sourceResistance">Winding with the reflected primary and the wires; greater than 0 Ω.</param>
    /// <param name="diode">All diodes that conduct at once.</param>
    /// <param name="reservoir">The reservoir; greater than 0 F.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public RectifierSupply(ElectricPotential secondary, Frequency mains, ElectricResistance sourceResistance, ExponentialDiode diode, ElectricCapacitance reservoir)
        : this(secondary, mains, sourceResistance, default(ElectricPotential), reservoir) =>
        Diode = diode ?? throw new ArgumentNullException(nameof(diode));

    /// <summary>Emf of the winding, rms.</summary>
    public ElectricPotential Secondary { get; }

    /// <summary>The diodes by the exponential law; null when they take a constant drop.</summary>
    public ExponentialDiode? Diode { get; }

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
    /// <exception cref="ArgumentOutOfRangeException">A low signal shares no period with the mains.</exception>
    /// <exception cref="ShortfallException">The load is more than the winding can carry, or would draw the rail below zero.</exception>
    /// <exception cref="InvalidOperationException">No steady state was found; the message gives the last state.</exception>
    [Worked("the reservoir's differential equation marched in closed pieces until a period repeats itself")]
    public SteadySupply SteadyState(RailCurrent load)
    {
        ArgumentNullException.ThrowIfNull(load);
        var (network, halves, byMean) = Settling(load);
        var figures = Diode is null ? SupplySolver.Solve(network, halves).First : ExponentialSolver.Solve(network, Diode, halves);
        return new SteadySupply(figures) { Secondary = Secondary, Supply = this, Load = load, ByMeanCurrent = byMean };
    }

    /// <summary>The lowest that the rail gets while it carries its own peak, over all phases between mains and signal.</summary>
    /// <remarks>Signal and mains drift through all phases sooner or later: this is the rail to count on.</remarks>
    /// <param name="load">The half-waves that the rail carries.</param>
    /// <param name="phases">How many phases to try over a half-cycle of the mains; 8 or more.</param>
    /// <inheritdoc cref="SteadyState(RailCurrent)"/>
    [Worked("the settled supply solved at each phase between mains and signal, the lowest of them")]
    public ElectricPotential LowestVoltageAtLoadPeak(RailCurrent load, int phases = 40)
    {
        ArgumentNullException.ThrowIfNull(load);
        Guard.Between(phases, 8, 10_000);
        return PhaseScan.Lowest(Mains, load, phases, l =>
        {
            var (network, halves, _) = Settling(l);
            return Diode is null ? SupplySolver.LowestAtLoadPeak(network, halves) : ExponentialSolver.Solve(network, Diode, halves).VoltageAtLoadPeak.Volts;
        });
    }

    /// <summary>A burst after long idle.</summary>
    /// <param name="idle">What the rail gives away at idle.</param>
    /// <param name="peak">Peak of the burst's half-waves on the rail, all channels together; greater than 0 A.</param>
    /// <param name="length">How long it lasts, at least half a cycle; such as 20.ms.</param>
    /// <param name="signal">Frequency of the burst; such as 1.kHz.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="ShortfallException">The burst empties the reservoir, or the rail does not recover.</exception>
    /// <exception cref="InvalidOperationException">No steady state was found at idle.</exception>
    [Worked("the reservoir's differential equation marched from the settled idle through the burst")]
    public SupplyBurst Burst(ElectricCurrent idle, ElectricCurrent peak, Duration length, Frequency signal) => new(Idling(idle), peak, signal, length);

    /// <summary>The largest unclipped burst after long idle.</summary>
    /// <param name="idle">What the rail gives away at idle.</param>
    /// <param name="load">The load of one channel, resistive; greater than 0 Ω.</param>
    /// <param name="length">How long it lasts, at least half a cycle; such as 20.ms.</param>
    /// <param name="losses">What must stay between rail and output at the peak: the voltage-swing budget's losses; 0 V or more.</param>
    /// <param name="channels">How many channels play the burst at once; 1 or more.</param>
    /// <param name="signal">Frequency of the burst; such as 1.kHz.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="InvalidOperationException">No such burst was found.</exception>
    [Worked("the peak voltage at which the burst just clips: a bracketed root search over solved bursts")]
    public BurstPower LargestBurst(ElectricCurrent idle, ElectricResistance load, Duration length, ElectricPotential losses, int channels, Frequency signal) =>
        new(Idling(idle), load, length, losses, channels, signal);

    /// <summary>The same supply at another mains: the emf goes with it, the copper and the diodes stay.</summary>
    /// <param name="deviation">Mains over nominal, less one: 10.percent for high mains, (−10).percent for low; above −100 %.</param>
    /// <returns>A supply whose emf is that of this one times 1 + deviation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mains is not positive, or the winding's peak falls below the drop.</exception>
    public RectifierSupply AtMains(Ratio deviation)
    {
        var emf = MainsDeviation.Factor(deviation) * Secondary;
        return Diode is { } diode
            ? new(emf, Mains, Resistance, diode, Reservoir) { CapacitorEsr = CapacitorEsr, DiodeResistance = DiodeResistance }
            : new(emf, Mains, Resistance, Drop, Reservoir) { CapacitorEsr = CapacitorEsr, DiodeResistance = DiodeResistance };
    }

    // What is to be solved, over how many half-cycles of the mains, and whether by the mean current.
    private (RailNetwork Network, int HalfCycles, bool ByMean) Settling(RailCurrent load)
    {
        var halves = CommonPeriod.HalfCycles(Mains.Hertz, load.Signal.Hertz);
        var network = Network(halves > 0 ? load : load.AsMean());
        SupplySolver.Feeds(network, load.Mean.Amperes, network.Own);
        return (network, Math.Max(1, halves), halves == 0);
    }

    // Exponential diodes are for the steady state; a burst takes a constant drop.
    private RailNetwork Idling(ElectricCurrent idle)
    {
        if (Diode is not null)
            throw new InvalidOperationException("A burst is solved for diodes of a constant drop: make the supply with a drop, such as that of the diodes at the charging peak.");
        var at = RailCurrent.Constant(Guard.NotNegative(idle, nameof(idle)));
        var network = Network(at);
        SupplySolver.Feeds(network, idle.Amperes, network.Own + network.Shared);
        return network;
    }

    internal RailNetwork Network(RailCurrent load) => new()
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
