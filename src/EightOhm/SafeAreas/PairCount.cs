using EightOhm.Devices;
using EightOhm.Explaining;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.Thermal;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.SafeAreas;

/// <summary>How many pairs of output transistors a load needs: by average dissipation, by safe area and by peak current; the greatest decides.</summary>
/// <param name="ByDissipation">The fewest pairs whose junctions stay below the limit on average.</param>
/// <param name="BySafeArea">The fewest pairs whose ellipse is inside the safe area.</param>
/// <param name="ByCurrent">The fewest pairs whose peak current each transistor may carry.</param>
/// <param name="DissipationOfOne">Average dissipation of one transistor with the deciding number of pairs, at the worst level.</param>
/// <param name="DissipationAllowed">What the case temperature allows one transistor.</param>
/// <param name="CurrentOfOne">Peak current of one transistor with the deciding number of pairs.</param>
/// <param name="CurrentAllowed">Peak current that one transistor may carry.</param>
/// <param name="Area">Safe-area utilisation with the deciding number of pairs.</param>
/// <param name="OnePairFewer">Safe-area utilisation with one pair fewer; null where one pair is enough or so few do not even fit under the rail.</param>
public sealed record PairCount(
    [property: Symbol("n_P")] int ByDissipation,
    [property: Symbol("n_SOA")] int BySafeArea,
    [property: Symbol("n_I")] int ByCurrent,
    [property: Symbol("P_one")] Power DissipationOfOne,
    [property: Symbol("P_D")] Power DissipationAllowed,
    [property: Symbol("I_p")] ElectricCurrent CurrentOfOne,
    ElectricCurrent CurrentAllowed,
    SafeAreaUtilisation Area,
    SafeAreaUtilisation? OnePairFewer)
{
    private const int MostPairs = 100;

    /// <summary>The number of pairs: the greatest of the three.</summary>
    [Symbol("n")]
    public int Pairs => Math.Max(ByDissipation, Math.Max(BySafeArea, ByCurrent));

    /// <summary>Which of the three decides: safe area before dissipation before current where they agree, the sharper before the blunter.</summary>
    public string Decides => Pairs == 1 ? "nothing: one pair passes all three" : BySafeArea == Pairs ? "safe area" : ByDissipation == Pairs ? "average dissipation" : "peak current";

    /// <summary>Decides the number of pairs for one load.</summary>
    /// <param name="area">The safe area of the transistor.</param>
    /// <param name="load">The load with any number of pairs; the number itself is not used.</param>
    /// <param name="T_C">Case temperature, at this load; below the card's junction limit. It depends on the sink and is taken as given.</param>
    /// <param name="pulse">The pulse that a half-wave is: <see cref="SafeArea.PulseOf"/>, or <see cref="SafeArea.Dc"/>.</param>
    /// <param name="averageDissipation">Worst average dissipation of all transistors of the stage together; when not given that of an ideal class-B stage at any level
    /// up to the rail, ClassB.Worst: without bias, and with the dissipation of the emitter resistors counted to the transistors.</param>
    /// <param name="mostJunction">Junction limit for the average; the card's when not given.</param>
    /// <param name="mostEach">Peak current that one transistor shall carry, for its gain's sake perhaps less than the card's limit; that limit when not given.</param>
    /// <param name="rideOnAverage">Whether the pulse starts from the junction that the average dissipation has warmed, instead of the case.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="ShortfallException">Not even a hundred pairs are enough.</exception>
    [Worked("the least number of pairs whose safe-area use and junction temperature stay within limits: counted up from one")]
    public static PairCount Decide(SafeArea area, LoadEllipse load, Temperature T_C, Duration? pulse, Power? averageDissipation = null, Temperature? mostJunction = null, ElectricCurrent? mostEach = null, bool rideOnAverage = false)
    {
        ArgumentNullException.ThrowIfNull(area);
        ArgumentNullException.ThrowIfNull(load);
        var card = area.Card;
        var average = averageDissipation is { } given ? Guard.Positive(given, nameof(averageDissipation)) : ClassB.Worst(load.Rail, load.Magnitude, load.Phase);
        var allowed = card.AllowedPower(T_C, mostJunction);
        Guard.Positive(allowed, nameof(T_C), "The case is as hot as the junction may be: cool the case.");
        var each = Guard.Positive(mostEach ?? card.MaxCollectorCurrent, nameof(mostEach));
        var byDissipation = Fewest("average dissipation", n => (double)(average / (2 * n)).Watts <= (double)allowed.Watts, n => (average / (2 * n)) - allowed);
        var byArea = Fewest("safe area", n => Use(n) is { Inside: true }, n => Use(n)?.Use - 1 ?? double.PositiveInfinity);
        var byCurrent = Fewest("peak current", n => load.PeakCurrent / n <= each, n => (load.PeakCurrent / n) - each);
        var pairs = Math.Max(byDissipation, Math.Max(byArea, byCurrent));
        return new(byDissipation, byArea, byCurrent, average / (2 * pairs), allowed, load.PeakCurrent / pairs, each, Use(pairs)!, pairs > 1 ? Use(pairs - 1) : null);

        // Null where the drop of so few emitter resistors does not fit under the rail, or the average dissipation alone is too much to start from.
        SafeAreaUtilisation? Use(int n)
        {
            if (!load.Fits(n))
                return null;
            var one = average / (2 * n);
            if (rideOnAverage && !(HeatPath.Junction(T_C, one, [card.JunctionToCase]) < card.MaxJunctionTemperature))
                return null;
            return SafeAreaUtilisation.Of(area.For(T_C, pulse, rideOnAverage ? one : null), load.With(n));
        }

        int Fewest(string by, Func<int, bool> passes, Func<int, object> beyond)
        {
            for (var n = 1; n <= MostPairs; n++)
            {
                Work.Checkpoint();
                if (passes(n))
                    return n;
            }

            throw new ShortfallException($"One transistor of {MostPairs} pairs of {card.Name}", beyond(MostPairs), $"not even so many are enough by {by} for {load.Name}, case at {QuantityFormat.Short(T_C)}", "Take another transistor, a cooler case or a kinder load.");
        }
    }

    /// <inheritdoc/>
    public override string ToString() =>
        $"{Pairs} {(Pairs == 1 ? "pair" : "pairs")}: {ByDissipation} by average dissipation, {BySafeArea} by safe area, {ByCurrent} by peak current; what decides is {Decides}. Safe area: {Area}";
}
