namespace EightOhm.Quantities;

/// <summary>The units of <see cref="HeatResistance"/>.</summary>
public enum HeatResistanceUnit
{
    /// <summary>K/W.</summary>
    KelvinPerWatt = 1,

    /// <summary>mK/W.</summary>
    MillikelvinPerWatt,
}
