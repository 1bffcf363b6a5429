using EightOhm.Explaining;
using EightOhm.Quantities;
using MathNet.Numerics.RootFinding;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.OutputStages;

/// <summary>The current of an exponential junction with a resistor in series.</summary>
public static partial class EmitterBias
{
    /// <summary>What the current satisfies: the drive is the junction's voltage and the resistor's.</summary>
    /// <param name="I">The current: the unknown.</param>
    /// <param name="V">The voltage across both.</param>
    /// <param name="R">The series resistance.</param>
    /// <param name="I_s">The junction's saturation current.</param>
    /// <param name="V_T">The thermal voltage.</param>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 3: exponential model with a series resistor")]
    public static Balance<ElectricPotential> Loop(ElectricCurrent I, ElectricPotential V, ElectricResistance R, ElectricCurrent I_s, ElectricPotential V_T)
    {
        Guard.InReach(V);
        Guard.InReach(R);
        Guard.InReach(V_T);
        Guard.Positive(I);
        Guard.Positive(I_s);
        return Balance.Of(V, V_T * Ln(I / I_s) + I * R);
    }

    /// <summary>The current that a voltage drives through a junction and a resistor in series.</summary>
    /// <remarks>Exponential region (current far above I_s). Solved in the logarithm of the current, so small currents keep their digits.</remarks>
    /// <param name="V">The voltage across both; greater than 0 V.</param>
    /// <param name="R">The series resistance; greater than 0 Ω.</param>
    /// <param name="I_s">The junction's saturation current; greater than 0 A.</param>
    /// <param name="V_T">The thermal voltage; greater than 0 V.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <exception cref="InvalidOperationException">No solution was found; the message gives the last bracket.</exception>
    [Solves(nameof(Loop))]
    [RecordName("emitter-bias.current")]
    public static ElectricCurrent Current(ElectricPotential V, ElectricResistance R, ElectricCurrent I_s, ElectricPotential V_T)
    {
        double v = Guard.Positive(V).Volts, r = Guard.Positive(R).Ohms, saturation = Guard.Positive(I_s).Amperes, vt = Guard.Positive(V_T).Volts;
        var steps = 0;
        double Residue(double logarithm)
        {
            steps++;
            Work.Checkpoint();
            return ((vt * logarithm) + (saturation * Math.Exp(logarithm) * r) - v) / vt;
        }

        // With u = ln(I/I_s): at u = 0 the junction takes nothing and r·I_s is far below v. The junction alone takes all at u = v/V_T, the
        // resistor alone at u = ln(v/(r·I_s)); the root is below both, and the lesser keeps the exponential in range for any voltage.
        var high = Math.Min(v / vt, Math.Log(v / r / saturation));
        if (!(high > 0) || !Brent.TryFindRoot(Residue, 0, high, 1e-13, 200, out var u))
            throw new InvalidOperationException($"No current was found between {QuantityFormat.Short(I_s)} and the current at which the junction or the resistor alone takes {QuantityFormat.Short(V)}. Check that I_s·R is far below V.");
        SolverTrace.Note(steps);
        return ElectricCurrent.FromAmperes(saturation * Math.Exp(u));
    }
}
