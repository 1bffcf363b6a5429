using EightOhm.Devices;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.Ratings;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Sizing;

/// <summary>The work of one sizing: supply and outputs each need the other, so both are chosen in turns until they stay.</summary>
internal sealed partial class SizingWork
{
    private const int MostRounds = 5;
    private readonly DeviceSet set;
    private readonly SizingBasis basis;
    private readonly SizedSupplies supplies;
    private readonly OrderedSet<string> missing = new();
    private readonly List<SizedPart> parts = [];
    private readonly List<SizedChoice> choices = [];
    private readonly List<string> remarks = [];
    private readonly List<(int Pairs, int Steps, double Asked)> tried = [];
    private AmplifierTargets targets;
    private Transistor npn, pnp;
    private Transistor drivers;
    private ElectricResistance driverResistor = 47.Ohm;
    private Transistor? kept;
    private int pairs = 2, leastPairs = 1, steps;
    private bool outputsAreEnough, wentBack, distortionFits;
    private (int Pairs, Power Idling)? enough;
    private ElectricResistance emitterResistor = 0.22.Ohm;
    private SizedSupply? supply;
    private SizedOutputs? outputs;
    private SupplySizing.Choice? transformer;
    private DevicePick<RectifierBridge>? bridge;
    private (ReservoirBank Bank, string Because, bool Enough)? reservoirs;

    public SizingWork(AmplifierTargets targets, DeviceSet set, SizingBasis basis)
    {
        (this.set, this.basis, supplies) = (set, basis, new(targets, basis));
        var least = targets.LeastLoad;
        this.targets = targets with
        {
            MinimumLoad = least,
            // Twice the current sags the rail: about a tenth of the power (common practice, no source); the rail itself corrects it.
            MinimumLoadPower = targets.MinimumLoadPower ?? (Same(least, targets.Load) ? targets.Power : PreferredValues.Down(0.9 * (double)targets.Power.Watts * (targets.Load / least), 2).W),
        };
        Implied = targets.MinimumLoadPower is null && least < targets.Load;
        Refuse(this.targets);
        var all = set.Of<Transistor>();
        npn = all.Where(t => t.Polarity == Polarity.Npn).MaxBy(t => (double)t.MaxPowerDissipation.Watts) ?? None("npn");
        pnp = all.Where(t => t.Polarity == Polarity.Pnp).MaxBy(t => (double)t.MaxPowerDissipation.Watts) ?? None("pnp");
        drivers = all.Where(t => t.Polarity == Polarity.Npn).OrderBy(t => Math.Abs((double)t.MaxPowerDissipation.Watts - 15)).First();
    }

    // Whether the power into the minimum rated load follows from the rail.
    private bool Implied { get; }

    private OutputRating Least => new(targets.MinimumLoadPower!.Value, targets.MinimumLoad!.Value);

    private OutputRating[] Ratings => Same(Least.Load, targets.Load) ? [targets.Rated] : [targets.Rated, Least];

    private ElectricCurrent Mean => (targets.Channels * (Ratings.Max(r => r.PeakCurrent.Amperes) / Math.PI)).A + (targets.Channels * basis.Besides);

    public FirstSizing Answer()
    {
        Settle();
        while (MorePairs())
            Settle();
        // What the supply must hold has the junctions of the drivers in it, which were chosen since.
        if (outputs is { } made)
            ChooseDrivers(made);
        Settle();
        TellSupply();
        TellOutputs();
        TellDrivers();
        TellSink();
        TellMains();
        TellLimiter();
        TellRelay();
        TellDetector();
        TellFrontEnd();
        TellInputStage();
        TellSecondStage();
        return new(targets, choices, parts, [.. missing.Items], remarks);
    }

    private void Settle()
    {
        for (var round = 0; round < MostRounds; round++)
        {
            var before = State();
            if (!ChooseSupply())
                break;
            ChooseOutputs();
            if (before == State())
                break;
        }
    }

    // Each pair takes its share of the distortion, until the idle current of so many is itself what distorts; a larger emitter resistor lets each idle on less, and a passage move that less. As few
    // of the same transistor, with as small a resistor, as leave a loop that keeps its margin no more than it can do, within the heat at idle that the designer set. Where none do, those that come
    // near the best: what a pair more would bring costs a transistor and its heat for nothing kept.
    private bool MorePairs()
    {
        if (wentBack || basis.Pairs is not null || outputs is null || (!outputsAreEnough && IsFirst) || Loop() is not { } loop)
            return false;
        ChooseDrivers(outputs);
        var use = DistortionUse();
        var asked = loop.SlowestFor(use) / loop.FastestSafe();
        if (IsFirst)
            enough = (pairs, outputs.Idling);
        var bears = IsFirst || (outputsAreEnough && outputs.IsCoolEnough);
        // Noise sets a bound to the loop as well, and another degeneration may keep what the usual one does not.
        distortionFits = bears && loop.MayKeep(use) && loop.Choose(use).Meets == SizedLoop.Promises.All;
        if (distortionFits)
            return false;
        // A resistor that is larger than what made it no better is not tried.
        var isBetter = bears && (steps == 0 || asked < tried[^1].Asked);
        if (bears)
            tried.Add((pairs, steps, asked));
        var best = tried.Min(t => t.Asked);
        var nearest = tried.First(t => t.Asked * Near <= best);
        var (before, stepsBefore) = (pairs, steps);
        if (isBetter && steps < MostSteps)
            (leastPairs, steps) = (pairs, steps + 1);
        else if ((bears || steps > 0) && pairs < Math.Min(basis.MostPairs, nearest.Pairs + Patience))
            (leastPairs, steps) = (pairs + 1, 0);
        else
        {
            wentBack = true;
            (leastPairs, steps, _) = nearest;
        }

        kept = npn;
        return (leastPairs, steps) != (before, stepsBefore);
    }

    private bool IsFirst => tried.Count == 0;

    // Of what the fewest pairs ask of the loop, what more of them must leave at least, to be no better (common practice, no source); how many more than those are tried before it ends: a
    // small amplifier's distortion rises with the second pair and falls with the fourth, where the load no longer leaves the class A of so many; and by how many values the resistor may be larger
    // than its bias needs.
    private const double Near = 0.9;
    private const int Patience = 4, MostSteps = 2;

    /// <summary>The voltage-swing budget of a channel, as the design reckons it: resistors, junctions, what the stages before need.</summary>
    private SwingBudget Budget(OutputRating r)
    {
        var complement = Complement(drivers);
        // Beyond its table a card says nothing; such a current is said to be too much elsewhere.
        var each = UnitMath.Min(r.PeakCurrent / pairs, npn.GainTable[^1].Current);
        ElectricPotential Output(Transistor t) => t.BaseEmitterVoltageAt(each, basis.Idle) + (each * t.InternalEmitterResistance);
        ElectricCurrent Driven(Transistor output) => SwingLosses.DriverCurrent((DriverVolts / driverResistor.Ohms).A, pairs * each, SizedLoop.GainOf(output, each));
        ElectricPotential Driver(Transistor output, Transistor driver) => driver.BaseEmitterVoltageAt(Driven(output), basis.Idle);
        ElectricPotential PreDriver(Transistor output, Transistor driver) =>
            SmallJunction.BaseEmitterVoltageAt(SwingLosses.DriverCurrent(SizedPreDrivers.Standing, Driven(output), SizedLoop.GainOf(driver, Driven(output))), basis.Idle);
        return SwingBudget.For(r.PeakVoltage, r.PeakCurrent)
            .LessEmitterResistors(emitterResistor, pairs)
            .Less("output junction", Output(npn), Output(pnp), "at the peak")
            .Less("driver junction", Driver(npn, drivers), Driver(pnp, complement), "at the peak")
            .Less("pre-driver junction", PreDriver(npn, drivers), PreDriver(pnp, complement), "at the peak")
            .Less("stages before", basis.SecondStage + basis.Filter, "second stage and front-end filter")
            .Less("output transistor", SwingLosses.QuasiSaturation(Output(npn), each, basis.Collector), SwingLosses.QuasiSaturation(Output(pnp), each, basis.Collector), "before its gain falls", SwingPath.Output);
    }

    // Before there is a supply nobody knows which they are; their junctions are alike.
    private Transistor SmallJunction => supply is null ? set.Of<Transistor>().MinBy(t => t.OutputCapacitance.Farads)! : PreDrivers.Npn;

    private (string?, int, Transistor, double, ReservoirBank?, double?) State() =>
        (transformer?.Text, pairs, npn, emitterResistor.Ohms, reservoirs?.Bank, (double?)targets.MinimumLoadPower?.Watts);

    private static bool Same(ElectricResistance a, ElectricResistance b) => Math.Abs((a / b) - 1) < 1e-9;

    private static void Refuse(AmplifierTargets t)
    {
        var rated = t.Rated.PeakVoltage;
        var least = new OutputRating(t.MinimumLoadPower!.Value, t.MinimumLoad!.Value).PeakVoltage;
        if (Same(t.MinimumLoad!.Value, t.Load) && Math.Abs((double)(t.MinimumLoadPower.Value / t.Power) - 1) > 1e-9)
            throw new RefusedValueException("P_Lmin", $"P_Lmin must be P, {QuantityFormat.Short(t.Power)}, where R_Lmin is R_L (was {QuantityFormat.Short(t.MinimumLoadPower.Value)}). Give another R_Lmin, or one power.");
        // A lower load never lets the same rail swing further.
        if (least > rated * (1 + 1e-9))
            throw new RefusedValueException("P_Lmin", $"P_Lmin must be at most {QuantityFormat.Short((double)t.Power.Watts * (t.Load / t.MinimumLoad.Value) * 1.W)}, where the peak is that of P into R_L (was {QuantityFormat.Short(t.MinimumLoadPower.Value)}). Raise P, or lower P_Lmin.");
        if (t.Lowest >= t.Highest)
            throw new RefusedValueException("f_min", $"f_min must be below f_max, {QuantityFormat.Short(t.Highest)} (was {QuantityFormat.Short(t.Lowest)}).");
    }

    private Transistor None(string polarity) => throw new RefusedValueException("set", $"{set.Name} has no {polarity} transistor; an output stage needs both polarities.");

    private void Choose(string name, object value, string because) => choices.Add(new(name, value, because));

    private void Take(string role, DeviceCard card, string because, string? text = null) => parts.Add(new(role, card, text ?? set.TextOf(card), because));

    private void Miss(string sentence) => missing.Add(sentence);

    // In the order of finding, each once.
    private sealed class OrderedSet<T>
    {
        public List<T> Items { get; } = [];

        public void Add(T item)
        {
            if (!Items.Contains(item))
                Items.Add(item);
        }
    }
}
