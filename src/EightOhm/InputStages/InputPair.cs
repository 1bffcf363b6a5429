using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.InputStages;

/// <summary>The bipolar differential pair: what its tail current, its emitter resistors and its mirror make of an input.</summary>
/// <remarks>With a mirror the whole change of current, not half of it, reaches the next stage. Source: Sedra &amp; Smith, Microelectronic Circuits, 5th ed., ch. 7.</remarks>
public static partial class InputPair
{
    private const string Source = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 7";

    /// <summary>Transconductance with a mirror: 1/(r_e + R_deg).</summary>
    /// <remarks>Not half of it: the mirror turns the current of one half round and adds it to the other's.</remarks>
    /// <param name="r_e">Emitter resistance V_T/I_C of one device; greater than 0 Ω.</param>
    /// <param name="R_deg">Resistor in each emitter; 0 Ω or more.</param>
    /// <returns>Output current over differential input, in S.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>InputPair.Transconductance(13.7.Ohm, 47.Ohm)   // 16.47 mS</code></example>
    [Formula(Source, Symbol = "G_m")]
    [RecordName("input-pair.transconductance")]
    public static ElectricConductance Transconductance(ElectricResistance r_e, ElectricResistance R_deg)
    {
        Guard.Positive(r_e);
        Guard.NotNegative(R_deg);
        return 1 / (r_e + R_deg);
    }

    /// <summary>Transconductance of one half taken alone, without a mirror: 1/(2·(r_e + R_deg)).</summary>
    /// <param name="r_e">Emitter resistance V_T/I_C of one device; greater than 0 Ω.</param>
    /// <param name="R_deg">Resistor in each emitter; 0 Ω or more.</param>
    /// <returns>Current of one collector over differential input, in S.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "G_m")]
    [RecordName("input-pair.transconductance-of-half")]
    public static ElectricConductance TransconductanceOfHalf(ElectricResistance r_e, ElectricResistance R_deg)
    {
        Guard.Positive(r_e);
        Guard.NotNegative(R_deg);
        return 1 / (2 * (r_e + R_deg));
    }

    /// <summary>The differential input that turns a share of the tail current over: V_T·ln((1 + a)/(1 − a)) + a·I_tail·R_deg.</summary>
    /// <remarks>The hyperbolic tangent never ends, so an input range needs its share: 90 % is usual here. The share is (I_1 − I_2)/I_tail.</remarks>
    /// <param name="a">Share of the tail current; 0 or more, below one.</param>
    /// <param name="V_T">Thermal voltage; greater than 0 V.</param>
    /// <param name="I_tail">Tail current; greater than 0 A.</param>
    /// <param name="R_deg">Resistor in each emitter; 0 Ω or more.</param>
    /// <returns>The differential input, peak, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>InputPair.Range(90.percent, 25.69.mV, 4.mA, 22.Ohm)   // 154.8 mV</code></example>
    [Formula(Source + ": i = I·tanh(v/2V_T), solved for v", Symbol = "v_d")]
    [RecordName("input-pair.range")]
    public static ElectricPotential Range(Ratio a, ElectricPotential V_T, ElectricCurrent I_tail, ElectricResistance R_deg)
    {
        Guard.Between(a.DecimalFractions, 0, 0.999999, nameof(a), "The whole tail current is reached at no input: give a share such as 90.percent.");
        Guard.Positive(V_T);
        Guard.Positive(I_tail);
        Guard.NotNegative(R_deg);
        return Ln((1 + a) / (1 - a)) * V_T + a.DecimalFractions * I_tail * R_deg;
    }

    /// <summary>The slew rate without a mirror, towards the side that is starved: I_tail/(2·C_dom).</summary>
    /// <remarks>With a mirror it is <see cref="EightOhm.Feedback.SlewRate.Available"/> of the whole tail current. One half gives at most the tail current and at least nothing, around a load that takes half of it: half the slew either way.</remarks>
    /// <param name="I_tail">Tail current; greater than 0 A.</param>
    /// <param name="C_dom">Compensation capacitor; greater than 0 F.</param>
    /// <returns>The slew rate, in V/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 6; half the current reaches the capacitor", Symbol = "SR")]
    [RecordName("input-pair.slew-rate-of-half")]
    public static ElectricPotentialChangeRate SlewRateOfHalf(ElectricCurrent I_tail, ElectricCapacitance C_dom)
    {
        Guard.Positive(I_tail);
        Guard.Positive(C_dom);
        return I_tail / (2 * C_dom);
    }

    /// <summary>Input resistance between the bases: 2·(h_FE + 1)·(r_e + R_deg).</summary>
    /// <param name="h_FE">Current gain; 1 or more.</param>
    /// <param name="r_e">Emitter resistance of one device; greater than 0 Ω.</param>
    /// <param name="R_deg">Resistor in each emitter; 0 Ω or more.</param>
    /// <returns>The differential input resistance, in Ω; the loop raises it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "R_id")]
    [RecordName("input-pair.input-resistance")]
    public static ElectricResistance InputResistance(double h_FE, ElectricResistance r_e, ElectricResistance R_deg)
    {
        Guard.Between(h_FE, 1, 1e9);
        Guard.Positive(r_e);
        Guard.NotNegative(R_deg);
        return 2 * (h_FE + 1) * (r_e + R_deg);
    }

    /// <summary>Gain of a pair with equal collector resistors, taken between the collectors: R_C/(r_e + R_deg)·h_FE/(h_FE + 1).</summary>
    /// <param name="R_C">Resistor at each collector; greater than 0 Ω.</param>
    /// <param name="h_FE">Current gain; 1 or more.</param>
    /// <param name="r_e">Emitter resistance of one device; greater than 0 Ω.</param>
    /// <param name="R_deg">Resistor in each emitter; 0 Ω or more.</param>
    /// <returns>The gain, a magnitude.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "A_d")]
    [RecordName("input-pair.gain")]
    public static Gain GainOf(ElectricResistance R_C, double h_FE, ElectricResistance r_e, ElectricResistance R_deg)
    {
        Guard.Positive(R_C);
        Guard.Between(h_FE, 1, 1e9);
        Guard.Positive(r_e);
        Guard.NotNegative(R_deg);
        return Gain.FromRatio(h_FE / (h_FE + 1) * (R_C / (r_e + R_deg)));
    }

    /// <summary>Gain of a pair with a mirror into a load: (I_tail/2V_T)/(I_tail/2V_A2 + I_tail/2V_A4 + 1/R_L).</summary>
    /// <param name="I_tail">Tail current; greater than 0 A.</param>
    /// <param name="V_T">Thermal voltage; greater than 0 V.</param>
    /// <param name="V_A2">Early voltage of the pair; greater than 0 V.</param>
    /// <param name="V_A4">Early voltage of the mirror; greater than 0 V.</param>
    /// <param name="G_L">Conductance of the load; 0 S (open) or more.</param>
    /// <returns>The gain, a magnitude.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("D. A. Neamen, Electronic Circuit Analysis and Design, ch. 11: pair with active load", Symbol = "A_d")]
    [RecordName("input-pair.gain-with-mirror")]
    public static Gain GainWithMirror(ElectricCurrent I_tail, ElectricPotential V_T, ElectricPotential V_A2, ElectricPotential V_A4, ElectricConductance G_L)
    {
        Guard.Positive(I_tail);
        Guard.Positive(V_T);
        Guard.Positive(V_A2);
        Guard.Positive(V_A4);
        Guard.NotNegative(G_L);
        var I_C = I_tail / 2;
        return Gain.FromRatio(I_C / V_T / (I_C / V_A2 + I_C / V_A4 + G_L));
    }

    /// <summary>The lowest common-mode input: the current source's least voltage, saturation and one V_BE above the negative rail.</summary>
    /// <param name="V_EE">Negative rail, as a magnitude; 0 V or more.</param>
    /// <param name="V_R">Voltage on the current source's emitter resistor; 0 V or more.</param>
    /// <param name="V_sat">Least collector-emitter voltage of the current source; 0 V or more.</param>
    /// <param name="V_BE">Base-emitter voltage of the pair; 0 V or more.</param>
    /// <returns>The input, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    [Formula("Millman & Halkias, Integrated Electronics, ch. 15", Symbol = "V_low")]
    [RecordName("input-pair.lowest-input")]
    public static ElectricPotential LowestInput(ElectricPotential V_EE, ElectricPotential V_R, ElectricPotential V_sat, ElectricPotential V_BE)
    {
        Guard.NotNegative(V_EE);
        Guard.NotNegative(V_R);
        Guard.NotNegative(V_sat);
        Guard.NotNegative(V_BE);
        return V_R + V_sat + V_BE - V_EE;
    }

    /// <summary>The highest common-mode input: the collector's voltage and what the collector junction bears forward.</summary>
    /// <param name="V_CC">Positive rail; 0 V or more.</param>
    /// <param name="V_C">Voltage on what stands in the collector; 0 V or more.</param>
    /// <param name="V_BC">What the base may rise above the collector; 0 V or more.</param>
    /// <returns>The input, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    [Formula("Millman & Halkias, Integrated Electronics, ch. 15", Symbol = "V_high")]
    [RecordName("input-pair.highest-input")]
    public static ElectricPotential HighestInput(ElectricPotential V_CC, ElectricPotential V_C, ElectricPotential V_BC)
    {
        Guard.NotNegative(V_CC);
        Guard.NotNegative(V_C);
        Guard.NotNegative(V_BC);
        return V_CC - V_C + V_BC;
    }
}
