using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Devices;

/// <summary>What a warm case leaves of a device's rated power.</summary>
/// <remarks>Average dissipation only: the safe operating area's second-breakdown line derates differently.</remarks>
public static partial class Derating
{
    /// <summary>The average power dissipation allowed at a case temperature: (T_J − T_C)/θ_JC, and never more than the rating.</summary>
    /// <param name="P_max">The rating, for a case at its reference temperature or below; greater than 0 W.</param>
    /// <param name="T_J">Junction limit.</param>
    /// <param name="T_C">Case temperature (or ambient, with the resistance from junction to ambient); at most the limit.</param>
    /// <param name="theta_JC">Junction to case; greater than 0 K/W. The inverse of a sheet's derating in W/K.</param>
    /// <returns>The allowed average power dissipation of the device, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The case is hotter than the junction may be, or an input is not positive.</exception>
    /// <example><code>Derating.AllowedPower(150.W, 150.degC, 80.degC, 0.83.K_per_W)   // 84.34 W</code></example>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14", Symbol = "P_D")]
    [RecordName("derating.allowed-power")]
    public static Power AllowedPower(Power P_max, Temperature T_J, Temperature T_C, ThermalResistance theta_JC)
    {
        Guard.Positive(P_max);
        Guard.Positive(theta_JC);
        Guard.Between(T_C, default, T_J, hint: "A case hotter than the junction limit allows no dissipation at all: cool the case.");
        var derated = (T_J - T_C) / theta_JC;
        if (derated >= P_max)
            return P_max;
        return derated;
    }

    /// <summary>The resistance that a rating implies: (T_J − T_ref)/P_max.</summary>
    /// <param name="P_max">The rating; greater than 0 W.</param>
    /// <param name="T_J">Junction limit.</param>
    /// <param name="T_ref">The case (or ambient) temperature up to which the rating holds, often 25 °C; at most the limit.</param>
    /// <returns>The thermal resistance from junction to case, in K/W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The reference is hotter than the limit, or the rating is not positive.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14", Symbol = "theta_JC")]
    [RecordName("derating.resistance")]
    public static ThermalResistance Resistance(Power P_max, Temperature T_J, Temperature T_ref)
    {
        Guard.Positive(P_max);
        Guard.Between(T_ref, default, T_J, hint: "Give the sheet's reference temperature, for example 25.degC.");
        return (T_J - T_ref) / P_max;
    }
}
