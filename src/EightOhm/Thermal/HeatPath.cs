using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Thermal;

/// <summary>Heat from a junction through resistances in a row to the air.</summary>
public static partial class HeatPath
{
    /// <summary>Junction temperature at the end of a chain: T_a + P·ΣR.</summary>
    /// <param name="T_a">Ambient temperature.</param>
    /// <param name="P">Heat of the one device; 0 W or more.</param>
    /// <param name="parts">The resistances in the chain, each 0 K/W or more: junction to case, case to sink, sink to air.</param>
    /// <returns>The junction temperature, in °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The heat is negative.</exception>
    /// <example><code>HeatPath.Junction(40.degC, 50.W, [0.83.K_per_W, 0.5.K_per_W, 0.6.K_per_W])   // 136.5 °C</code></example>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14", Symbol = "T_J")]
    [RecordName("heat-path.junction")]
    public static Temperature Junction(Temperature T_a, Power P, IReadOnlyList<ThermalResistance> parts)
    {
        Guard.NotNegative(P);
        var theta_JA = Sum(parts, theta => theta);
        Guard.NotNegative(theta_JA);
        var rise = P * theta_JA;
        return T_a + rise;
    }

    /// <summary>The power dissipation that a chain allows one device: (T_J − T_a)/ΣR.</summary>
    /// <param name="T_J">Junction limit.</param>
    /// <param name="T_a">Ambient temperature; at most the limit.</param>
    /// <param name="parts">The resistances in the chain, each 0 K/W or more, together greater than 0 K/W: junction to case, case to sink, sink to air.</param>
    /// <returns>W; a device's rating may be less.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The air is hotter than the junction may be, or there is no resistance.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14", Symbol = "P_D")]
    [RecordName("heat-path.allowed-power")]
    public static Power AllowedPower(Temperature T_J, Temperature T_a, IReadOnlyList<ThermalResistance> parts)
    {
        Guard.Between(T_a, default, T_J, hint: "The air must be cooler than the junction limit.");
        var theta_JA = Sum(parts, theta => theta);
        Guard.Positive(theta_JA);
        return (T_J - T_a) / theta_JA;
    }

    /// <summary>The sink that a junction limit allows one device: <see cref="SharedSink.AllowedSink"/> for one device and no other heat.</summary>
    /// <param name="T_J">Junction limit.</param>
    /// <param name="T_a">Ambient temperature; below the limit.</param>
    /// <param name="P">Heat; greater than 0 W.</param>
    /// <param name="theta_JC">Junction to case; 0 K/W or more.</param>
    /// <param name="theta_CS">Case to sink; 0 K/W or more.</param>
    /// <returns>The largest resistance, sink to ambient, in K/W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No sink can do it, or an input is out of range.</exception>
    /// <example><code>HeatPath.AllowedSink(125.degC, 40.degC, 30.W, 0.83.K_per_W, 0.5.K_per_W)   // 1.503 K/W</code></example>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14", Symbol = "theta_SA")]
    [RecordName("heat-path.allowed-sink")]
    public static ThermalResistance AllowedSink(Temperature T_J, Temperature T_a, Power P, ThermalResistance theta_JC, ThermalResistance theta_CS) =>
        SharedSink.AllowedSink(T_J, T_a, P, 1, 0.W, theta_JC, theta_CS);
}
