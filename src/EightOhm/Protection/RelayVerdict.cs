using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Protection;

/// <summary>Whether a loudspeaker relay can break the dc of a stuck output.</summary>
/// <remarks>
/// An alternating current goes out at its zero; a direct one keeps an arc burning between the contacts when voltage and current suffice. Many relays sold for 250 V ac
/// are rated for 30 V dc (common practice, no source), and their maker's curve allows less current at more voltage. A relay that cannot break opens, arcs
/// and may weld: the loudspeaker burns behind an open contact. Cures: contacts in series, the moving contact tied to ground so that the arc ends there, a relay with a
/// dc curve above this point, or a crowbar with fuses.
/// </remarks>
public sealed record RelayVerdict
{
    private RelayVerdict(ElectricPotential rail, ElectricCurrent current, ElectricPotential ratedVoltage, ElectricCurrent ratedCurrent) =>
        (Rail, Current, RatedVoltage, RatedCurrent) = (rail, current, ratedVoltage, ratedCurrent);

    /// <summary>The voltage to break: the rail.</summary>
    public ElectricPotential Rail { get; }

    /// <summary>The current to break.</summary>
    public ElectricCurrent Current { get; }

    /// <summary>The relay's dc voltage rating.</summary>
    public ElectricPotential RatedVoltage { get; }

    /// <summary>The relay's dc breaking current at that voltage.</summary>
    public ElectricCurrent RatedCurrent { get; }

    /// <summary>Whether both voltage and current are within the rating.</summary>
    public bool Breaks => Rail <= RatedVoltage && Current <= RatedCurrent;

    /// <summary>What the voltage rating lacks; 0 V when it is enough.</summary>
    public ElectricPotential ShortVoltage => Rail > RatedVoltage ? Rail - RatedVoltage : default;

    /// <summary>What the current rating lacks; 0 A when it is enough.</summary>
    public ElectricCurrent ShortCurrent => Current > RatedCurrent ? Current - RatedCurrent : default;

    /// <summary>Judges a relay.</summary>
    /// <param name="rail">The rail at high mains; greater than 0 V.</param>
    /// <param name="R_vc">Dc resistance of all voice coils behind the relay: that of the minimum rated load, by <see cref="LoudspeakerFault.VoiceCoil"/>; greater than 0 Ω.</param>
    /// <param name="ratedVoltage">The dc voltage up to which the relay breaks, from its datasheet's dc curve (not its ac rating); greater than 0 V.</param>
    /// <param name="ratedCurrent">The dc current that it breaks at that voltage; greater than 0 A.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Worked("the arc and the fault current held against the relay's ratings")]
    public static RelayVerdict Judge(ElectricPotential rail, ElectricResistance R_vc, ElectricPotential ratedVoltage, ElectricCurrent ratedCurrent) =>
        new(Guard.Positive(rail), LoudspeakerFault.Current(rail, R_vc), Guard.Positive(ratedVoltage), Guard.Positive(ratedCurrent));

    /// <summary>The verdict in words.</summary>
    public override string ToString() => (Rail > RatedVoltage, Current > RatedCurrent) switch
    {
        (false, false) => $"breaks: {QuantityFormat.Short(Current)} at {QuantityFormat.Short(Rail)} is within {QuantityFormat.Short(RatedCurrent)} at {QuantityFormat.Short(RatedVoltage)} dc",
        (true, false) => $"may not break: {QuantityFormat.Short(Rail)} is above the {QuantityFormat.Short(RatedVoltage)} dc of its rating, so the arc of {QuantityFormat.Short(Current)} may burn on: short by {QuantityFormat.Short(ShortVoltage)}",
        (false, true) => $"may not break: {QuantityFormat.Short(Current)} is above the {QuantityFormat.Short(RatedCurrent)} dc of its rating, short by {QuantityFormat.Short(ShortCurrent)}",
        _ => $"does not break by its rating: {QuantityFormat.Short(Current)} at {QuantityFormat.Short(Rail)}, rated {QuantityFormat.Short(RatedCurrent)} at {QuantityFormat.Short(RatedVoltage)} dc, short by {QuantityFormat.Short(ShortVoltage)} and {QuantityFormat.Short(ShortCurrent)}",
    };
}
