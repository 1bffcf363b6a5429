using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.InputStages;

/// <summary>What stands between the source and the base: a low pass that keeps radio out, a coupling capacitor, a bias resistor.</summary>
/// <remarks>R_1 in series (the source's own resistance and the filter's resistor), C_in to ground, C_c in series, R_b to ground at the base; the base itself takes nothing. Solved
/// whole, of second order: for parts far apart the corners are 1/(2π·C_c·(R_1 + R_b)) and 1/(2π·C_in·R_1∥R_b).</remarks>
public static partial class InputNetwork
{
    private const string Source = "Bird, Electrical Circuit Theory and Technology, ch. 26; derived: the network's transfer is that of a second-order band pass";

    /// <summary>The level that is left in the middle of the band: R_b·C_c/(R_1·C_in + (R_1 + R_b)·C_c).</summary>
    /// <param name="R_1">In series, the source's resistance included; greater than 0 Ω.</param>
    /// <param name="C_in">Filter capacitor; 0 F or more.</param>
    /// <param name="C_c">Coupling capacitor; greater than 0 F.</param>
    /// <param name="R_b">Bias resistor; greater than 0 Ω.</param>
    /// <returns>The gain of the network in mid-band, below one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>InputNetwork.Level(150.Ohm, 2.2.nF, 10.uF, 10.kOhm)   // 0.9852</code></example>
    [Formula(Source, Symbol = "H_0")]
    [RecordName("input-network.level")]
    public static Gain Level(ElectricResistance R_1, ElectricCapacitance C_in, ElectricCapacitance C_c, ElectricResistance R_b)
    {
        Guard.Positive(R_1);
        Guard.NotNegative(C_in);
        Guard.Positive(C_c);
        Guard.Positive(R_b);
        return Gain.FromRatio(R_b * C_c / (R_1 * C_in + R_1 * C_c + R_b * C_c));
    }

    /// <summary>The level at a frequency: H_0/√(1 + (ω·b_2/b_1 − 1/(ω·b_1))²).</summary>
    /// <param name="f">Frequency; greater than 0 Hz.</param>
    /// <param name="R_1">In series, the source's resistance included; greater than 0 Ω.</param>
    /// <param name="C_in">Filter capacitor; 0 F or more.</param>
    /// <param name="C_c">Coupling capacitor; greater than 0 F.</param>
    /// <param name="R_b">Bias resistor; greater than 0 Ω.</param>
    /// <returns>The gain of the network, a magnitude.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "H")]
    [RecordName("input-network.level-at")]
    public static Gain LevelAt(Frequency f, ElectricResistance R_1, ElectricCapacitance C_in, ElectricCapacitance C_c, ElectricResistance R_b)
    {
        Guard.Positive(f);
        var H_0 = Level(R_1, C_in, C_c, R_b);
        var b_1 = R_1 * C_in + R_1 * C_c + R_b * C_c;
        var u = 2 * pi * f * b_1;
        var x = 2 * pi * f * (R_1 * C_in) * (R_b * C_c / b_1);
        return H_0 * (1 / Sqrt(1 + (x - 1 / u) * (x - 1 / u)));
    }

    /// <summary>The upper −3 dB frequency, against the middle of the band: (1 + √(1 + 4·x))/(4·π·x·b_1).</summary>
    /// <remarks>With R_b far above R_1 it is 1/(2π·R_1·C_in): a source of some resistance lowers it, and with it the band of the noise.</remarks>
    /// <param name="R_1">In series, the source's resistance included; greater than 0 Ω.</param>
    /// <param name="C_in">Filter capacitor; greater than 0 F.</param>
    /// <param name="C_c">Coupling capacitor; greater than 0 F.</param>
    /// <param name="R_b">Bias resistor; greater than 0 Ω.</param>
    /// <returns>The corner, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>InputNetwork.HighCorner(150.Ohm, 2.2.nF, 10.uF, 10.kOhm)   // 489.5 kHz</code></example>
    [Formula(Source, Symbol = "f_H")]
    [RecordName("input-network.high-corner")]
    public static Frequency HighCorner(ElectricResistance R_1, ElectricCapacitance C_in, ElectricCapacitance C_c, ElectricResistance R_b)
    {
        Guard.Positive(R_1);
        Guard.Positive(C_in);
        Guard.Positive(C_c);
        Guard.Positive(R_b);
        Guard.Positive(R_b * C_c, "R_b·C_c");
        Guard.Positive(R_1 * C_in / (R_1 * C_in + R_1 * C_c + R_b * C_c) * (R_b * C_c / (R_1 * C_in + R_1 * C_c + R_b * C_c)), "the ratio of the corners");
        var b_1 = R_1 * C_in + R_1 * C_c + R_b * C_c;
        var x = R_1 * C_in / b_1 * (R_b * C_c / b_1);
        return (1 + Sqrt(1 + 4 * x)) / (4 * pi * x) / b_1;
    }

    /// <summary>The lower −3 dB frequency, against the middle of the band: 1/(π·b_1·(1 + √(1 + 4·x))).</summary>
    /// <param name="R_1">In series, the source's resistance included; greater than 0 Ω.</param>
    /// <param name="C_in">Filter capacitor; 0 F or more.</param>
    /// <param name="C_c">Coupling capacitor; greater than 0 F.</param>
    /// <param name="R_b">Bias resistor; greater than 0 Ω.</param>
    /// <returns>The corner, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>InputNetwork.LowCorner(150.Ohm, 2.2.nF, 10.uF, 10.kOhm)   // 1.568 Hz</code></example>
    [Formula(Source, Symbol = "f_L")]
    [RecordName("input-network.low-corner")]
    public static Frequency LowCorner(ElectricResistance R_1, ElectricCapacitance C_in, ElectricCapacitance C_c, ElectricResistance R_b)
    {
        Guard.Positive(R_1);
        Guard.NotNegative(C_in);
        Guard.Positive(C_c);
        Guard.Positive(R_b);
        Guard.Positive(R_b * C_c, "R_b·C_c");
        var b_1 = R_1 * C_in + R_1 * C_c + R_b * C_c;
        var x = R_1 * C_in / b_1 * (R_b * C_c / b_1);
        return 1 / (pi * (1 + Sqrt(1 + 4 * x))) / b_1;
    }

    /// <summary>The resistance that a source may have for a corner of the filter: 1/(2π·f·C_in) − R_in.</summary>
    /// <remarks>The bias resistor left out: it raises the corner by about (R_src + R_in)/R_b of itself.</remarks>
    /// <param name="f">The corner that must be left; greater than 0 Hz.</param>
    /// <param name="R_in">The filter's resistor; 0 Ω or more.</param>
    /// <param name="C_in">The filter's capacitor; greater than 0 F.</param>
    /// <returns>The highest source resistance, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or the filter alone is below that corner.</exception>
    [Formula("Bird, Electrical Circuit Theory and Technology, ch. 26: corner of a resistor and a capacitor, solved for the resistance", Symbol = "R_src")]
    [RecordName("input-network.highest-source")]
    public static ElectricResistance HighestSource(Frequency f, ElectricResistance R_in, ElectricCapacitance C_in)
    {
        Guard.Positive(f);
        Guard.NotNegative(R_in);
        Guard.Positive(C_in);
        Guard.NotNegative(1 / (2 * pi * (f * C_in)) - R_in, "the source resistance that is left", "The filter's own resistor makes a lower corner already.");
        return 1 / (2 * pi * (f * C_in)) - R_in;
    }
}
