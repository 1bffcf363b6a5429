using EightOhm.Devices;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Noise;

/// <summary>The noise of a bipolar differential pair, referred to its input: shot noise of the collectors, base and emitter resistances, base currents.</summary>
/// <remarks>r_pi, r_o and r_e are slopes of a curve, no resistors: they carry no thermal noise. Each device's two shot noises stand for them.
/// Degeneration adds the noise of its resistors and leaves that of the collectors, at the input, as it was.</remarks>
public static partial class PairNoise
{
    private const string Source = "P. R. Gray, P. J. Hurst, S. H. Lewis & R. G. Meyer, Analysis and Design of Analog Integrated Circuits, ch. 11";

    /// <summary>The shot noise of both collector currents at the input: √2·r_e·√(2·q·I_C). It is that of a resistance of r_e.</summary>
    /// <remarks>Of a resistance r_e for the pair, not 2·r_e: a junction makes half the noise of a resistor of its slope.</remarks>
    /// <param name="r_e">Emitter resistance V_T/I_C of one device; 0 Ω or more.</param>
    /// <param name="I_C">Collector current of one device; 0 A or more.</param>
    /// <returns>The density at the input, rms, in V/√Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    /// <example><code>PairNoise.CollectorShot(12.85.Ohm, 2.mA)   // 460 pV/√Hz</code></example>
    [Formula(Source, Symbol = "e_C")]
    [RecordName("pair-noise.collector-shot")]
    public static VoltageNoiseDensity CollectorShot(ElectricResistance r_e, ElectricCurrent I_C)
    {
        Guard.NotNegative(r_e);
        return Sqrt(2) * (r_e * ShotNoise.CurrentDensity(I_C));
    }

    /// <summary>The thermal noise of a resistance in both halves, such as base-spreading or emitter resistors: √(8·k·T·R).</summary>
    /// <param name="R">The resistance in each half; 0 Ω or more.</param>
    /// <param name="T">Its temperature; above 0 K.</param>
    /// <returns>The density at the input, rms, in V/√Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is negative or the temperature not above absolute zero.</exception>
    [Formula(Source, Symbol = "e_2R")]
    [RecordName("pair-noise.of-both")]
    public static VoltageNoiseDensity OfBoth(ElectricResistance R, Temperature T)
    {
        Guard.NotNegative(R);
        return ThermalNoise.VoltageDensity(2 * R, T);
    }

    /// <summary>The noise current of one base: √(2·q·I_C/h_FE).</summary>
    /// <remarks>Not √(4·k·T/r_pi), which is √2 times as much: r_pi makes no thermal noise.</remarks>
    /// <param name="I_C">Collector current of one device; 0 A or more.</param>
    /// <param name="h_FE">Current gain; 1 or more.</param>
    /// <returns>The density, rms, in A/√Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>PairNoise.BaseCurrent(2.mA, 300)   // 1.462 pA/√Hz</code></example>
    [Formula(Source, Symbol = "i_B")]
    [RecordName("pair-noise.base-current")]
    public static CurrentNoiseDensity BaseCurrent(ElectricCurrent I_C, double h_FE)
    {
        Guard.NotNegative(I_C);
        Guard.Between(h_FE, 1, 1e9);
        return ShotNoise.CurrentDensity(I_C / h_FE);
    }

    /// <summary>What the two base currents make across the two sides: i_B·√(Z_a² + Z_b²).</summary>
    /// <param name="i_B">Noise current of one base, rms; 0 A/√Hz or more.</param>
    /// <param name="Z_a">Magnitude of what one base sees, the pair's own base and emitter resistors included; 0 Ω or more.</param>
    /// <param name="Z_b">The same of the other base; 0 Ω or more.</param>
    /// <returns>The density at the input, rms, in V/√Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    [Formula(Source, Symbol = "e_B")]
    [RecordName("pair-noise.from-base-currents")]
    public static VoltageNoiseDensity FromBaseCurrents(CurrentNoiseDensity i_B, ElectricResistance Z_a, ElectricResistance Z_b)
    {
        Guard.NotNegative(i_B);
        Guard.NotNegative(Z_a);
        Guard.NotNegative(Z_b);
        return i_B * Sqrt(Z_a * Z_a + Z_b * Z_b);
    }

    /// <summary>The noise of the pair alone at its input: √(4·k·T·(2·r_bb + 2·R_deg + r_e) + i_B²·(Z_a² + Z_b²)).</summary>
    /// <remarks>Without the thermal noise of what the bases see, and without the mirror.</remarks>
    /// <param name="T">Temperature of the pair and its resistors; above 0 K.</param>
    /// <param name="I_C">Collector current of one device; greater than 0 A.</param>
    /// <param name="h_FE">Current gain; 1 or more.</param>
    /// <param name="r_bb">Base-spreading resistance of one device; 0 Ω or more.</param>
    /// <param name="R_deg">Resistor in each emitter; 0 Ω or more.</param>
    /// <param name="R_a">What one base sees outside the pair; 0 Ω or more.</param>
    /// <param name="R_b">What the other base sees outside; 0 Ω or more.</param>
    /// <returns>The density at the input, rms, in V/√Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "e_pair")]
    [RecordName("pair-noise.density")]
    public static VoltageNoiseDensity Density(Temperature T, ElectricCurrent I_C, double h_FE, ElectricResistance r_bb, ElectricResistance R_deg, ElectricResistance R_a, ElectricResistance R_b)
    {
        Guard.Positive(I_C);
        Guard.NotNegative(r_bb);
        Guard.NotNegative(R_deg);
        Guard.NotNegative(R_a);
        Guard.NotNegative(R_b);
        var r_e = Junction.ThermalVoltage(T) / I_C;
        var e_R = ThermalNoise.VoltageDensity(2 * r_bb + 2 * R_deg + r_e, T);
        var e_B = FromBaseCurrents(BaseCurrent(I_C, h_FE), R_a + r_bb + R_deg, R_b + r_bb + R_deg);
        return Sqrt(e_R * e_R + e_B * e_B);
    }

    /// <summary>The collector current of least noise: V_T·√(2·h_FE/(R_a² + R_b²)).</summary>
    /// <remarks>Shot noise of the collectors falls with the current, that of the bases rises: at this current both are equal. The minimum is flat: half or twice it costs a quarter more of these two.</remarks>
    /// <param name="V_T">Thermal voltage; greater than 0 V.</param>
    /// <param name="h_FE">Current gain; 1 or more.</param>
    /// <param name="R_a">What one base sees, with the pair's own base and emitter resistors; 0 Ω or more.</param>
    /// <param name="R_b">What the other sees, with the same; with R_a greater than 0 Ω.</param>
    /// <returns>The current of one device, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>PairNoise.BestCollectorCurrent(25.69.mV, 300, 233.Ohm, 178.76.Ohm)   // 2.143 mA</code></example>
    [Formula(Source + "; derived: the least of 4·q·V_T²/I_C + 2·q·I_C/h_FE·(R_a² + R_b²)", Symbol = "I_best")]
    [RecordName("pair-noise.best-collector-current")]
    public static ElectricCurrent BestCollectorCurrent(ElectricPotential V_T, double h_FE, ElectricResistance R_a, ElectricResistance R_b)
    {
        Guard.Positive(V_T);
        Guard.Between(h_FE, 1, 1e9);
        Guard.NotNegative(R_a);
        Guard.NotNegative(R_b);
        Guard.Positive(R_a + R_b, "what the bases see", "Without resistance at the bases the noise falls with any rise of the current: there is no best one.");
        return V_T * Sqrt(2 * h_FE) / Sqrt(R_a * R_a + R_b * R_b);
    }
}
