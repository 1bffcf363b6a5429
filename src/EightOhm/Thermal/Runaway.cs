using EightOhm.Quantities;
using EightOhm.Explaining;
using MathNet.Numerics.RootFinding;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Thermal;

/// <summary>Thermal runaway of an output transistor's idle current: more current, more heat, less V_BE, more current.</summary>
/// <remarks>θ is what the spreader does not follow: from the junction to the place of the sensor where it follows at once, from the junction to
/// the air where it does not follow at all. A loop gain below one at the idle current says that it is stable there, and nothing about a
/// larger disturbance: as the current grows, r_e falls and the gain grows, to <see cref="GreatestGain"/>.</remarks>
public static partial class Runaway
{
    private const string Source = "Millman & Halkias, Integrated Electronics, ch. 9: thermal runaway, (∂P/∂I)·(∂I/∂T)·θ < 1, with the exponential junction and R in series";

    /// <summary>Loop gain at the idle current: tc·θ·V·I_q/((R_E + r_int)·I_q + V_T), which is V·θ·tc/(R_E + r_int + r_e). Stable there below one.</summary>
    /// <param name="V">Voltage across the transistor at idle, one rail at high mains; greater than 0 V.</param>
    /// <param name="theta">From the junction to where the spreader follows; greater than 0 K/W.</param>
    /// <param name="tc">How much V_BE falls for a kelvin, as a positive value; greater than 0 V/K.</param>
    /// <param name="R_E">Emitter resistor of one transistor; 0 Ω or more.</param>
    /// <param name="r_int">The transistor's own resistance, seen at its emitter; 0 Ω or more.</param>
    /// <param name="V_T">Thermal voltage at the junction's temperature; greater than 0 V.</param>
    /// <param name="I_q">Idle current of one transistor; greater than 0 A.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "A_th")]
    [RecordName("runaway.loop-gain")]
    public static double LoopGain(ElectricPotential V, ThermalResistance theta, VoltageDrift tc, ElectricResistance R_E, ElectricResistance r_int, ElectricPotential V_T, ElectricCurrent I_q)
    {
        Guard.Positive(V);
        Guard.Positive(theta);
        Guard.Positive(tc);
        Guard.NotNegative(R_E);
        Guard.NotNegative(r_int);
        Guard.Positive(V_T);
        Guard.Positive(I_q);
        var rise = theta * (V * I_q);
        return tc * rise / ((R_E + r_int) * I_q + V_T);
    }

    /// <summary>Loop gain at a very large current: tc·θ·V²/(R_E + r_int)/V. Below one, no current runs away.</summary>
    /// <param name="V">Voltage across the transistor at idle, one rail at high mains; greater than 0 V.</param>
    /// <param name="theta">From the junction to where the spreader follows; greater than 0 K/W.</param>
    /// <param name="tc">How much V_BE falls for a kelvin, as a positive value; greater than 0 V/K.</param>
    /// <param name="R_E">Emitter resistor of one transistor; with r_int greater than 0 Ω.</param>
    /// <param name="r_int">The transistor's own resistance, seen at its emitter; 0 Ω or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "A_max")]
    [RecordName("runaway.greatest-gain")]
    public static double GreatestGain(ElectricPotential V, ThermalResistance theta, VoltageDrift tc, ElectricResistance R_E, ElectricResistance r_int)
    {
        Guard.Positive(V);
        Guard.Positive(theta);
        Guard.Positive(tc);
        Guard.NotNegative(R_E);
        Guard.NotNegative(r_int);
        Guard.Positive(R_E + r_int, "the resistance in series", "Without any, every current runs away in the end.");
        var rise = theta * (V * V / (R_E + r_int));
        return tc * rise / V;
    }

    /// <summary>The current at which the loop gain is one: V_T/((R_E + r_int)·(A_max − 1)). Past it the current runs away by itself.</summary>
    /// <param name="A_max">The gain at a very large current, <see cref="GreatestGain"/>; greater than 1.</param>
    /// <param name="R_E">Emitter resistor of one transistor; with r_int greater than 0 Ω.</param>
    /// <param name="r_int">The transistor's own resistance, seen at its emitter; 0 Ω or more.</param>
    /// <param name="V_T">Thermal voltage at the junction's temperature; greater than 0 V.</param>
    /// <exception cref="ArgumentOutOfRangeException">The gain never reaches one, or an input is out of range.</exception>
    [Formula(Source, Symbol = "I_1")]
    [RecordName("runaway.unity-loop-gain-current")]
    public static ElectricCurrent UnityLoopGainCurrent(double A_max, ElectricResistance R_E, ElectricResistance r_int, ElectricPotential V_T)
    {
        Guard.Positive(A_max - 1, "A_max less 1", "The gain never reaches one: no current runs away.");
        Guard.NotNegative(R_E);
        Guard.NotNegative(r_int);
        Guard.Positive(R_E + r_int, "the resistance in series", "Without any, every current runs away in the end.");
        Guard.Positive(V_T);
        return V_T / ((R_E + r_int) * (A_max - 1));
    }

    /// <summary>How much the spreader may be late (or the air colder for it than for the junctions) before no resting place is left: the drive that the loop can take up, over tc.</summary>
    /// <param name="I_1">The current of gain one, <see cref="UnityLoopGainCurrent"/>; at least I_q.</param>
    /// <param name="I_q">Idle current of one transistor; greater than 0 A.</param>
    /// <param name="V_T">Thermal voltage at the junction's temperature; greater than 0 V.</param>
    /// <param name="tc">How much V_BE falls for a kelvin, as a positive value; greater than 0 V/K.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source + ": the greatest of V_T·ln(I/I_q) − (V_T/I_1)·(I − I_q)", Symbol = "dT_late")]
    [RecordName("runaway.allowed-lag")]
    public static TemperatureDelta AllowedLag(ElectricCurrent I_1, ElectricCurrent I_q, ElectricPotential V_T, VoltageDrift tc)
    {
        Guard.Positive(I_q);
        Guard.AtLeast(I_1, I_q, hint: "The idle current itself is past the current of gain one: it runs away.");
        Guard.Positive(V_T);
        Guard.Positive(tc);
        var x = I_q / I_1;
        return V_T * (Ln(1 / x) - (1 - x)) / tc;
    }

    /// <summary>What the second resting current satisfies: the drive by its heat is what the junction and the resistance take.</summary>
    /// <param name="I">The current: the unknown.</param>
    /// <param name="V">Voltage across the transistor.</param>
    /// <param name="theta">From the junction to where the spreader follows.</param>
    /// <param name="tc">How much V_BE falls for a kelvin.</param>
    /// <param name="R">All resistance in series.</param>
    /// <param name="V_T">The thermal voltage.</param>
    /// <param name="I_q">The idle current, at which the spreader was set.</param>
    [Formula(Source)]
    public static Balance<ElectricPotential> Resting(ElectricCurrent I, ElectricPotential V, ThermalResistance theta, VoltageDrift tc, ElectricResistance R, ElectricPotential V_T, ElectricCurrent I_q)
    {
        Guard.Positive(I);
        Guard.Positive(I_q);
        return Balance.Of(tc * (theta * (V * (I - I_q))), V_T * Ln(I / I_q) + (I - I_q) * R);
    }

    /// <summary>The current of no return: with the spreader set for I_q and no error left, a junction that was heated until this current flows goes
    /// on by itself; below, it comes back. It lies beyond the current of gain one.</summary>
    /// <param name="V">Voltage across the transistor at idle, one rail at high mains; greater than 0 V.</param>
    /// <param name="theta">From the junction to where the spreader follows; greater than 0 K/W.</param>
    /// <param name="tc">How much V_BE falls for a kelvin, as a positive value; greater than 0 V/K.</param>
    /// <param name="R">All resistance in series: R_E and r_int; greater than 0 Ω.</param>
    /// <param name="V_T">Thermal voltage at the junction's temperature; greater than 0 V.</param>
    /// <param name="I_q">Idle current of one transistor; greater than 0 A and below the current of gain one.</param>
    /// <exception cref="ArgumentOutOfRangeException">No current runs away, or the idle current does already, or an input is out of range.</exception>
    /// <exception cref="InvalidOperationException">No current was found; the message gives the last bracket.</exception>
    [Solves(nameof(Resting))]
    [RecordName("runaway.runaway-threshold-current")]
    public static ElectricCurrent RunawayThresholdCurrent(ElectricPotential V, ThermalResistance theta, VoltageDrift tc, ElectricResistance R, ElectricPotential V_T, ElectricCurrent I_q)
    {
        Guard.Positive(R);
        Guard.Positive(I_q);
        var one = UnityLoopGainCurrent(GreatestGain(V, theta, tc, R, ElectricResistance.Zero), R, ElectricResistance.Zero, V_T).Amperes;
        if (!(I_q.Amperes < one))
            Guard.Refuse(nameof(I_q), I_q, $"below the current of gain one, {QuantityFormat.Short(ElectricCurrent.FromAmperes(one))}", "It runs away from where it is set: larger emitter resistors, a lower thermal resistance, or a sensor nearer to the junctions.");
        // With x = I/I_q: ln x = (x − 1)·I_q/I_1 has the root 1 and another beyond I_1.
        var share = I_q.Amperes / one;
        var steps = 0;
        double Residue(double u)
        {
            steps++;
            return u - ((Math.Exp(u) - 1) * share);
        }

        double low = -Math.Log(share), high = low + 1;
        while (Residue(high) > 0 && high < 500)
            high = 1.5 * high;
        if (!Brent.TryFindRoot(Residue, low, high, 1e-14, 200, out var root))
            throw new InvalidOperationException($"No current of no return was found between {QuantityFormat.Short(ElectricCurrent.FromAmperes(one))} and {QuantityFormat.Short(ElectricCurrent.FromAmperes(I_q.Amperes * Math.Exp(high)))}.");
        SolverTrace.Note(steps);
        return ElectricCurrent.FromAmperes(I_q.Amperes * Math.Exp(root));
    }

    /// <summary>The thermal resistance below which a stage whose heat and current are known over temperature does not run away: ΔT/(ΔI·∂P/∂I).</summary>
    /// <param name="dP_dI">How the transistor's heat moves with its current, W/A: V_CC − 2·I_C·(R_C + R_E) for one with resistors; greater than 0 V.</param>
    /// <param name="dI">How much the current grows; greater than 0 A.</param>
    /// <param name="dT">over this rise; greater than 0 K.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive (a heat that falls as the current grows never runs away).</exception>
    [Formula("Millman & Halkias, Integrated Electronics, ch. 9, eq. for θ < 1/((∂P_C/∂I_C)·(∂I_C/∂T))", Symbol = "theta_max")]
    [RecordName("runaway.allowed-resistance")]
    public static ThermalResistance AllowedResistance(ElectricPotential dP_dI, ElectricCurrent dI, TemperatureDelta dT)
    {
        Guard.Positive(dP_dI, hint: "A heat that falls as the current grows never runs away.");
        Guard.Positive(dI);
        Guard.Positive(dT);
        return dT / (dI * dP_dI);
    }
}
