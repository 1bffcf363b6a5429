using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Protection;

/// <summary>Mains loss: the loudspeaker must be off before the rails fall so far that the amplifier misbehaves.</summary>
public static partial class Mute
{
    /// <summary>How long the reservoir holds the rail up after the last charging pulse: C·(V − V_min)/I.</summary>
    /// <param name="C">Reservoir of one rail; greater than 0 F.</param>
    /// <param name="V">The rail when the mains fails, at its minimum; above V_min.</param>
    /// <param name="V_min">The rail below which the amplifier misbehaves; 0 V or more.</param>
    /// <param name="I">Mean current from that rail; greater than 0 A.</param>
    /// <returns>The time until the rail is down to V_min, in s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Q = C·V: a constant current takes the charge between both voltages", Symbol = "t_hold")]
    [RecordName("mute.hold-up")]
    public static Duration HoldUp(ElectricCapacitance C, ElectricPotential V, ElectricPotential V_min, ElectricCurrent I)
    {
        Guard.Positive(C);
        Guard.NotNegative(V_min);
        Guard.Between(V_min, default, V, hint: "The rail is already too low to mute in time.");
        Guard.Positive(I);
        return C * (V - V_min) / I;
    }
}
