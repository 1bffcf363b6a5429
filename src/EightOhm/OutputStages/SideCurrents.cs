using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.OutputStages;

/// <summary>How the two sides of a class-AB stage share the load's current: equal exponential transistors with emitter resistors on a constant bias.</summary>
/// <remarks>Around the loop of the bias voltage: V_T·ln(i_on/I_s) + i_on·R + V_T·ln(i_off/I_s) + i_off·R stays what it is at idle, while
/// i_on − i_off is the load's current. Without R it is the textbook's i_on·i_off = I_Q². Beta droop, base currents and thermal changes are not in it.</remarks>
public static partial class SideCurrents
{
    /// <summary>What the current of the side that lets go satisfies: V_T·(ln(i_off/I_Q) + ln((i_off + I_o)/I_Q)) = (2·I_Q − 2·i_off − I_o)·R.</summary>
    /// <param name="i_off">Current of the side that lets go, all its transistors together: the unknown.</param>
    /// <param name="I_o">The load's current; 0 A or more, either direction.</param>
    /// <param name="I_Q">Idle current of a side, all its transistors together (n times that of one).</param>
    /// <param name="R">Emitter resistance of a side: (R_E + r_int)/n.</param>
    /// <param name="V_T">Thermal voltage at the junction temperature.</param>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14: class AB on a constant bias, with emitter resistors put in the loop")]
    public static Balance<ElectricPotential> Law(ElectricCurrent i_off, ElectricCurrent I_o, ElectricCurrent I_Q, ElectricResistance R, ElectricPotential V_T)
    {
        Guard.InReach(I_o);
        Guard.InReach(R);
        Guard.InReach(V_T);
        Guard.Positive(i_off);
        Guard.Positive(I_Q);
        return Balance.Of(V_T * (Ln(i_off / I_Q) + Ln((i_off + I_o) / I_Q)), R * (2 * I_Q - 2 * i_off - I_o));
    }

    /// <summary>The current that the side that lets go still carries; the other side carries the load's current more.</summary>
    /// <param name="I_o">The load's current; 0 A or more, either direction.</param>
    /// <param name="I_Q">Idle current of a side, all its transistors together (n times that of one); greater than 0 A.</param>
    /// <param name="R">Emitter resistance of a side: (R_E + r_int)/n; 0 Ω or more.</param>
    /// <param name="V_T">Thermal voltage at the junction temperature; greater than 0 V.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="InvalidOperationException">No solution was found; the message gives the last state.</exception>
    [Solves(nameof(Law))]
    [RecordName("side-currents.off-side")]
    public static ElectricCurrent OffSide(ElectricCurrent I_o, ElectricCurrent I_Q, ElectricResistance R, ElectricPotential V_T)
    {
        Guard.NotNegative(I_o);
        var law = new SideCurrentLaw(Guard.Positive(I_Q).Amperes, Guard.NotNegative(R).Ohms, Guard.Positive(V_T).Volts);
        var off = law.Off(I_o.Amperes, out var steps);
        SolverTrace.Note(steps);
        return ElectricCurrent.FromAmperes(off);
    }
}
