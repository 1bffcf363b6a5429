using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Protection;

/// <summary>What a loudspeaker gets when the output sticks to a rail.</summary>
/// <remarks>A voice coil under dc does not move air and does not cool: it heats until it burns, and can set fire to its surroundings.</remarks>
public static partial class LoudspeakerFault
{
    /// <summary>The dc resistance of all voice coils at an output, from the minimum rated load: k_vc·R_min.</summary>
    /// <remarks>Not of one box of the usual size: two boxes of 8 Ω in parallel are a rated load of 4 Ω, with 2.9 Ω for dc.</remarks>
    /// <param name="R_min">Minimum rated load, the nominal impedance of all boxes together; greater than 0 Ω.</param>
    /// <param name="k_vc">Dc resistance over nominal impedance: 72.5 % for a coil of 5.8 Ω in a box of 8 Ω; greater than 0, at most 100 %.</param>
    /// <returns>What a stuck rail finds behind the relay, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("common practice, no source: a coil's dc resistance is about three quarters of the nominal impedance", Symbol = "R_vc")]
    [RecordName("loudspeaker-fault.voice-coil")]
    public static ElectricResistance VoiceCoil(ElectricResistance R_min, Ratio k_vc)
    {
        Guard.Positive(R_min);
        Guard.Positive(k_vc);
        Guard.Between(k_vc, 0.percent, 100.percent, hint: "The impedance at work is above the coil's dc resistance.");
        return k_vc.DecimalFractions * R_min;
    }

    /// <summary>The current through the voice coil: V/R_vc.</summary>
    /// <param name="V">The dc at the output, magnitude; 0 V or more.</param>
    /// <param name="R_vc">The voice coil's dc resistance, about three quarters of the nominal impedance; greater than 0 Ω.</param>
    /// <returns>The current, dc, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>LoudspeakerFault.Current(50.V, 5.8.Ohm)   // 8.621 A</code></example>
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
    /// <returns>The heat in the voice coil, in J.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>LoudspeakerFault.Heat(50.V, 5.8.Ohm, 100.ms)   // 43.1 J</code></example>
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
