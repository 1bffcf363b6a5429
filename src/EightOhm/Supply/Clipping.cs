using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>What a rail gives at clipping into a resistor.</summary>
public static partial class Clipping
{
    /// <summary>The peak output voltage on a rail: (V − V_loss)·R_L/(R_L + R_s).</summary>
    /// <param name="V">One rail at its minimum while it carries its peak; above V_loss.</param>
    /// <param name="V_loss">Losses that do not go with the current: junctions, second stage, filter; 0 V or more.</param>
    /// <param name="R_s">Resistance in series with the load: R_E over the number of pairs; 0 Ω or more.</param>
    /// <param name="R_L">Load, resistive; greater than 0 Ω.</param>
    /// <returns>The output voltage, peak, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Ohm's law: what the losses leave, divided between load and series resistance", Symbol = "V_p")]
    [RecordName("clipping.peak")]
    public static ElectricPotential Peak(ElectricPotential V, ElectricPotential V_loss, ElectricResistance R_s, ElectricResistance R_L)
    {
        Guard.Positive(V);
        Guard.Between(V_loss, default, V, hint: "The losses alone take the whole rail; raise it.");
        Guard.NotNegative(R_s);
        Guard.Positive(R_L);
        return (V - V_loss) * (R_L / (R_L + R_s));
    }

    /// <summary>The power of a sine of a peak: V_p²/(2·R_L).</summary>
    /// <param name="V_p">Peak output voltage (not rms); 0 V or more.</param>
    /// <param name="R_L">Load, resistive; greater than 0 Ω.</param>
    /// <returns>The power of the sine, average, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>Clipping.Power(42.V, 8.Ohm)   // 110.25 W</code></example>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14", Symbol = "P_clip")]
    [RecordName("clipping.power")]
    public static Power Power(ElectricPotential V_p, ElectricResistance R_L)
    {
        Guard.NotNegative(V_p);
        Guard.Positive(R_L);
        return V_p * V_p / (2 * R_L);
    }
}
