namespace EightOhm.Quantities;

/// <summary>The units of <see cref="CurrentNoiseDensity"/>.</summary>
public enum CurrentNoiseDensityUnit
{
    /// <summary>A/√Hz.</summary>
    AmperePerRootHertz = 1,

    /// <summary>pA/√Hz.</summary>
    PicoamperePerRootHertz,

    /// <summary>fA/√Hz.</summary>
    FemtoamperePerRootHertz,
}
