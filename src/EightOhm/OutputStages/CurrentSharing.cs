using EightOhm.Explaining;
using EightOhm.Quantities;
using MathNet.Numerics.RootFinding;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.OutputStages;

/// <summary>How two transistors in parallel share the current when their base-emitter voltages differ.</summary>
/// <remarks>Common base and output; each has its own emitter resistor. R is the whole resistance of one emitter, R_E and the transistor's own r_int.
/// At one temperature: the one that takes more heats more and its voltage falls, which common heat sinking must keep small.</remarks>
public static partial class CurrentSharing
{
    private const string Source = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 5: r_e = V_T/I_C, in series with R";

    /// <summary>The difference of the two currents for a small mismatch: ΔV_BE/(R + V_T/I).</summary>
    /// <param name="dV">Difference of the base-emitter voltages at one current; 0 V or more, small against V_T or against I·R.</param>
    /// <param name="I">The mean current of the two; greater than 0 A.</param>
    /// <param name="R">Emitter resistance of one: R_E + r_int; 0 Ω or more.</param>
    /// <param name="V_T">Thermal voltage at the junction temperature; greater than 0 V.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "dI")]
    [RecordName("current-sharing.spread")]
    public static ElectricCurrent Spread(ElectricPotential dV, ElectricCurrent I, ElectricResistance R, ElectricPotential V_T)
    {
        Guard.NotNegative(dV);
        Guard.Positive(I);
        Guard.NotNegative(R);
        Guard.Positive(V_T);
        return dV / (R + V_T / I);
    }

    /// <summary>The matching that a spread of current allows: ΔI·(R + V_T/I).</summary>
    /// <param name="dI">Difference of the two currents allowed; 0 A or more.</param>
    /// <param name="I">The mean current of the two; greater than 0 A.</param>
    /// <param name="R">Emitter resistance of one: R_E + r_int; 0 Ω or more.</param>
    /// <param name="V_T">Thermal voltage at the junction temperature; greater than 0 V.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "dV")]
    [RecordName("current-sharing.matching")]
    public static ElectricPotential Matching(ElectricCurrent dI, ElectricCurrent I, ElectricResistance R, ElectricPotential V_T)
    {
        Guard.NotNegative(dI);
        Guard.Positive(I);
        Guard.NotNegative(R);
        Guard.Positive(V_T);
        return dI * (R + V_T / I);
    }

    /// <summary>The least emitter resistance that keeps a mismatch within a spread of current: ΔV_BE/ΔI − V_T/I; 0 Ω where the junctions alone do.</summary>
    /// <remarks>It is the whole of one emitter: what the transistor has itself, r_int, comes off it.</remarks>
    /// <param name="dV">Difference of the base-emitter voltages; 0 V or more.</param>
    /// <param name="dI">Difference of the two currents allowed; greater than 0 A.</param>
    /// <param name="I">The mean current of the two; greater than 0 A.</param>
    /// <param name="V_T">Thermal voltage at the junction temperature; greater than 0 V.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "R")]
    [RecordName("current-sharing.least-resistance")]
    public static ElectricResistance LeastResistance(ElectricPotential dV, ElectricCurrent dI, ElectricCurrent I, ElectricPotential V_T)
    {
        Guard.NotNegative(dV);
        Guard.Positive(dI);
        Guard.Positive(I);
        Guard.Positive(V_T);
        if (dV / dI <= V_T / I)
            return 0.Ohm;
        return dV / dI - V_T / I;
    }

    /// <summary>What the exact difference satisfies: ΔV_BE = V_T·ln((2·I + ΔI)/(2·I − ΔI)) + ΔI·R.</summary>
    /// <param name="dI">Difference of the two currents: the unknown.</param>
    /// <param name="dV">Difference of the base-emitter voltages at one current.</param>
    /// <param name="I">The mean current of the two.</param>
    /// <param name="R">Emitter resistance of one.</param>
    /// <param name="V_T">Thermal voltage.</param>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 5: exponential model, around the loop of two emitters")]
    public static Balance<ElectricPotential> Loop(ElectricCurrent dI, ElectricPotential dV, ElectricCurrent I, ElectricResistance R, ElectricPotential V_T)
    {
        Guard.InReach(dI);
        Guard.InReach(dV);
        Guard.InReach(I);
        Guard.InReach(R);
        Guard.InReach(V_T);
        return Balance.Of(dV, V_T * Ln((2 * I + dI) / (2 * I - dI)) + R * dI);
    }

    /// <summary>The difference of the two currents for a mismatch of any size, the mean kept: for a poor match without emitter resistors.</summary>
    /// <param name="dV">Difference of the base-emitter voltages at one current; greater than 0 V.</param>
    /// <param name="I">The mean current of the two; greater than 0 A.</param>
    /// <param name="R">Emitter resistance of one: R_E + r_int; 0 Ω or more.</param>
    /// <param name="V_T">Thermal voltage at the junction temperature; greater than 0 V.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="InvalidOperationException">No solution was found; the message gives the last bracket.</exception>
    [Solves(nameof(Loop))]
    [RecordName("current-sharing.difference")]
    public static ElectricCurrent Difference(ElectricPotential dV, ElectricCurrent I, ElectricResistance R, ElectricPotential V_T)
    {
        double v = Guard.Positive(dV).Volts, i = Guard.Positive(I).Amperes, r = Guard.NotNegative(R).Ohms, vt = Guard.Positive(V_T).Volts;
        var steps = 0;

        // With dI = 2·I·tanh(u) the logarithm is 2·u, and the root lies below that of the junctions alone.
        double Residue(double u)
        {
            steps++;
            return ((2 * vt * u) + (2 * i * r * Math.Tanh(u)) - v) / v;
        }

        var high = v / (2 * vt);
        if (!Brent.TryFindRoot(Residue, 0, high * (1 + 1e-9), 1e-14 * high, 200, out var found))
            throw new InvalidOperationException($"No difference was found for {QuantityFormat.Short(dV)} between 0 A and that of the junctions alone, at a mean of {QuantityFormat.Short(I)}.");
        SolverTrace.Note(steps);
        return ElectricCurrent.FromAmperes(2 * i * Math.Tanh(found));
    }
}
