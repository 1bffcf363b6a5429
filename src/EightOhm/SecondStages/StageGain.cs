using EightOhm.Devices;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.SecondStages;

/// <summary>Small signals of a common-emitter stage: what it gives and what it asks of the stage before.</summary>
public static partial class StageGain
{
    private const string Source = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 5: common emitter with an emitter resistance";

    /// <summary>Transconductance with an emitter resistor: 1/(V_T/I + R_E).</summary>
    /// <param name="I">Standing current; greater than 0 A.</param>
    /// <param name="R_E">Emitter resistor; 0 Ω or more.</param>
    /// <param name="T_J">Junction temperature; above 0 K.</param>
    /// <returns>The transconductance, in S.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>StageGain.Transconductance(10.mA, 22.Ohm, 60.degC)   // 40.21 mS</code></example>
    [Formula(Source, Symbol = "g_m2")]
    [RecordName("stage-gain.transconductance")]
    public static ElectricConductance Transconductance(ElectricCurrent I, ElectricResistance R_E, Temperature T_J)
    {
        Guard.Positive(I);
        Guard.NotNegative(R_E);
        var r_e = Junction.ThermalVoltage(T_J) / I;
        return 1 / (r_e + R_E);
    }

    /// <summary>Voltage gain of the stage, as a magnitude: g_m·R.</summary>
    /// <param name="g_m">Transconductance; greater than 0 S.</param>
    /// <param name="R">All resistance to ground at its output; greater than 0 Ω.</param>
    /// <returns>The gain; the stage inverts.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "A_2")]
    [RecordName("stage-gain.voltage")]
    public static Gain Voltage(ElectricConductance g_m, ElectricResistance R)
    {
        Guard.Positive(g_m);
        Guard.Positive(R);
        return Gain.FromRatio(g_m * R);
    }

    /// <summary>Resistance into the base: h_FE·V_T/I + (1 + h_FE)·R_E.</summary>
    /// <param name="I">Standing current; greater than 0 A.</param>
    /// <param name="h_FE">Current gain; greater than 0.</param>
    /// <param name="R_E">Emitter resistor, or all resistance that the emitter sees; 0 Ω or more.</param>
    /// <param name="V_T">Thermal voltage at the junction's temperature; greater than 0 V.</param>
    /// <returns>The resistance, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>StageGain.InputResistance(10.mA, 100, 22.Ohm, 26.mV)   // 2.482 kΩ</code></example>
    [Formula(Source, Symbol = "R_in")]
    [RecordName("stage-gain.input-resistance")]
    public static ElectricResistance InputResistance(ElectricCurrent I, double h_FE, ElectricResistance R_E, ElectricPotential V_T)
    {
        Guard.Positive(I);
        Guard.Positive(h_FE);
        Guard.NotNegative(R_E);
        Guard.Positive(V_T);
        var r_pi = h_FE * (V_T / I);
        return r_pi + (1 + h_FE) * R_E;
    }

    /// <summary>Standing current of a follower in front: the base current it feeds and what the resistor from its emitter takes.</summary>
    /// <param name="I">Standing current of the stage; greater than 0 A.</param>
    /// <param name="h_FE">Current gain of the stage's transistor; greater than 0.</param>
    /// <param name="V_B">Voltage at the stage's base, from the rail: V_BE and the drop of its emitter resistor; greater than 0 V.</param>
    /// <param name="R_B">From the follower's emitter to that rail; greater than 0 Ω.</param>
    /// <returns>The current, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula("D. A. Neamen, Electronic Circuit Analysis and Design, ch. 13: a second stage of two transistors", Symbol = "I_f")]
    [RecordName("stage-gain.follower-current")]
    public static ElectricCurrent FollowerCurrent(ElectricCurrent I, double h_FE, ElectricPotential V_B, ElectricResistance R_B)
    {
        Guard.Positive(I);
        Guard.Positive(h_FE);
        Guard.Positive(V_B);
        Guard.Positive(R_B);
        return I / h_FE + V_B / R_B;
    }
}
