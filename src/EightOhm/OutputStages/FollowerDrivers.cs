using EightOhm.Devices;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <summary>A pair of drivers (or pre-drivers): followers whose emitters are joined by a resistor, which keeps both on over the whole swing.</summary>
/// <param name="BetweenEmitters">The resistor from one emitter to the other; greater than 0 Ω.</param>
public sealed record FollowerDrivers(ElectricResistance BetweenEmitters)
{
    /// <summary>The resistor from one emitter to the other; greater than 0 Ω.</summary>
    public ElectricResistance BetweenEmitters { get; init => field = Guard.Positive(value); } = Guard.Positive(BetweenEmitters);

    /// <summary>The upper device.</summary>
    public LargeSignalModel Device { get; init; } = new();

    /// <summary>The lower device; like the upper one when not given.</summary>
    public LargeSignalModel? Complement { get; init; }
}
