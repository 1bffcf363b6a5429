using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.OutputStages;

public static partial class ClassB
{
    private const string WorstSource = "resistive: Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14; with phase: derived, 2·V·V_p/(π·Z) − V_p²·cos φ/(2·Z) maximised over V_p ≤ V";

    /// <summary>The worst heat of the ideal stage over all sine levels, both sides together, into what its transistors see.</summary>
    /// <remarks>Up to the phase whose cosine is 2/π (50.46°) the worst level is below full swing; beyond it, it is full swing. It grows with the
    /// phase, either way, so over a range of phases it is that of the largest |φ|. With emitter resistors use the overload that takes them.</remarks>
    /// <param name="V">One rail (not rail to rail), at high mains if that is what counts; greater than 0 V.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <returns>The power dissipation of both sides together, average, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(WorstSource, Symbol = "P_D")]
    [RecordName("class-b.worst")]
    public static Power Worst(ElectricPotential V, ElectricResistance Z, Angle phi)
    {
        Guard.Positive(V);
        Guard.Positive(Z);
        Guard.Between(phi, -90.deg, 90.deg, hint: LoadWithEmitterResistor.Phase90);
        if (Cos(phi) >= 2 / pi)
            return 2 / (pi * pi * Cos(phi)) * (V * V / Z);
        return (4 / pi - Cos(phi)) / 2 * (V * V / Z);
    }

    /// <summary>The worst heat of all 2·n transistors together over all sine levels; the emitter resistors' own heat is not in it.</summary>
    /// <remarks>Into a resistor it is 2·V²/(π²·(R + R_E/n)).</remarks>
    /// <param name="V">One rail (not rail to rail), at high mains if that is what counts; greater than 0 V.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <param name="R_E">Emitter resistor of one transistor; 0 Ω or more.</param>
    /// <param name="n">Pairs in parallel; 1 or more.</param>
    /// <returns>The power dissipation of all transistors together, average, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(WorstSource + ", of the load with R_E/n in series", Symbol = "P_D")]
    [RecordName("class-b.worst")]
    public static Power Worst(ElectricPotential V, ElectricResistance Z, Angle phi, ElectricResistance R_E, int n)
    {
        var Z_s = LoadWithEmitterResistor.Magnitude(Z, phi, R_E, n);
        var phi_s = LoadWithEmitterResistor.Phase(Z, phi, R_E, n);
        return Worst(V, Z_s, phi_s);
    }

    /// <summary>The worst heat of one transistor: that of all, over 2·n.</summary>
    /// <param name="V">One rail (not rail to rail), at high mains if that is what counts; greater than 0 V.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <param name="R_E">Emitter resistor of one transistor; 0 Ω or more.</param>
    /// <param name="n">Pairs in parallel; 1 or more.</param>
    /// <returns>The power dissipation of one transistor, average, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>ClassB.WorstOfOne(50.V, 8.Ohm, 0.deg, 0.22.Ohm, 2)   // 15.62 W</code></example>
    [Formula(WorstSource + "; 2·n transistors", Symbol = "P_one")]
    [RecordName("class-b.worst-of-one")]
    public static Power WorstOfOne(ElectricPotential V, ElectricResistance Z, Angle phi, ElectricResistance R_E, int n) =>
        Worst(V, Z, phi, R_E, n) / (2 * n);

    /// <summary>The load's peak voltage at which the transistors are hottest: 2/π of the rail into a resistor without emitter resistors, full swing from 50.46° on.</summary>
    /// <param name="V">One rail (not rail to rail); greater than 0 V.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <param name="R_E">Emitter resistor of one transistor; 0 Ω or more.</param>
    /// <param name="n">Pairs in parallel; 1 or more.</param>
    /// <returns>The voltage at the load, peak, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(WorstSource, Symbol = "V_p")]
    [RecordName("class-b.worst-level")]
    public static ElectricPotential WorstLevel(ElectricPotential V, ElectricResistance Z, Angle phi, ElectricResistance R_E, int n)
    {
        Guard.Positive(V);
        var Z_s = LoadWithEmitterResistor.Magnitude(Z, phi, R_E, n);
        var phi_s = LoadWithEmitterResistor.Phase(Z, phi, R_E, n);
        if (Cos(phi_s) >= 2 / pi)
            return 2 / (pi * Cos(phi_s)) * V * (Z / Z_s);
        return V * (Z / Z_s);
    }

    /// <summary>Worst heat when the mains is high: it goes with the square of the rail, P·(1 + x)².</summary>
    /// <param name="P">Worst heat at nominal mains; 0 W or more.</param>
    /// <param name="x">How far the mains may be above nominal, such as 10.percent; 0 or more.</param>
    /// <returns>The power dissipation at high mains, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14: the worst heat goes with V²", Symbol = "P_hi")]
    [RecordName("class-b.at-high-mains")]
    public static Power AtHighMains(Power P, Ratio x)
    {
        Guard.NotNegative(P);
        Guard.NotNegative(x, hint: "Low mains is cooler; give the tolerance upwards, for example 10.percent.");
        var m = 1 + x.DecimalFractions;
        return m * m * P;
    }
}
