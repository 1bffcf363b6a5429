using EightOhm.Explaining;
using UnitsNet;

namespace EightOhm.SupplyPaths;

/// <summary>One frequency of a rail's ripple, and what is left of it at the output.</summary>
/// <param name="Frequency">A multiple of the mains.</param>
/// <param name="Ripple">On the rail, rms.</param>
/// <param name="Rejection">Output-referred, at that frequency.</param>
public sealed record RippleLine(Frequency Frequency, ElectricPotential Ripple, Quantities.Gain Rejection)
{
    /// <summary>At the output, rms.</summary>
    [Symbol("V_hum")]
    public ElectricPotential AtOutput => ElectricPotential.FromVolts(Ripple.Volts / Rejection.Ratio);
}
