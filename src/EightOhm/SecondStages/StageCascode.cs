using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.SecondStages;

/// <summary>A cascode on a second stage: its own transistor, and the way from the collector of the one below to the input.</summary>
/// <remarks>It takes the output's swing. The current through its collector-base capacitance and its base current still change over that swing, and the transistor below must carry
/// what they take: its base moves by i/g_m2, and for that the first stage gives i·Y/g_m2, where Y is the admittance at the stage's input, the compensation capacitor's in it.
/// It is hundreds of times less than without a cascode, never nothing.</remarks>
public sealed record StageCascode
{
    /// <summary>Transconductance of the transistor below, its emitter resistor included; greater than 0 S.</summary>
    [Symbol("g_m2")]
    public required ElectricConductance Transconductance { get; init => field = Guard.Positive(value); }

    /// <summary>All capacitance at the stage's input: the compensation capacitor and what is there to ground; greater than 0 F.</summary>
    [Symbol("C_in")]
    public required ElectricCapacitance InputCapacitance { get; init => field = Guard.Positive(value); }

    /// <summary>Collector-base capacitance of the cascode, at the voltage that the stage's is given at; greater than 0 F.</summary>
    [Symbol("C_obc")]
    public required ElectricCapacitance OutputCapacitance { get; init => field = Guard.Positive(value); }

    /// <summary>Current gain of the cascode, extrapolated to no collector voltage; greater than 0.</summary>
    [Symbol("h_FEc")]
    public required double CurrentGain { get; init => field = Guard.Positive(value); }
}
