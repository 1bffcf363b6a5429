using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Noise;

/// <summary>The noise of a pair of junction field-effect transistors, the other choice of an input stage: no base current, more noise of their own.</summary>
/// <remarks>Long channels in saturation. Noise current of the gate is that of its leakage, which doubles about every ten kelvins.</remarks>
public static partial class FieldEffectNoise
{
    private const string Source = "P. R. Gray, P. J. Hurst, S. H. Lewis & R. G. Meyer, Analysis and Design of Analog Integrated Circuits, ch. 11: channel noise of 4·k·T·(2/3)·g_m";

    /// <summary>Transconductance of a junction field-effect transistor in saturation: 2·√(I_DSS·I_D)/V_P.</summary>
    /// <param name="I_DSS">Drain current at no gate voltage; greater than 0 A.</param>
    /// <param name="V_P">Pinch-off voltage, as a magnitude; greater than 0 V.</param>
    /// <param name="I_D">Drain current; greater than 0 A, at most I_DSS.</param>
    /// <returns>The transconductance of one device, in S.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>FieldEffectNoise.Transconductance(12.mA, 3.V, 2.mA)   // 3.266 mS</code></example>
    [Formula("Boylestad & Nashelsky, Electronic Devices and Circuit Theory, 11th ed., ch. 8: g_m = (2·I_DSS/V_P)·√(I_D/I_DSS)", Symbol = "g_m")]
    [RecordName("field-effect-noise.transconductance")]
    public static ElectricConductance Transconductance(ElectricCurrent I_DSS, ElectricPotential V_P, ElectricCurrent I_D)
    {
        Guard.Positive(I_DSS);
        Guard.Positive(V_P);
        Guard.Positive(I_D);
        Guard.NotNegative(I_DSS - I_D, "I_DSS less I_D", "More than I_DSS forward-biases the gate.");
        return 2 * Sqrt(I_DSS * I_D) / V_P;
    }

    /// <summary>The channel noise of a pair at its input, with resistors in the sources: √(8·k·T·(2/(3·g_m) + R_deg)).</summary>
    /// <param name="T">Temperature; above 0 K.</param>
    /// <param name="g_m">Transconductance of one device; greater than 0 S.</param>
    /// <param name="R_deg">Resistor in each source; 0 Ω or more.</param>
    /// <returns>The density at the input, rms, in V/√Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>FieldEffectNoise.OfPair(25.degC, 20.mS, 0.Ohm)   // 1.048 nV/√Hz</code></example>
    [Formula(Source, Symbol = "e_ch")]
    [RecordName("field-effect-noise.of-pair")]
    public static VoltageNoiseDensity OfPair(Temperature T, ElectricConductance g_m, ElectricResistance R_deg)
    {
        Guard.Positive(g_m);
        Guard.NotNegative(R_deg);
        var R_ch = 2 / (3 * g_m);
        return ThermalNoise.VoltageDensity(2 * (R_ch + R_deg), T);
    }

    /// <summary>The transconductance that a density of a pair without source resistors asks for: 16·k·T/(3·e_ch²).</summary>
    /// <param name="e_ch">Density at the input; greater than 0 V/√Hz.</param>
    /// <param name="T">Temperature; above 0 K.</param>
    /// <returns>The transconductance of one device, in S.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source + ", solved for g_m", Symbol = "g_m")]
    [RecordName("field-effect-noise.transconductance-for")]
    public static ElectricConductance TransconductanceFor(VoltageNoiseDensity e_ch, Temperature T)
    {
        Guard.Positive(e_ch);
        Guard.Positive(e_ch * e_ch, "the square of e_ch");
        var R_n = ThermalNoise.EquivalentResistance(e_ch, T);
        return 4 / 3.0 / R_n;
    }

    /// <summary>The source resistance from which a field-effect pair is the quieter one: √(e_F² − e_B²)/i_B.</summary>
    /// <remarks>Thermal noise of the source is in both and cancels. Where the field-effect pair is quieter even at 0 Ω, there is no such resistance.</remarks>
    /// <param name="e_F">Voltage noise of the field-effect pair; greater than e_B.</param>
    /// <param name="e_B">Voltage noise of the bipolar pair; 0 V/√Hz or more.</param>
    /// <param name="i_B">Noise current of the bipolar pair's base; greater than 0 A/√Hz.</param>
    /// <returns>The resistance of the source, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("derived: e_B² + (i_B·R)² = e_F²", Symbol = "R_even")]
    [RecordName("field-effect-noise.break-even-source")]
    public static ElectricResistance BreakEvenSource(VoltageNoiseDensity e_F, VoltageNoiseDensity e_B, CurrentNoiseDensity i_B)
    {
        Guard.Positive(e_F);
        Guard.NotNegative(e_B);
        Guard.Positive(i_B);
        Guard.NotNegative(e_F - e_B, "e_F less e_B", "The field-effect pair is the quieter one at any source.");
        return Sqrt(e_F * e_F - e_B * e_B) / i_B;
    }
}
