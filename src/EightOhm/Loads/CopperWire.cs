using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Loads;

/// <summary>Copper conductors: gauge, resistance, temperature; and two of them as a cable.</summary>
/// <remarks>Resistance at dc; annealed copper of 100 % conductivity (IEC 60028: 1/58 Ω·mm²/m, 0.017241, at 20 °C).</remarks>
public static partial class CopperWire
{
    /// <summary>Diameter of a solid wire of an American gauge: 0.127 mm·92^((36 − n)/39).</summary>
    /// <param name="n_AWG">The gauge, from −3 (written 0000) to 40.</param>
    /// <returns>The diameter of the copper, in m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The gauge is out of range.</exception>
    /// <example><code>CopperWire.Diameter(14)   // 1.628 mm</code></example>
    [Formula("ASTM B258, American wire gauge", Symbol = "d")]
    [RecordName("copper-wire.diameter")]
    public static Length Diameter(int n_AWG)
    {
        Guard.Between(n_AWG, -3, 40, hint: "0 is written 1/0 in the trade, −1 is 2/0, −2 is 3/0, −3 is 4/0.");
        return 0.127.mm * Pow(92, (36.0 - n_AWG) / 39);
    }

    /// <summary>Resistance of a kilometre of wire at 20 °C: 1000/58 Ω over the area in mm².</summary>
    /// <param name="d">Diameter of the copper, solid or that of the same area; greater than 0 m.</param>
    /// <returns>The resistance of one kilometre, one way, at 20 °C, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not positive.</exception>
    [Formula("IEC 60028, resistance of copper at 20 °C", Symbol = "R_km")]
    [RecordName("copper-wire.per-kilometre")]
    public static ElectricResistance PerKilometre(Length d)
    {
        Guard.Positive(d);
        var A = pi / 4 * (d * d);
        return 1000.Ohm / 58 / (A / 1.mm2);
    }

    /// <summary>How much more copper resists when it is warm: (234.5 + t)/254.5.</summary>
    /// <param name="T">Temperature of the copper, from −200 to 250 °C.</param>
    /// <returns>The factor on the resistance at 20 °C, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is out of range.</exception>
    [Formula("IEC 60028, temperature coefficient of copper at 20 °C: 0.00393 per kelvin, 1/(234.5 + 20)", Symbol = "k_T")]
    [RecordName("copper-wire.warm-factor")]
    public static double WarmFactor(Temperature T)
    {
        Guard.Between(T, (-200).degC, 250.degC);
        return (T - (-234.5).degC) / (20.degC - (-234.5).degC);
    }

    /// <summary>The factor that takes a measured resistance to 20 °C as the cable standard tables it: 250/(230 + t).</summary>
    /// <param name="T">Temperature of the conductor, from 0 to 100 °C.</param>
    /// <returns>The factor on the measured resistance, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is out of range.</exception>
    [Formula("IEC 60228, temperature correction factors for conductor resistance (0.004 per kelvin: 1/(1 + 0.004·(t − 20)))", Symbol = "k_t")]
    [RecordName("copper-wire.standard-factor")]
    public static double StandardFactor(Temperature T)
    {
        Guard.Between(T, 0.degC, 100.degC, hint: "The standard tables 0 to 100 °C.");
        return 250 / (230 + T.DegreesCelsius);
    }

    /// <summary>Resistance of a cable, there and back: 2·l·R_km·k_T.</summary>
    /// <param name="l">Length of the cable, one way; greater than 0 m.</param>
    /// <param name="R_km">Resistance of a kilometre of one conductor at 20 °C; greater than 0 Ω.</param>
    /// <param name="T">Temperature of the copper, from −200 to 250 °C.</param>
    /// <returns>The loop resistance, there and back, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>CopperWire.LoopResistance(5.m, 7.Ohm, 20.degC)   // 70 mΩ</code></example>
    [Formula("common practice, no source: both conductors carry the current", Symbol = "R_c")]
    [RecordName("copper-wire.loop-resistance")]
    public static ElectricResistance LoopResistance(Length l, ElectricResistance R_km, Temperature T)
    {
        Guard.Positive(l);
        Guard.Positive(R_km);
        var k_T = WarmFactor(T);
        return 2 * (l / 1000.m) * R_km * k_T;
    }

    /// <summary>Inductance of a cable, there and back, at audio frequencies: 0.4 µH/m·l·(ln(2·D/d) + 1/4).</summary>
    /// <remarks>The current spread evenly over round conductors; skin effect takes the 1/4 away.</remarks>
    /// <param name="l">Length of the cable, one way; greater than 0 m.</param>
    /// <param name="d">Diameter of each conductor's copper; greater than 0 m.</param>
    /// <param name="D">Distance of the conductors, centre to centre; at least d.</param>
    /// <returns>The loop inductance, there and back, in H.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("F. W. Grover, Inductance Calculations, ch. 5: geometric mean distances of two parallel round wires", Symbol = "L_c")]
    [RecordName("copper-wire.loop-inductance")]
    public static ElectricInductance LoopInductance(Length l, Length d, Length D)
    {
        Guard.Positive(l);
        Guard.Positive(d);
        Guard.Positive(D);
        Guard.NotNegative(D - d, "D − d", "The conductors would overlap: give their distance centre to centre.");
        return 0.4.uH * (l / 1.m) * (Ln(2 * (D / d)) + 0.25);
    }
}
