using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>The idle current of output transistors on a thermal network, with a spreader that feels the temperature of one of its nodes.</summary>
/// <remarks>At the design temperatures every transistor draws the idle current. A junction's drive is then wrong by
/// tc·(junction − its design) − tc_s·(sensor − its design), and its current is that of the exponential junction with its resistance, so the
/// loop of heat and current is closed, large-signal, V_T with the junction's own temperature. While music plays, a transistor's heat
/// is the music's where that is more than the idle heat, the idle heat where it is less: the two do not add in class AB.</remarks>
public sealed class BiasTracking
{
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
        Design = design ?? network.Steady([.. junctions.Select(j => new Heat(j, V * I_q))]);
        if (Design.Network != network)
            throw new ArgumentException("The design temperatures must be of this network.", nameof(design));
    }

    /// <summary>The thermal network.</summary>
    public ThermalNetwork Network { get; }

    /// <summary>The junctions of the output transistors.</summary>
    public IReadOnlyList<HeatNode> Junctions { get; }

    /// <summary>The node whose temperature the spreader has.</summary>
    public HeatNode Sensor { get; }

    /// <summary>The temperatures at which the current was set.</summary>
    public NodeTemperatures Design { get; }

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
    /// <param name="music">The heat of the music into the junctions (and any other heat into other nodes); idle everywhere when empty.</param>
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
}
