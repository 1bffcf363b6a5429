using EightOhm.Devices;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>A heat sink of vertical plate fins on a base, in still air. Every place of it has one temperature but for the fins' own gradient.</summary>
/// <remarks>What the base adds under a small device: <see cref="SpreadingResistance"/>.</remarks>
/// <example><code>new PlateFinSink { Width = 300.mm, Height = 150.mm, FinLength = 50.mm, Thickness = 3.mm, Fins = 24, Emissivity = 0.85 }.At(100.W, 35.degC)</code></example>
[Called("plate-fin heat sink")]
public sealed partial record PlateFinSink
{
    /// <summary>Of the base, across the fins; wider than all fins together.</summary>
    public required Length Width { get; init => field = Guard.Positive(value, nameof(Width)); }

    /// <summary>Of base and fins, along the rising air; greater than 0 m.</summary>
    public required Length Height { get; init => field = Guard.Positive(value, nameof(Height)); }

    /// <summary>From the base to the tip of a fin; greater than 0 m.</summary>
    public required Length FinLength { get; init => field = Guard.Positive(value, nameof(FinLength)); }

    /// <summary>Of a fin; greater than 0 m.</summary>
    public required Length Thickness { get; init => field = Guard.Positive(value, nameof(Thickness)); }

    /// <summary>How many fins; 2 or more, the outer two at the base's edges.</summary>
    public required int Fins { get; init => field = Guard.Between(value, 2, 10_000, nameof(Fins), "A single fin has no channel."); }

    /// <summary>Of the surface; from 0 to 1.</summary>
    public required double Emissivity { get; init => field = Guard.Between(value, 0.0, 1.0, nameof(Emissivity), "Bare aluminium radiates little, an anodised or painted surface nearly as a black one."); }

    /// <summary>Of the fins; greater than 0 W/(m·K). 200 W/(m·K), about that of the aluminium of extrusions, if not given.</summary>
    public ThermalConductivity Conductivity { get; init => field = Guard.Positive(value, nameof(Conductivity)); } = ThermalConductivity.FromWattsPerMeterKelvin(200);

    /// <summary>Whether air and walls cool the back of the base too; false when it is a wall of the case.</summary>
    public bool BackIsFree { get; init; }

    /// <summary>Clear space between two fins.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The fins together are wider than the base.</exception>
    [Explaining.Symbol("S")]
    public Length Spacing
    {
        get
        {
            if (!(Width.Meters > Fins * Thickness.Meters))
                Guard.Refuse(nameof(Width), Width, $"more than the {Fins} fins together, {QuantityFormat.Short(Fins * Thickness)}", "Use fewer or thinner fins.");
            return Length.FromMeters((Width.Meters - (Fins * Thickness.Meters)) / (Fins - 1));
        }
    }

    /// <summary>The sink of a card, by its size. What its maker rates is <see cref="HeatSinkCard.ToAir"/>.</summary>
    /// <param name="card">The sink.</param>
    public static PlateFinSink Of(HeatSinkCard card)
    {
        ArgumentNullException.ThrowIfNull(card);
        return new()
        {
            Width = card.Width,
            Height = card.Height,
            FinLength = card.FinLength,
            Thickness = card.FinThickness,
            Fins = card.Fins,
            Emissivity = card.Emissivity,
            Conductivity = card.Conductivity,
        };
    }

    /// <summary>The same sink with another number of fins in its width.</summary>
    /// <param name="fins">How many; 2 or more.</param>
    public PlateFinSink WithFins(int fins) => this with { Fins = fins };

    /// <summary>What the sink does at a heat: its rise, and so its resistance, which is not the same at another heat.</summary>
    /// <param name="P">The heat; greater than 0 W.</param>
    /// <param name="T_air">The air and the walls around; above 0 K.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input, or the channel at this heat, is outside the correlations' range.</exception>
    /// <exception cref="InvalidOperationException">No rise was found; the message gives the last state.</exception>
    [Worked("the rise at which air and radiation take the heat: SinkBalance.Rise")]
    public SinkAtHeat At(Power P, Temperature T_air) => new(this, SinkBalance.Rise(P, this, T_air), P, T_air);

    /// <summary>The same sink with the number of fins that makes its rise least at a heat, radiation, fin thickness and efficiency included.</summary>
    /// <param name="P">The heat; greater than 0 W.</param>
    /// <param name="T_air">The air and the walls around; above 0 K.</param>
    /// <exception cref="ArgumentOutOfRangeException">The heat is not positive, or no number of fins is inside the correlations' range.</exception>
    [Worked("the number of fins of least rise: each number tried with SinkBalance.Rise")]
    public PlateFinSink Best(Power P, Temperature T_air)
    {
        Guard.Positive(P);
        var (best, least) = (default(PlateFinSink), double.PositiveInfinity);
        RefusedValueException? refused = null;
        for (var n = 2; n * Thickness.Meters * 1.2 < Width.Meters && n <= 10_000; n++)
        {
            Work.Checkpoint();
            try
            {
                var sink = WithFins(n);
                var rise = SinkBalance.Rise(P, sink, T_air).Kelvins;
                if (rise < least)
                    (best, least) = (sink, rise);
                else if (rise > 1.5 * least)
                    break; // far past the best: fins ever nearer to each other
            }
            catch (RefusedValueException e)
            {
                // Too far apart for the correlation, or too few for the heat: more may be inside. Too near after that: no more will.
                refused = e;
                if (best is not null)
                    break;
            }
        }

        return best ?? throw refused ?? new RefusedValueException(nameof(Thickness), $"The fins must be thinner than half the base's width, {QuantityFormat.Short(Width)}.");
    }

    /// <summary>The sink in a few words.</summary>
    public override string ToString() => $"sink of {QuantityFormat.Short(Width)} × {QuantityFormat.Short(Height)}, {Fins} fins of {QuantityFormat.Short(FinLength)}";
}
