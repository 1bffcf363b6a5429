namespace EightOhm.Quantities;

/// <summary>The units of <see cref="HeatCapacity"/>.</summary>
public enum HeatCapacityUnit
{
    /// <summary>J/K.</summary>
    JoulePerKelvin = 1,

    /// <summary>kJ/K.</summary>
    KilojoulePerKelvin,
}
