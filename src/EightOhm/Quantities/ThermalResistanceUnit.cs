namespace EightOhm.Quantities;

/// <summary>The units of <see cref="ThermalResistance"/>.</summary>
public enum ThermalResistanceUnit
{
    /// <summary>K/W.</summary>
    KelvinPerWatt = 1,

    /// <summary>mK/W.</summary>
    MillikelvinPerWatt,
}
