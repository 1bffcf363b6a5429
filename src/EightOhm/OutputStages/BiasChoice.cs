using EightOhm.Explaining;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <summary>A bias chosen by a stated criterion.</summary>
/// <param name="Bias">The stage at that bias.</param>
/// <param name="StaticThd">Static distortion there, at the level of the criterion; a lower bound at high frequency.</param>
/// <param name="HighestIdle">The highest idle current that was considered.</param>
/// <param name="ThdAtHighest">Static distortion there: where both sides conduct over the whole swing (class A) it is less than at any least in between.</param>
/// <param name="OverEqualGain">The idle current over V_T/(R_E + r_int), which makes the gain at zero and far out equal.</param>
public sealed record BiasChoice(FollowerBias Bias, [property: Symbol("THD")] Ratio StaticThd, ElectricCurrent HighestIdle, Ratio ThdAtHighest, double OverEqualGain)
{
    /// <summary>Idle current of one output device.</summary>
    [Symbol("I_q")]
    public ElectricCurrent IdleCurrent => Bias.IdleCurrent;

    /// <summary>Between the two bases of the first stage.</summary>
    [Symbol("V_b")]
    public ElectricPotential BiasVoltage => Bias.BiasVoltage;

    /// <summary>The drop on one external emitter resistor.</summary>
    [Symbol("V_RE")]
    public ElectricPotential DropOnEmitterResistor => Bias.DropOnEmitterResistor;
}
