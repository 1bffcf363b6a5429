using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Noise;

/// <summary>The noise of a resistance by its temperature (Johnson noise), single-sided.</summary>
public static partial class ThermalNoise
{
    /// <summary>Open-circuit noise voltage density of a resistance: √(4·k·T·R).</summary>
    /// <remarks>White below some 100 GHz at room temperature.</remarks>
    /// <param name="R">The resistance; 0 Ω or more.</param>
    /// <param name="T">Its temperature; above 0 K.</param>
    /// <returns>The density, rms, in V/√Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is negative or the temperature not above absolute zero.</exception>
    /// <example><code>ThermalNoise.VoltageDensity(1.kOhm, 25.degC)   // 4.058 nV/√Hz</code></example>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 7", Symbol = "e_R")]
    [RecordName("thermal-noise.voltage-density")]
    public static VoltageNoiseDensity VoltageDensity(ElectricResistance R, Temperature T)
    {
        Guard.NotNegative(R);
        Guard.Positive(T);
        var e_squared = 4 * k * T * R;
        return Sqrt(e_squared);
    }

    /// <summary>Short-circuit noise current density of a resistance: √(4·k·T/R).</summary>
    /// <param name="R">The resistance; greater than 0 Ω.</param>
    /// <param name="T">Its temperature; above 0 K.</param>
    /// <returns>The density, rms, in A/√Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is not positive or the temperature not above absolute zero.</exception>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 7", Symbol = "i_R")]
    [RecordName("thermal-noise.current-density")]
    public static CurrentNoiseDensity CurrentDensity(ElectricResistance R, Temperature T)
    {
        Guard.Positive(R);
        Guard.Positive(T);
        return Sqrt(4 * k * T / R);
    }

    /// <summary>Noise voltage of a resistance over a noise bandwidth, rms: e·√B.</summary>
    /// <param name="R">The resistance; 0 Ω or more.</param>
    /// <param name="T">Its temperature; above 0 K.</param>
    /// <param name="B">The noise bandwidth (of a one-pole response π/2 times its corner); 0 Hz or more.</param>
    /// <returns>The noise, rms, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>ThermalNoise.Voltage(1.kOhm, 25.degC, 20.kHz)   // 573.9 nV</code></example>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 7", Symbol = "E_R")]
    [RecordName("thermal-noise.voltage")]
    public static ElectricPotential Voltage(ElectricResistance R, Temperature T, Frequency B) => VoltageDensity(R, T) * Sqrt(B);

    /// <summary>The resistance whose thermal noise a density would be: e_n²/(4·k·T). 3.3 nV/√Hz at 25 °C is 661 Ω.</summary>
    /// <remarks>A measure, not a part: a transistor's noise has one too.</remarks>
    /// <param name="e_n">The density; 0 V/√Hz or more.</param>
    /// <param name="T">The temperature of the resistance; above 0 K.</param>
    /// <returns>The resistance that makes as much noise, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The density is negative or the temperature not above absolute zero.</exception>
    /// <example><code>ThermalNoise.EquivalentResistance(3.3.nV_rtHz, 25.degC)   // 661.4 Ω</code></example>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 7, solved for the resistance", Symbol = "R_n")]
    [RecordName("thermal-noise.equivalent-resistance")]
    public static ElectricResistance EquivalentResistance(VoltageNoiseDensity e_n, Temperature T)
    {
        Guard.NotNegative(e_n);
        Guard.Positive(T);
        return e_n * e_n / (4 * k * T);
    }
}
