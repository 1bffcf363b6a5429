using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Feedback;

/// <summary>The highest gain of a transfer function over all frequencies.</summary>
/// <param name="Frequency">Where it is.</param>
/// <param name="Gain">How high it is.</param>
public sealed record ResponsePeak(
    [property: Symbol("f_pk")] Frequency Frequency,
    [property: Symbol("A_pk")] Gain Gain);
