using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.SecondStages;

/// <summary>A second stage as it is built: what it carries, and the cures that it has for its errors.</summary>
public sealed record SecondStage
{
    /// <summary>Standing current, of each side where there are two; greater than 0 A.</summary>
    [Symbol("I_2")]
    public required ElectricCurrent Current { get; init => field = Guard.Positive(value); }

    /// <summary>Collector to base at rest: about the rail; greater than 0 V.</summary>
    [Symbol("V_2")]
    public required ElectricPotential RestVoltage { get; init => field = Guard.Positive(value); }

    /// <summary>Collector-base capacitance at <see cref="CapacitanceVoltage"/>; greater than 0 F.</summary>
    [Symbol("C_ob")]
    public required ElectricCapacitance OutputCapacitance { get; init => field = Guard.Positive(value); }

    /// <summary>The voltage at which the sheet gives it; 10 V when not given.</summary>
    [Symbol("V_Cob")]
    public ElectricPotential CapacitanceVoltage { get; init => field = Guard.NotNegative(value); } = ElectricPotential.FromVolts(10);

    /// <summary>Built-in voltage of the collector-base junction; 0.75 V when not given.</summary>
    [Symbol("psi")]
    public ElectricPotential BuiltInVoltage { get; init => field = Guard.Positive(value); } = ElectricPotential.FromVolts(0.75);

    /// <summary>Grading exponent of that junction; 0.33 when not given.</summary>
    [Symbol("m")]
    public double Grading { get; init => field = Guard.Between(value, 0, 1); } = 0.33;

    /// <summary>Current gain, extrapolated to no collector voltage; greater than 0.</summary>
    [Symbol("h_FE")]
    public required double CurrentGain { get; init => field = Guard.Positive(value); }

    /// <summary>Early voltage; greater than 0 V.</summary>
    [Symbol("V_A")]
    public required ElectricPotential EarlyVoltage { get; init => field = Guard.Positive(value); }

    /// <summary>Current gain of a follower in front, which divides what the transistor's base asks for by it and one; none where there is no follower.</summary>
    [Symbol("h_FEf")]
    public double? FollowerGain { get; init => field = value is { } h ? Guard.Positive(h, nameof(FollowerGain)) : null; }

    /// <summary>A cascode on the transistor's collector, with what its errors need to reach the input; none where there is none.</summary>
    /// <remarks>The collector stands still then, and the currents that change with the output are the cascode's own. They flow through the transistor below all the same.</remarks>
    public StageCascode? Cascode { get; init; }

    /// <summary>Whether a second such stage works against it from the other rail: even errors cancel, odd ones add.</summary>
    public bool IsPushPull { get; init; }

    /// <summary>What stands between the rail and the output at the least: the drop of an emitter resistor, the transistor's own, and a cascode's volt.</summary>
    /// <remarks>A follower in front costs nothing here; it stands on the input's side, where the first stage has a junction's drop less.</remarks>
    /// <param name="R_E">Emitter resistor; 0 Ω or more.</param>
    /// <returns>The voltage, in V: half a volt of the transistor (it must not saturate) and, cascoded, one more (common practice, no source).</returns>
    /// <exception cref="ArgumentOutOfRangeException">The resistor is negative.</exception>
    [Worked("the drop of the emitter resistor, 0.5 V of the transistor, 1 V of a cascode")]
    public ElectricPotential SwingCost(ElectricResistance R_E) => (Current * Guard.NotNegative(R_E)) + ElectricPotential.FromVolts(Cascode is null ? 0.5 : 1.5);

    /// <summary>The errors at the summing node over a full swing of a sine.</summary>
    /// <param name="f">Frequency of the sine; greater than 0 Hz.</param>
    /// <param name="V_p">Its peak at the stage and at the output (not rms); below the voltage at rest.</param>
    /// <param name="g_m1">Transconductance of the first stage, degeneration and mirror included; of both first stages where there are two.</param>
    /// <param name="G">Closed-loop gain; greater than 0.</param>
    /// <returns>Harmonics at the amplifier's output, of that output, whatever the loop gain.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Worked("the charge C(v) and the base current I/(h_FE·(1 + v/V_A)) over a sine of the output, 512 instants of a cycle, into harmonics; behind a follower by its gain and one; of a cascode times |g_m2/(h_FE·(1 + h_f)) + jnωC|/g_m2; over g_m1, times G")]
    public SummingNodeErrors Errors(Frequency f, ElectricPotential V_p, ElectricConductance g_m1, Gain G) => SummingNodeErrors.Of(this, f, V_p, g_m1, G);
}
