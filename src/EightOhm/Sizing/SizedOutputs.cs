using EightOhm.Devices;
using EightOhm.Numerics;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.Ratings;
using EightOhm.SafeAreas;
using EightOhm.Supply;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Sizing;

/// <summary>A choice of output transistors: which, how many, with which emitter resistor; judged from rest at high mains, at the phases rated.</summary>
internal sealed class SizedOutputs
{
    // An event lasts so long until something ends it; the area of that pulse is what counts.
    internal static readonly Duration Event = 100.ms;
    private static readonly double[] Resistors = [0.1, 0.15, 0.22, 0.33, 0.47, 0.68, 1];

    // Half of the gain at which bias runs away: parts spread, and what is near it drifts far.
    private const double LoopGain = 0.5;

    private readonly AmplifierTargets targets;
    private readonly SizingBasis basis;
    private readonly RailLine rails;
    private readonly StageDissipation stage;
    private readonly OutputRating[] ratings;
    private readonly Lazy<bool> areEnough;
    private readonly Lazy<IReadOnlyList<string>> shortages;
    private bool hasRail = true;

    private SizedOutputs(Transistor npn, Transistor pnp, int pairs, int steps, AmplifierTargets targets, SizingBasis basis, RailLine rails, OutputRating[] ratings)
    {
        (Npn, Pnp, Pairs, this.targets, this.basis, this.rails, this.ratings) = (npn, pnp, pairs, targets, basis, rails, ratings);
        areEnough = new(() => !Shortages().Any());
        shortages = new(() => AreEnough ? [] : [.. Shortages()]);
        var rest = rails.AtMains(targets.MainsTolerance).At(basis.Besides);
        double[] stable = [.. Resistors.SkipWhile(r => Runaway.GreatestGain(rest, npn.JunctionToCase + basis.Insulator, npn.BaseEmitterDrift, r.Ohm, npn.InternalEmitterResistance) > LoopGain).DefaultIfEmpty(Resistors[^1])];
        stable = stable[Math.Min(steps, stable.Length - 1)..];
        // The larger, the less they idle; where none is enough the fewest losses count.
        stage = stable.Select(r => StageWith(r.Ohm)).FirstOrDefault(IsCool) ?? StageWith(stable[0].Ohm);
        (EmitterResistor, IdleCurrent) = (stage.EmitterResistor, stage.IdleCurrent);
        IsBoundByHeat = EmitterResistor > stable[0].Ohm;
        GreatestEach = Greatest(npn, basis.GainLeft);
    }

    private StageDissipation StageWith(ElectricResistance resistor) => new StageDissipation(rails, Pairs, resistor)
    {
        IdleCurrent = Crossover.EqualGainCurrent(Devices.Junction.ThermalVoltage(basis.Idle), resistor, Npn.InternalEmitterResistance),
        InternalResistance = Npn.InternalEmitterResistance,
        Junction = basis.Idle,
    }.AtMains(targets.MainsTolerance);

    private Power IdlingOf(StageDissipation of) => of.At(0.V, targets.Load, 0.deg).Total;

    private bool IsCool(StageDissipation of) => basis.IdleHeat is not { } most || IdlingOf(of) <= most;

    public Transistor Npn { get; }

    public Transistor Pnp { get; }

    public int Pairs { get; }

    public ElectricResistance EmitterResistor { get; }

    /// <summary>Of one pair, at which the gain at zero is that far out.</summary>
    public ElectricCurrent IdleCurrent { get; }

    /// <summary>Peak current of one transistor, for its gain's sake.</summary>
    public ElectricCurrent GreatestEach { get; }

    /// <summary>Dissipation of a channel, the worst sine, phase and load at high mains.</summary>
    public Power Worst { get; private set; }

    /// <summary>The same while music plays at an eighth of the power.</summary>
    public Power Music { get; private set; }

    /// <summary>Kelvins of a junction over its case at the crest of the lowest note, while the worst sine lasts.</summary>
    public double Crest { get; private set; }

    /// <summary>The greatest use of a transistor's safe area from rest, with a case and an average of heat.</summary>
    public double LastingUse(Temperature T_C, OutputRating[] ratings)
    {
        var each = Worst / (2 * Pairs);
        try
        {
            return new[] { Npn, Pnp }.Max(card => new SafeArea(card).For(T_C, Event, each) is var area
                ? ratings.Max(r => SafeAreaUtilisation.Of(area, new LoadEllipse(stage.Rail, Level(r, targets.Phase), r.Load, targets.Phase, EmitterResistor, Pairs)).Use) : 0);
        }
        catch (Exception e) when (e is RefusedValueException or ShortfallException)
        {
            return double.PositiveInfinity; // the junction has no room left
        }
    }

    /// <summary>At idle, high mains.</summary>
    public Power Idling => IdlingOf(stage);

    /// <summary>Whether that is no more than what the designer set.</summary>
    public bool IsCoolEnough => IsCool(stage);

    /// <summary>Whether the emitter resistor is larger than the bias needs, for the sake of the heat at idle.</summary>
    public bool IsBoundByHeat { get; }

    /// <summary>What is too much for so many pairs; none when they are enough.</summary>
    public IReadOnlyList<string> Short => shortages.Value;

    /// <summary>Whether they are enough, looked at no further than the first that is too much.</summary>
    public bool AreEnough => areEnough.Value;

    /// <summary>The stage at high mains.</summary>
    public StageDissipation AtHighMains => stage;

    /// <summary>The whole stage with drivers, at high mains.</summary>
    public OutputStage With(Transistor driverNpn, Transistor driverPnp, ElectricResistance R_drv, SizedPreDrivers pre) => new OutputStage(Npn, Pnp, Pairs, EmitterResistor, rails)
    {
        IdleCurrent = IdleCurrent,
        Junction = basis.Idle,
        SourceImpedance = 1.kOhm,
        Drivers = new(driverNpn, driverPnp, R_drv),
        PreDrivers = new(pre.Npn, pre.Pnp, SizedPreDrivers.Between),
    }.AtMains(targets.MainsTolerance);

    /// <summary>Judges so many pairs, with an emitter resistor so many values larger than the bias needs.</summary>
    public static SizedOutputs Of(Transistor npn, Transistor pnp, int pairs, int steps, AmplifierTargets targets, SizingBasis basis, RailLine rails, OutputRating[] ratings)
    {
        var made = new SizedOutputs(npn, pnp, pairs, steps, targets, basis, rails, ratings);
        made.Load();
        return made;
    }

    /// <summary>Where the gain has fallen to a share of its greatest, in two digits.</summary>
    public static ElectricCurrent Greatest(Transistor card, Ratio left)
    {
        var table = card.GainTable;
        var floor = left.DecimalFractions * table.Max(p => p.Gain);
        var (low, high) = (table.Last(p => p.Gain >= floor).Current.Amperes, table[^1].Current.Amperes);
        if (low >= high)
            return card.MaxCollectorCurrent;
        return PreferredValues.Down(Halving.Narrowed(i => card.GainAt(i.A) >= floor, low, high, 40).Low, 2).A;
    }

    private Angle[] Phases => [0.deg, targets.Phase / 2, targets.Phase];

    // What they dissipate.
    private void Load()
    {
        var phases = Phases;
        var maxima = new Dictionary<(double, double), StagePowers>();
        StagePowers Maximum(OutputRating r, Angle phi) => maxima.TryGetValue((r.Load.Ohms, phi.Radians), out var known) ? known : maxima[(r.Load.Ohms, phi.Radians)] = stage.Maximum(r.Load, phi);
        try
        {
            Worst = Highest(ratings, phases, (r, phi) => Maximum(r, phi).Total);
            Music = Highest(ratings, phases, (r, phi) => stage.Sine(r.Power / 8, r.Load, phi).Total);
            Crest = CrestOf(ratings, r => Maximum(r, targets.Phase).Level);
        }
        catch (Exception e) when (e is RefusedValueException or ShortfallException)
        {
            // The supply has no rail left for such currents: the heat is at most that of a rail that does not sag.
            Worst = Highest(ratings, phases, (r, phi) => ClassB.Worst(stage.Rail, r.Load, phi));
            Music = Worst / 2;
            Crest = (double)Worst.Watts / Pairs * Npn.JunctionToCase.Si;
            hasRail = false;
        }
    }

    private IEnumerable<string> Shortages()
    {
        if (!hasRail)
            yield return "the supply has no rail at these currents";
        if (ratings.Max(r => r.PeakCurrent.Amperes) / Pairs > GreatestEach.Amperes)
            yield return "peak current at good gain";
        foreach (var card in new[] { Npn, Pnp })
        {
            if (Worst / (2 * Pairs) > card.AllowedPower(basis.Case, basis.Junction))
                yield return $"dissipation of the {card.Polarity.ToString().ToLowerInvariant()}";
            var area = new SafeArea(card).For(basis.Case, Event);
            if (ratings.Any(r => Phases.Any(phi => !Inside(area, r, phi))))
                yield return $"safe area of the {card.Polarity.ToString().ToLowerInvariant()}";
        }
    }

    // From rest: the reservoirs are full when the event begins. A limiter must fit between load and area.
    private bool Inside(DeratedArea area, OutputRating r, Angle phi)
    {
        try
        {
            return SafeAreaUtilisation.Of(area, new LoadEllipse(stage.Rail, Level(r, phi), r.Load, phi, EmitterResistor, Pairs)).Use <= basis.AreaUse.DecimalFractions;
        }
        catch (Exception e) when (e is RefusedValueException or ShortfallException)
        {
            return false; // more voltage than the card knows of, or no rail
        }
    }

    private ElectricPotential Level(OutputRating r, Angle phi) => UnitMath.Min(r.PeakVoltage, 0.999 * stage.FullSwing(r.Load, phi));

    // A quarter of the way from junction to case for chip, solder, header and tab each (common practice, no source).
    private double CrestOf(OutputRating[] ratings, Func<OutputRating, ElectricPotential> worst)
    {
        var theta = UnitMath.Max(Npn.JunctionToCase, Pnp.JunctionToCase);
        var device = new FosterImpedance([.. Steps.Select(tau => (theta / 4, tau))]);
        return ratings.Max(r => device.Under(stage.OverPeriod(worst(r), r.Load, targets.Phase, targets.Lowest)).Peak.Kelvins);
    }

    private static readonly Duration[] Steps = [1.2.ms, 11.ms, 70.ms, 500.ms];

    private static Power Highest(OutputRating[] ratings, Angle[] phases, Func<OutputRating, Angle, Power> of) =>
        ratings.SelectMany(r => phases.Select(phi => of(r, phi))).MaxBy(p => (double)p.Watts);
}
