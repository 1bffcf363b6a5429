using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.InputStages;

/// <summary>A capacitor in series with the lower resistor of the feedback divider: gain one at dc, so that the input's offset is not amplified.</summary>
/// <remarks>An electrolytic with ac across it distorts; about 80 mV rms at the lowest frequency is held to be harmless (common practice, no source). So the low-noise divider of small resistors asks for a
/// large capacitor, not for its corner's but for its voltage's sake. Its noise: the divider's impedance rises below the corner, see SourceImpedance.</remarks>
public static partial class FeedbackCapacitor
{
    private const string Source = "Bird, Electrical Circuit Theory and Technology, ch. 26; Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 2: the divider with a capacitor";

    /// <summary>The corner: 1/(2π·R_g·C_g).</summary>
    /// <remarks>The gain rises from one at R_f + R_g and reaches the divider's here; for a gain well above one this is the −3 dB frequency.</remarks>
    /// <param name="R_g">From the inverting input to the capacitor; greater than 0 Ω.</param>
    /// <param name="C_g">The capacitor; greater than 0 F.</param>
    /// <returns>The low corner, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>FeedbackCapacitor.Corner(100.Ohm, 1000.uF)   // 1.592 Hz</code></example>
    [Formula(Source, Symbol = "f_g")]
    [RecordName("feedback-capacitor.corner")]
    public static Frequency Corner(ElectricResistance R_g, ElectricCapacitance C_g)
    {
        Guard.Positive(R_g);
        Guard.Positive(C_g);
        return 1 / (2 * pi * (R_g * C_g));
    }

    /// <summary>The capacitor for a corner: 1/(2π·R_g·f).</summary>
    /// <param name="R_g">From the inverting input to the capacitor; greater than 0 Ω.</param>
    /// <param name="f">The low corner wanted; greater than 0 Hz.</param>
    /// <returns>The capacitor, in F.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "C_g")]
    [RecordName("feedback-capacitor.for-corner")]
    public static ElectricCapacitance ForCorner(ElectricResistance R_g, Frequency f)
    {
        Guard.Positive(R_g);
        Guard.Positive(f);
        return 1 / (2 * pi) * (1 / (R_g * f));
    }

    /// <summary>The voltage across it: V_out/√(1 + (2π·f·C_g·(R_f + R_g))²).</summary>
    /// <param name="f">Frequency; greater than 0 Hz.</param>
    /// <param name="V_out">Output voltage, rms or peak; 0 V or more.</param>
    /// <param name="R_f">From the output to the inverting input; 0 Ω or more.</param>
    /// <param name="R_g">From the inverting input to the capacitor; greater than 0 Ω.</param>
    /// <param name="C_g">The capacitor; greater than 0 F.</param>
    /// <returns>Across the capacitor, in the measure (rms or peak) of the output, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>FeedbackCapacitor.Across(20.Hz, 28.28.V, 2.26.kOhm, 100.Ohm, 1000.uF)   // 95.36 mV</code></example>
    [Formula(Source, Symbol = "V_C")]
    [RecordName("feedback-capacitor.across")]
    public static ElectricPotential Across(Frequency f, ElectricPotential V_out, ElectricResistance R_f, ElectricResistance R_g, ElectricCapacitance C_g)
    {
        Guard.Positive(f);
        Guard.NotNegative(V_out);
        Guard.NotNegative(R_f);
        Guard.Positive(R_g);
        Guard.Positive(C_g);
        var w = 2 * pi * f * ((R_f + R_g) * C_g);
        return V_out / Sqrt(1 + w * w);
    }

    /// <summary>The capacitor that keeps that voltage: √((V_out/V_C)² − 1)/(2π·f·(R_f + R_g)).</summary>
    /// <param name="f">Lowest frequency at full output; greater than 0 Hz.</param>
    /// <param name="V_out">Output voltage, rms or peak; greater than V_C.</param>
    /// <param name="V_C">What may stand across it, in the same measure; greater than 0 V.</param>
    /// <param name="R_f">From the output to the inverting input; 0 Ω or more.</param>
    /// <param name="R_g">From the inverting input to the capacitor; greater than 0 Ω.</param>
    /// <returns>The least capacitor, in F.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "C_g")]
    [RecordName("feedback-capacitor.for-voltage")]
    public static ElectricCapacitance ForVoltage(Frequency f, ElectricPotential V_out, ElectricPotential V_C, ElectricResistance R_f, ElectricResistance R_g)
    {
        Guard.Positive(f);
        Guard.Positive(V_out);
        Guard.Positive(V_C);
        Guard.NotNegative(R_f);
        Guard.Positive(R_g);
        Guard.Positive(V_out - V_C, "V_out less V_C", "Across the capacitor stands never more than the output: any capacitor will do.");
        var x = V_out / V_C;
        return Sqrt(x * x - 1) / (2 * pi) * (1 / ((R_f + R_g) * f));
    }
}
