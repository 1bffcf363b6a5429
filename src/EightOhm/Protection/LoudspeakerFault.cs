using EightOhm.Quantities;
using EightOhm.Explaining;
using UnitsNet;

namespace EightOhm.Protection;

/// <summary>What a loudspeaker gets when the output sticks to a rail.</summary>
/// <remarks>A voice coil under dc does not move air and does not cool: it heats until it burns, and can set fire to its surroundings.</remarks>
public static partial class LoudspeakerFault
{
    /// <summary>The current through the voice coil: V/R_vc.</summary>
    /// <param name="V">The dc at the output, magnitude; 0 V or more.</param>
    /// <param name="R_vc">The voice coil's dc resistance, about three quarters of the nominal impedance; greater than 0 Ω.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Ohm's law: the coil at rest is its resistance alone", Symbol = "I_dc")]
    [RecordName("loudspeaker-fault.current")]
    public static ElectricCurrent Current(ElectricPotential V, ElectricResistance R_vc)
    {
        Guard.NotNegative(V);
        Guard.Positive(R_vc);
        return V / R_vc;
    }

    /// <summary>The heat in the voice coil until the relay has opened: V²/R_vc·t. The rail is taken to hold, the coil to stay cold.</summary>
    /// <param name="V">The dc at the output, magnitude; 0 V or more.</param>
    /// <param name="R_vc">The voice coil's dc resistance; greater than 0 Ω.</param>
    /// <param name="t">Detector's trip and relay's release together, with its arc; 0 s or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Joule's law: V²/R over the time", Symbol = "E_vc")]
    [RecordName("loudspeaker-fault.heat")]
    public static Energy Heat(ElectricPotential V, ElectricResistance R_vc, Duration t)
    {
        Guard.NotNegative(V);
        Guard.Positive(R_vc);
        Guard.NotNegative(t);
        return V * V / R_vc * t;
    }
}
