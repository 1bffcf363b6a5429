using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Supply;

/// <summary>A reservoir that discharges into its bleeder.</summary>
/// <remarks>A charged reservoir burns, throws tools and can kill by rail to rail. A bleeder may have failed: measure before touching, on every reservoir.
/// What counts as safe to touch, and how soon, is said by the standard that applies (IEC 62368-1 names 60 V dc as its lowest class, as secondary pages
/// quote it) and by local codes; this is arithmetic, not a permission.</remarks>
public static partial class Discharge
{
    private const string Source = "OpenStax, College Physics, ch. 21.6: RC discharge";

    /// <summary>The time from one voltage down to another: R·C·ln(V_0/V).</summary>
    /// <param name="V_0">Voltage at the start; greater than 0 V.</param>
    /// <param name="V">Voltage at the end; greater than 0 V, at most V_0.</param>
    /// <param name="R">Bleeder, with all else that discharges; greater than 0 Ω.</param>
    /// <param name="C">Capacitance; greater than 0 F.</param>
    /// <returns>The time, in s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>Discharge.TimeTo(50.V, 10.V, 2.2.kOhm, 10.mF)   // 35.41 s</code></example>
    [Formula(Source, Symbol = "t")]
    [RecordName("discharge.time-to")]
    public static Duration TimeTo(ElectricPotential V_0, ElectricPotential V, ElectricResistance R, ElectricCapacitance C)
    {
        Guard.Positive(V, hint: "An exponential never reaches zero; give the voltage that is low enough.");
        Guard.Between(V, default, V_0);
        Guard.Positive(R);
        Guard.Positive(C);
        return R * C * Ln(V_0 / V);
    }

    /// <summary>The voltage left after a time: V_0·e^(−t/RC).</summary>
    /// <param name="V_0">Voltage at the start; 0 V or more.</param>
    /// <param name="t">Time; 0 s or more.</param>
    /// <param name="R">Bleeder; greater than 0 Ω.</param>
    /// <param name="C">Capacitance; greater than 0 F.</param>
    /// <returns>The voltage left, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "V")]
    [RecordName("discharge.voltage-after")]
    public static ElectricPotential VoltageAfter(ElectricPotential V_0, Duration t, ElectricResistance R, ElectricCapacitance C)
    {
        Guard.NotNegative(V_0);
        Guard.NotNegative(t);
        Guard.Positive(R);
        Guard.Positive(C);
        var tau = R * C;
        return V_0 * Exp(-(t / tau));
    }

    /// <summary>The largest bleeder that discharges in a time: t/(C·ln(V_0/V)).</summary>
    /// <param name="t">Time allowed; greater than 0 s.</param>
    /// <param name="C">Capacitance; greater than 0 F.</param>
    /// <param name="V_0">Voltage at the start; above V.</param>
    /// <param name="V">Voltage at the end; greater than 0 V.</param>
    /// <returns>The largest resistance that still discharges in time, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>Discharge.Bleeder(60.s, 10.mF, 50.V, 10.V)   // 3.728 kΩ</code></example>
    [Formula(Source, Symbol = "R")]
    [RecordName("discharge.bleeder")]
    public static ElectricResistance Bleeder(Duration t, ElectricCapacitance C, ElectricPotential V_0, ElectricPotential V)
    {
        Guard.Positive(t);
        Guard.Positive(C);
        Guard.Positive(V);
        Guard.Positive(V_0 - V, nameof(V_0), "The start must be above the end, or no bleeder is needed.");
        var tau = t / Ln(V_0 / V);
        return tau / C;
    }

    /// <summary>The energy stored: C·V²/2.</summary>
    /// <param name="C">Capacitance; greater than 0 F.</param>
    /// <param name="V">Voltage; 0 V or more.</param>
    /// <returns>The energy, in J.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>Discharge.StoredEnergy(10.mF, 50.V)   // 12.5 J</code></example>
    [Formula("OpenStax, College Physics, ch. 19.7", Symbol = "E")]
    [RecordName("discharge.stored-energy")]
    public static Energy StoredEnergy(ElectricCapacitance C, ElectricPotential V)
    {
        Guard.Positive(C);
        Guard.NotNegative(V);
        return C * V * V / 2;
    }

    /// <summary>The charge stored: C·V.</summary>
    /// <param name="C">Capacitance; greater than 0 F.</param>
    /// <param name="V">Voltage; 0 V or more.</param>
    /// <returns>The charge, in C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("OpenStax, College Physics, ch. 19.5", Symbol = "Q")]
    [RecordName("discharge.stored-charge")]
    public static ElectricCharge StoredCharge(ElectricCapacitance C, ElectricPotential V)
    {
        Guard.Positive(C);
        Guard.NotNegative(V);
        return C * V;
    }

    /// <summary>The power dissipation of the bleeder while the amplifier is on: V²/R.</summary>
    /// <param name="V">Voltage across it, at high mains; 0 V or more.</param>
    /// <param name="R">Bleeder; greater than 0 Ω.</param>
    /// <returns>The power dissipation of the bleeder, dc, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Joule's law: V²/R", Symbol = "P")]
    [RecordName("discharge.heat")]
    public static Power PowerDissipation(ElectricPotential V, ElectricResistance R)
    {
        Guard.NotNegative(V);
        Guard.Positive(R);
        return V * V / R;
    }
}
