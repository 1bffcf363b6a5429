using EightOhm.Devices;
using EightOhm.Quantities;
using EightOhm.Ratings;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Sizing;

/// <summary>Chooses the supply: the smallest transformer whose windings carry all channels, with the least secondary whose rail holds.</summary>
internal sealed class SupplySizing(AmplifierTargets targets, SizingBasis basis, DeviceSet set, Func<OutputRating, SwingBudget> budget)
{
    private const double LeastVolts = 4, MostVolts = 400;

    /// <summary>A transformer with its card's text and the reason, or none of the set is enough.</summary>
    public sealed record Choice(MainsTransformer Transformer, string Text, string Because, bool Enough);

    /// <summary>Chooses for ratings that must be reached, with a bridge and reservoirs in mind.</summary>
    public Choice? Transformer(OutputRating[] must, OutputRating[] carried, RectifierBridge bridge, ElectricCapacitance reservoir)
    {
        Choice? nearest = null;
        foreach (var size in set.Of<TransformerSize>().OrderBy(s => s.Rating.Voltamperes))
        {
            Work.Checkpoint();
            var volts = Secondary(size, must, bridge, reservoir);
            var wound = size.Wound(targets.Line, volts, targets.Mains);
            var supply = new SizedSupply(targets, basis, wound, bridge, reservoir);
            var enough = must.All(r => supply.Lacks(r, budget(r)) <= default(ElectricPotential)) && carried.All(supply.Carries);
            nearest = new(wound, size.CardOf(targets.Line, volts, targets.Mains), enough
                ? "the smallest size of the set whose windings carry all channels at rated power, wound for the least voltage whose rail holds at nominal mains"
                : "the largest size of the set; none carries all channels at rated power", enough);
            if (enough)
                return nearest;
        }

        return Ready(must, carried, bridge, reservoir) ?? nearest;
    }

    // Of transformers that are as they are: those for this mains, the smallest that is enough; where none is and no size is wound, the largest.
    private Choice? Ready(OutputRating[] must, OutputRating[] carried, RectifierBridge bridge, ElectricCapacitance reservoir)
    {
        var fitting = set.Of<MainsTransformer>().Where(t => Math.Abs((t.Primary / targets.Line) - 1) < 0.05 && t.Mains <= targets.Mains)
            .OrderBy(t => t.Rating.Voltamperes).ThenBy(t => t.Secondary.Volts).ToList();
        foreach (var transformer in fitting)
        {
            var supply = new SizedSupply(targets, basis, transformer, bridge, reservoir);
            if (must.All(r => supply.Lacks(r, budget(r)) <= default(ElectricPotential)) && carried.All(supply.Carries))
                return new(transformer, set.TextOf(transformer), "the smallest of the set whose windings carry all channels at rated power and whose rail holds at nominal mains", true);
        }

        return fitting.Count > 0 && set.Of<TransformerSize>().Count == 0
            ? new(fitting[^1], set.TextOf(fitting[^1]), "the largest of the set for this mains; none has rails and windings for rated power", false)
            : null;
    }

    // The rail rises by a little less than √2 for each volt: a few steps find the least whole volt.
    private ElectricPotential Secondary(TransformerSize size, OutputRating[] must, RectifierBridge bridge, ElectricCapacitance reservoir)
    {
        double Lacks(double volts) => must.Max(r => new SizedSupply(targets, basis, size.Wound(targets.Line, volts.V, targets.Mains), bridge, reservoir).Lacks(r, budget(r)).Volts);
        var most = must.Max(r => budget(r).NeededPositive.Volts);
        var volts = Math.Clamp(Math.Ceiling(most / Math.Sqrt(2)), LeastVolts, MostVolts);
        for (var tries = 0; tries < 12; tries++)
        {
            var lacks = Lacks(volts);
            var next = Math.Clamp(volts + Math.Ceiling(lacks / 1.35), LeastVolts, MostVolts);
            if (lacks <= 0 && next == volts)
                break;
            // Too small a size sags without end.
            if (next > 3 * most || next >= MostVolts)
                break;
            volts = next;
        }

        return volts.V;
    }
}
