using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.OutputStages;

/// <summary>Powers of a class-B stage on a sine: no bias, the current in one side at a time, a load |Z|∠φ.</summary>
/// <remarks>V is one rail at the level in question, which is higher than at full output when the supply sags, and higher at high mains.
/// V_p is the load's peak voltage. Pairs in parallel share the current equally; each transistor has its own emitter resistor R_E, so R_E/n is in
/// series with the load. With R_E = 0 Ω and n = 1 the ideal pair of the textbooks remains. Heat of the drivers and the bias are not in it.</remarks>
public static partial class ClassB
{
    private const string Source = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14";
    private const string Reactive = Source + "; with phase: supply less load, as Texas Instruments JAJU844, eq. 16-24";
    private const string PastRail = "The output, its emitter resistors' drop included, cannot swing past the rail.";

    // Full swing itself must pass its own limit however it was rounded.
    private const double Rounding = 1 + 1e-12;

    /// <summary>What both rails deliver together: 2·V·V_p/(π·Z). The phase does not enter.</summary>
    /// <param name="V">One rail (not rail to rail); greater than 0 V.</param>
    /// <param name="V_p">Peak voltage at the load; from 0 V to the rail.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <returns>The power from both rails together, average, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>ClassB.SupplyPower(50.V, 40.V, 8.Ohm)   // 159.2 W</code></example>
    [Formula(Source, Symbol = "P_S")]
    [RecordName("class-b.supply-power")]
    public static Power SupplyPower(ElectricPotential V, ElectricPotential V_p, ElectricResistance Z)
    {
        Guard.Positive(V);
        Guard.Between(V_p, default, V * Rounding, hint: PastRail);
        Guard.Positive(Z);
        return 2 / pi * (V * V_p / Z);
    }

    /// <summary>The mean current of each rail: I_p/π. It comes in half-waves of the peak current.</summary>
    /// <param name="V_p">Peak voltage at the load; 0 V or more.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <returns>The current of one rail, mean, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>ClassB.RailCurrent(40.V, 8.Ohm)   // 1.592 A</code></example>
    [Formula(Source, Symbol = "I_rail")]
    [RecordName("class-b.rail-current")]
    public static ElectricCurrent RailCurrent(ElectricPotential V_p, ElectricResistance Z)
    {
        Guard.NotNegative(V_p);
        Guard.Positive(Z);
        return V_p / Z / pi;
    }

    /// <summary>What the load takes: V_p²·cos φ/(2·Z).</summary>
    /// <param name="V_p">Peak voltage at the load (not rms); 0 V or more.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <returns>The power in the load, average, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>ClassB.LoadPower(40.V, 8.Ohm, 0.deg)   // 100 W</code></example>
    [Formula("C. K. Alexander & M. N. O. Sadiku, Fundamentals of Electric Circuits, 5th ed., ch. 11: average power", Symbol = "P_L")]
    [RecordName("class-b.load-power")]
    public static Power LoadPower(ElectricPotential V_p, ElectricResistance Z, Angle phi)
    {
        Guard.NotNegative(V_p);
        Guard.Positive(Z);
        Guard.Between(phi, -90.deg, 90.deg, hint: LoadWithEmitterResistor.Phase90);
        return Cos(phi) / 2 * (V_p * V_p / Z);
    }

    /// <summary>What all emitter resistors of the stage together take: I_p²·(R_E/n)/2; each of the 2·n takes its equal part.</summary>
    /// <param name="V_p">Peak voltage at the load; 0 V or more.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="R_E">Emitter resistor of one transistor; 0 Ω or more.</param>
    /// <param name="n">Pairs in parallel; 1 or more.</param>
    /// <returns>The power in all emitter resistors together, average, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Joule's law for the half-waves of both sides: a sine of peak I_p in R_E/n", Symbol = "P_R")]
    [RecordName("class-b.resistor-heat")]
    public static Power ResistorHeat(ElectricPotential V_p, ElectricResistance Z, ElectricResistance R_E, int n)
    {
        Guard.NotNegative(V_p);
        Guard.Positive(Z);
        Guard.NotNegative(R_E);
        Guard.Positive(n);
        var I_p = V_p / Z;
        return R_E / (2 * n) * (I_p * I_p);
    }

    /// <summary>The heat of all 2·n transistors together: what the rails deliver less what the load and the emitter resistors take.</summary>
    /// <param name="V">One rail (not rail to rail); greater than 0 V.</param>
    /// <param name="V_p">Peak voltage at the load; from 0 V to full swing, <see cref="FullSwing"/>.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <param name="R_E">Emitter resistor of one transistor; 0 Ω or more.</param>
    /// <param name="n">Pairs in parallel; 1 or more.</param>
    /// <returns>The power dissipation of all 2·n transistors together, average, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Reactive, Symbol = "P_D")]
    [RecordName("class-b.heat")]
    public static Power Heat(ElectricPotential V, ElectricPotential V_p, ElectricResistance Z, Angle phi, ElectricResistance R_E, int n)
    {
        Guard.Between(V_p, default, FullSwing(V, Z, phi, R_E, n) * Rounding, hint: PastRail);
        var P_S = SupplyPower(V, V_p, Z);
        var P_L = LoadPower(V_p, Z, phi);
        var P_R = ResistorHeat(V_p, Z, R_E, n);
        return P_S - P_L - P_R;
    }

    /// <summary>The greatest peak voltage at the load: the rail less the emitter resistors' drop, which for a load with a phase is not in step with it; V·Z/Z_s.</summary>
    /// <remarks>Saturation voltages are not in it: take them off the rail first.</remarks>
    /// <param name="V">One rail (not rail to rail); greater than 0 V.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <param name="R_E">Emitter resistor of one transistor; 0 Ω or more.</param>
    /// <param name="n">Pairs in parallel; 1 or more.</param>
    /// <returns>The voltage at the load, peak, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("C. K. Alexander & M. N. O. Sadiku, Fundamentals of Electric Circuits, 5th ed., ch. 9: voltage division", Symbol = "V_full")]
    [RecordName("class-b.full-swing")]
    public static ElectricPotential FullSwing(ElectricPotential V, ElectricResistance Z, Angle phi, ElectricResistance R_E, int n)
    {
        Guard.Positive(V);
        var Z_s = LoadWithEmitterResistor.Magnitude(Z, phi, R_E, n);
        return V * (Z / Z_s);
    }

    /// <summary>The share of the supply's power that reaches the load: π/4·cos φ·V_p/V, at most 78.5 %.</summary>
    /// <param name="V">One rail (not rail to rail); greater than 0 V.</param>
    /// <param name="V_p">Peak voltage at the load; from 0 V to the rail.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <returns>The efficiency, at most 78.5 %, as a fraction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>ClassB.Efficiency(50.V, 40.V, 0.deg)   // 62.83 %</code></example>
    [Formula(Source, Symbol = "eta")]
    [RecordName("class-b.efficiency")]
    public static Ratio Efficiency(ElectricPotential V, ElectricPotential V_p, Angle phi)
    {
        Guard.Positive(V);
        Guard.Between(V_p, default, V * Rounding, hint: PastRail);
        Guard.Between(phi, -90.deg, 90.deg, hint: LoadWithEmitterResistor.Phase90);
        return Ratio.FromDecimalFractions(pi / 4 * Cos(phi) * (V_p / V));
    }
}
