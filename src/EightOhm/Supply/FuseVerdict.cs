using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>Whether a fuse carries the current all day and survives its switch-ons.</summary>
public sealed record FuseVerdict
{
    private FuseVerdict(ElectricCurrent neededRating, ElectricCurrent rating, JouleIntegral neededMelting, JouleIntegral melting) =>
        (NeededRating, Rating, NeededMelting, Melting) = (neededRating, rating, neededMelting, melting);

    /// <summary>The rating that the continuous current asks for.</summary>
    public ElectricCurrent NeededRating { get; }

    /// <summary>The fuse's rating.</summary>
    public ElectricCurrent Rating { get; }

    /// <summary>The melting I²t that the pulses ask for.</summary>
    public JouleIntegral NeededMelting { get; }

    /// <summary>The fuse's melting I²t.</summary>
    public JouleIntegral Melting { get; }

    /// <summary>What the rating lacks; 0 A when it is enough.</summary>
    public ElectricCurrent ShortRating => Rating < NeededRating ? NeededRating - Rating : default;

    /// <summary>What the melting I²t lacks; 0 A²s when it is enough.</summary>
    public JouleIntegral ShortMelting => new(Math.Max(0, NeededMelting.Si - Melting.Si));

    /// <summary>Whether both are enough.</summary>
    public bool Holds => Rating >= NeededRating && Melting.Si >= NeededMelting.Si;

    /// <summary>Judges a fuse.</summary>
    /// <param name="I">Greatest continuous current, rms; 0 A or more.</param>
    /// <param name="pulse">I²t of one switch-on; 0 A²s or more.</param>
    /// <param name="rating">The fuse's rating; greater than 0 A.</param>
    /// <param name="melting">Its melting I²t, from its datasheet; greater than 0 A²s.</param>
    /// <param name="a">Share of its rating that it shall carry, such as 75.percent; greater than 0, at most 100 %.</param>
    /// <param name="k_T">Share of its rating left at the ambient; greater than 0.</param>
    /// <param name="share">Share of the melting I²t that one pulse may have, such as 22.percent for 100 000 pulses; greater than 0, at most 100 %.</param>
    /// <returns>The verdict, with what is missing.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static FuseVerdict Judge(ElectricCurrent I, JouleIntegral pulse, ElectricCurrent rating, JouleIntegral melting, Ratio a, Ratio k_T, Ratio share) =>
        new(Fuse.Rating(I, a, k_T), Guard.Positive(rating), Fuse.LeastMelting(pulse, share), Guard.Positive(melting));

    /// <summary>The verdict in words.</summary>
    public override string ToString() => Holds
        ? $"holds: {QuantityFormat.Short(Rating)} where {QuantityFormat.Short(NeededRating)} is needed, melting at {QuantityFormat.Short(Melting)} where {QuantityFormat.Short(NeededMelting)} is"
        : $"does not hold: {Lists.And([.. Missing()])}; take a larger or slower fuse, or lower the inrush";

    private IEnumerable<string> Missing()
    {
        if (ShortRating > default(ElectricCurrent))
            yield return $"the rating is short by {QuantityFormat.Short(ShortRating)} of {QuantityFormat.Short(NeededRating)}";
        if (ShortMelting.Si > 0)
            yield return $"the melting I²t is short by {QuantityFormat.Short(ShortMelting)} of {QuantityFormat.Short(NeededMelting)}";
    }
}
