using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <summary>Two equal class-B stages in bridge: each drives one end of the load, in opposite phase, so that the load has twice the swing and each stage sees half the load.</summary>
/// <remarks>Neither terminal of the loudspeaker is ground: nothing grounded may be joined to it, no measuring instrument's shell either. A dc error of either half
/// stands across the loudspeaker. Each half must be able to drive half the load's magnitude at the whole phase, safe area and protection included.</remarks>
public static partial class BridgedStage
{
    private const string Source = "National Semiconductor, LM4868 datasheet: bridge mode doubles the swing and makes four times the output power; each amplifier has half the load's voltage at the load's current";

    /// <summary>The load that each half sees: Z/2, with the load's own phase.</summary>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <returns>The magnitude of the load of one half, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">It is not positive.</exception>
    [Formula(Source, Symbol = "Z_half")]
    [RecordName("bridged-stage.load-of-half")]
    public static ElectricResistance LoadOfHalf(ElectricResistance Z)
    {
        Guard.Positive(Z);
        return Z / 2;
    }

    /// <summary>The load's peak voltage: 2·V_p.</summary>
    /// <param name="V_p">Peak voltage of one half against ground; 0 V or more.</param>
    /// <returns>The voltage across the load, peak, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">It is negative.</exception>
    [Formula(Source, Symbol = "V_L")]
    [RecordName("bridged-stage.swing")]
    public static ElectricPotential Swing(ElectricPotential V_p)
    {
        Guard.NotNegative(V_p);
        return 2 * V_p;
    }

    /// <summary>What the load takes: four times what one half gives the same load, (2·V_p)²·cos φ/(2·Z).</summary>
    /// <param name="V_p">Peak voltage of one half against ground; 0 V or more.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <returns>The power in the load, average, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "P_L")]
    [RecordName("bridged-stage.load-power")]
    public static Power LoadPower(ElectricPotential V_p, ElectricResistance Z, Angle phi) => ClassB.LoadPower(Swing(V_p), Z, phi);

    /// <summary>Power dissipation of the transistors of both halves together.</summary>
    /// <param name="V">One rail of a half (not rail to rail); half the supply where a half works between a single supply and ground; greater than 0 V.</param>
    /// <param name="V_p">Peak voltage of one half against its middle; from 0 V to its full swing.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <param name="R_E">Emitter resistor of one transistor; 0 Ω or more.</param>
    /// <param name="n">Pairs in parallel in each half; 1 or more.</param>
    /// <returns>The power dissipation of all transistors together, average, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source + "; class B of each half into half the load", Symbol = "P_D")]
    [RecordName("bridged-stage.dissipation")]
    public static Power Dissipation(ElectricPotential V, ElectricPotential V_p, ElectricResistance Z, Angle phi, ElectricResistance R_E, int n) =>
        2 * ClassB.Heat(V, V_p, LoadOfHalf(Z), phi, R_E, n);

    /// <summary>The worst mean dissipation of both halves over all sine levels: twice that of a half into half the load. Four times that of one stage on the same load.</summary>
    /// <param name="V">One rail of a half (not rail to rail); half the supply where a half works between a single supply and ground; greater than 0 V.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <returns>The power dissipation of all transistors together, average, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source + "; class B of each half into half the load", Symbol = "P_D")]
    [RecordName("bridged-stage.worst-dissipation")]
    public static Power WorstDissipation(ElectricPotential V, ElectricResistance Z, Angle phi) => 2 * ClassB.Worst(V, LoadOfHalf(Z), phi);
}
