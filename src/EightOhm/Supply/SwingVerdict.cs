using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>How a voltage-swing budget stands against the rails that there are.</summary>
public sealed class SwingVerdict
{
    private const string Both = "both peaks together";

    internal SwingVerdict(SwingBudget budget, Rails rails)
    {
        Budget = budget;
        Rails = rails;
        MarginPositive = rails.Positive - budget.NeededPositive;
        MarginNegative = rails.Negative - budget.NeededNegative;
        ClipPeak = ElectricPotential.FromVolts(Math.Max(0, budget.ClipVolts(rails)));
        var positiveFirst = MarginPositive <= MarginNegative;
        Func<SwingLoss, ElectricPotential> side = positiveFirst ? l => l.Positive : l => l.Negative;
        budget.Lost(side, out var path);
        Largest = budget.Losses.Where(l => l.On == SwingPath.Both || l.On == path).OrderByDescending(l => side(l).Volts).FirstOrDefault();
    }

    /// <summary>The budget.</summary>
    public SwingBudget Budget { get; }

    /// <summary>The rails.</summary>
    public Rails Rails { get; }

    /// <summary>What the positive rail has beyond its need; negative when it falls short.</summary>
    public ElectricPotential MarginPositive { get; }

    /// <summary>What the negative rail has beyond its need; negative when it falls short.</summary>
    public ElectricPotential MarginNegative { get; }

    /// <summary>What the shorter rail lacks; 0 V when the budget holds.</summary>
    public ElectricPotential Short => Holds ? default : -(MarginPositive < MarginNegative ? MarginPositive : MarginNegative);

    /// <summary>The peak at which the first polarity clips; 0 V where the losses take a whole rail and nothing is left for the output.</summary>
    public ElectricPotential ClipPeak { get; }

    /// <summary>Whether both polarities have room.</summary>
    public bool Holds => MarginPositive >= default(ElectricPotential) && MarginNegative >= default(ElectricPotential);

    /// <summary>Which polarity clips first, in words.</summary>
    public string ClipsFirst => MarginPositive.CompareTo(MarginNegative) == 0 ? Both : MarginPositive < MarginNegative ? "the positive peak" : "the negative peak";

    /// <summary>The largest line on the way that decides for the polarity that clips first: where there is most to gain; null in an empty budget.</summary>
    public SwingLoss? Largest { get; }

    /// <summary>The verdict in words.</summary>
    public override string ToString() =>
        $"{(Holds ? "holds" : $"short by {QuantityFormat.Short(Short)}")}: margins {QuantityFormat.Short(MarginPositive)} (+) and {QuantityFormat.Short(MarginNegative)} (−); {ClipsFirst} {(ClipsFirst == Both ? "clip" : "clips first")}, at {QuantityFormat.Short(ClipPeak)}"
        + (Largest is null ? "" : $"; most to gain: {Largest.Name}")
        + (Holds ? "" : "; raise the rails or ask for less power");
}
