using EightOhm.Quantities;
using EightOhm.Working;
using UnitsNet;
using static EightOhm.Quantities.Constants;

namespace EightOhm.OutputStage;

/// <summary>Powers of an ideal class-B pair at one level of a sine into a resistor: no bias, no emitter resistors.</summary>
/// <remarks>V is the rail at this level, which is higher than at full output when the supply sags.</remarks>
public static partial class ClassBAtLevel
{
    private const string Source = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14";

    /// <summary>What both rails deliver together: 2·V·V_p/(π·R).</summary>
    /// <param name="V">One rail (not rail to rail); greater than 0 V.</param>
    /// <param name="V_p">Peak output voltage; from 0 V to the rail.</param>
    /// <param name="R">Load, resistive; greater than 0 Ω.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "P_S")]
    public static Power Supply(ElectricPotential V, ElectricPotential V_p, ElectricResistance R)
    {
        Guard.Positive(V);
        Guard.Between(V_p, default, V, hint: "The output cannot swing past its rail.");
        Guard.Positive(R);
        return 2 / pi * (V * V_p / R);
    }

    /// <summary>What the load takes: V_p²/(2·R).</summary>
    /// <param name="V_p">Peak output voltage (not rms); 0 V or more.</param>
    /// <param name="R">Load, resistive; greater than 0 Ω.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "P_L")]
    public static Power Load(ElectricPotential V_p, ElectricResistance R)
    {
        Guard.NotNegative(V_p);
        Guard.Positive(R);
        return V_p * V_p / (2 * R);
    }

    /// <summary>The heat of the pair, both devices together: what the rails deliver less what the load takes.</summary>
    /// <param name="V">One rail (not rail to rail); greater than 0 V.</param>
    /// <param name="V_p">Peak output voltage; from 0 V to the rail.</param>
    /// <param name="R">Load, resistive; greater than 0 Ω.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "P_D")]
    public static Power PairHeat(ElectricPotential V, ElectricPotential V_p, ElectricResistance R)
    {
        Guard.Positive(V);
        Guard.Between(V_p, default, V, hint: "The output cannot swing past its rail.");
        Guard.Positive(R);
        var P_S = Supply(V, V_p, R);
        var P_L = Load(V_p, R);
        return P_S - P_L;
    }

    /// <summary>The share of the supply's power that reaches the load: π/4·V_p/V, at most 0.785.</summary>
    /// <remarks>A plain number, because a <see cref="Ratio"/> reads its decibels as those of a voltage, and this is a ratio of powers.</remarks>
    /// <param name="V">One rail (not rail to rail); greater than 0 V.</param>
    /// <param name="V_p">Peak output voltage; from 0 V to the rail.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "eta")]
    public static double Efficiency(ElectricPotential V, ElectricPotential V_p)
    {
        Guard.Positive(V);
        Guard.Between(V_p, default, V, hint: "The output cannot swing past its rail.");
        return pi / 4 * (V_p / V);
    }
}
