using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>A junction between the spreader and the outputs: that of a driver or pre-driver, which stands for the alike one of the other side as well.</summary>
/// <param name="Node">The node that has its temperature: a junction of its own, on whatever it stands on.</param>
/// <param name="Fall">How much its V_BE falls for a kelvin, as a positive value; 0 V/K or more.</param>
/// <param name="Idle">Its heat without signal, one device: the rail times its standing current; 0 W or more.</param>
/// <exception cref="ArgumentNullException">There is no node.</exception>
/// <exception cref="ArgumentOutOfRangeException">The fall or the heat is negative.</exception>
/// <example><code>new DriverJunction(driver, 2.1.mV_per_K, stage.Driving(0.V, R_L, 0.deg)[0].Heat)</code></example>
public sealed record DriverJunction(HeatNode Node, VoltageDrift Fall, Power Idle)
{
    /// <summary>The node that has its temperature.</summary>
    public HeatNode Node { get; } = Node ?? throw new ArgumentNullException(nameof(Node));

    /// <summary>How much its V_BE falls for a kelvin, as a positive value.</summary>
    [Symbol("tc")]
    public VoltageDrift Fall { get; } = Guard.NotNegative(Fall, nameof(Fall), "Give the fall as a positive value: a V_BE that goes by −2.1 mV/K is 2.1.mV_per_K.");

    /// <summary>Its heat without signal, one device.</summary>
    [Symbol("P_q")]
    public Power Idle { get; } = Guard.NotNegative(Idle, nameof(Idle), "A driver gives heat off.");
}
