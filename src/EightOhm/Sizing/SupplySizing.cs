using EightOhm.Devices;
using EightOhm.Quantities;
using EightOhm.Ratings;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Sizing;

/// <summary>Chooses the transformer: the smallest whose windings carry all channels, with the least secondary whose rail holds.</summary>
/// <param name="targets">What the amplifier must do.</param>
/// <param name="supplies">The supplies of the sizing.</param>
/// <param name="set">The devices to choose from.</param>
/// <param name="budget">What a rating needs of the rail.</param>
internal sealed class SupplySizing(AmplifierTargets targets, SizedSupplies supplies, DeviceSet set, Func<OutputRating, SwingBudget> budget)
{
    private const double LeastVolts = 4, MostVolts = 400;

    // The rail rises by a little less than √2 for each volt of the winding.
    private const double RailPerVolt = 1.35;
    private const int MostMore = 3;

    /// <summary>A supply with its transformer's card's text and the reason, and whether it is enough.</summary>
    public sealed record Choice(SizedSupply Supply, string Text, string Because, bool Enough);

    /// <summary>Chooses.</summary>
    /// <param name="must">Ratings whose rail must hold.</param>
    /// <param name="carried">Ratings that the windings must carry.</param>
    /// <param name="bridge">The bridge.</param>
    /// <param name="bank">The reservoirs of a rail.</param>
    public Choice? Transformer(OutputRating[] must, OutputRating[] carried, RectifierBridge bridge, ReservoirBank bank)
    {
        Choice? nearest = null;
        var sizes = set.Of<TransformerSize>().OrderBy(s => s.Rating.Voltamperes).ToList();
        var least = LeastRating(must, carried);
        foreach (var size in sizes.Where(s => s.Rating.Voltamperes >= least || s == sizes[^1]))
        {
            Work.Checkpoint();
            var (about, sags) = About(size, must, bridge, bank);
            // What carries it at no voltage that could be chosen need not be wound to the volt; the last is shown as it is.
            if (size != sizes[^1] && !sags && !Enumerable.Range(-1, 2 + MostMore).Select(more => about + more)
                .Any(v => v >= LeastVolts && carried.All(supplies.Of(size, v, bridge, bank).Carries)))
                continue;
            var volts = sags ? about : ToTheVolt(size, about, must, bridge, bank);
            var supply = supplies.Of(size, volts, bridge, bank);
            var enough = IsEnough(supply, must, carried);
            nearest = new(supply, size.CardOf(targets.Line, volts.V, targets.Mains), enough
                ? "the smallest size of the set whose windings carry all channels at rated power, wound for the least voltage whose rail holds at nominal mains"
                : "the largest size of the set; none carries all channels at rated power", enough);
            if (enough)
                return nearest;
        }

        return Ready(must, carried, bridge, bank) ?? nearest;
    }

    // Half-winding current is at least some 1.3 times the mean that the rails take: what is far below need not be tried.
    private double LeastRating(OutputRating[] must, OutputRating[] carried)
    {
        var volts = must.Max(r => budget(r).NeededPositive.Volts) / Math.Sqrt(2);
        var mean = targets.Channels * carried.Max(r => r.PeakCurrent.Amperes) / Math.PI;
        return 2 * volts * 1.3 * mean;
    }

    private bool IsEnough(SizedSupply supply, OutputRating[] must, OutputRating[] carried) =>
        carried.All(supply.Carries) && must.All(r => supply.Holds(r, budget(r)));

    // Of transformers that are as they are: those for this mains, the smallest that is enough; where none is and no size is wound, the largest.
    private Choice? Ready(OutputRating[] must, OutputRating[] carried, RectifierBridge bridge, ReservoirBank bank)
    {
        var fitting = set.Of<MainsTransformer>().Where(t => Math.Abs((t.Primary / targets.Line) - 1) < 0.05 && t.Mains <= targets.Mains)
            .OrderBy(t => t.Rating.Voltamperes).ThenBy(t => t.Secondary.Volts).ToList();
        foreach (var transformer in fitting.Where(t => IsEnough(supplies.Of(t, bridge, bank), must, carried)))
            return new(supplies.Of(transformer, bridge, bank), set.TextOf(transformer), "the smallest of the set whose windings carry all channels at rated power and whose rail holds at nominal mains", true);
        return fitting.Count > 0 && set.Of<TransformerSize>().Count == 0
            ? new(supplies.Of(fitting[^1], bridge, bank), set.TextOf(fitting[^1]), "the largest of the set for this mains; none has rails and windings for rated power", false)
            : null;
    }

    // The secondary, by one solution for each rating; and whether the size is too small for any.
    private (double Volts, bool Sags) About(TransformerSize size, OutputRating[] must, RectifierBridge bridge, ReservoirBank bank)
    {
        SizedSupply With(double volts) => supplies.Of(size, volts, bridge, bank);
        var most = must.Max(r => budget(r).NeededPositive.Volts);
        var volts = Math.Clamp(Math.Ceiling(most / Math.Sqrt(2)), LeastVolts, MostVolts);
        var unloaded = volts;
        for (var tries = 0; tries < 12; tries++)
        {
            var lacks = must.Max(r => With(volts).LacksAbout(r, budget(r)).Volts);
            var next = Math.Clamp(volts + Math.Ceiling(lacks / RailPerVolt), LeastVolts, MostVolts);
            if (next == volts)
                break;
            // Too small a size sags without end: it is wound for a rail that a larger one would hold.
            if (next > 2 * unloaded)
                return (Math.Ceiling(1.2 * unloaded), true);
            volts = next;
        }

        return (volts, false);
    }

    // What one phase did not see: a volt or two, either way, by the lowest over all phases.
    private double ToTheVolt(TransformerSize size, double volts, OutputRating[] must, RectifierBridge bridge, ReservoirBank bank)
    {
        bool Holds(double v) => must.All(r => supplies.Of(size, v, bridge, bank).Holds(r, budget(r)));
        if (volts > LeastVolts && Holds(volts - 1))
            return volts - 1;
        for (var more = 0; more < MostMore && !Holds(volts); more++)
            volts++;
        return volts;
    }
}
