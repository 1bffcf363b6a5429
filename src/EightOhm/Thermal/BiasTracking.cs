using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>The idle current of output transistors on a thermal network, with a spreader that feels the temperature of one of its nodes.</summary>
/// <remarks>At the design temperatures every transistor draws the idle current. A junction's drive is then wrong by
/// tc·(junction − its design) − tc_s·(sensor − its design), and its current is that of the exponential junction with its resistance, so the
/// loop of heat and current is closed, large-signal, V_T with the junction's own temperature. While music plays, a transistor's heat
/// is the music's where that is more than the idle heat, the idle heat where it is less: the two do not add in class AB.
/// <para>Drivers and pre-drivers stand in the same chain from base to base (<see cref="Drivers"/>). Kirchhoff's voltage law around it, for one side:
/// tc·ΔT_J + Σ tc_d·ΔT_d − tc_s·ΔT_s = V_T·ln(I/I_q) + (I − I_q)·R, each ΔT against the design: what the junctions give way, less what the spreader takes
/// back, is shared by the emitter resistance and the slope V_T/I of the output junction. The drivers' own slopes take no share: their emitters stand on the
/// resistor between them, so their current is the outputs' two V_BE over it, and where that moves by 30 mV in 1.3 V the V_BE of a driver moves by
/// V_T·ln(1.02), about 0.6 mV: up to a twenty-fifth of the change, left out. It holds for drivers whose standing current a resistor or a source sets, both sides alike; not
/// for drivers with nothing between their emitters, which live on the outputs' base current alone. Source of the law: Sedra &amp; Smith,
/// Microelectronic Circuits, 5th ed., ch. 3 (junction with a series resistor) and ch. 14 (class AB stage, the bias chain).</para></remarks>
/// <example><code>
/// new BiasTracking(net, [junction], new(spreader, 2.1.mV_per_K), V, I_q, R_E + r_int, 2.1.mV_per_K)
/// {
///     Drivers = [new(driver, 2.1.mV_per_K, P_drvq)],
/// }
/// </code></example>
public sealed class BiasTracking
{
    private readonly bool isDesignGiven;

    /// <summary>Places the transistors and the sensor.</summary>
    /// <param name="network">The thermal network.</param>
    /// <param name="junctions">The junctions of the output transistors, one node each; 1 or more.</param>
    /// <param name="sensor">Where the spreader is and how it falls there.</param>
    /// <param name="V">Voltage across a transistor at idle: one rail; greater than 0 V.</param>
    /// <param name="I_q">Idle current of one transistor at the design temperatures; greater than 0 A.</param>
    /// <param name="R">All resistance in series with a junction: R_E and the transistor's own; greater than 0 Ω.</param>
    /// <param name="tc">How much V_BE falls for a kelvin, as a positive value; greater than 0 V/K.</param>
    /// <param name="design">The temperatures at which the current was set; at idle in this ambient when not given.</param>
    /// <exception cref="ArgumentException">A node is of another network.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public BiasTracking(ThermalNetwork network, IReadOnlyList<HeatNode> junctions, BiasSensor sensor, ElectricPotential V, ElectricCurrent I_q, ElectricResistance R, VoltageDrift tc, NodeTemperatures? design = null)
    {
        ArgumentNullException.ThrowIfNull(network);
        ArgumentNullException.ThrowIfNull(junctions);
        ArgumentNullException.ThrowIfNull(sensor);
        Guard.Positive(junctions.Count, "the number of junctions");
        foreach (var node in junctions.Append(sensor.Node))
            if (network.Place(node) < 0)
                throw new ArgumentException("The ambient is neither a junction nor a sensor that warms.", nameof(junctions));
        (Network, Junctions, Sensor) = (network, [.. junctions], sensor.Node);
        (Voltage, IdleCurrent, Resistance, JunctionDrift, SensorDrift) = (Guard.Positive(V), Guard.Positive(I_q), Guard.Positive(R), Guard.Positive(tc), sensor.Fall);
        isDesignGiven = design is not null;
        Design = design ?? AtIdle([]);
        if (Design.Network != network)
            throw new ArgumentException("The design temperatures must be of this network.", nameof(design));
    }

    /// <summary>The thermal network.</summary>
    public ThermalNetwork Network { get; }

    /// <summary>The junctions of the output transistors.</summary>
    public IReadOnlyList<HeatNode> Junctions { get; }

    /// <summary>The node whose temperature the spreader has.</summary>
    public HeatNode Sensor { get; }

    /// <summary>The junctions of drivers and pre-drivers in the chain, one entry for each pair of them; none if not given.</summary>
    /// <remarks>Each warms by its own heat: in <see cref="Follow"/> that of its profile where it is more than its idle heat. Design temperatures that were not given are
    /// those with the drivers at idle too.</remarks>
    /// <exception cref="ArgumentNullException">There is no list, or no entry.</exception>
    /// <exception cref="ArgumentException">A node is the ambient, of another network, an output's junction, or given twice.</exception>
    public IReadOnlyList<DriverJunction> Drivers
    {
        get;
        init
        {
            ArgumentNullException.ThrowIfNull(value);
            List<HeatNode> taken = [.. Junctions];
            foreach (var driver in value)
            {
                ArgumentNullException.ThrowIfNull(driver, nameof(Drivers));
                if (Network.Place(driver.Node) < 0)
                    throw new ArgumentException("The ambient is no driver's junction: it does not warm.", nameof(Drivers));
                if (taken.Contains(driver.Node))
                    throw new ArgumentException($"\"{driver.Node.Name}\" is a junction already: give each driver a node of its own.", nameof(Drivers));
                taken.Add(driver.Node);
            }

            field = [.. value];
            if (!isDesignGiven)
                Design = AtIdle(field);
        }
    } = [];

    /// <summary>The temperatures at which the current was set.</summary>
    public NodeTemperatures Design { get; private init; }

    /// <summary>Voltage across a transistor at idle.</summary>
    [Explaining.Symbol("V")]
    public ElectricPotential Voltage { get; }

    /// <summary>Idle current of one transistor at the design temperatures.</summary>
    [Explaining.Symbol("I_q")]
    public ElectricCurrent IdleCurrent { get; }

    /// <summary>All resistance in series with a junction.</summary>
    [Explaining.Symbol("R")]
    public ElectricResistance Resistance { get; }

    /// <summary>How much V_BE falls for a kelvin.</summary>
    [Explaining.Symbol("tc")]
    public VoltageDrift JunctionDrift { get; }

    /// <summary>How much of the spreader's voltage, a junction's share, goes for a kelvin of the sensor.</summary>
    [Explaining.Symbol("tc_s")]
    public VoltageDrift SensorDrift { get; }

    /// <summary>Follows temperatures and idle current through time.</summary>
    /// <param name="until">The end; greater than 0 s.</param>
    /// <param name="music">The heat of the music into the junctions, the drivers' among them (and any other heat into other nodes); idle everywhere when empty.</param>
    /// <param name="start">The temperatures at 0 s; the design's when not given. For a cold start: <c>network.Steady()</c>.</param>
    /// <param name="points">Steps at least, without those after each change of the music; 1 or more.</param>
    /// <param name="fineness">The length of a step over the time since the last change; from 0.0001 to 0.2. The error falls with its square, and is about 1 in 10⁴ at 0.02.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="InvalidOperationException">The current and the heat of a step did not settle; the message gives the last state.</exception>
    [Worked("temperatures and idle current stepped through time together, each step short enough for its fastest change")]
    public BiasOverTime Follow(Duration until, IReadOnlyList<HeatProfile> music, NodeTemperatures? start = null, int points = 400, double fineness = 0.02)
    {
        ArgumentNullException.ThrowIfNull(music);
        return BiasSteps.Run(this, Guard.Positive(until).Seconds, music, start ?? Design, Guard.Positive(points), Guard.Between(fineness, 1e-4, 0.2));
    }

    private NodeTemperatures AtIdle(IReadOnlyList<DriverJunction> drivers) =>
        Network.Steady([.. Junctions.Select(j => new Heat(j, Voltage * IdleCurrent)), .. drivers.Select(d => new Heat(d.Node, d.Idle))]);
}
