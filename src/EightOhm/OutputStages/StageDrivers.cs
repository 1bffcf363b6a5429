using EightOhm.Devices;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <summary>A pair of drivers (or pre-drivers) by their cards: followers whose emitters are joined by a resistor, which keeps both on over the whole swing.</summary>
public sealed record StageDrivers
{
    /// <summary>Makes a pair.</summary>
    /// <param name="npn">The upper device.</param>
    /// <param name="pnp">The lower device.</param>
    /// <param name="betweenEmitters">The resistor from one emitter to the other; greater than 0 Ω.</param>
    /// <exception cref="ArgumentOutOfRangeException">The resistor is not positive.</exception>
    /// <exception cref="ArgumentException">A card is of the other polarity.</exception>
    public StageDrivers(Transistor npn, Transistor pnp, ElectricResistance betweenEmitters)
    {
        (Npn, Pnp) = Complements(npn, pnp);
        BetweenEmitters = Guard.Positive(betweenEmitters);
    }

    /// <summary>The upper device.</summary>
    public Transistor Npn { get; }

    /// <summary>The lower device.</summary>
    public Transistor Pnp { get; }

    /// <summary>The resistor from one emitter to the other.</summary>
    public ElectricResistance BetweenEmitters { get; }

    /// <summary>Their junction temperature; 55 °C if not given.</summary>
    public Temperature Junction { get; init => field = Guard.Positive(value, nameof(Junction)); } = 55.degC;

    /// <summary>Takes two cards where they belong, or says which is wrong.</summary>
    internal static (Transistor Npn, Transistor Pnp) Complements(Transistor npn, Transistor pnp)
    {
        ArgumentNullException.ThrowIfNull(npn);
        ArgumentNullException.ThrowIfNull(pnp);
        if (npn.Polarity != Polarity.Npn)
            throw new ArgumentException($"The upper transistor must be an npn (was {npn.Name}, a pnp): give the npn first.", nameof(npn));
        if (pnp.Polarity != Polarity.Pnp)
            throw new ArgumentException($"The lower transistor must be a pnp (was {pnp.Name}, an npn): give the npn first, then its complement.", nameof(pnp));
        return (npn, pnp);
    }

    /// <summary>The two in the equations of followers, their gain fitted up to a peak current of each.</summary>
    internal FollowerDrivers Followers(ElectricCurrent upper, ElectricCurrent lower) =>
        new(BetweenEmitters) { Device = Npn.LargeSignal(Junction, upper), Complement = Pnp.LargeSignal(Junction, lower) };
}
