using EightOhm.Quantities;

namespace EightOhm.Thermal;

/// <summary>Where a bias spreader feels the temperature, and how its voltage falls there.</summary>
/// <param name="Node">The node whose temperature the spreader has. Its lag is that of this node: give the sensor a node of its own.</param>
/// <param name="Fall">How much of the spreader's voltage, a junction's share, goes for a kelvin, as a positive value: its drift over the number of hot junctions; 0 V/K or more.</param>
public sealed record BiasSensor(HeatNode Node, VoltageDrift Fall)
{
    /// <summary>The node whose temperature the spreader has.</summary>
    public HeatNode Node { get; } = Node ?? throw new ArgumentNullException(nameof(Node));

    /// <summary>How much of the spreader's voltage, a junction's share, goes for a kelvin, as a positive value.</summary>
    public VoltageDrift Fall { get; } = Guard.NotNegative(Fall, nameof(Fall), "Give the fall as a positive value: a spreader's drift of −4.2 mV/K for two junctions is 2.1.mV_per_K.");
}
