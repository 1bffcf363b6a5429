using EightOhm.Explaining;
using EightOhm.Numerics;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Thermal;

/// <summary>What an error of the bias voltage does to the idle current of one output transistor.</summary>
/// <remarks>An error comes from a junction that is hotter than the spreader knows: tc·ΔT. The resistance is all that is in series with one
/// junction's share: its emitter resistor and what of the transistor's own resistances counts at its emitter.</remarks>
public static partial class BiasDrift
{
    private const string Source = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 3: exponential model with a series resistor";

    /// <summary>The change for a small error: tc·ΔT/(R_E + r_int + V_T/I_q). For a larger one it is too small, see <see cref="Current"/>.</summary>
    /// <param name="tc">How much V_BE falls for a kelvin, as a positive value; greater than 0 V/K.</param>
    /// <param name="dT">How much hotter the junction is than the spreader knows.</param>
    /// <param name="R_E">Emitter resistor of one transistor; 0 Ω or more.</param>
    /// <param name="r_int">The transistor's own resistance, seen at its emitter; 0 Ω or more.</param>
    /// <param name="V_T">Thermal voltage at the junction's temperature; greater than 0 V.</param>
    /// <param name="I_q">Idle current of one transistor; greater than 0 A.</param>
    /// <returns>The change of the idle current, to first order, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source + ", linearised at I_q", Symbol = "dI_q")]
    [RecordName("bias-drift.idle-current-shift-linear")]
    public static ElectricCurrent IdleCurrentShiftLinear(VoltageDrift tc, TemperatureDelta dT, ElectricResistance R_E, ElectricResistance r_int, ElectricPotential V_T, ElectricCurrent I_q)
    {
        Guard.Positive(tc);
        Guard.NotNegative(R_E);
        Guard.NotNegative(r_int);
        Guard.Positive(V_T);
        Guard.Positive(I_q);
        var R = R_E + r_int + V_T / I_q;
        return tc * dT / R;
    }

    /// <summary>The error of one output junction's share for an error of a V_BE multiplier's own junction: m·dV/n_j.</summary>
    /// <param name="m">The multiplier's factor, V_BB/V_BE; greater than 0.</param>
    /// <param name="dV">How far its V_BE is from what it was when the bias was set, or the spread that no setting takes out, as it counts; 0 V or more.</param>
    /// <param name="n_j">Output junctions in the bias loop that share it: 2 for one npn and one pnp; 1 or more.</param>
    /// <returns>The error at one junction, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Kirchhoff's voltage law around the bias loop, the drivers' junctions unchanged", Symbol = "V_d")]
    [RecordName("bias-drift.spreader-error")]
    public static ElectricPotential SpreaderError(double m, ElectricPotential dV, int n_j)
    {
        Guard.Positive(m);
        Guard.NotNegative(dV);
        Guard.Positive(n_j);
        return m / n_j * dV;
    }

    /// <summary>The error of one output junction's share when junction and sensor have moved from where the bias was set: tc·ΔT_J − (m/n_j)·tc_s·ΔT_s.</summary>
    /// <param name="tc">How much an output junction's V_BE falls for a kelvin, as a positive value; greater than 0 V/K.</param>
    /// <param name="dT_J">How much warmer the junction is than when the bias was set.</param>
    /// <param name="m">The factor of the multiplier on the sensor; greater than 0.</param>
    /// <param name="tc_s">How much the sensor's V_BE falls for a kelvin, as a positive value; greater than 0 V/K.</param>
    /// <param name="dT_s">How much warmer the sensor is.</param>
    /// <param name="n_j">Output junctions in the bias loop that share it: 2 for one npn and one pnp; 1 or more.</param>
    /// <returns>V; positive is too much bias, a current above the set one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Kirchhoff's voltage law around the bias loop, the drivers' junctions unchanged", Symbol = "V_d")]
    [RecordName("bias-drift.tracking-error")]
    public static ElectricPotential TrackingError(VoltageDrift tc, TemperatureDelta dT_J, double m, VoltageDrift tc_s, TemperatureDelta dT_s, int n_j)
    {
        Guard.Positive(tc);
        Guard.Positive(m);
        Guard.Positive(tc_s);
        Guard.Positive(n_j);
        return tc * dT_J - m / n_j * (tc_s * dT_s);
    }

    /// <summary>What the current satisfies: the error is what the junction and the resistance take more.</summary>
    /// <param name="I">The current: the unknown.</param>
    /// <param name="V_d">The error.</param>
    /// <param name="I_q">The current without it.</param>
    /// <param name="R">All resistance in series.</param>
    /// <param name="V_T">The thermal voltage.</param>
    /// <returns>Both sides of the balance, in V; equal where it is solved.</returns>
    [Formula(Source)]
    public static Balance<ElectricPotential> Loop(ElectricCurrent I, ElectricPotential V_d, ElectricCurrent I_q, ElectricResistance R, ElectricPotential V_T)
    {
        Guard.InReach(V_d);
        Guard.InReach(R);
        Guard.InReach(V_T);
        Guard.Positive(I);
        Guard.Positive(I_q);
        return Balance.Of(V_d, V_T * Ln(I / I_q) + (I - I_q) * R);
    }

    /// <summary>The idle current with an error of the bias voltage of one junction.</summary>
    /// <param name="V_d">The error: tc times how much hotter the junction is than the spreader knows; negative for a cooler one.</param>
    /// <param name="I_q">The current without it; greater than 0 A.</param>
    /// <param name="R">All resistance in series: R_E and r_int; 0 Ω or more.</param>
    /// <param name="V_T">Thermal voltage; greater than 0 V.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="InvalidOperationException">No current was found; the message gives the last state.</exception>
    [Solves(nameof(Loop))]
    [RecordName("bias-drift.current")]
    public static ElectricCurrent Current(ElectricPotential V_d, ElectricCurrent I_q, ElectricResistance R, ElectricPotential V_T)
    {
        double d = V_d.Volts, i = Guard.Positive(I_q).Amperes, r = Guard.NotNegative(R).Ohms, vt = Guard.Positive(V_T).Volts;
        Guard.Between(d, -500 * vt, 500 * vt, "the error of the bias voltage in V");
        var current = Solve(d, i, r, vt, out var steps);
        SolverTrace.Note(steps);
        return ElectricCurrent.FromAmperes(current);
    }

    /// <summary>The same in plain numbers. Newton in the logarithm, from a side on which it cannot overshoot.</summary>
    internal static double Solve(double d, double i, double r, double vt, out int steps)
    {
        // For d > 0 the root is below what the junction alone and the resistance alone would take; for d < 0 below 0. The function is convex.
        var u = d <= 0 ? 0 : r > 0 ? Math.Min(d / vt, Exponential.Log1p(d / (r * i))) : d / vt;
        for (steps = 1; steps <= 100; steps++)
        {
            var e = Math.Exp(u);
            var off = (vt * u) + (r * i * Exponential.Expm1(u)) - d;
            var step = off / (vt + (r * i * e));
            u -= step;
            if (Math.Abs(step) <= 1e-14 * (1 + Math.Abs(u)))
                return i * Math.Exp(u);
        }

        throw new InvalidOperationException(FormattableString.Invariant($"No idle current was found for an error of {d:G4} V after {steps - 1} steps; the last was {i * Math.Exp(u):G6} A."));
    }
}
