using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Protection;

/// <summary>How a dc detector stands between the music that it must pass and the fault that it must end.</summary>
/// <param name="Threshold">Its threshold with the junction at its hottest.</param>
/// <param name="Note">The filter's greatest output while the loudest low note begins.</param>
/// <param name="Time">From the fault until the relay has opened, with the junction at its coldest.</param>
/// <param name="MostTime">The longest time allowed.</param>
/// <param name="Energy">The energy in the voice coils in that time.</param>
/// <param name="MostEnergy">The most that they bear.</param>
public sealed record DcVerdict(
    [property: Symbol("V_th")] ElectricPotential Threshold,
    [property: Symbol("V_n")] ElectricPotential Note,
    [property: Symbol("t_dc")] Duration Time,
    Duration MostTime,
    [property: Symbol("E_vc")] Energy Energy,
    Energy MostEnergy)
{
    /// <summary>Threshold over note: 1 or more does not trip on music.</summary>
    [Symbol("k_note")]
    public double NoteMargin => Threshold / Note;

    /// <summary>What the threshold lacks for the note; 0 V when it passes.</summary>
    public ElectricPotential ShortThreshold => Threshold < Note ? Note - Threshold : default;

    /// <summary>By how much it is too slow; 0 s when it is soon enough.</summary>
    public Duration ShortTime => Time > MostTime ? Time - MostTime : default;

    /// <summary>The energy that the voice coils get beyond what they bear; 0 J when they bear it.</summary>
    public Energy ShortEnergy => Energy > MostEnergy ? Energy - MostEnergy : default;

    /// <summary>Whether it passes music and ends the fault in time.</summary>
    public bool Passes => Threshold >= Note && Time <= MostTime && Energy <= MostEnergy;

    /// <summary>The verdict in words.</summary>
    public override string ToString() => Passes
        ? $"passes: the loudest note makes {QuantityFormat.Short(Note, 3)} of {QuantityFormat.Short(Threshold, 3)}; a fault is ended in {QuantityFormat.Short(Time, 3)} of {QuantityFormat.Short(MostTime, 3)}, with {QuantityFormat.Short(Energy, 3)} of {QuantityFormat.Short(MostEnergy, 3)} in the voice coils"
        : $"does not pass: {Lists.And([.. Missing()])}";

    private IEnumerable<string> Missing()
    {
        if (Threshold < Note)
            yield return $"the threshold is short by {QuantityFormat.Short(ShortThreshold, 3)}, so music trips it";
        if (Time > MostTime)
            yield return $"it is late by {QuantityFormat.Short(ShortTime, 3)}";
        if (Energy > MostEnergy)
            yield return $"the voice coils get {QuantityFormat.Short(ShortEnergy, 3)} too much";
    }
}
