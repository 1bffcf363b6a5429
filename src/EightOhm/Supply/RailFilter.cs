using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Supply;

/// <summary>A resistor and a capacitor between a rail and the front end that it feeds.</summary>
public static partial class RailFilter
{
    /// <summary>By how much it weakens a frequency: √(1 + (2·π·f·R·C)²), a ratio above 1 with its decibels.</summary>
    /// <param name="f">Frequency, twice the mains for ripple; 0 Hz or more.</param>
    /// <param name="R">Filter resistor; greater than 0 Ω.</param>
    /// <param name="C">Filter capacitor, its ESR left out; greater than 0 F.</param>
    /// <returns>The attenuation, a ratio above 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("J. Fiore, Op Amps and Linear Integrated Circuits, ch. 1: first-order low pass", Symbol = "R_f")]
    [RecordName("rail-filter.rejection")]
    public static Gain Rejection(Frequency f, ElectricResistance R, ElectricCapacitance C)
    {
        Guard.NotNegative(f);
        Guard.Positive(R);
        Guard.Positive(C);
        var f_c = 1 / (2 * pi * (R * C));
        var u = f / f_c;
        return Gain.FromRatio(Sqrt(1 + u * u));
    }

    /// <summary>Where it begins to filter: 1/(2·π·R·C).</summary>
    /// <param name="R">Filter resistor; greater than 0 Ω.</param>
    /// <param name="C">Filter capacitor; greater than 0 F.</param>
    /// <returns>The corner, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>RailFilter.Corner(22.Ohm, 1000.uF)   // 7.234 Hz</code></example>
    [Formula("J. Fiore, Op Amps and Linear Integrated Circuits, ch. 1: first-order low pass", Symbol = "f_f")]
    [RecordName("rail-filter.corner")]
    public static Frequency Corner(ElectricResistance R, ElectricCapacitance C)
    {
        Guard.Positive(R);
        Guard.Positive(C);
        return 1 / (2 * pi * (R * C));
    }

    /// <summary>What it costs of the swing: I·R.</summary>
    /// <param name="I">Current of the front end and second stage through it, mean; 0 A or more.</param>
    /// <param name="R">Filter resistor; 0 Ω or more.</param>
    /// <returns>The drop, dc, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    [Formula("Ohm's law across the filter resistor", Symbol = "V_f")]
    [RecordName("rail-filter.drop")]
    public static ElectricPotential Drop(ElectricCurrent I, ElectricResistance R)
    {
        Guard.NotNegative(I);
        Guard.NotNegative(R);
        return I * R;
    }

    /// <summary>The mean voltage behind it into a load that is a resistor: V·R_x/(R + R_x).</summary>
    /// <param name="V">Mean voltage before it; 0 V or more.</param>
    /// <param name="R">Filter resistor; 0 Ω or more.</param>
    /// <param name="R_x">What it feeds, as a resistor; greater than 0 Ω.</param>
    /// <returns>The voltage, mean, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("R. L. Boylestad & L. Nashelsky, Electronic Devices and Circuit Theory, 11th ed., ch. 15", Symbol = "V_x")]
    [RecordName("rail-filter.mean-behind")]
    public static ElectricPotential MeanBehind(ElectricPotential V, ElectricResistance R, ElectricResistance R_x)
    {
        Guard.NotNegative(V);
        Guard.NotNegative(R);
        Guard.Positive(R_x);
        return V * (R_x / (R + R_x));
    }

    /// <summary>The ripple behind it, its load left out: V_r·X_C/√(R² + X_C²), X_C at the ripple's frequency 2·f.</summary>
    /// <param name="V_r">Ripple before it; 0 V or more.</param>
    /// <param name="R">The section's resistor; greater than 0 Ω.</param>
    /// <param name="C">The section's capacitor; greater than 0 F.</param>
    /// <param name="f">Mains frequency, full-wave; greater than 0 Hz.</param>
    /// <returns>The ripple, in the convention (peak to peak or rms) of V_r, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Boylestad & Nashelsky, Electronic Devices and Circuit Theory, 11th ed., ch. 15: RC filter", Symbol = "V_r2")]
    [RecordName("rail-filter.ripple-behind")]
    public static ElectricPotential RippleBehind(ElectricPotential V_r, ElectricResistance R, ElectricCapacitance C, Frequency f)
    {
        Guard.NotNegative(V_r);
        Guard.Positive(R);
        Guard.Positive(C);
        Guard.Positive(f);
        var X_C = 1 / (4 * pi * (C * f));
        return V_r * (X_C / Sqrt(R * R + X_C * X_C));
    }
}
