using EightOhm.Explaining;
using EightOhm.Numerics;
using EightOhm.Quantities;
using MathNet.Numerics.RootFinding;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.InputStages;

/// <summary>Bipolar current sources: their current, their output resistance and what a ripple on their reference makes of it.</summary>
public static partial class CurrentSource
{
    private const string Sedra = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 6";

    /// <summary>The current of a reference voltage behind one V_BE: (V_ref − V_BE)/R_E.</summary>
    /// <param name="V_ref">From the base to the rail: a zener, an LED, two diodes; greater than V_BE.</param>
    /// <param name="V_BE">Base-emitter voltage; 0 V or more.</param>
    /// <param name="R_E">Resistor in the emitter; greater than 0 Ω.</param>
    /// <returns>The current, base current neglected, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>CurrentSource.FromReference(1.9.V, 0.65.V, 312.Ohm)   // 4.006 mA</code></example>
    [Formula(Sedra, Symbol = "I_O")]
    [RecordName("current-source.from-reference")]
    public static ElectricCurrent FromReference(ElectricPotential V_ref, ElectricPotential V_BE, ElectricResistance R_E)
    {
        Guard.NotNegative(V_BE);
        Guard.Positive(V_ref - V_BE, "V_ref less V_BE", "The reference must be above one V_BE.");
        Guard.Positive(R_E);
        return (V_ref - V_BE) / R_E;
    }

    /// <summary>The resistor that feeds a mirror from the rails: (V − V_BE)/I_ref.</summary>
    /// <param name="V">Between the ends of resistor and junction; greater than V_BE.</param>
    /// <param name="V_BE">Base-emitter voltage; 0 V or more.</param>
    /// <param name="I_ref">The current wanted; greater than 0 A.</param>
    /// <returns>The resistor, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Sedra, Symbol = "R_ref")]
    [RecordName("current-source.reference-resistor")]
    public static ElectricResistance ReferenceResistor(ElectricPotential V, ElectricPotential V_BE, ElectricCurrent I_ref)
    {
        Guard.NotNegative(V_BE);
        Guard.Positive(V - V_BE, "V less V_BE", "The rails must be above one V_BE.");
        Guard.Positive(I_ref);
        return (V - V_BE) / I_ref;
    }

    /// <summary>The emitter resistor of a Widlar source: V_T·ln(I_ref/I_O)/I_O.</summary>
    /// <param name="V_T">Thermal voltage; greater than 0 V.</param>
    /// <param name="I_ref">Current of the side without a resistor; greater than I_O.</param>
    /// <param name="I_O">Output current; greater than 0 A.</param>
    /// <returns>The resistor, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>CurrentSource.WidlarResistor(26.mV, 1.mA, 12.uA)   // 9.583 kΩ</code></example>
    [Formula(Sedra + ": the Widlar current source", Symbol = "R_W")]
    [RecordName("current-source.widlar-resistor")]
    public static ElectricResistance WidlarResistor(ElectricPotential V_T, ElectricCurrent I_ref, ElectricCurrent I_O)
    {
        Guard.Positive(V_T);
        Guard.Positive(I_O);
        Guard.NotNegative(I_ref - I_O, "I_ref less I_O", "A resistor in the output's emitter makes its current the smaller one.");
        return Ln(I_ref / I_O) * V_T / I_O;
    }

    /// <summary>What the current of a Widlar source satisfies: the difference of the V_BE is the drop across the resistor.</summary>
    /// <param name="I_O">The output current: the unknown.</param>
    /// <param name="V_T">Thermal voltage.</param>
    /// <param name="I_ref">Current of the side without a resistor.</param>
    /// <param name="R_W">The resistor.</param>
    /// <returns>Both sides of the balance, in V; equal where it is solved.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Sedra + ": the Widlar current source")]
    public static Balance<ElectricPotential> Widlar(ElectricCurrent I_O, ElectricPotential V_T, ElectricCurrent I_ref, ElectricResistance R_W)
    {
        Guard.Positive(I_O);
        Guard.InReach(V_T);
        Guard.Positive(I_ref);
        Guard.InReach(R_W);
        return Balance.Of(Ln(I_ref / I_O) * V_T, I_O * R_W);
    }

    /// <summary>The current of a Widlar source.</summary>
    /// <param name="V_T">Thermal voltage; greater than 0 V.</param>
    /// <param name="I_ref">Current of the side without a resistor; greater than 0 A.</param>
    /// <param name="R_W">The resistor in the output's emitter; 0 Ω or more.</param>
    /// <returns>The output current, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Solves(nameof(Widlar))]
    [RecordName("current-source.widlar-current")]
    public static ElectricCurrent WidlarCurrent(ElectricPotential V_T, ElectricCurrent I_ref, ElectricResistance R_W)
    {
        double vt = Guard.Positive(V_T).Volts, i = Guard.Positive(I_ref).Amperes, r = Guard.NotNegative(R_W).Ohms;
        var steps = 0;
        // With u = ln(I_ref/I_O): u·V_T = I_ref·R·e^−u; the left side rises, the right one falls, and at u = ln(1 + I_ref·R/V_T) the left side is the larger.
        double Residue(double u)
        {
            steps++;
            Work.Checkpoint();
            return u - (i / vt * r * Math.Exp(-u));
        }

        var high = Math.Log(1 + (i / vt * r)) + 1;
        var root = r == 0 ? 0 : Brent.FindRoot(Residue, 0, high, 1e-14, 200);
        SolverTrace.Note(steps);
        return ElectricCurrent.FromAmperes(i * Math.Exp(-root));
    }

    /// <summary>Output resistance of a plain transistor: V_A/I_C.</summary>
    /// <param name="V_A">Early voltage; greater than 0 V.</param>
    /// <param name="I_C">Collector current; greater than 0 A.</param>
    /// <returns>r_o, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 5", Symbol = "r_o")]
    [RecordName("current-source.output-resistance")]
    public static ElectricResistance OutputResistance(ElectricPotential V_A, ElectricCurrent I_C)
    {
        Guard.Positive(V_A);
        Guard.Positive(I_C);
        return V_A / I_C;
    }

    /// <summary>Output resistance with a resistor in the emitter: r_o·(1 + g_m·R_p) + R_p, R_p = R_E∥r_pi.</summary>
    /// <remarks>At most h_FE·r_o, however large the resistor: then the current goes into the base.</remarks>
    /// <param name="r_o">Of the transistor alone; greater than 0 Ω.</param>
    /// <param name="r_e">Its emitter resistance V_T/I_C; greater than 0 Ω.</param>
    /// <param name="h_FE">Its current gain; 1 or more.</param>
    /// <param name="R_E">Resistor in the emitter, base held; greater than 0 Ω.</param>
    /// <returns>The output resistance, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Sedra + ": output resistance with emitter degeneration", Symbol = "R_o")]
    [RecordName("current-source.output-resistance-degenerated")]
    public static ElectricResistance OutputResistanceDegenerated(ElectricResistance r_o, ElectricResistance r_e, double h_FE, ElectricResistance R_E)
    {
        Guard.Positive(r_o);
        Guard.Positive(r_e);
        Guard.Between(h_FE, 1, 1e9);
        var R_p = Parallel(R_E, h_FE * r_e);
        return (1 + R_p / r_e) * r_o + R_p;
    }

    /// <summary>Output resistance of a cascode on an ideal enough source: h_FE·r_o.</summary>
    /// <param name="r_o">Of the cascode transistor; greater than 0 Ω.</param>
    /// <param name="h_FE">Its current gain; 1 or more.</param>
    /// <returns>The output resistance, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Sedra + ": the cascode mirror", Symbol = "R_o")]
    [RecordName("current-source.output-resistance-cascoded")]
    public static ElectricResistance OutputResistanceCascoded(ElectricResistance r_o, double h_FE)
    {
        Guard.Positive(r_o);
        Guard.Between(h_FE, 1, 1e9);
        return h_FE * r_o;
    }

    /// <summary>How much the current changes with the output voltage: dV/R_o.</summary>
    /// <param name="dV">Change of the output voltage; of either sign.</param>
    /// <param name="R_o">Output resistance; greater than 0 Ω.</param>
    /// <returns>The change of the current, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is not positive.</exception>
    [Formula("Ohm's law at the output resistance", Symbol = "dI_O")]
    [RecordName("current-source.change")]
    public static ElectricCurrent Change(ElectricPotential dV, ElectricResistance R_o)
    {
        Guard.InReach(dV);
        Guard.Positive(R_o);
        return dV / R_o;
    }

    /// <summary>The ripple of its current by a ripple that feeds its reference: V_r·r_ref/(R_ref + r_ref)/(R_E + r_e).</summary>
    /// <param name="V_r">Ripple of what feeds the reference, against the source's own rail; 0 V or more.</param>
    /// <param name="r_ref">Differential resistance of the reference; 0 Ω or more.</param>
    /// <param name="R_ref">The resistor that feeds it; greater than 0 Ω.</param>
    /// <param name="R_E">Resistor in the emitter; 0 Ω or more.</param>
    /// <param name="r_e">Emitter resistance of the transistor; greater than 0 Ω.</param>
    /// <returns>The ripple of the current, in the measure of V_r, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 11: line regulation of a reference; over the emitter's resistance", Symbol = "I_r")]
    [RecordName("current-source.ripple")]
    public static ElectricCurrent Ripple(ElectricPotential V_r, ElectricResistance r_ref, ElectricResistance R_ref, ElectricResistance R_E, ElectricResistance r_e)
    {
        Guard.NotNegative(V_r);
        Guard.NotNegative(r_ref);
        Guard.Positive(R_ref);
        Guard.NotNegative(R_E);
        Guard.Positive(r_e);
        return r_ref / (R_ref + r_ref) * V_r / (R_E + r_e);
    }
}
