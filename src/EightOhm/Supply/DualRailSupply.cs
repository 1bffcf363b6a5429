using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>Two rails from a centre-tapped winding with one bridge, in the time domain, each rail with a load of its own.</summary>
/// <remarks>
/// In every half-cycle one half-winding charges the positive rail and the other the negative one, so each rail is a full-wave
/// supply and each half conducts in every half-cycle. Both currents flow in the primary, whose reflected resistance couples the rails.
/// </remarks>
public sealed partial class DualRailSupply
{
    /// <summary>Makes a supply.</summary>
    /// <param name="half">Emf of one half-winding, rms: its voltage without load; greater than 0 V.</param>
    /// <param name="mains">Mains frequency; greater than 0 Hz.</param>
    /// <param name="halfResistance">Of one half-winding alone, with its wires; greater than 0 Ω.</param>
    /// <param name="sharedResistance">The primary as it appears in the common path of both currents; 0 Ω or more.</param>
    /// <param name="drop">Of the one diode in a rail's path; 0 V or more, below the emf's peak.</param>
    /// <param name="reservoir">On each rail; greater than 0 F.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public DualRailSupply(ElectricPotential half, Frequency mains, ElectricResistance halfResistance, ElectricResistance sharedResistance, ElectricPotential drop, ElectricCapacitance reservoir)
    {
        Half = Guard.Positive(half, nameof(half));
        Mains = Guard.Positive(mains, nameof(mains));
        HalfResistance = Guard.Positive(halfResistance, nameof(halfResistance), "A real winding has some: half of SourceResistance.OfRail.");
        SharedResistance = Guard.NotNegative(sharedResistance, nameof(sharedResistance));
        Drop = Guard.Between(drop, default, half * Math.Sqrt(2), nameof(drop), "A diode cannot take more than the peak of the winding.");
        Reservoir = Guard.Positive(reservoir, nameof(reservoir), "Without a reservoir there is no rail to speak of.");
    }

    /// <summary>Makes a supply from a transformer's nameplate.</summary>
    /// <param name="winding">The nameplate.</param>
    /// <param name="mains">Mains frequency; greater than 0 Hz.</param>
    /// <param name="drop">Of the one diode in a rail's path.</param>
    /// <param name="reservoir">On each rail; greater than 0 F.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public DualRailSupply(DualWinding winding, Frequency mains, ElectricPotential drop, ElectricCapacitance reservoir)
        : this((winding ?? throw new ArgumentNullException(nameof(winding))).NoLoad, mains, winding.HalfAlone, winding.Shared, drop, reservoir)
    {
    }

    internal const int Phases = 40;

    /// <summary>Emf of one half-winding, rms.</summary>
    public ElectricPotential Half { get; }

    /// <summary>Mains frequency.</summary>
    public Frequency Mains { get; }

    /// <summary>Resistance of one half-winding alone.</summary>
    public ElectricResistance HalfResistance { get; }

    /// <summary>The reflected primary in the common path.</summary>
    public ElectricResistance SharedResistance { get; }

    /// <summary>Drop of the diode in a rail's path.</summary>
    public ElectricPotential Drop { get; }

    /// <summary>Reservoir on each rail.</summary>
    public ElectricCapacitance Reservoir { get; }

    /// <summary>Series resistance of each reservoir; 0 Ω or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is negative.</exception>
    public ElectricResistance CapacitorEsr { get; init => field = Guard.NotNegative(value, nameof(CapacitorEsr)); }

    /// <summary>Resistance of the diode in a rail's path, beside its drop; 0 Ω or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is negative.</exception>
    public ElectricResistance DiodeResistance { get; init => field = Guard.NotNegative(value, nameof(DiodeResistance)); }

    /// <summary>Both rails when everything has settled, with the same load on each; of half-waves each rail carries its own half.</summary>
    /// <param name="load">What each rail gives away.</param>
    /// <inheritdoc cref="SteadyState(RailCurrent, RailCurrent)"/>
    [Worked("the reservoir's differential equation marched in closed pieces until a period repeats itself")]
    public DualSteadySupply SteadyState(RailCurrent load) => SteadyState(load, load);

    /// <summary>Both rails when everything has settled.</summary>
    /// <param name="positive">What the positive rail gives away; of half-waves it carries the positive half.</param>
    /// <param name="negative">What the negative rail gives away; of half-waves it carries the negative half.</param>
    /// <exception cref="ArgumentOutOfRangeException">Both play at different frequencies or phases, or a low signal shares no period with the mains.</exception>
    /// <exception cref="ShortfallException">The load is more than the winding can carry, or would draw a rail below zero.</exception>
    /// <exception cref="InvalidOperationException">No steady state was found; the message gives the last state.</exception>
    [Worked("the reservoir's differential equation marched in closed pieces until a period repeats itself")]
    public DualSteadySupply SteadyState(RailCurrent positive, RailCurrent negative)
    {
        var (network, halves, playing) = Settling(positive, negative);
        var (first, second, measure) = SupplySolver.Solve(network, halves);
        return new DualSteadySupply(first, second, halves, halves * network.Half, measure) { Supply = this, HalfEmf = Half, ByMeanCurrent = playing is not null && network.SignalOmega == 0 };
    }

    /// <summary>The lowest that a rail gets while it carries its own peak, over all phases between mains and signal.</summary>
    /// <remarks>Signal and mains drift through all phases sooner or later: this is the rail to count on. Of both rails the lower one.</remarks>
    /// <param name="load">The half-waves that each rail carries in turn.</param>
    /// <param name="phases">How many phases to try over a half-cycle of the mains; 8 or more.</param>
    /// <inheritdoc cref="SteadyState(RailCurrent, RailCurrent)"/>
    [Worked("the settled supply solved at each phase between mains and signal, the lowest of them")]
    public ElectricPotential LowestVoltageAtLoadPeak(RailCurrent load, int phases = Phases)
    {
        ArgumentNullException.ThrowIfNull(load);
        Guard.Between(phases, 8, 10_000);
        return LowestAtLoadPeak(load, phases, double.NegativeInfinity);
    }

    /// <summary>A burst after long idle.</summary>
    /// <param name="idle">What each rail gives away at idle, all channels together.</param>
    /// <param name="channels">How many channels play the burst at once; 1 or more.</param>
    /// <param name="peak">Peak of the burst's half-waves of one channel; greater than 0 A.</param>
    /// <param name="length">How long it lasts, at least half a cycle; such as 20.ms.</param>
    /// <param name="signal">Frequency of the burst; such as 1.kHz.</param>
    /// <returns>How far the rail sags, and how it comes back.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="ShortfallException">The burst empties the reservoir, or the rail does not recover.</exception>
    /// <exception cref="InvalidOperationException">No steady state was found at idle.</exception>
    [Worked("the reservoir's differential equation marched from the settled idle through the burst")]
    public SupplyBurst Burst(ElectricCurrent idle, int channels, ElectricCurrent peak, Duration length, Frequency signal) =>
        new(Idling(idle), Guard.Positive(channels) * Guard.Positive(peak), signal, length);

    /// <summary>The largest unclipped burst after long idle.</summary>
    /// <param name="idle">What each rail gives away at idle.</param>
    /// <param name="load">The load of one channel, resistive; greater than 0 Ω.</param>
    /// <param name="length">How long it lasts, at least half a cycle; such as 20.ms.</param>
    /// <param name="losses">What must stay between rail and output at the peak: the voltage-swing budget's losses; 0 V or more.</param>
    /// <param name="channels">How many channels play the burst at once; 1 or more.</param>
    /// <param name="signal">Frequency of the burst; such as 1.kHz.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="ShortfallException">The losses leave nothing of the rail at idle.</exception>
    /// <exception cref="InvalidOperationException">No such burst was found.</exception>
    [Worked("the peak voltage at which the burst just clips: a bracketed root search over solved bursts")]
    public BurstPower LargestBurst(ElectricCurrent idle, ElectricResistance load, Duration length, ElectricPotential losses, int channels, Frequency signal) =>
        new(Idling(idle), load, length, losses, channels, signal);

    /// <summary>Where a sine that lasts clips, on the rails that it leaves itself.</summary>
    /// <param name="budget">The voltage-swing budget of a channel into its load: peak voltage over peak current, a resistor.</param>
    /// <param name="channels">How many channels play in phase; 1 or more.</param>
    /// <param name="besides">What each rail gives away beside the half-waves: front ends and drivers, not the idle current of outputs that now play; 0 A or more.</param>
    /// <param name="signal">Frequency of the sine; such as 1.kHz.</param>
    /// <returns>The level, with what is missing from the budget's own peak in <see cref="SteadyClip.Short"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="ShortfallException">The losses of the budget take the whole rail.</exception>
    /// <exception cref="InvalidOperationException">No such level was found.</exception>
    [Worked("the peak voltage at which a lasting sine just clips on the rail that it leaves: a bracketed root search over settled supplies")]
    public SteadyClip ClipsAt(SwingBudget budget, int channels, ElectricCurrent besides, Frequency signal) => new(this, budget, channels, besides, signal);

    /// <summary>The same supply at another mains: the emf goes with it, the copper stays.</summary>
    /// <remarks>Not the nameplate at another voltage, whose resistance would move with the square.</remarks>
    /// <param name="deviation">Mains over nominal, less one: 10.percent for high mains, (−10).percent for low; above −100 %.</param>
    /// <returns>A supply whose emf is that of this one times 1 + deviation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mains is not positive, or the winding's peak falls below the drop.</exception>
    public DualRailSupply AtMains(Ratio deviation) => new(MainsDeviation.Factor(deviation) * Half, Mains, HalfResistance, SharedResistance, Drop, Reservoir)
    {
        CapacitorEsr = CapacitorEsr,
        DiodeResistance = DiodeResistance,
    };

    // What is to be solved, over how many half-cycles of the mains.
    private (RailNetwork Network, int HalfCycles, RailCurrent? Playing) Settling(RailCurrent positive, RailCurrent negative)
    {
        ArgumentNullException.ThrowIfNull(positive);
        ArgumentNullException.ThrowIfNull(negative);
        var playing = Playing(positive, negative);
        var halves = CommonPeriod.HalfCycles(Mains.Hertz, playing?.Signal.Hertz ?? 0);
        var network = halves > 0
            ? Network(positive, negative, playing)
            : Network(positive.Plays ? positive.AsMean() : positive, negative.Plays ? negative.AsMean() : negative, null);
        SupplySolver.Feeds(network, Math.Max(positive.Mean.Amperes, negative.Mean.Amperes), network.Own + network.Shared);
        return (network, Math.Max(1, halves), playing);
    }

    // Each rail at its own peaks, when everything has settled.
    internal Rails AtLoadPeaks(RailCurrent load)
    {
        var (network, halves, _) = Settling(load, load);
        var (first, second) = SupplySolver.AtLoadPeaks(network, halves);
        return new(ElectricPotential.FromVolts(first), ElectricPotential.FromVolts(second));
    }

    // A rail below what is enough ends the search at once: the lowest is then that or less.
    internal ElectricPotential LowestAtLoadPeak(RailCurrent load, int phases, double enough) => PhaseScan.Lowest(
        Mains,
        load,
        phases,
        l => Settling(l, l) is var (network, halves, _) ? SupplySolver.LowestAtLoadPeak(network, halves) : default,
        enough);

    private RailNetwork Idling(ElectricCurrent idle)
    {
        var at = RailCurrent.Constant(Guard.NotNegative(idle, nameof(idle)));
        var network = Network(at, at, null);
        SupplySolver.Feeds(network, idle.Amperes, network.Own + network.Shared);
        return network;
    }

    internal RailNetwork Network(RailCurrent positive, RailCurrent negative, RailCurrent? playing) => new()
    {
        Rails = 2,
        Peak = Half.Volts * Math.Sqrt(2),
        Omega = 2 * Math.PI * Mains.Hertz,
        Drop = Drop.Volts,
        Own = HalfResistance.Ohms + DiodeResistance.Ohms,
        Shared = SharedResistance.Ohms,
        C = Reservoir.Farads,
        Esr = CapacitorEsr.Ohms,
        Load1 = positive.OnRail(1),
        Load2 = negative.OnRail(-1),
        SignalOmega = 2 * Math.PI * (playing?.Signal.Hertz ?? 0),
        SignalPhase = playing?.Phase.Radians ?? 0,
    };

    internal static RailCurrent? Playing(RailCurrent positive, RailCurrent negative)
    {
        if (!positive.Plays || !negative.Plays)
            return positive.Plays ? positive : negative.Plays ? negative : null;
        if (positive.Signal.Hertz != negative.Signal.Hertz)
            Guard.Refuse(nameof(negative), negative.Signal, $"of the frequency of the positive rail's half-waves, {QuantityFormat.Short(positive.Signal)}", "Both rails carry halves of one signal.");
        if (positive.Phase.Radians != negative.Phase.Radians)
            Guard.Refuse(nameof(negative), negative.Phase, $"of the phase of the positive rail's half-waves, {QuantityFormat.Short(positive.Phase)}", "Both rails carry halves of one signal; the sign is seen to.");
        return positive;
    }
}
