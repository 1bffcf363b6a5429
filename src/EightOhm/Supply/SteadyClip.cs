using EightOhm.Explaining;
using EightOhm.Quantities;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>Where a lasting sine clips on the rails that it leaves itself.</summary>
/// <remarks>Not the clip level on the rails of rated power: above it they sag further, and below it, at low mains, they stand higher.</remarks>
public sealed record SteadyClip
{
    private const int MostHalvings = 60;

    internal SteadyClip(DualRailSupply supply, SwingBudget budget, int channels, ElectricCurrent besides, Frequency signal)
    {
        ArgumentNullException.ThrowIfNull(budget);
        Guard.Positive(channels, nameof(channels));
        Guard.NotNegative(besides, nameof(besides));
        Guard.Positive(signal, nameof(signal));
        Load = budget.Peak / budget.PeakCurrent;
        var asked = budget.Peak;
        Rails = At(default);
        // The root is sought between levels that the steps have seen, and the last word is at one that the search has seen.
        Dictionary<double, Rails> seen = [];
        double Spare(double volts)
        {
            Work.Checkpoint();
            if (!seen.TryGetValue(volts, out var known))
                seen[volts] = known = At(channels * (ElectricPotential.FromVolts(volts) / Load));
            Rails = known;
            return budget.ClipVolts(Rails) - volts;
        }

        Rails At(ElectricCurrent peak) => supply.AtLoadPeaks(peak > default(ElectricCurrent) ? RailCurrent.HalfWaves(peak, signal, besides) : RailCurrent.Constant(besides));

        // Upward in steps, so that no level far beyond the winding's means is tried; at one that is, back by halves: the rail is used up before it collapses.
        var top = budget.ClipPeak(Rails).Volts;
        double low = top / 100, high = low;
        for (var halvings = 0; ;)
        {
            double spare;
            try
            {
                spare = Spare(high);
            }
            catch (ShortfallException) when (high > low && halvings++ < MostHalvings)
            {
                high = (low + high) / 2;
                continue;
            }

            if (!(spare > 0) || high >= top)
                break;
            (low, high) = (high, Math.Min(top, high + ((halvings > 0 ? (high - low) / 2 : 0.3 * high))));
        }

        if (!Brent.TryFindRoot(Spare, low, high, 1e-9 * top, 100, out var found))
            throw new InvalidOperationException($"No clip level was found between {QuantityFormat.Short(ElectricPotential.FromVolts(low))} and {QuantityFormat.Short(ElectricPotential.FromVolts(high))} peak: there the rails spare {QuantityFormat.Short(ElectricPotential.FromVolts(Spare(low)))} and {QuantityFormat.Short(ElectricPotential.FromVolts(Spare(high)))}.");
        Spare(found);
        Peak = ElectricPotential.FromVolts(found);
        Power = Clipping.Power(Peak, Load);
        Short = asked > Peak ? asked - Peak : default;
    }

    /// <summary>The power of a channel there, the average of its sine.</summary>
    [Symbol("P_clip")]
    public Power Power { get; }

    /// <summary>The peak output voltage there.</summary>
    [Symbol("V_p")]
    public ElectricPotential Peak { get; }

    /// <summary>What is missing from the budget's own peak; 0 V when it is reached.</summary>
    public ElectricPotential Short { get; }

    /// <summary>The load of a channel, a resistor.</summary>
    [Symbol("R_L")]
    public ElectricResistance Load { get; }

    /// <summary>The positive rail at its own peaks.</summary>
    [Symbol("V_own+")]
    public ElectricPotential PositiveRail => Rails.Positive;

    /// <summary>The negative rail at its own peaks, counted positive.</summary>
    [Symbol("V_own-")]
    public ElectricPotential NegativeRail => Rails.Negative;

    /// <summary>Both rails, each at its own peaks.</summary>
    public Rails Rails { get; private set; }
}
