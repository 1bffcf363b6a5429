using EightOhm.Explaining;
using EightOhm.Loads;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;

namespace EightOhm.OutputNetworks;

/// <summary>A coil of one layer without a core: inductance, wire, resistance, heat.</summary>
/// <remarks>No core: at the currents of an output anything magnetic would distort. Keep it away from steel and from the input, and its axis off other coils'.</remarks>
public static partial class AirCoil
{
    /// <summary>Inductance of a single layer: D²·n²/(18·D + 40·l) µH, in inches.</summary>
    /// <remarks>Wheeler's approximation: within 1 % while the winding is longer than 0.4 of its diameter; a flat one has more than the formula says, and is refused.</remarks>
    /// <param name="n">Turns; 1 or more.</param>
    /// <param name="D">Mean diameter of the winding, middle of the wire to middle of the wire; greater than 0 m.</param>
    /// <param name="l">Length of the winding; at least 0.4 of the diameter.</param>
    /// <returns>The inductance, in H.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>AirCoil.Inductance(10, 25.4.mm, 25.4.mm)   // 1.724 µH</code></example>
    [Formula("H. A. Wheeler, Simple Inductance Formulas for Radio Coils, Proc. IRE 16(10), 1928, p. 1398", Symbol = "L")]
    [RecordName("air-coil.inductance")]
    public static ElectricInductance Inductance(double n, Length D, Length l)
    {
        Guard.AtLeast(n, 1, hint: "A coil has a turn at least.");
        Guard.Positive(D);
        Guard.Positive(l);
        Guard.NotNegative(l / D - 0.4, "l/D − 0.4", "The winding is too flat for the formula: wind it on a smaller former, or with more turns.");
        var inches = D / 25.4.mm;
        return n * n * inches / (18 + 40 * (l / D)) * 1.uH;
    }

    /// <summary>Length of the wire: π·D·n and both leads.</summary>
    /// <param name="n">Turns; 1 or more.</param>
    /// <param name="D">Mean diameter of the winding; greater than 0 m.</param>
    /// <param name="leads">Both leads together; 0 m or more.</param>
    /// <returns>The length, in m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("circumference of a circle, times the turns", Symbol = "l_w")]
    [RecordName("air-coil.wire-length")]
    public static Length WireLength(double n, Length D, Length leads)
    {
        Guard.AtLeast(n, 1, hint: "A coil has a turn at least.");
        Guard.Positive(D);
        Guard.NotNegative(leads);
        return pi * n * D + leads;
    }

    /// <summary>Resistance of the wire.</summary>
    /// <remarks>At dc. At 20 kHz the current keeps to the outer 0.5 mm of copper: a thicker wire gains less than its area says.</remarks>
    /// <param name="l_w">Length of the wire, leads included; greater than 0 m.</param>
    /// <param name="d">Diameter of its copper; greater than 0 m.</param>
    /// <param name="T">Temperature of the copper, from −200 to 250 °C.</param>
    /// <returns>The resistance, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>AirCoil.Resistance(0.6.m, 1.25.mm, 20.degC)   // 8.43 mΩ</code></example>
    [Formula("IEC 60028, resistance of copper at 20 °C and its temperature coefficient", Symbol = "R_coil")]
    [RecordName("air-coil.resistance")]
    public static ElectricResistance Resistance(Length l_w, Length d, Temperature T)
    {
        Guard.Positive(l_w);
        var R_km = CopperWire.PerKilometre(d);
        var k_T = CopperWire.WarmFactor(T);
        return l_w / 1000.m * R_km * k_T;
    }

    /// <summary>Heat in the coil: I²·R.</summary>
    /// <param name="I_rms">Load current (rms, not peak); 0 A or more.</param>
    /// <param name="R_coil">Resistance of the coil; 0 Ω or more.</param>
    /// <returns>The power dissipation, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    [Formula("C. K. Alexander & M. N. O. Sadiku, Fundamentals of Electric Circuits, 5th ed., ch. 2", Symbol = "P_coil")]
    [RecordName("air-coil.heat")]
    public static Power Heat(ElectricCurrent I_rms, ElectricResistance R_coil)
    {
        Guard.NotNegative(I_rms);
        Guard.NotNegative(R_coil);
        return I_rms * I_rms * R_coil;
    }
}
