using EightOhm.Quantities;
using EightOhm.Explaining;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>Where a lasting sine clips on the rails that it leaves itself.</summary>
/// <remarks>Not the clip level on the rails of rated power: above it they sag further, and below it, at low mains, they stand higher.</remarks>
public sealed record SteadyClip
{
    internal SteadyClip(DualRailSupply supply, SwingBudget ledger, int channels, ElectricCurrent besides, Frequency signal)
    {
        ArgumentNullException.ThrowIfNull(ledger);
        Guard.Positive(channels, nameof(channels));
        Guard.NotNegative(besides, nameof(besides));
        Guard.Positive(signal, nameof(signal));
        Load = ledger.Peak / ledger.PeakCurrent;
        Rails = At(default);
        double Spare(double volts)
        {
            Work.Checkpoint();
            Rails = At(channels * (ElectricPotential.FromVolts(volts) / Load));
            return ledger.ClipPeak(Rails).Volts - volts;
        }

        Rails At(ElectricCurrent peak)
        {
            var state = supply.SteadyState(peak > default(ElectricCurrent) ? RailCurrent.HalfWaves(peak, signal, besides) : RailCurrent.Constant(besides));
            return new Rails(state.Positive.VoltageAtLoadPeak, state.Negative.VoltageAtLoadPeak);
        }

        // Upward in steps, so that no level far beyond the winding's means is tried.
        var top = ledger.ClipPeak(Rails).Volts;
        double low = top / 100, high = low;
        while (high < top && Spare(high) > 0)
            (low, high) = (high, Math.Min(top, high * 1.3));
        if (!Brent.TryFindRoot(Spare, low, high, 1e-9 * top, 100, out var found))
            throw new InvalidOperationException($"No clip level was found between {low:g5} and {high:g5} V peak: there the rails spare {Spare(low):g4} and {Spare(high):g4} V.");
        Spare(found);
        Peak = ElectricPotential.FromVolts(found);
        Power = Clipping.Power(Peak, Load);
    }

    /// <summary>The power of a channel there, the average of its sine.</summary>
    [Symbol("P_clip")]
    public Power Power { get; }

    /// <summary>The peak output voltage there.</summary>
    [Symbol("V_p")]
    public ElectricPotential Peak { get; }

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
