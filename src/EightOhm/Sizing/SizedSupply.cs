using EightOhm.Devices;
using EightOhm.Quantities;
using EightOhm.Ratings;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Sizing;

/// <summary>A choice of supply: transformer, bridge and reservoirs, judged with all channels driven by a sine that lasts.</summary>
internal sealed class SizedSupply
{
    private static readonly Frequency Middle = 1.kHz;

    private readonly AmplifierTargets targets;
    private readonly SizingBasis basis;
    private readonly Dictionary<(double, double, double), ElectricPotential> lowest = [];

    public SizedSupply(AmplifierTargets targets, SizingBasis basis, MainsTransformer transformer, RectifierBridge bridge, ElectricCapacitance reservoir)
    {
        (this.targets, this.basis, Transformer, Bridge, Reservoir) = (targets, basis, transformer, bridge, reservoir);
        Winding = new DualWinding(transformer);
        Rails = new DualRailSupply(Winding, targets.Mains, bridge.Threshold, reservoir) { DiodeResistance = bridge.SlopeResistance + basis.Wiring };
    }

    public MainsTransformer Transformer { get; }

    public RectifierBridge Bridge { get; }

    public ElectricCapacitance Reservoir { get; }

    public DualWinding Winding { get; }

    public DualRailSupply Rails { get; }

    /// <summary>The rail without any load at high mains.</summary>
    public ElectricPotential NoLoad => Supply.Transformer.NoLoadRail(Winding.Rated, Winding.Regulation, targets.MainsTolerance, Bridge.DropAtRest);

    private ElectricCurrent Besides => targets.Channels * basis.Besides;

    /// <summary>The rails while all channels play a rating.</summary>
    /// <exception cref="ShortfallException">The winding cannot carry it.</exception>
    public DualSteadySupply Playing(OutputRating r) => Rails.Playing(targets.Channels, r.PeakCurrent, Middle, Besides);

    /// <summary>What a rating lacks of its rail at the lowest and at a middle frequency; negative when something is to spare.</summary>
    public ElectricPotential Lacks(OutputRating r, SwingBudget budget)
    {
        var need = UnitMath.Max(budget.NeededPositive, budget.NeededNegative);
        return UnitMath.Max(need - Lowest(r, targets.Lowest), need - Lowest(r, Middle));
    }

    /// <summary>Whether the winding carries a rating all day.</summary>
    public bool Carries(OutputRating r)
    {
        try
        {
            return Playing(r).HalfWindingRms <= Winding.RatedCurrent;
        }
        catch (ShortfallException)
        {
            return false;
        }
    }

    private ElectricPotential Lowest(OutputRating r, Frequency f)
    {
        var key = (r.PeakCurrent.Amperes, r.Load.Ohms, f.Hertz);
        if (!lowest.TryGetValue(key, out var rail))
            lowest[key] = rail = Solve(r, f);
        return rail;
    }

    private ElectricPotential Solve(OutputRating r, Frequency f)
    {
        try
        {
            return Rails.LowestVoltageAtLoadPeak(targets.Channels, r.PeakCurrent, f, Besides);
        }
        catch (ShortfallException)
        {
            return default;
        }
        catch (RefusedValueException) when (f.Hertz != Middle.Hertz)
        {
            return Lowest(r, Middle); // a low note that shares no period with the mains
        }
    }
}
