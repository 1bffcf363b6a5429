using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <summary>Closed forms of the crossover of complementary followers with emitter resistors, pairs in parallel, no base current.</summary>
/// <remarks>R is the whole resistance in one emitter: R_E outside and r_int inside the device.</remarks>
public static partial class Crossover
{
    private const string ClassAb = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14, output resistance of the class AB stage";

    /// <summary>Incremental emitter resistance: V_T/I.</summary>
    /// <param name="V_T">Thermal voltage at the junction's temperature; greater than 0 V.</param>
    /// <param name="I">Current of one device; greater than 0 A.</param>
    /// <returns>The small-signal resistance r_e of the junction, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 5", Symbol = "r_e")]
    [RecordName("crossover.emitter-resistance")]
    public static ElectricResistance EmitterResistance(ElectricPotential V_T, ElectricCurrent I)
    {
        Guard.Positive(V_T);
        Guard.Positive(I);
        return V_T / I;
    }

    /// <summary>Gain at zero output, both sides of every pair sharing: R_L/(R_L + (V_T/I_q + R)/(2·n)).</summary>
    /// <param name="R_L">Load; greater than 0 Ω.</param>
    /// <param name="V_T">Thermal voltage at the junction's temperature; greater than 0 V.</param>
    /// <param name="I_q">Idle current of one device; greater than 0 A.</param>
    /// <param name="R">Whole resistance in one emitter; 0 Ω or more.</param>
    /// <param name="n">Pairs; 1 or more.</param>
    /// <returns>The incremental gain at the zero crossing, below 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(ClassAb + ", with a resistance in each emitter", Symbol = "A_0")]
    [RecordName("crossover.gain-at-zero")]
    public static Gain GainAtZero(ElectricResistance R_L, ElectricPotential V_T, ElectricCurrent I_q, ElectricResistance R, int n)
    {
        Guard.Positive(R_L);
        Guard.Positive(V_T);
        Guard.Positive(I_q);
        Guard.NotNegative(R);
        Guard.Positive(n);
        return Gain.FromRatio(R_L / (R_L + (V_T / I_q + R) / (2 * n)));
    }

    /// <summary>What the gain tends to where one side carries a large current: R_L/(R_L + R/n).</summary>
    /// <param name="R_L">Load; greater than 0 Ω.</param>
    /// <param name="R">Whole resistance in one emitter; 0 Ω or more.</param>
    /// <param name="n">Pairs; 1 or more.</param>
    /// <returns>The incremental gain far out, below 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(ClassAb + ", one side off, r_e gone to zero", Symbol = "A_far")]
    [RecordName("crossover.large-signal-gain")]
    public static Gain LargeSignalGain(ElectricResistance R_L, ElectricResistance R, int n)
    {
        Guard.Positive(R_L);
        Guard.NotNegative(R);
        Guard.Positive(n);
        return Gain.FromRatio(R_L / (R_L + R / n));
    }

    /// <summary>Output resistance behind a gain: R_L·(1/A − 1).</summary>
    /// <param name="A">Incremental gain; greater than 0, at most 1.</param>
    /// <param name="R_L">Load; greater than 0 Ω.</param>
    /// <returns>The output resistance, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(ClassAb, Symbol = "R_o")]
    [RecordName("crossover.output-resistance")]
    public static ElectricResistance OutputResistance(Gain A, ElectricResistance R_L)
    {
        Guard.Positive(R_L);
        Guard.Positive(A.Ratio, nameof(A));
        Guard.Between(A.Ratio, 0, 1, nameof(A), "The incremental gain of a follower is below 1.");
        return R_L * (1 / A.Ratio - 1);
    }

    /// <summary>The idle current of one device that makes the gain at zero and far out equal: V_T/(R_E + r_int), so that r_e is the whole resistance.</summary>
    /// <remarks>V_T is across the WHOLE resistance, so the external resistor reads less: see
    /// <see cref="EmitterResistorDrop(ElectricPotential, ElectricResistance, ElectricResistance)"/>. Between zero and far out a dip of the gain remains.</remarks>
    /// <param name="V_T">Thermal voltage at the junction's temperature, not at the room's; greater than 0 V.</param>
    /// <param name="R_E">Emitter resistor of one device; greater than 0 Ω.</param>
    /// <param name="r_int">Resistance inside the device that acts in series with its emitter, the base's over h_FE included; 0 Ω or more.</param>
    /// <returns>The idle current of one device, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("B. M. Oliver, Hewlett-Packard Journal, Feb. 1971", Symbol = "I_q")]
    [RecordName("crossover.equal-gain-current")]
    public static ElectricCurrent EqualGainCurrent(ElectricPotential V_T, ElectricResistance R_E, ElectricResistance r_int)
    {
        Guard.Positive(V_T);
        Guard.Positive(R_E);
        Guard.NotNegative(r_int);
        return V_T / (R_E + r_int);
    }

    /// <summary>The same where the base resistance is known apart: V_T/(R_E + r_int + r_b/h_FE).</summary>
    /// <param name="V_T">Thermal voltage at the junction's temperature, not at the room's; greater than 0 V.</param>
    /// <param name="R_E">Emitter resistor of one device; greater than 0 Ω.</param>
    /// <param name="r_int">Resistance inside the device in series with its emitter; 0 Ω or more.</param>
    /// <param name="r_b">Base resistance of one device, stopper included; 0 Ω or more.</param>
    /// <param name="h_FE">Current gain; 1 or more.</param>
    /// <returns>The idle current of one device, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("B. M. Oliver, Hewlett-Packard Journal, Feb. 1971", Symbol = "I_q")]
    [RecordName("crossover.equal-gain-current")]
    public static ElectricCurrent EqualGainCurrent(ElectricPotential V_T, ElectricResistance R_E, ElectricResistance r_int, ElectricResistance r_b, double h_FE)
    {
        Guard.Positive(V_T);
        Guard.Positive(R_E);
        Guard.NotNegative(r_int);
        Guard.NotNegative(r_b);
        Guard.Between(h_FE, 1, 1e9);
        return EqualGainCurrent(V_T, R_E, r_int + r_b / h_FE);
    }

    /// <summary>What a meter reads across the external resistor at that current: V_T·R_E/(R_E + r_int).</summary>
    /// <param name="V_T">Thermal voltage at the junction's temperature; greater than 0 V.</param>
    /// <param name="R_E">Emitter resistor of one device; greater than 0 Ω.</param>
    /// <param name="r_int">Resistance inside the device that acts in series with its emitter, the base's over h_FE included; 0 Ω or more.</param>
    /// <returns>The drop across one external emitter resistor, dc, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("B. M. Oliver, Hewlett-Packard Journal, Feb. 1971", Symbol = "V_RE")]
    [RecordName("crossover.emitter-resistor-drop")]
    public static ElectricPotential EmitterResistorDrop(ElectricPotential V_T, ElectricResistance R_E, ElectricResistance r_int) =>
        EqualGainCurrent(V_T, R_E, r_int) * R_E;

    /// <summary>The same where the base resistance is known apart: V_T·R_E/(R_E + r_int + r_b/h_FE).</summary>
    /// <param name="V_T">Thermal voltage at the junction's temperature; greater than 0 V.</param>
    /// <param name="R_E">Emitter resistor of one device; greater than 0 Ω.</param>
    /// <param name="r_int">Resistance inside the device in series with its emitter; 0 Ω or more.</param>
    /// <param name="r_b">Base resistance of one device, stopper included; 0 Ω or more.</param>
    /// <param name="h_FE">Current gain; 1 or more.</param>
    /// <returns>The drop across one external emitter resistor, dc, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("B. M. Oliver, Hewlett-Packard Journal, Feb. 1971", Symbol = "V_RE")]
    [RecordName("crossover.emitter-resistor-drop")]
    public static ElectricPotential EmitterResistorDrop(ElectricPotential V_T, ElectricResistance R_E, ElectricResistance r_int, ElectricResistance r_b, double h_FE) =>
        EqualGainCurrent(V_T, R_E, r_int, r_b, h_FE) * R_E;
}
