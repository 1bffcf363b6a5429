using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>One figure of a supply as it is and as a rule of thumb has it.</summary>
/// <param name="What">The figure.</param>
/// <param name="Solved">In the time domain; a quantity.</param>
/// <param name="Rule">The rule in words.</param>
/// <param name="Estimated">By the rule; a quantity of the same kind.</param>
/// <param name="Error">Estimate over solution, less one.</param>
public sealed record EstimateRow(string What, object Solved, string Rule, object Estimated, Ratio Error);

/// <summary>A solved supply beside the estimates of textbooks and makers, with their errors.</summary>
public sealed class SupplyEstimates
{
    internal SupplyEstimates(RailFigures at, ElectricPotential emf, Frequency mains, ElectricPotential drop, ElectricCapacitance reservoir)
    {
        var dc = at.LoadMean;
        if (!(dc.Amperes > 0))
            Guard.Refuse("load", dc, "greater than 0 A", "At no load all estimates agree: the rail is the winding's peak less the drop.");
        ElectricPotential peak = ReservoirEstimates.Peak(emf, drop), ripple = ReservoirEstimates.RippleFullWave(dc, mains, reservoir);
        Rows =
        [
            Row("mean", at.Mean, "peak less half the ripple, V_m − I/(4·f·C)", ReservoirEstimates.Mean(peak, dc, mains, reservoir)),
            Row("minimum of the rail", at.Minimum, "peak less the ripple", peak - ripple),
            Row("ripple, peak to peak", at.Ripple, "full-wave, I/(2·f·C)", ripple),
            Row("winding current, peak", at.WindingPeak, "no source resistance, I·(1 + 2·π·√(V_m/(2·V_r)))", PeakRectifier.FullWavePeak(dc, peak, ripple)),
            Row("conduction angle", at.ConductionAngle, "no source resistance, √(2·V_r/V_m)", PeakRectifier.ConductionAngle(peak, ripple)),
            Row("winding current, rms", at.WindingRms, "a maker's rule, I/0.62", WindingGuides.BridgeLow(dc)),
            Row("winding current, rms", at.WindingRms, "another maker's rule, 1.8·I", WindingGuides.BridgeHigh(dc)),
        ];
    }

    /// <summary>The rows.</summary>
    public IReadOnlyList<EstimateRow> Rows { get; }

    private static EstimateRow Row<T>(string what, T solved, string rule, T estimated)
        where T : struct
    {
        var kind = QuantityKinds.Of(typeof(T));
        return new EstimateRow(what, solved, rule, estimated, Ratio.FromDecimalFractions((kind.ToSi(estimated) / kind.ToSi(solved)) - 1));
    }
}
