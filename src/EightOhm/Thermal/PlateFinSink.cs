using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>A heat sink of vertical plate fins on a base, in still air. Every place of it has one temperature but for the fins' own gradient.</summary>
[Called("plate-fin heat sink")]
public sealed record PlateFinSink
{
    /// <summary>Makes a sink.</summary>
    /// <param name="width">Of the base, across the fins; wider than all fins together.</param>
    /// <param name="height">Of base and fins, along the rising air; greater than 0 m.</param>
    /// <param name="fin">From the base to the tip; greater than 0 m.</param>
    /// <param name="thickness">Of a fin; greater than 0 m.</param>
    /// <param name="fins">How many; 2 or more, the outer two at the base's edges.</param>
    /// <param name="emissivity">Of the surface; from 0 to 1.</param>
    /// <param name="conductivity">Of the fins, W/(m·K); greater than 0. About 200 for the aluminium of extrusions.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public PlateFinSink(Length width, Length height, Length fin, Length thickness, int fins, double emissivity, double conductivity = 200)
    {
        (Width, Height, FinLength, Thickness) = (Guard.Positive(width), Guard.Positive(height), Guard.Positive(fin), Guard.Positive(thickness));
        Fins = Guard.Between(fins, 2, 10_000, hint: "A single fin has no channel.");
        if (!(width.Meters > fins * thickness.Meters))
            Guard.Refuse(nameof(width), width, $"more than the {fins} fins together, {QuantityFormat.Short(fins * thickness)}", "Use fewer or thinner fins.");
        Emissivity = Guard.Between(emissivity, 0.0, 1.0, hint: "Bare aluminium radiates little, an anodised or painted surface nearly as a black one.");
        Conductivity = Guard.Positive(conductivity);
    }

    /// <summary>Of the base, across the fins.</summary>
    public Length Width { get; }

    /// <summary>Of base and fins, along the rising air.</summary>
    public Length Height { get; }

    /// <summary>From the base to the tip.</summary>
    public Length FinLength { get; }

    /// <summary>Of a fin.</summary>
    public Length Thickness { get; }

    /// <summary>How many.</summary>
    public int Fins { get; }

    /// <summary>Of the surface.</summary>
    public double Emissivity { get; }

    /// <summary>Of the fins, W/(m·K).</summary>
    public double Conductivity { get; }

    /// <summary>Whether air and walls cool the back of the base too; false when it is a wall of the case.</summary>
    public bool BackIsFree { get; init; }

    /// <summary>Clear space between two fins.</summary>
    [Explaining.Symbol("S")]
    public Length Spacing => Length.FromMeters((Width.Meters - (Fins * Thickness.Meters)) / (Fins - 1));

    /// <summary>The same sink with another number of fins in its width.</summary>
    /// <param name="fins">How many; 2 or more.</param>
    public PlateFinSink WithFins(int fins) => new(Width, Height, FinLength, Thickness, fins, Emissivity, Conductivity) { BackIsFree = BackIsFree };

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
