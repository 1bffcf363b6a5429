namespace EightOhm.Quantities;

/// <summary>The units of <see cref="VoltageNoiseDensity"/>.</summary>
public enum VoltageNoiseDensityUnit
{
    /// <summary>V/√Hz.</summary>
    VoltPerRootHertz = 1,

    /// <summary>nV/√Hz.</summary>
    NanovoltPerRootHertz,

    /// <summary>µV/√Hz.</summary>
    MicrovoltPerRootHertz,
}
