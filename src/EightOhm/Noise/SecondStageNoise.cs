using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Noise;

/// <summary>The noise of a second stage, as the pair before it sees it: what its input draws as current, and what its transistors make as voltage.</summary>
/// <remarks>The first stage gives a current, so a current at the second stage's input is there at every frequency, over the pair's transconductance. A voltage in series with that input must be met by
/// the charge of all capacitors there, the compensation's included: its part rises with frequency, as the gain of the first stage falls.</remarks>
public static partial class SecondStageNoise
{
    private const string Source = "P. R. Gray, P. J. Hurst, S. H. Lewis & R. G. Meyer, Analysis and Design of Analog Integrated Circuits, ch. 11";

    /// <summary>The noise voltage in series with the input of a transistor with a resistor in its emitter, behind a follower: √(4·k·T·(g²·(R_E + b²·r_2/2) + r_f/2 + r_f²/R_B) + 2·q·(I/h_FE)·(r_f + g·R_E)²).</summary>
    /// <remarks>Thermal noise of the emitter resistor, collector shot noise of both transistors, the base current of the second through the follower's emitter resistance r_f = V_T/I_f, and the follower's resistor
    /// across that, whose gain is 1/g = R_B/(R_B + r_f). What the base takes of a signal, b = 1 + (r_f + R_E)/(h_FE·r_2), the collector's noise does not lose. Base-spreading resistances, which cards seldom
    /// tell, are left out.</remarks>
    /// <param name="T">Junction temperature; above 0 K.</param>
    /// <param name="I">Standing current of the stage; greater than 0 A.</param>
    /// <param name="h_FE">Its current gain; greater than 0.</param>
    /// <param name="R_E">Its emitter resistor; 0 Ω or more.</param>
    /// <param name="I_f">Standing current of the follower; greater than 0 A.</param>
    /// <param name="R_B">From the follower's emitter to the rail; greater than 0 Ω.</param>
    /// <returns>The density in series with the follower's base, rms, in V/√Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>SecondStageNoise.Voltage(45.degC, 10.mA, 100, 22.Ohm, 1.8.mA, 510.Ohm)   // 794.2 pV/√Hz</code></example>
    [Formula(Source + ": shot and thermal noise of common emitter and follower", Symbol = "e_2")]
    [RecordName("second-stage-noise.voltage")]
    public static VoltageNoiseDensity Voltage(Temperature T, ElectricCurrent I, double h_FE, ElectricResistance R_E, ElectricCurrent I_f, ElectricResistance R_B)
    {
        Guard.Positive(I);
        Guard.Positive(h_FE);
        Guard.NotNegative(R_E);
        Guard.Positive(I_f);
        Guard.Positive(R_B);
        var V_T = Devices.Junction.ThermalVoltage(T);
        var r_2 = V_T / I;
        var r_f = V_T / I_f;
        var g = 1 + r_f / R_B;
        var b = 1 + (r_f + R_E) / (h_FE * r_2);
        var e_th = ThermalNoise.VoltageDensity(g * g * (R_E + b * b * r_2 / 2) + r_f / 2 + r_f * (r_f / R_B), T);
        var e_B = ShotNoise.CurrentDensity(I / h_FE) * (r_f + g * R_E);
        return Sqrt(e_th * e_th + e_B * e_B);
    }

    /// <summary>The same without a follower: √(4·k·T·(R_E + b²·r_2/2) + 2·q·(I/h_FE)·R_E²), with b = 1 + R_E/(h_FE·r_2).</summary>
    /// <param name="T">Junction temperature; above 0 K.</param>
    /// <param name="I">Standing current of the stage; greater than 0 A.</param>
    /// <param name="h_FE">Its current gain; greater than 0.</param>
    /// <param name="R_E">Its emitter resistor; 0 Ω or more.</param>
    /// <returns>The density in series with the base, rms, in V/√Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source + ": shot and thermal noise of common emitter", Symbol = "e_2")]
    [RecordName("second-stage-noise.alone")]
    public static VoltageNoiseDensity Alone(Temperature T, ElectricCurrent I, double h_FE, ElectricResistance R_E)
    {
        Guard.Positive(I);
        Guard.Positive(h_FE);
        Guard.NotNegative(R_E);
        var r_2 = Devices.Junction.ThermalVoltage(T) / I;
        var b = 1 + R_E / (h_FE * r_2);
        var e_th = ThermalNoise.VoltageDensity(R_E + b * b * r_2 / 2, T);
        var e_B = ShotNoise.CurrentDensity(I / h_FE) * R_E;
        return Sqrt(e_th * e_th + e_B * e_B);
    }

    /// <summary>The noise current of a mirror's bases at its output, √(2·q·(I/h_FE)·2·(1 + s²)) with s = R_m/(R_m + r_m).</summary>
    /// <remarks>A base current is taken from the mirror's input. With a resistor in the emitter it is missing in the collector too: of the output's transistor it then counts twice, and of the other not at all.</remarks>
    /// <param name="I">Collector current of each transistor; greater than 0 A.</param>
    /// <param name="h_FE">Current gain of each; greater than 0.</param>
    /// <param name="R_m">Resistor in each emitter; 0 Ω or more.</param>
    /// <param name="r_m">Emitter resistance V_T/I of each; greater than 0 Ω.</param>
    /// <returns>The density at the mirror's output, rms, in A/√Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>SecondStageNoise.OfMirrorBases(2.mA, 200, 470.Ohm, 13.7.Ohm)   // 3.53 pA/√Hz</code></example>
    [Formula(Source + ": shot noise of base currents, here by superposition in a mirror", Symbol = "i_Bm")]
    [RecordName("second-stage-noise.of-mirror-bases")]
    public static CurrentNoiseDensity OfMirrorBases(ElectricCurrent I, double h_FE, ElectricResistance R_m, ElectricResistance r_m)
    {
        Guard.Positive(I);
        Guard.Positive(h_FE);
        Guard.NotNegative(R_m);
        Guard.Positive(r_m);
        var s = R_m / (R_m + r_m);
        return ShotNoise.CurrentDensity(I / h_FE) * Sqrt(2 * (1 + s * s));
    }

    /// <summary>At the bases of the pair: √(i² + (2π·f·C·e_2)²)·(r_e + R_deg).</summary>
    /// <param name="f">Frequency; 0 Hz or more.</param>
    /// <param name="i">Noise current at the second stage's input: base currents of the follower, the mirror, a cascode; 0 A/√Hz or more.</param>
    /// <param name="e_2">Noise voltage in series with that input; 0 V/√Hz or more.</param>
    /// <param name="C">All capacitance there, the compensation capacitor included; 0 F or more.</param>
    /// <param name="r_e">Emitter resistance of each device of the pair; greater than 0 Ω.</param>
    /// <param name="R_deg">Resistor in each emitter of the pair; 0 Ω or more.</param>
    /// <returns>The density at the pair's input, rms, in V/√Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>SecondStageNoise.AtInput(1.MHz, 3.pA_rtHz, 750.pV_rtHz, 400.pF, 13.7.Ohm, 47.Ohm)   // 215.1 pV/√Hz</code></example>
    [Formula("C. D. Motchenbacher & J. A. Connelly, Low-Noise Electronic System Design: noise of a second stage over the gain of the first, here a transconductance", Symbol = "e_n2")]
    [RecordName("second-stage-noise.at-input")]
    public static VoltageNoiseDensity AtInput(Frequency f, CurrentNoiseDensity i, VoltageNoiseDensity e_2, ElectricCapacitance C, ElectricResistance r_e, ElectricResistance R_deg)
    {
        Guard.NotNegative(f);
        Guard.NotNegative(i);
        Guard.NotNegative(e_2);
        Guard.NotNegative(C);
        Guard.Positive(r_e);
        Guard.NotNegative(R_deg);
        var e_i = i * (r_e + R_deg);
        var e_C = 2 * pi * f * C * (r_e + R_deg) * e_2;
        return Sqrt(e_i * e_i + e_C * e_C);
    }
}
