using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Noise;

/// <summary>The noise of current sources and of the mirror that loads a pair.</summary>
/// <remarks>A transistor without an emitter resistor is not quiet: the shot noise of its collector remains. Without base resistance
/// a small resistor adds as much as it takes away, so that the noise over the resistor begins with a slope of zero: it pays only when it is several times r_e.</remarks>
public static partial class MirrorNoise
{
    private const string Source = "P. R. Gray, P. J. Hurst, S. H. Lewis & R. G. Meyer, Analysis and Design of Analog Integrated Circuits, ch. 11";

    /// <summary>The noise current of one transistor with a resistor in its emitter, its base held: √(4·k·T·(R_m + r_bm + r_m/2))/(R_m + r_m).</summary>
    /// <param name="T">Temperature; above 0 K.</param>
    /// <param name="R_m">The resistor in the emitter; 0 Ω or more.</param>
    /// <param name="r_bm">Base-spreading resistance; 0 Ω or more.</param>
    /// <param name="r_m">Emitter resistance V_T/I_C of the transistor; greater than 0 Ω.</param>
    /// <returns>The density of its collector current, rms, in A/√Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "i_C")]
    [RecordName("mirror-noise.of-one")]
    public static CurrentNoiseDensity OfOne(Temperature T, ElectricResistance R_m, ElectricResistance r_bm, ElectricResistance r_m)
    {
        Guard.NotNegative(R_m);
        Guard.NotNegative(r_bm);
        Guard.Positive(r_m);
        return ThermalNoise.VoltageDensity(R_m + r_bm + r_m / 2, T) / (R_m + r_m);
    }

    /// <summary>The noise of a mirror of two at the input of the pair that it loads: √(8·k·T·(R_m + r_bm + r_m/2))/(R_m + r_m)·(r_e + R_deg).</summary>
    /// <remarks>For a large R_m it is √(8·k·T/R_m)·(r_e + R_deg): below that of the pair's own resistors only when R_m is above (r_e + R_deg)²/R_deg, so larger than R_deg.</remarks>
    /// <param name="T">Temperature; above 0 K.</param>
    /// <param name="R_m">Resistor in each emitter of the mirror; 0 Ω or more.</param>
    /// <param name="r_bm">Base-spreading resistance of each of its devices; 0 Ω or more.</param>
    /// <param name="r_m">Emitter resistance V_T/I_C of each of its devices; greater than 0 Ω.</param>
    /// <param name="r_e">Emitter resistance of each device of the pair; greater than 0 Ω.</param>
    /// <param name="R_deg">Resistor in each emitter of the pair; 0 Ω or more.</param>
    /// <returns>The density at the input, rms, in V/√Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>MirrorNoise.AtInput(25.degC, 220.Ohm, 0.Ohm, 12.85.Ohm, 12.85.Ohm, 22.Ohm)   // 408.7 pV/√Hz</code></example>
    [Formula(Source, Symbol = "e_mir")]
    [RecordName("mirror-noise.at-input")]
    public static VoltageNoiseDensity AtInput(Temperature T, ElectricResistance R_m, ElectricResistance r_bm, ElectricResistance r_m, ElectricResistance r_e, ElectricResistance R_deg)
    {
        Guard.Positive(r_e);
        Guard.NotNegative(R_deg);
        return Sqrt(2) * OfOne(T, R_m, r_bm, r_m) * (r_e + R_deg);
    }

    /// <summary>The mirror's emitter resistor that leaves a density at the input, the larger of two.</summary>
    /// <remarks>With a = 8·k·T·(r_e + R_deg)²/e_mir² it is a/2 − r_m + √(a²/4 − a·(r_m/2 − r_bm)). The noise of the mirror is AtInput.</remarks>
    /// <param name="e_mir">The density that the mirror may make at the input; greater than 0 V/√Hz.</param>
    /// <param name="T">Temperature; above 0 K.</param>
    /// <param name="r_bm">Base-spreading resistance of each of its devices; 0 Ω or more.</param>
    /// <param name="r_m">Emitter resistance of each of its devices; greater than 0 Ω.</param>
    /// <param name="r_e">Emitter resistance of each device of the pair; greater than 0 Ω.</param>
    /// <param name="R_deg">Resistor in each emitter of the pair; 0 Ω or more.</param>
    /// <returns>The resistor in each emitter of the mirror, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or the mirror is quieter than that without a resistor.</exception>
    [Formula(Source + "; AtInput solved for R_m", Symbol = "R_m")]
    [RecordName("mirror-noise.resistor-for")]
    public static ElectricResistance ResistorFor(VoltageNoiseDensity e_mir, Temperature T, ElectricResistance r_bm, ElectricResistance r_m, ElectricResistance r_e, ElectricResistance R_deg)
    {
        Guard.Positive(e_mir);
        Guard.Positive(T);
        Guard.NotNegative(r_bm);
        Guard.Positive(r_m);
        Guard.Positive(r_e);
        Guard.NotNegative(R_deg);
        Guard.NotNegative(AtInput(T, 0 * r_m, r_bm, r_m, r_e, R_deg) - e_mir, "what the mirror makes without a resistor, less e_mir", "The mirror is quieter than that without a resistor: leave it out.");
        var x = ThermalNoise.VoltageDensity(2 * (r_e + R_deg), T) / e_mir;
        var a = x * x * (r_e + R_deg);
        return a / 2 - r_m + Sqrt(a * a / 4 - a * (r_m / 2 - r_bm));
    }

    /// <summary>What a noisy tail current leaves at the input of a pair with a mirror: i_t·(s + m/2)·(r_e + R_deg), s = δ·r_e/(r_e + R_deg·(1 − δ²)).</summary>
    /// <remarks>Halved by the pair, the two halves cancel in the mirror, as far as the halves and the mirror are equal. Degeneration keeps the halves equal even when the currents are not.
    /// Without a mirror, one half taken alone, all of i_t·(r_e + R_deg) stands at the input.</remarks>
    /// <param name="i_t">Noise of the tail current, rms; 0 A/√Hz or more.</param>
    /// <param name="delta">Imbalance of the collector currents, (I_1 − I_2)/I_tail, as a magnitude; below 1.</param>
    /// <param name="m">Error of the mirror, as a magnitude; from 0 to 1.</param>
    /// <param name="r_e">Emitter resistance of each device at balance; greater than 0 Ω.</param>
    /// <param name="R_deg">Resistor in each emitter; 0 Ω or more.</param>
    /// <returns>The density at the input, rms, in V/√Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("derived: current division between r_e/(1 + δ) + R_deg and r_e/(1 − δ) + R_deg", Symbol = "e_tail")]
    [RecordName("mirror-noise.of-tail")]
    public static VoltageNoiseDensity OfTail(CurrentNoiseDensity i_t, Ratio delta, Ratio m, ElectricResistance r_e, ElectricResistance R_deg)
    {
        Guard.NotNegative(i_t);
        Guard.Between(delta.DecimalFractions, 0, 0.999, nameof(delta), "Give the imbalance as a magnitude, for example 2.percent.");
        Guard.Between(m.DecimalFractions, 0, 1, nameof(m), "Give the mirror's error as a magnitude, for example 1.percent.");
        Guard.Positive(r_e);
        Guard.NotNegative(R_deg);
        var d = delta.DecimalFractions;
        var s = d * (r_e / (r_e + R_deg * (1 - d * d)));
        return i_t * (r_e + R_deg) * (s + m.DecimalFractions / 2);
    }
}
