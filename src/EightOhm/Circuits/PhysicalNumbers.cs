using EightOhm.Devices;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Circuits;

/// <summary>The constants as plain numbers, for the inner loops.</summary>
internal static class PhysicalNumbers
{
    /// <summary>J/K.</summary>
    public static double Boltzmann { get; } = Constants.k.JoulesPerKelvin;

    /// <summary>C.</summary>
    public static double Charge { get; } = Constants.q.Coulombs;

    /// <summary>k·T/q, V.</summary>
    public static double ThermalVolts(Temperature T) => Junction.ThermalVoltage(T).Volts;
}
