using EightOhm.Explaining;
using EightOhm.Quantities;
using MathNet.Numerics;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Supply;

/// <summary>A resistor and a capacitor in series across a winding, which damp the ringing of its leakage inductance with the diodes' capacitance.</summary>
public static partial class Snubber
{
    /// <summary>The frequency at which the winding rings when the diodes let go: 1/(2·π·√(L·C)).</summary>
    /// <param name="L">Leakage inductance seen from the winding; greater than 0 H.</param>
    /// <param name="C">Capacitance of diodes and winding across it; greater than 0 F.</param>
    /// <returns>The frequency, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 12: LC resonance", Symbol = "f_ring")]
    [RecordName("snubber.ring-frequency")]
    public static Frequency RingFrequency(ElectricInductance L, ElectricCapacitance C)
    {
        Guard.Positive(L);
        Guard.Positive(C);
        return 1 / (2 * pi * Sqrt(L * C));
    }

    /// <summary>The damping resistor: √(L/C), the characteristic impedance.</summary>
    /// <param name="L">Leakage inductance; greater than 0 H.</param>
    /// <param name="C">Capacitance across it, without the snubber; greater than 0 F.</param>
    /// <returns>The resistance, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>Snubber.Resistance(100.uH, 1.nF)   // 316.2 Ω</code></example>
    [Formula("parallel RLC circuit: its damping ratio is 1/2 at R = √(L/C)", Symbol = "R_s")]
    [RecordName("snubber.resistance")]
    public static ElectricResistance Resistance(ElectricInductance L, ElectricCapacitance C)
    {
        Guard.Positive(L);
        Guard.Positive(C);
        return Sqrt(L / C);
    }

    /// <summary>The usual snubber capacitor: ten times the capacitance that rings (common practice, no source).</summary>
    /// <remarks>With less, the resistor is not across the ring but in series with a second one; <see cref="Damping"/> says what is left of it.</remarks>
    /// <param name="C">Capacitance of diodes and winding; greater than 0 F.</param>
    /// <exception cref="ArgumentOutOfRangeException">The capacitance is not positive.</exception>
    [RecordName("snubber.usual-capacitance")]
    [Worked("ten times the capacitance that rings", Source = "common practice, no source")]
    public static ElectricCapacitance UsualCapacitance(ElectricCapacitance C) => 10 * Guard.Positive(C);

    /// <summary>The damping ratio of the ring with its snubber: 0 rings for ever, 1 and more does not ring.</summary>
    /// <remarks>Losses of winding and diodes are left out. From the roots of s³·L·C·R_s·C_s + s²·L·(C + C_s) + s·R_s·C_s + 1.</remarks>
    /// <param name="L">Leakage inductance; greater than 0 H.</param>
    /// <param name="C">Capacitance across it, without the snubber; greater than 0 F.</param>
    /// <param name="R_s">Snubber resistor; greater than 0 Ω.</param>
    /// <param name="C_s">Snubber capacitor; greater than 0 F.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [RecordName("snubber.damping")]
    [Worked("the damping ratio of the least damped pair of poles of the winding with its snubber")]
    public static double Damping(ElectricInductance L, ElectricCapacitance C, ElectricResistance R_s, ElectricCapacitance C_s)
    {
        Guard.Positive(L);
        Guard.Positive(C);
        Guard.Positive(R_s);
        Guard.Positive(C_s);

        // In units of 1/√(LC): resistor over the characteristic impedance, capacitor over what rings.
        double r = R_s / Resistance(L, C), c = C_s / C;
        return new Polynomial(1, r * c, 1 + c, r * c).Roots().Min(s => -s.Real / s.Magnitude);
    }

    /// <summary>The capacitance that rings, from the frequency before and after a known capacitor was put across it: C_a/((f_1/f_2)² − 1).</summary>
    /// <remarks>A capacitor that halves the frequency is three times what rings (common practice, no source).</remarks>
    /// <param name="C_a">The capacitor added; greater than 0 F.</param>
    /// <param name="f_1">Ring frequency before; above f_2.</param>
    /// <param name="f_2">Ring frequency after; greater than 0 Hz.</param>
    /// <returns>The capacitance, in F.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [RecordName("snubber.what-rings")]
    [Formula("derived: LC resonance (Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 12) before and after, the same L, divided", Symbol = "C")]
    public static ElectricCapacitance WhatRings(ElectricCapacitance C_a, Frequency f_1, Frequency f_2)
    {
        Guard.Positive(C_a);
        Guard.Positive(f_2);
        Guard.Positive(f_1 - f_2, nameof(f_1), "A capacitor makes the ring slower; were the two exchanged?");
        var q_f = f_1 / f_2;
        return C_a / (q_f * q_f - 1);
    }

    /// <summary>The power dissipation of the resistor: C_s·V²·f, for a step of V that repeats at f.</summary>
    /// <param name="C_s">Snubber capacitor; greater than 0 F.</param>
    /// <param name="V">The step; 0 V or more.</param>
    /// <param name="f">How often it charges and discharges once; 0 Hz or more.</param>
    /// <returns>The power dissipation, average, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("RC charging: C·V²/2 is burnt at each edge, two edges a period", Symbol = "P_s")]
    [RecordName("snubber.heat")]
    public static Power PowerDissipation(ElectricCapacitance C_s, ElectricPotential V, Frequency f)
    {
        Guard.Positive(C_s);
        Guard.NotNegative(V);
        Guard.NotNegative(f);
        return V * V * (C_s * f);
    }
}
