using EightOhm.Explaining;
using EightOhm.Quantities;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>Where the heat of a plate-fin sink goes at a rise, and the rise at which all of a given heat goes.</summary>
/// <remarks>Convection: the channels by Bar-Cohen and Rohsenow, walls with the fin's efficiency and the base between them; the outer faces of the
/// outer fins (and the back, where free) as vertical plates by Churchill and Chu. Radiation: from the envelope of the sink, the box that it
/// fills, with the emissivity of its surface. The mouths of the channels are in truth blacker than that, so this is the safe side; what a
/// wall of a channel sends to the other wall is not counted.</remarks>
public static partial class SinkBalance
{
    private const string Source = "A. Bar-Cohen & W. M. Rohsenow (1984); S. W. Churchill & H. H. S. Chu (1975); radiation from the envelope";

    /// <summary>What the rise satisfies: the heat is what air and radiation take.</summary>
    /// <param name="dT_s">Base less air: the unknown.</param>
    /// <param name="P">The heat.</param>
    /// <param name="sink">The sink.</param>
    /// <param name="T_air">The air and the walls around.</param>
    /// <returns>Both sides of the balance, in W; equal where it is solved.</returns>
    [Formula(Source)]
    public static Balance<Power> Loss(TemperatureDelta dT_s, Power P, PlateFinSink sink, Temperature T_air) =>
        Balance.Of(P, Convected(dT_s, sink, T_air) + Radiated(dT_s, sink, T_air));

    /// <summary>The rise at which a heat goes off.</summary>
    /// <param name="P">The heat; greater than 0 W.</param>
    /// <param name="sink">The sink.</param>
    /// <param name="T_air">The air and the walls around; above 0 K.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input, or the channel at this heat, is outside the correlations' range.</exception>
    /// <exception cref="InvalidOperationException">No rise was found; the message gives the last bracket.</exception>
    [Solves(nameof(Loss))]
    [RecordName("sink-balance.rise")]
    public static TemperatureDelta Rise(Power P, PlateFinSink sink, Temperature T_air)
    {
        ArgumentNullException.ThrowIfNull(sink);
        var watts = (double)Guard.Positive(P).Watts;
        var air = Guard.Between(T_air, Air.Coolest, Air.Hottest, hint: "The table of air begins and ends there.").Kelvins - Constants.ZeroCelsius;
        var steps = 0;
        double Residue(double logarithm)
        {
            steps++;
            var loss = SinkLoss.At(sink, air, Math.Exp(logarithm));
            return (loss.Total / watts) - 1;
        }

        // The table of air ends at a film of 120 °C; the channel's correlation begins and ends at a channel number, which grows with the rise.
        double high = 2 * (Air.Hottest.Kelvins - Constants.ZeroCelsius - air) * (1 - 1e-12), low = 1e-3;
        while (low < high && SinkLoss.At(sink, air, low).Channel < SinkLoss.LeastChannel)
            low *= 1.1;
        while (high > low && SinkLoss.At(sink, air, high).Channel > SinkLoss.MostChannel)
            high /= 1.1;
        if (low >= high)
            Guard.Refuse("the spacing of the fins", sink.Spacing, "one at which air can rise between them", "The channel's correlation does not hold at any rise: use fewer fins when they are near each other, more when they are far apart.");
        if (SinkLoss.At(sink, air, low).Total > watts)
            Guard.Refuse(nameof(P), P, $"at least {QuantityFormat.Short(Power.FromWatts(SinkLoss.At(sink, air, low).Total))} for this sink", "Below, the channel's correlation does not hold: the fins are too near each other for so little heat.");
        if (SinkLoss.At(sink, air, high).Total < watts)
            Guard.Refuse(nameof(P), P, $"at most {QuantityFormat.Short(Power.FromWatts(SinkLoss.At(sink, air, high).Total))} for this sink", $"At a rise of {QuantityFormat.Short(TemperatureDelta.FromKelvins(high))} it has reached the end of the table of air or of the channel's correlation: use a larger sink.");
        if (!Brent.TryFindRoot(Residue, Math.Log(low), Math.Log(high), 1e-13, 200, out var u))
            throw new InvalidOperationException($"No rise between {QuantityFormat.Short(TemperatureDelta.FromKelvins(low))} and {QuantityFormat.Short(TemperatureDelta.FromKelvins(high))} was found at which {QuantityFormat.Short(P)} go off, in {steps} steps.");
        SolverTrace.Note(steps);
        return TemperatureDelta.FromKelvins(Math.Exp(u));
    }

    /// <summary>What the air takes at a rise.</summary>
    /// <param name="dT_s">Base less air; greater than 0 K.</param>
    /// <param name="sink">The sink.</param>
    /// <param name="T_air">The air; from 0 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input, or the channel at this rise, is outside the correlations' range.</exception>
    [Worked("the convection law of the sink's channels and its outer faces at that rise")]
    public static Power Convected(TemperatureDelta dT_s, PlateFinSink sink, Temperature T_air)
    {
        var loss = Checked(dT_s, sink, T_air);
        return Power.FromWatts(loss.Channels + loss.Faces);
    }

    /// <summary>What the sink radiates at a rise.</summary>
    /// <param name="dT_s">Base less air; greater than 0 K.</param>
    /// <param name="sink">The sink.</param>
    /// <param name="T_air">The walls around; from 0 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input, or the channel at this rise, is outside the correlations' range.</exception>
    [Worked("the radiation of the sink's envelope at that rise")]
    public static Power Radiated(TemperatureDelta dT_s, PlateFinSink sink, Temperature T_air) => Power.FromWatts(Checked(dT_s, sink, T_air).Radiated);

    internal static SinkLoss Checked(TemperatureDelta dT_s, PlateFinSink sink, Temperature T_air)
    {
        ArgumentNullException.ThrowIfNull(sink);
        Guard.Positive(dT_s);
        Air.At(T_air + (dT_s / 2));
        var loss = SinkLoss.At(sink, T_air.Kelvins - Constants.ZeroCelsius, dT_s.Kelvins);
        Guard.Between(loss.Channel, SinkLoss.LeastChannel, SinkLoss.MostChannel, "the channel number", "Below, the fins are so near that nearly no air passes: use fewer. Above, they are single plates: use more.");
        return loss;
    }
}
