using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Feedback;

/// <summary>A frequency at which the loop gain is one.</summary>
/// <param name="Frequency">The crossover.</param>
/// <param name="PhaseMargin">What the phase has left to −180° there, from −180° to 180°.</param>
public sealed record GainCrossing(
    [property: Symbol("f_x")] Frequency Frequency,
    [property: Symbol("PM")] Angle PhaseMargin);

/// <summary>A frequency at which the phase of the loop gain passes −180°, or that and whole turns.</summary>
/// <param name="Frequency">Where it passes.</param>
/// <param name="LoopGain">The loop gain there. Below 1 the gain may rise by its inverse, above 1 it may fall by as much, before the loop oscillates at this frequency.</param>
public sealed record PhaseCrossing(
    [property: Symbol("f_180")] Frequency Frequency,
    [property: Symbol("T_180")] Gain LoopGain);
