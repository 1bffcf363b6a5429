using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>How a swing ledger stands against the rails that there are.</summary>
public sealed class SwingVerdict
{
    private const string Both = "both peaks together";

    internal SwingVerdict(SwingBudget ledger, Rails rails)
    {
        Ledger = ledger;
        Rails = rails;
        MarginPositive = rails.Positive - ledger.NeededPositive;
        MarginNegative = rails.Negative - ledger.NeededNegative;
        ClipPeak = ledger.ClipPeak(rails);
        var positiveFirst = MarginPositive <= MarginNegative;
        Func<SwingLoss, ElectricPotential> side = positiveFirst ? l => l.Positive : l => l.Negative;
        ledger.Lost(side, out var path);
        Largest = ledger.Losses.Where(l => l.On == SwingPath.Both || l.On == path).OrderByDescending(l => side(l).Volts).FirstOrDefault();
    }

    /// <summary>The ledger.</summary>
    public SwingBudget Ledger { get; }

    /// <summary>The rails.</summary>
    public Rails Rails { get; }

    /// <summary>What the positive rail has beyond its need; negative when it falls short.</summary>
    public ElectricPotential MarginPositive { get; }

    /// <summary>What the negative rail has beyond its need; negative when it falls short.</summary>
    public ElectricPotential MarginNegative { get; }

    /// <summary>The peak at which the first polarity clips.</summary>
    public ElectricPotential ClipPeak { get; }

    /// <summary>Whether both polarities have room.</summary>
    public bool Holds => MarginPositive >= default(ElectricPotential) && MarginNegative >= default(ElectricPotential);

    /// <summary>Which polarity clips first, in words.</summary>
    public string ClipsFirst => MarginPositive.CompareTo(MarginNegative) == 0 ? Both : MarginPositive < MarginNegative ? "the positive peak" : "the negative peak";

    /// <summary>The largest line on the way that decides for the polarity that clips first: where there is most to gain; null in an empty ledger.</summary>
    public SwingLoss? Largest { get; }

    /// <summary>The verdict in words.</summary>
    public override string ToString() =>
        $"{(Holds ? "holds" : "does not hold")}: margins {QuantityFormat.Short(MarginPositive)} (+) and {QuantityFormat.Short(MarginNegative)} (−); {ClipsFirst} {(ClipsFirst == Both ? "clip" : "clips first")}, at {QuantityFormat.Short(ClipPeak)}"
        + (Largest is null ? "" : $"; most to gain: {Largest.Name}");
}
