using EightOhm.Devices;
using EightOhm.Explaining;
using EightOhm.Numerics;
using EightOhm.Quantities;
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
    private const int Looks = 2000;

    // Beyond this nothing of silicon is left.
    internal static readonly Temperature Destroyed = 300.degC;

    private const string Source = "Millman & Halkias, Integrated Electronics, ch. 9: thermal runaway, (∂P/∂I)·(∂I/∂T)·θ < 1, with the exponential junction and R in series";

    /// <summary>Loop gain at the idle current: tc·θ·V·I_q/((R_E + r_int)·I_q + V_T), which is V·θ·tc/(R_E + r_int + r_e). Stable there below one.</summary>
    /// <param name="V">Voltage across the transistor at idle, one rail at high mains; greater than 0 V.</param>
    /// <param name="theta">From the junction to where the spreader follows; greater than 0 K/W.</param>
    /// <param name="tc">How much V_BE falls for a kelvin, as a positive value; greater than 0 V/K.</param>
    /// <param name="R_E">Emitter resistor of one transistor; 0 Ω or more.</param>
    /// <param name="r_int">The transistor's own resistance, seen at its emitter; 0 Ω or more.</param>
    /// <param name="V_T">Thermal voltage at the junction's temperature; greater than 0 V.</param>
    /// <param name="I_q">Idle current of one transistor; greater than 0 A.</param>
    /// <returns>The loop gain, a plain number; stable below 1.</returns>
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
    /// <returns>The loop gain, a plain number.</returns>
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

    /// <summary>The current of unity loop gain: V_T/((R_E + r_int)·(A_max − 1)). Past it the current runs away by itself.</summary>
    /// <param name="A_max">The gain at a very large current, <see cref="GreatestGain"/>; greater than 1.</param>
    /// <param name="R_E">Emitter resistor of one transistor; with r_int greater than 0 Ω.</param>
    /// <param name="r_int">The transistor's own resistance, seen at its emitter; 0 Ω or more.</param>
    /// <param name="V_T">Thermal voltage at the junction's temperature; greater than 0 V.</param>
    /// <returns>The threshold current of one device, in A.</returns>
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
    /// <param name="I_1">The current of unity loop gain, <see cref="UnityLoopGainCurrent"/>; at least I_q.</param>
    /// <param name="I_q">Idle current of one transistor; greater than 0 A.</param>
    /// <param name="V_T">Thermal voltage at the junction's temperature; greater than 0 V.</param>
    /// <param name="tc">How much V_BE falls for a kelvin, as a positive value; greater than 0 V/K.</param>
    /// <returns>The temperature lag allowed, in K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source + ": the greatest of V_T·ln(I/I_q) − (V_T/I_1)·(I − I_q)", Symbol = "dT_late")]
    [RecordName("runaway.allowed-lag")]
    public static TemperatureDelta AllowedLag(ElectricCurrent I_1, ElectricCurrent I_q, ElectricPotential V_T, VoltageDrift tc)
    {
        Guard.Positive(I_q);
        Guard.AtLeast(I_1, I_q, hint: "The idle current itself is past the current of unity loop gain: it runs away.");
        Guard.Positive(V_T);
        Guard.Positive(tc);
        var x = I_q / I_1;
        return V_T * (Ln(1 / x) - (1 - x)) / tc;
    }

    /// <summary>What a second resting current satisfies: the drive by its heat is what the junction, at its own temperature, and the resistance take.</summary>
    /// <param name="I">The current: the unknown.</param>
    /// <param name="V">Voltage across the transistor.</param>
    /// <param name="theta">From the junction to where the spreader follows.</param>
    /// <param name="tc">How much V_BE falls for a kelvin at I_q.</param>
    /// <param name="R">All resistance in series.</param>
    /// <param name="T_q">Junction temperature at the idle current.</param>
    /// <param name="I_q">The idle current, at which the spreader was set.</param>
    /// <returns>Both sides of the balance, in V; equal where it is solved.</returns>
    [Formula(Source + "; V_T at the junction's own temperature")]
    public static Balance<ElectricPotential> Resting(ElectricCurrent I, ElectricPotential V, ThermalResistance theta, VoltageDrift tc, ElectricResistance R, Temperature T_q, ElectricCurrent I_q)
    {
        Guard.InReach(V);
        Guard.InReach(theta);
        Guard.InReach(tc);
        Guard.InReach(R);
        Guard.Positive(I);
        Guard.Positive(I_q);
        var rise = theta * (V * (I - I_q));
        var V_T = Junction.ThermalVoltage(T_q + rise);
        return Balance.Of(tc * rise, V_T * Ln(I / I_q) + (I - I_q) * R);
    }

    /// <summary>The runaway threshold current: with the spreader set for I_q and no error left, a junction that was heated until this current flows goes
    /// on by itself; below, it comes back. It lies beyond the current of unity loop gain.</summary>
    /// <remarks>V_T is that of the junction at the threshold itself: frozen at the idle temperature it gives too low a current, or one where there is none.
    /// Two large terms nearly cancel in it, so it is good to one digit: see <see cref="Threshold"/>, which tells the junction beside it.</remarks>
    /// <param name="V">Voltage across the transistor at idle, one rail at high mains; greater than 0 V.</param>
    /// <param name="theta">From the junction to where the spreader follows; greater than 0 K/W.</param>
    /// <param name="tc">How much V_BE falls for a kelvin at I_q, as a positive value; greater than 0 V/K.</param>
    /// <param name="R">All resistance in series: R_E and r_int; greater than 0 Ω.</param>
    /// <param name="T_q">Junction temperature at the idle current; below 300 °C.</param>
    /// <param name="I_q">Idle current of one transistor; greater than 0 A and below the current of unity loop gain.</param>
    /// <returns>A, of one transistor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No current runs away before the junction is at 300 °C, or the idle current does already, or an input is out of range.</exception>
    [Solves(nameof(Resting))]
    [RecordName("runaway.runaway-threshold-current")]
    public static ElectricCurrent RunawayThresholdCurrent(ElectricPotential V, ThermalResistance theta, VoltageDrift tc, ElectricResistance R, Temperature T_q, ElectricCurrent I_q)
    {
        if (Found(V, theta, tc, R, T_q, I_q, out var steps) is { } found)
        {
            SolverTrace.Note(steps);
            return found;
        }

        Guard.Refuse(nameof(theta), theta, $"so large that a current runs away before its junction is at {QuantityFormat.Short(Destroyed)}", "It does not: ask Runaway.Threshold for the current at which the junction limit is passed.");
        return default;
    }

    /// <summary>What happens to an output transistor that something heats past its idle current: where its junction limit is passed, and from where on it runs away by itself.</summary>
    /// <param name="V">Voltage across the transistor at idle, one rail at high mains; greater than 0 V.</param>
    /// <param name="theta">From the junction to where the spreader follows; greater than 0 K/W.</param>
    /// <param name="tc">How much V_BE falls for a kelvin at I_q, as a positive value; greater than 0 V/K.</param>
    /// <param name="R">All resistance in series: R_E and r_int; greater than 0 Ω.</param>
    /// <param name="T_q">Junction temperature at the idle current; below the limit.</param>
    /// <param name="I_q">Idle current of one transistor; greater than 0 A and below the current of unity loop gain.</param>
    /// <param name="T_J">Junction limit; at most 300 °C.</param>
    /// <returns>Both currents, with the junction beside each.</returns>
    /// <example><code>Runaway.Threshold(46.V, 3.58.K_per_W, 2.1.mV_per_K, 0.2725.Ohm, 52.degC, 103.8.mA, 150.degC)</code></example>
    /// <exception cref="ArgumentOutOfRangeException">The idle current runs away already, or an input is out of range.</exception>
    [Worked("the two currents at which the loop balances: the resting one and the one past which it runs away")]
    public static RunawayThreshold Threshold(ElectricPotential V, ThermalResistance theta, VoltageDrift tc, ElectricResistance R, Temperature T_q, ElectricCurrent I_q, Temperature T_J)
    {
        Guard.Between(T_J, T_q, Destroyed, hint: "The junction limit lies above the junction at idle.");
        var found = Found(V, theta, tc, R, T_q, I_q, out _);
        return new(found, found is { } I ? T_q + (theta * (V * (I - I_q))) : null, I_q + ((T_J - T_q) / theta / V), T_J);
    }

    // Null where none runs away before the junction is past silicon.
    private static ElectricCurrent? Found(ElectricPotential V, ThermalResistance theta, VoltageDrift tc, ElectricResistance R, Temperature T_q, ElectricCurrent I_q, out int steps)
    {
        double i = Guard.Positive(I_q).Amperes, r = Guard.Positive(R).Ohms, warms = Guard.Positive(theta).Si * Guard.Positive(V).Volts, fall = Guard.Positive(tc).Si, perKelvin = Junction.ThermalVoltage(T_q).Volts / T_q.Kelvins;
        Guard.Between(T_q, default, Destroyed);
        var gain = LoopGain(V, theta, tc, R, ElectricResistance.Zero, Junction.ThermalVoltage(T_q), I_q);
        if (!(gain < 1))
            Guard.Refuse(nameof(I_q), I_q, $"such that the loop gain there is below one (it is {QuantityFormat.Short(gain, 3)})", "It runs away from where it is set: larger emitter resistors, a lower thermal resistance, or a sensor nearer to the junctions.");
        var looks = 0;
        double Spare(double u)
        {
            looks++;
            var more = i * Exponential.Expm1(u);
            return (perKelvin * (T_q.Kelvins + (warms * more)) * u) + (r * more) - (fall * warms * more);
        }

        // From the idle current, where nothing is spare and the slope is upwards, to the end of silicon: the first place where nothing is spare again.
        var end = Exponential.Log1p((Destroyed - T_q).Kelvins / warms / i);
        ElectricCurrent? found = null;
        if (Scan.FirstAbove(u => -Spare(u), 0, end, Looks, first: 2) is var (low, high))
        {
            double root;
            // With a loop gain of almost one it runs away nearer to idle than the first look; of one to the last digit, at idle.
            for (; !Brent.TryFindRoot(Spare, low, high, 1e-14, 200, out root); (low, high) = (low / 2, low))
            {
                if (low < 1e-12)
                {
                    root = 0;
                    break;
                }
            }

            found = ElectricCurrent.FromAmperes(i * Math.Exp(root));
        }

        steps = looks;
        return found;
    }

    /// <summary>The thermal resistance below which a stage whose heat and current are known over temperature does not run away: ΔT/(ΔI·∂P/∂I).</summary>
    /// <param name="dP_dI">How the transistor's heat moves with its current, W/A: V_CC − 2·I_C·(R_C + R_E) for one with resistors; greater than 0 V.</param>
    /// <param name="dI">How much the current grows; greater than 0 A.</param>
    /// <param name="dT">over this rise; greater than 0 K.</param>
    /// <returns>The thermal resistance, in K/W.</returns>
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
