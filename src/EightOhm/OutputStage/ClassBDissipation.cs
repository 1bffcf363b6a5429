using EightOhm.Quantities;
using EightOhm.Working;
using UnitsNet;
using static EightOhm.Quantities.Constants;

namespace EightOhm.OutputStage;

/// <summary>Heat of an ideal class-B pair: no bias, no emitter resistors, rails that do not sag.</summary>
public static partial class ClassBDissipation
{
    /// <summary>The worst heat of the pair over all sine levels, for a load of magnitude |Z| and phase φ.</summary>
    /// <remarks>Up to the phase whose cosine is 2/π (50.46°) the worst level is below full swing; beyond it, it is full swing.
    /// Both devices together; each carries half.</remarks>
    /// <param name="V">One rail (not rail to rail); greater than 0 V.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="cos_phi">Cosine of the load's phase, from 0 to 1 (1 is a resistor).</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("resistive: Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14; with phase: derived, V·I̅ − V_p²·cos φ/2|Z| maximised over V_p ≤ V", Symbol = "P_D")]
    public static Power Worst(ElectricPotential V, ElectricResistance Z, double cos_phi)
    {
        Guard.Positive(V);
        Guard.Positive(Z);
        Guard.Between(cos_phi, 0, 1);
        if (cos_phi >= 2 / pi)
            return 2 / (pi * pi * cos_phi) * (V * V / Z);
        return (4 / pi - cos_phi) / 2 * (V * V / Z);
    }
}
