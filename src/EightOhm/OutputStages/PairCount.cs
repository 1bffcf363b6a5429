using EightOhm.Devices;
using EightOhm.Quantities;
using EightOhm.Thermal;
using EightOhm.Explaining;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.OutputStages;

/// <summary>How many pairs of output transistors a load needs: by average heat, by safe area and by peak current; the greatest decides.</summary>
/// <param name="ByHeat">The fewest pairs whose junctions stay below the limit on average.</param>
/// <param name="BySafeArea">The fewest pairs whose ellipse is inside the safe area.</param>
/// <param name="ByCurrent">The fewest pairs whose peak current each transistor may carry.</param>
/// <param name="HeatOfOne">Average heat of one transistor with the deciding number of pairs, at the worst level.</param>
/// <param name="HeatAllowed">What the case temperature allows one transistor.</param>
/// <param name="CurrentOfOne">Peak current of one transistor with the deciding number of pairs.</param>
/// <param name="CurrentAllowed">Peak current that one transistor may carry.</param>
/// <param name="Area">Use of the safe area with the deciding number of pairs.</param>
/// <param name="OnePairFewer">Use of the safe area with one pair fewer; null where one pair is enough or so few do not even fit under the rail.</param>
public sealed record PairCount(
    [property: Symbol("n_P")] int ByHeat,
    [property: Symbol("n_SOA")] int BySafeArea,
    [property: Symbol("n_I")] int ByCurrent,
    [property: Symbol("P_one")] Power HeatOfOne,
    [property: Symbol("P_D")] Power HeatAllowed,
    [property: Symbol("I_p")] ElectricCurrent CurrentOfOne,
    ElectricCurrent CurrentAllowed,
    SafeAreaUtilisation Area,
    SafeAreaUtilisation? OnePairFewer)
{
    private const int MostPairs = 100;

    /// <summary>The number of pairs: the greatest of the three.</summary>
    [Symbol("n")]
    public int Pairs => Math.Max(ByHeat, Math.Max(BySafeArea, ByCurrent));

    /// <summary>Which of the three decides: safe area before heat before current where they agree, the sharper before the blunter.</summary>
    public string Decides => Pairs == 1 ? "nothing: one pair passes all three" : BySafeArea == Pairs ? "safe area" : ByHeat == Pairs ? "average heat" : "peak current";

    /// <summary>Decides the number of pairs for one load.</summary>
    /// <param name="area">The safe area of the transistor.</param>
    /// <param name="load">The load with any number of pairs; the number itself is not used.</param>
    /// <param name="T_C">Case temperature, at this load; below the card's junction limit. It depends on the sink and is taken as given.</param>
    /// <param name="pulse">The pulse that a half-wave is: <see cref="SafeArea.PulseOf"/>, or <see cref="SafeArea.Dc"/>.</param>
    /// <param name="averageHeat">Worst average heat of all transistors of the stage together; when not given that of an ideal class-B stage at any level
    /// up to the rail, ClassB.Worst: without bias, and with the heat of the emitter resistors counted to the transistors.</param>
    /// <param name="mostJunction">Junction limit for the average; the card's when not given.</param>
    /// <param name="mostEach">Peak current that one transistor shall carry, for its gain's sake perhaps less than the card's limit; that limit when not given.</param>
    /// <param name="rideOnHeat">Whether the pulse starts from the junction that the average heat has warmed, instead of the case.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="InvalidOperationException">Not even a hundred pairs are enough.</exception>
    public static PairCount Decide(SafeArea area, LoadEllipse load, Temperature T_C, Duration? pulse, Power? averageHeat = null, Temperature? mostJunction = null, ElectricCurrent? mostEach = null, bool rideOnHeat = false)
    {
        ArgumentNullException.ThrowIfNull(area);
        ArgumentNullException.ThrowIfNull(load);
        var card = area.Card;
        var heat = averageHeat is { } given ? Guard.Positive(given, nameof(averageHeat)) : ClassB.Worst(load.Rail, load.Magnitude, load.Phase);
        var allowed = Derating.AllowedPower(card.MaxPowerDissipation, mostJunction ?? card.MaxJunctionTemperature, T_C, card.JunctionToCase);
        Guard.Positive(allowed, nameof(T_C), "The case is as hot as the junction may be: cool the case.");
        var each = Guard.Positive(mostEach ?? card.MaxCollectorCurrent, nameof(mostEach));
        var byHeat = Fewest("average heat", n => (double)(heat / (2 * n)).Watts <= (double)allowed.Watts);
        var byArea = Fewest("safe area", n => Use(n) is { Inside: true });
        var byCurrent = Fewest("peak current", n => load.PeakCurrent / n <= each);
        var pairs = Math.Max(byHeat, Math.Max(byArea, byCurrent));
        return new(byHeat, byArea, byCurrent, heat / (2 * pairs), allowed, load.PeakCurrent / pairs, each, Use(pairs)!, pairs > 1 ? Use(pairs - 1) : null);

        // Null where the drop of so few emitter resistors does not fit under the rail, or the average heat alone is too much to start from.
        SafeAreaUtilisation? Use(int n)
        {
            if (!load.Fits(n))
                return null;
            var one = heat / (2 * n);
            if (rideOnHeat && !(HeatPath.Junction(T_C, one, [card.JunctionToCase]) < card.MaxJunctionTemperature))
                return null;
            return SafeAreaUtilisation.Of(area.For(T_C, pulse, rideOnHeat ? one : null), load.With(n));
        }

        int Fewest(string by, Func<int, bool> passes)
        {
            for (var n = 1; n <= MostPairs; n++)
            {
                Work.Checkpoint();
                if (passes(n))
                    return n;
            }

            throw new InvalidOperationException($"Not even {MostPairs} pairs of {card.Name} are enough by {by} for {load.Name}, case at {QuantityFormat.Short(T_C)}. Take another transistor, a cooler case or a kinder load.");
        }
    }

    /// <inheritdoc/>
    public override string ToString() =>
        $"{Pairs} {(Pairs == 1 ? "pair" : "pairs")}: {ByHeat} by average heat, {BySafeArea} by safe area, {ByCurrent} by peak current; what decides is {Decides}. Safe area: {Area}";
}
