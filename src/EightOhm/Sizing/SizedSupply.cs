using EightOhm.Devices;
using EightOhm.Quantities;
using EightOhm.Ratings;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Sizing;

/// <summary>The reservoirs of a rail: which, and how many in parallel.</summary>
internal sealed record ReservoirBank(ReservoirCapacitor Card, int Count)
{
    public ElectricCapacitance Capacitance => Count * Card.Capacitance;
}

/// <summary>A choice of supply: transformer, bridge and reservoirs, judged with all channels driven by a sine that lasts.</summary>
internal sealed class SizedSupply
{
    // What a look at one phase, or at nominal mains, may miss of the worst.
    private const double Room = 1.03;
    private static readonly Frequency Middle = 1.kHz;

    private readonly AmplifierTargets targets;
    private readonly SizingBasis basis;
    private readonly DualRailSupply small;

    // What was solved, by peak current in A and frequency in Hz; a refusal or a shortage is kept as well.
    private readonly Dictionary<(double, double), Lazy<DualSteadySupply>> playing = [];
    private readonly Dictionary<(double, double), ElectricPotential> minima = [];
    private readonly Dictionary<(double, double), (ElectricPotential Rail, bool IsLowest)> lowest = [];
    private readonly Lazy<RailLine> line;

    public SizedSupply(AmplifierTargets targets, SizingBasis basis, MainsTransformer transformer, RectifierBridge bridge, ReservoirBank bank)
    {
        (this.targets, this.basis, Transformer, Bridge, Bank) = (targets, basis, transformer, bridge, bank);
        Winding = new DualWinding(transformer);
        Rails = DualRailSupply.Of(transformer, bridge, bank.Card, bank.Count, targets.Line, targets.Mains, basis.Wiring);
        small = Rails.WithReservoirs(1 - bank.Card.Tolerance.DecimalFractions);
        line = new(Rails.Line);
    }

    public MainsTransformer Transformer { get; }

    public RectifierBridge Bridge { get; }

    public ReservoirBank Bank { get; }

    public DualWinding Winding { get; }

    public DualRailSupply Rails { get; }

    /// <summary>The rails over the mean current from each.</summary>
    public RailLine Line => line.Value;

    /// <summary>The rail without any load at high mains.</summary>
    public ElectricPotential NoLoad => Supply.Transformer.NoLoadRail(Winding.Rated * (targets.Line / Transformer.Primary), Winding.Regulation, targets.MainsTolerance, Bridge.DropAtRest);

    private ElectricCurrent Besides => targets.Channels * basis.Besides;

    /// <summary>The rails while all channels play a rating at a frequency, at high mains.</summary>
    /// <exception cref="ShortfallException">The winding cannot carry it.</exception>
    public DualSteadySupply Playing(OutputRating r, Frequency f)
    {
        var key = (r.PeakCurrent.Amperes, f.Hertz);
        if (!playing.TryGetValue(key, out var solved))
            playing[key] = solved = new(() => AtHighMains(r, f));
        return solved.Value;
    }

    /// <summary>About what a rating lacks of its rail: the minimum of the rail at one phase of mains and signal.</summary>
    public ElectricPotential LacksAbout(OutputRating r, SwingBudget budget) => Need(budget) - UnitMath.Min(Minimum(r, targets.Lowest), Minimum(r, Middle));

    /// <summary>Whether the rail holds for a rating: the lowest over all phases of mains and signal, with the smallest reservoirs of their tolerance.</summary>
    public bool Holds(OutputRating r, SwingBudget budget) => Need(budget) is var need && Holds(r, targets.Lowest, need) && Holds(r, Middle, need);

    /// <summary>Whether the winding carries a rating all day.</summary>
    public bool Carries(OutputRating r)
    {
        try
        {
            return Playing(r, targets.Lowest).HalfWindingRms * Room <= Winding.RatedCurrent && Playing(r, Middle).HalfWindingRms * Room <= Winding.RatedCurrent;
        }
        catch (ShortfallException)
        {
            return false;
        }
    }

    private static ElectricPotential Need(SwingBudget budget) => UnitMath.Max(budget.NeededPositive, budget.NeededNegative);

    private DualSteadySupply AtHighMains(OutputRating r, Frequency f)
    {
        var high = Rails.AtMains(targets.MainsTolerance);
        try
        {
            return high.Playing(targets.Channels, r.PeakCurrent, f, Besides);
        }
        catch (RefusedValueException) when (f < Middle)
        {
            return high.Playing(targets.Channels, r.PeakCurrent, Middle, Besides); // a low note that shares no period with the mains
        }
    }

    private ElectricPotential Minimum(OutputRating r, Frequency f) =>
        Kept(minima, r, f, at => small.Playing(targets.Channels, r.PeakCurrent, at, Besides).Minimum is var rails ? UnitMath.Min(rails.Positive, rails.Negative) : default);

    // The search ends at the first phase that is too low: what is kept of it is then no more than a bound, which another need may not be content with.
    private bool Holds(OutputRating r, Frequency f, ElectricPotential need)
    {
        var key = (r.PeakCurrent.Amperes, f.Hertz);
        if (!lowest.TryGetValue(key, out var found) || (!found.IsLowest && found.Rail >= need))
        {
            var rail = Solved(f, at => small.LowestAtLoadPeak(RailCurrent.Playing(targets.Channels, r.PeakCurrent, at, Besides), DualRailSupply.Phases, need.Volts));
            lowest[key] = found = (rail, rail >= need);
        }

        return found.Rail >= need;
    }

    private static ElectricPotential Kept(Dictionary<(double, double), ElectricPotential> solved, OutputRating r, Frequency f, Func<Frequency, ElectricPotential> rail)
    {
        var key = (r.PeakCurrent.Amperes, f.Hertz);
        if (!solved.TryGetValue(key, out var volts))
            solved[key] = volts = Solved(f, rail);
        return volts;
    }

    private static ElectricPotential Solved(Frequency f, Func<Frequency, ElectricPotential> rail)
    {
        try
        {
            return rail(f);
        }
        catch (ShortfallException)
        {
            return default;
        }
        catch (RefusedValueException) when (f < Middle)
        {
            return Solved(Middle, rail);
        }
    }
}
