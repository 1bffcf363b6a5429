using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.SecondStages;

/// <summary>What the second stage's transistor dissipates: at idle, and in the fault in which it often dies.</summary>
/// <remarks>The fault: the output is held at ground by a short or by the protection, so the loop drives the second stage as hard as it can, at the full rail. A transistor and a
/// sense resistor in the emitter limit its current; without them the first stage's current times the gain of everything between flows.</remarks>
public static partial class StageHeat
{
    private const string Source = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 5: P = I_C·V_CE";

    /// <summary>Power dissipation at idle: V·I.</summary>
    /// <param name="V">The rail (not rail to rail), at high mains if that is what counts; 0 V or more.</param>
    /// <param name="I">Standing current; 0 A or more.</param>
    /// <returns>The power dissipation of the one transistor, in W. The current source across from it has as much.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    /// <example><code>StageHeat.Idle(56.V, 10.mA)   // 560 mW</code></example>
    [Formula(Source, Symbol = "P_idle")]
    [RecordName("stage-heat.idle")]
    public static Power Idle(ElectricPotential V, ElectricCurrent I)
    {
        Guard.NotNegative(V);
        Guard.NotNegative(I);
        return V * I;
    }

    /// <summary>The current at which a limiting transistor across the emitter resistor takes over: V_BE/R_E.</summary>
    /// <param name="V_BE">Base-emitter voltage of the limiting transistor; greater than 0 V. It falls by about 2 mV/K.</param>
    /// <param name="R_E">Emitter resistor of the second stage; greater than 0 Ω.</param>
    /// <returns>The limited current, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14: short-circuit protection", Symbol = "I_lim")]
    [RecordName("stage-heat.limited-current")]
    public static ElectricCurrent LimitedCurrent(ElectricPotential V_BE, ElectricResistance R_E)
    {
        Guard.Positive(V_BE);
        Guard.Positive(R_E);
        return V_BE / R_E;
    }

    /// <summary>Power dissipation with the output held at ground and the current limited: V·V_BE/R_E.</summary>
    /// <param name="V">The rail, at high mains if that is what counts; 0 V or more.</param>
    /// <param name="V_BE">Base-emitter voltage of the limiting transistor: the cold one, which is the higher; greater than 0 V.</param>
    /// <param name="R_E">Emitter resistor; greater than 0 Ω.</param>
    /// <returns>The power dissipation of the one transistor, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>StageHeat.LimitedFault(56.V, 0.65.V, 22.Ohm)   // 1.655 W</code></example>
    [Formula(Source, Symbol = "P_lim")]
    [RecordName("stage-heat.limited-fault")]
    public static Power LimitedFault(ElectricPotential V, ElectricPotential V_BE, ElectricResistance R_E)
    {
        Guard.NotNegative(V);
        var I_lim = LimitedCurrent(V_BE, R_E);
        return V * I_lim;
    }

    /// <summary>The current of the greatest dissipation with the output held at ground and nothing to limit it: (1 + h_f)·h_FE·I_1, or V/(2·R_E) where the emitter resistor comes first.</summary>
    /// <remarks>The more current, the more of the rail stands across the emitter resistor: at half of it the transistor's dissipation is at its maximum, and the current passes there on its way.</remarks>
    /// <param name="V">The rail; 0 V or more.</param>
    /// <param name="I_1">The most that the first stage gives: the tail current with a mirror; 0 A or more.</param>
    /// <param name="h_FE">Current gain of the transistor; greater than 0.</param>
    /// <param name="R_E">Its emitter resistor; 0 Ω or more.</param>
    /// <param name="h_f">Current gain of a follower in front of it, 0 where there is none; 0 or more.</param>
    /// <returns>The current, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>StageHeat.UnlimitedCurrent(56.V, 4.mA, 100, 22.Ohm, 100)   // 1.273 A</code></example>
    [Formula("derived: the maximum of I·(V − I·R_E) over what the first stage can drive", Symbol = "I_unl")]
    [RecordName("stage-heat.unlimited-current")]
    public static ElectricCurrent UnlimitedCurrent(ElectricPotential V, ElectricCurrent I_1, double h_FE, ElectricResistance R_E, double h_f)
    {
        Guard.NotNegative(V);
        Guard.NotNegative(I_1);
        Guard.Positive(h_FE);
        Guard.NotNegative(R_E);
        Guard.NotNegative(h_f);
        var I_d = (1 + h_f) * h_FE * I_1;
        return 2 * (I_d * R_E) < V ? I_d : V / (2 * R_E);
    }

    /// <summary>Power dissipation with the output held at ground and nothing to limit the current: I·(V − I·R_E) at the current of <see cref="UnlimitedCurrent"/>.</summary>
    /// <remarks>It is what it would be: the transistor, its emitter resistor or the rail gives way before.</remarks>
    /// <param name="V">The rail; 0 V or more.</param>
    /// <param name="I_1">The most that the first stage gives: the tail current with a mirror; 0 A or more.</param>
    /// <param name="h_FE">Current gain of the transistor; greater than 0.</param>
    /// <param name="R_E">Its emitter resistor; 0 Ω or more.</param>
    /// <param name="h_f">Current gain of a follower in front of it, 0 where there is none; 0 or more.</param>
    /// <returns>The power dissipation of the one transistor, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>StageHeat.UnlimitedFault(56.V, 4.mA, 100, 22.Ohm, 100)   // 35.64 W</code></example>
    [Formula(Source, Symbol = "P_unl")]
    [RecordName("stage-heat.unlimited-fault")]
    public static Power UnlimitedFault(ElectricPotential V, ElectricCurrent I_1, double h_FE, ElectricResistance R_E, double h_f)
    {
        var I_unl = UnlimitedCurrent(V, I_1, h_FE, R_E, h_f);
        return I_unl * (V - I_unl * R_E);
    }
}
