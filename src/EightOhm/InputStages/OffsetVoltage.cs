using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.InputStages;

/// <summary>The dc error at the input of a stage, part by part, and how it moves with temperature.</summary>
/// <remarks>All at the input, where parts add with their signs. At the output they stand times the gain at dc, which a capacitor in the feedback divider makes one and a servo makes nearly nothing.</remarks>
public static partial class OffsetVoltage
{
    private const string Franco = "S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 5";

    /// <summary>What equal base currents leave: I_B·(R_b − R_a).</summary>
    /// <param name="I_B">Base current of each input; 0 A or more.</param>
    /// <param name="R_a">Dc resistance at the input to which the result is referred; 0 Ω or more.</param>
    /// <param name="R_b">Dc resistance at the other input; 0 Ω or more.</param>
    /// <returns>At the input, in V; positive when R_b is the larger one, for currents into the bases.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    /// <example><code>OffsetVoltage.FromBaseCurrents(6.67.uA, 96.Ohm, 10.kOhm)   // 66.06 mV</code></example>
    [Formula(Franco, Symbol = "V_IB")]
    [RecordName("offset-voltage.from-base-currents")]
    public static ElectricPotential FromBaseCurrents(ElectricCurrent I_B, ElectricResistance R_a, ElectricResistance R_b)
    {
        Guard.NotNegative(I_B);
        Guard.NotNegative(R_a);
        Guard.NotNegative(R_b);
        return I_B * (R_b - R_a);
    }

    /// <summary>What the difference of the base currents leaves: I_OS·(R_a + R_b)/2.</summary>
    /// <param name="I_OS">Difference of the two base currents, as a magnitude; 0 A or more.</param>
    /// <param name="R_a">Dc resistance at one input; 0 Ω or more.</param>
    /// <param name="R_b">Dc resistance at the other input; 0 Ω or more.</param>
    /// <returns>At the input, of either sign, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    [Formula(Franco, Symbol = "V_IOS")]
    [RecordName("offset-voltage.from-offset-current")]
    public static ElectricPotential FromOffsetCurrent(ElectricCurrent I_OS, ElectricResistance R_a, ElectricResistance R_b)
    {
        Guard.NotNegative(I_OS);
        Guard.NotNegative(R_a);
        Guard.NotNegative(R_b);
        return I_OS * (R_a + R_b) / 2;
    }

    /// <summary>What unequal saturation currents leave at equal collector currents: V_T·ln(1 + x).</summary>
    /// <param name="V_T">Thermal voltage; greater than 0 V.</param>
    /// <param name="x">By how much one saturation current is above the other; above −1.</param>
    /// <returns>At the input, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>OffsetVoltage.FromMismatch(26.mV, 5.percent)   // 1.269 mV</code></example>
    [Formula("D. A. Neamen, Electronic Circuit Analysis and Design, ch. 14: V_T·ln(I_S2/I_S1)", Symbol = "V_IS")]
    [RecordName("offset-voltage.from-mismatch")]
    public static ElectricPotential FromMismatch(ElectricPotential V_T, Ratio x)
    {
        Guard.Positive(V_T);
        Guard.Between(x.DecimalFractions, -0.999, 1e6, nameof(x));
        return Ln(1 + x) * V_T;
    }

    /// <summary>What unequal emitter resistors leave: I_C·R_deg·x.</summary>
    /// <param name="I_C">Collector current of one device; 0 A or more.</param>
    /// <param name="R_deg">Resistor in each emitter; 0 Ω or more.</param>
    /// <param name="x">By how much one is above the other, as a fraction: twice their tolerance at the worst; 0 or more.</param>
    /// <returns>At the input, of either sign, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    [Formula("Ohm's law across the difference of the resistors", Symbol = "V_IR")]
    [RecordName("offset-voltage.from-resistors")]
    public static ElectricPotential FromResistors(ElectricCurrent I_C, ElectricResistance R_deg, Ratio x)
    {
        Guard.NotNegative(I_C);
        Guard.NotNegative(R_deg);
        Guard.NotNegative(x);
        return I_C * R_deg * x.DecimalFractions;
    }

    /// <summary>What the mirror's error asks of the input: I_C·m·(r_e + R_deg).</summary>
    /// <remarks>For small errors: the pair must make its currents as unequal as the mirror does.</remarks>
    /// <param name="I_C">Collector current of one device; 0 A or more.</param>
    /// <param name="m">Error of the mirror's current, as a magnitude; 0 or more.</param>
    /// <param name="r_e">Emitter resistance of one device of the pair; 0 Ω or more.</param>
    /// <param name="R_deg">Resistor in each emitter of the pair; 0 Ω or more.</param>
    /// <returns>At the input, of either sign, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 7: an error of the output current over the transconductance", Symbol = "V_IM")]
    [RecordName("offset-voltage.from-mirror")]
    public static ElectricPotential FromMirror(ElectricCurrent I_C, Ratio m, ElectricResistance r_e, ElectricResistance R_deg)
    {
        Guard.NotNegative(I_C);
        Guard.NotNegative(m);
        Guard.NotNegative(r_e);
        Guard.NotNegative(R_deg);
        return m.DecimalFractions * I_C * (r_e + R_deg);
    }

    /// <summary>An offset at the output: V_i·G_dc.</summary>
    /// <param name="V_i">At the input.</param>
    /// <param name="G_dc">Gain at dc: that of the divider, or one behind a feedback capacitor.</param>
    /// <returns>At the output, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of reach.</exception>
    [Formula(Franco, Symbol = "V_out")]
    [RecordName("offset-voltage.at-output")]
    public static ElectricPotential AtOutput(ElectricPotential V_i, Gain G_dc)
    {
        Guard.InReach(V_i);
        Guard.InReach(G_dc);
        return V_i * G_dc;
    }

    /// <summary>How an offset by unequal junctions drifts: V_os/T.</summary>
    /// <remarks>3.35 µV/K for each millivolt at 25 °C: a pair trimmed to no difference of V_BE does not drift by it.</remarks>
    /// <param name="V_os">The offset by the difference of the V_BE; of either sign.</param>
    /// <param name="T">Temperature of the junctions; above 0 K.</param>
    /// <returns>The drift, in V/K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is not above absolute zero.</exception>
    /// <example><code>OffsetVoltage.DriftOfMismatch(1.mV, 25.degC)   // 3.354 µV/K</code></example>
    [Formula("Gray, Hurst, Lewis & Meyer, Analysis and Design of Analog Integrated Circuits, ch. 3: offset drift of an emitter-coupled pair", Symbol = "tc_os")]
    [RecordName("offset-voltage.drift-of-mismatch")]
    public static VoltageDrift DriftOfMismatch(ElectricPotential V_os, Temperature T)
    {
        Guard.InReach(V_os);
        Guard.Positive(T);
        var dT = 1.K;
        return dT / T * V_os / dT;
    }

    /// <summary>How an offset by base current drifts as the current gain rises: V_IB·k_h, k_h the relative rise for a kelvin.</summary>
    /// <param name="V_IB">The offset by base current; of either sign.</param>
    /// <param name="k_h">Relative rise of the current gain for a kelvin; 0 or more.</param>
    /// <returns>By how much it falls for a kelvin, in V/K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("derived: I_B = I_C/h_FE at a constant I_C", Symbol = "tc_IB")]
    [RecordName("offset-voltage.drift-of-base-current")]
    public static VoltageDrift DriftOfBaseCurrent(ElectricPotential V_IB, Ratio k_h)
    {
        Guard.InReach(V_IB);
        Guard.NotNegative(k_h);
        var dT = 1.K;
        return k_h.DecimalFractions * V_IB / dT;
    }
}
