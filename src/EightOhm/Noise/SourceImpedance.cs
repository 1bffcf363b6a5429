using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Noise;

/// <summary>What the base of an input transistor sees through an input network, and the noise of it over frequency.</summary>
/// <remarks>From the source: R_1 in series, C_in to ground, C_c in series, R_b to ground at the base. A network of resistors and capacitors makes the thermal noise of the
/// real part of its impedance, not of its magnitude: a capacitor is silent. A divider with a capacitor in its lower arm is the same network: its upper resistor is R_b, its lower one R_1.</remarks>
public static partial class SourceImpedance
{
    private const string Source = "H. Nyquist's theorem for a two-terminal network: Gray, Hurst, Lewis & Meyer, Analysis and Design of Analog Integrated Circuits, ch. 11";

    /// <summary>The real part: R_b·(1 − z + v·w)/((1 − z)² + w²).</summary>
    /// <param name="f">Frequency; greater than 0 Hz.</param>
    /// <param name="R_1">In series with the source, its own resistance included; 0 Ω or more.</param>
    /// <param name="C_in">From there to ground; 0 F or more.</param>
    /// <param name="C_c">Coupling capacitor; greater than 0 F.</param>
    /// <param name="R_b">From the base to ground; greater than 0 Ω.</param>
    /// <returns>The resistance whose thermal noise the network makes, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "R_Z")]
    [RecordName("source-impedance.resistance")]
    public static ElectricResistance Resistance(Frequency f, ElectricResistance R_1, ElectricCapacitance C_in, ElectricCapacitance C_c, ElectricResistance R_b)
    {
        Guard.Positive(f);
        Guard.NotNegative(R_1);
        Guard.NotNegative(C_in);
        Guard.Positive(C_c);
        Guard.Positive(R_b);
        var v = 2 * pi * f * (R_1 * C_in + R_1 * C_c);
        var w = 2 * pi * f * (R_1 * C_in + R_1 * C_c + R_b * C_c);
        var z = 2 * pi * f * (R_1 * C_in) * (2 * pi * f * (R_b * C_c));
        return (1 - z + v * w) / ((1 - z) * (1 - z) + w * w) * R_b;
    }

    /// <summary>The magnitude: R_b·√((1 + v²)/((1 − z)² + w²)).</summary>
    /// <param name="f">Frequency; greater than 0 Hz.</param>
    /// <param name="R_1">In series with the source, its own resistance included; 0 Ω or more.</param>
    /// <param name="C_in">From there to ground; 0 F or more.</param>
    /// <param name="C_c">Coupling capacitor; greater than 0 F.</param>
    /// <param name="R_b">From the base to ground; greater than 0 Ω.</param>
    /// <returns>What a noise current of the base flows through, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Bird, Electrical Circuit Theory and Technology, ch. 26: series-parallel networks in complex numbers", Symbol = "Z")]
    [RecordName("source-impedance.magnitude")]
    public static ElectricResistance Magnitude(Frequency f, ElectricResistance R_1, ElectricCapacitance C_in, ElectricCapacitance C_c, ElectricResistance R_b)
    {
        Guard.Positive(f);
        Guard.NotNegative(R_1);
        Guard.NotNegative(C_in);
        Guard.Positive(C_c);
        Guard.Positive(R_b);
        var v = 2 * pi * f * (R_1 * C_in + R_1 * C_c);
        var w = 2 * pi * f * (R_1 * C_in + R_1 * C_c + R_b * C_c);
        var z = 2 * pi * f * (R_1 * C_in) * (2 * pi * f * (R_b * C_c));
        return Sqrt((1 + v * v) / ((1 - z) * (1 - z) + w * w)) * R_b;
    }

    /// <summary>The noise at the base: √(4·k·T·Re Z + (i_n·|Z|)²).</summary>
    /// <remarks>At the lowest frequencies it rises towards that of the bias resistor alone: the source no longer shorts it.</remarks>
    /// <param name="f">Frequency; greater than 0 Hz.</param>
    /// <param name="T">Temperature of the network; above 0 K.</param>
    /// <param name="i_n">Noise current of the base, rms; 0 A/√Hz or more.</param>
    /// <param name="R_1">In series with the source, its own resistance included; 0 Ω or more.</param>
    /// <param name="C_in">From there to ground; 0 F or more.</param>
    /// <param name="C_c">Coupling capacitor; greater than 0 F.</param>
    /// <param name="R_b">From the base to ground; greater than 0 Ω.</param>
    /// <returns>The density at the base, rms, in V/√Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>SourceImpedance.Density(20.Hz, 25.degC, 1.4616.pA_rtHz, 100.Ohm, 0.pF, 10.uF, 10.kOhm)   // 1.994 nV/√Hz</code></example>
    [Formula(Source, Symbol = "e_Z")]
    [RecordName("source-impedance.density")]
    public static VoltageNoiseDensity Density(Frequency f, Temperature T, CurrentNoiseDensity i_n, ElectricResistance R_1, ElectricCapacitance C_in, ElectricCapacitance C_c, ElectricResistance R_b)
    {
        Guard.NotNegative(i_n);
        var e_R = ThermalNoise.VoltageDensity(Resistance(f, R_1, C_in, C_c, R_b), T);
        var e_i = i_n * Magnitude(f, R_1, C_in, C_c, R_b);
        return Sqrt(e_R * e_R + e_i * e_i);
    }
}
