using EightOhm.Devices;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>A transformer with two equal secondary windings, by its nameplate: 2 × V at S, with its regulation.</summary>
public sealed record DualWinding
{
    /// <summary>Reads a nameplate.</summary>
    /// <param name="rated">Voltage of one half at full load, rms; greater than 0 V.</param>
    /// <param name="regulation">(No load − full load)/full load; greater than 0.</param>
    /// <param name="rating">The whole transformer; greater than 0 VA.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    public DualWinding(ElectricPotential rated, Ratio regulation, ElectricApparentPower rating)
    {
        Rated = Guard.Positive(rated, nameof(rated));
        Regulation = Guard.Positive(regulation, nameof(regulation), "Small toroids have 10 %, large ones 5 %.");
        Rating = Guard.Positive(rating, nameof(rating));
    }

    /// <summary>Reads a transformer's card.</summary>
    /// <param name="card">The transformer.</param>
    public DualWinding(MainsTransformer card)
        : this((card ?? throw new ArgumentNullException(nameof(card))).Secondary, card.Regulation, card.Rating)
    {
    }

    /// <summary>Voltage of one half at full load, rms.</summary>
    [Symbol("V")]
    public ElectricPotential Rated { get; }

    /// <summary>Regulation.</summary>
    [Symbol("reg")]
    public Ratio Regulation { get; }

    /// <summary>Rating of the whole transformer.</summary>
    [Symbol("S")]
    public ElectricApparentPower Rating { get; }

    /// <summary>Voltage of one half without load, rms: its emf.</summary>
    [Symbol("V_0")]
    public ElectricPotential NoLoad => Transformer.NoLoadVoltage(Rated, Regulation);

    /// <summary>What a half may carry all day, rms: S/(2·V).</summary>
    [Symbol("I_rated")]
    public ElectricCurrent RatedCurrent => ElectricCurrent.FromAmperes(Rating.Voltamperes / (2 * Rated.Volts));

    /// <summary>What stands behind a rail when both are loaded alike.</summary>
    [Symbol("R_s")]
    public ElectricResistance RailResistance => SourceResistance.OfRail(Rated, Regulation, Rating);

    /// <summary>The copper of one half alone.</summary>
    [Symbol("R_half")]
    public ElectricResistance HalfAlone => SourceResistance.OfHalfAlone(RailResistance);

    /// <summary>The reflected primary, which both currents share.</summary>
    [Symbol("R_shared")]
    public ElectricResistance Shared => SourceResistance.Shared(RailResistance);
}
