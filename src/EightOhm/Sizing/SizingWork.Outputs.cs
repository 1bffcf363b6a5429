using EightOhm.Devices;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.SafeAreas;
using EightOhm.Supply;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Sizing;

/// <content>Output transistors, drivers and the sink.</content>
internal sealed partial class SizingWork
{
    private string outputsBecause = "";

    // Both rails, and the reservoirs full at high mains.
    private ElectricPotential Between => 2 * supply!.NoLoad;

    private void ChooseOutputs()
    {
        var rails = supply!.Line.OfOne(targets.Channels, targets.Channels * basis.Besides);
        var found = new List<SizedOutputs>();
        SizedOutputs? nearest = null;
        foreach (var (n, p) in Couples().Where(c => kept is null || c.Npn == kept))
        {
            Work.Checkpoint();
            var made = Fewest(n, p, rails);
            if (made.AreEnough && basis.VoltageUse.DecimalFractions * Math.Min(n.MaxCollectorEmitterVoltage.Volts, p.MaxCollectorEmitterVoltage.Volts) >= Between.Volts && SinkFor(made) is { IsEnough: true })
                found.Add(made);
            if (nearest is null || Nearer(made, nearest))
                nearest = made;
        }

        outputs = found.OrderBy(o => !o.IsCoolEnough).ThenBy(o => o.Pairs * ((double)o.Npn.MaxPowerDissipation.Watts + Mounting)).FirstOrDefault() ?? nearest!;
        outputsAreEnough = found.Count > 0;
        outputsBecause = outputsAreEnough
            ? "the least of the set whose voltage, safe area, dissipation and current are enough at high mains, into the rated loads and phases"
            : "the nearest of the set; none is enough at high mains, into the rated loads and phases";
        (npn, pnp, pairs, emitterResistor) = (outputs.Npn, outputs.Pnp, outputs.Pairs, outputs.EmitterResistor);
    }

    // A pair costs its mounting as well: in watts of rating, about (common practice, no source).
    private const double Mounting = 50;

    // As few pairs as the area, the heat, the current and a sink of the set allow.
    private SizedOutputs Fewest(Transistor n, Transistor p, RailLine rails)
    {
        if (basis.Pairs is { } chosen)
            return Judged(n, p, chosen, rails);
        var current = Ratings.Max(r => r.PeakCurrent.Amperes) / SizedOutputs.Greatest(n, basis.GainLeft).Amperes;
        var tried = new Stack<SizedOutputs>();
        for (var k = Math.Clamp((int)Math.Ceiling(current), leastPairs, basis.MostPairs); k <= basis.MostPairs; k++)
        {
            var made = Judged(n, p, k, rails);
            if (made.AreEnough && SinkFor(made) is { IsEnough: true })
                return made;
            tried.Push(made);
        }

        // Of those that are short of as little, the most pairs.
        return tried.MinBy(o => o.Short.Count)!;
    }

    // The rounds come back to the same outputs on the same supply.
    private SizedOutputs Judged(Transistor n, Transistor p, int k, RailLine rails)
    {
        var key = (n, p, k, steps, supply!, (double)Least.Power.Watts);
        if (!judged.TryGetValue(key, out var made))
            judged[key] = made = SizedOutputs.Of(n, p, k, steps, targets, basis, rails, Ratings);
        return made;
    }

    private readonly Dictionary<(Transistor, Transistor, int, int, SizedSupply, double), SizedOutputs> judged = [];
    private readonly Dictionary<(SizedOutputs, double), DevicePick<HeatSinkCard>?> sinks = [];

    private static bool Nearer(SizedOutputs a, SizedOutputs b) =>
        (a.Short.Count, -a.Npn.MaxCollectorEmitterVoltage.Volts * (double)a.Npn.MaxPowerDissipation.Watts).CompareTo((b.Short.Count, -b.Npn.MaxCollectorEmitterVoltage.Volts * (double)b.Npn.MaxPowerDissipation.Watts)) < 0;

    // Each npn with the pnp that is most like it.
    private IEnumerable<(Transistor Npn, Transistor Pnp)> Couples()
    {
        var all = set.Of<Transistor>();
        foreach (var n in all.Where(t => t.Polarity == Polarity.Npn))
            yield return (n, all.Where(t => t.Polarity == Polarity.Pnp).MinBy(p => Unlike(n, p))!);
    }

    private static double Unlike(Transistor a, Transistor b) =>
        Math.Abs(Math.Log((double)(a.MaxPowerDissipation / b.MaxPowerDissipation))) + Math.Abs(Math.Log(a.MaxCollectorEmitterVoltage / b.MaxCollectorEmitterVoltage)) + Math.Abs(Math.Log(a.MaxCollectorCurrent / b.MaxCollectorCurrent));

    private void TellOutputs()
    {
        if (outputs is not { } o)
        {
            Take("output npn", npn, "the largest of the set");
            Take("output pnp", pnp, "the largest of the set");
            return;
        }

        Take("output npn", npn, outputsBecause);
        Take("output pnp", pnp, "the complement of the npn");
        Choose("n", pairs, basis.Pairs is not null ? "as asked for"
            : leastPairs == 1 ? "as few pairs as safe area, dissipation, current and a sink of the set allow"
            : !distortionFits ? "as few pairs as come within a tenth of the least distortion that any number leaves: the distortion allowed is beyond"
            : "as few pairs as leave so little distortion that a loop of enough margin does the rest");
        Choose("R_E", emitterResistor, o.IsBoundByHeat
            ? "keeps the idle current, with the heat at idle, to what was asked for"
            : steps > 0 ? "more than keeps the bias from running away: each pair idles on less, and a loud passage moves that less"
            : "keeps the bias from running away with the spreader on the sink");
        Choose("I_1max", o.GreatestEach, "peak current of one transistor: its gain falls beyond");
        if (Between > npn.MaxCollectorEmitterVoltage * basis.VoltageUse.DecimalFractions)
            Miss($"No output transistor of the set bears both rails at high mains together with everything else; {npn.Name} comes nearest.");
        foreach (var what in o.Short)
            Miss($"{Words(pairs)} of {npn.Name} and {pnp.Name} are not enough: {what}.");
        if (basis.IdleHeat is { } most)
        {
            Choose("P_idlemax", most, "as asked for");
            if (!o.IsCoolEnough)
                Miss($"{Words(pairs)} of {npn.Name} and {pnp.Name} dissipate {Watts(o.Idling)} a channel at idle, whatever the emitter resistor: a P_idlemax above that, or less power.");
        }
        else
        {
            Choose("P_idlemax", PreferredValues.Up((double)o.Idling.Watts * 1.3, 2).W, "not asked for: nearly a third above the idle dissipation of a channel that came out");
        }

        if (enough is { } few && pairs > few.Pairs)
            remarks.Add($"{Words(few.Pairs)} of outputs would bear load and heat, at {Watts(few.Idling)} a channel at idle; {pairs} are for the sake of distortion (D_max, D_maxmin), and idle at {Watts(o.Idling)}. P_idlemax bounds that.");
        Choose("I_avail", PreferredValues.Up(Ratings.Max(r => r.PeakCurrent.Amperes) * 1.15, 2).A, "room above the peak current of the rated loads");
    }

    private static string Words(int n) => n == 1 ? "One pair" : $"{n} pairs";

    private static string Watts(Power power) => QuantityFormat.Short(PreferredValues.Up((double)power.Watts, 2).W);

    private void TellDrivers()
    {
        if (outputs is not { } o)
            return;
        var made = ChooseDrivers(o);
        var chosen = made.Drivers;
        Choose("R_drv", driverResistor, "standing current of the drivers enough to clear the outputs' charge at the highest frequency");
        Take("driver npn", chosen.Npn, made.AreCalmer
            ? "larger than it must be for what it bears at high mains: a junction that warms less with the programme moves the idle current less"
            : made.AreEnough
            ? "the smallest of the set with enough voltage, current, gain, speed, safe area and cooling for a driver at high mains"
            : "the nearest of the set; none is enough for a driver at high mains");
        Take("driver pnp", chosen.Pnp, "the complement of the npn");
        var pre = PreDrivers;
        foreach (var (role, card) in new[] { ("predriver npn", pre.Npn), ("predriver pnp", pre.Pnp) })
            Take(role, card, pre.AreEnough ? "the least collector capacitance of the set, with enough voltage for both rails and without a sink" : "the nearest of the set; none is enough for a pre-driver at high mains");
        if (!pre.AreEnough)
            Miss("No transistor of the set bears both rails at high mains, and its heat without a sink, as a pre-driver: one that does, or a small sink.");
        Choose("theta_drv", driverToAir, driverToAir < chosen.ToAir
            ? "a driver's small sink: its heat asks for less, but what it warms with the programme moves the idle current"
            : "a driver's small sink: as large as its heat asks");
        Choose("k_split", passage.Split, passage.Split > 1
            ? "more than the hot junctions ask: it takes back what the drivers give way, as far as the idle current behind a passage allows"
            : "what the hot junctions ask, and no more");
        if (chosen.Short.Count > 0)
            Miss($"No transistor of the set is enough for a driver: {Lists.And(chosen.Short)}; {chosen.Npn.Name} comes nearest.");
    }

    // Asked for with each number of pairs that is tried, and again with what came out of them.
    private DriverChoice ChooseDrivers(SizedOutputs o)
    {
        var key = (o, (double)Least.Power.Watts);
        if (!driversFor.TryGetValue(key, out var known))
            driversFor[key] = known = DriversFor(o);
        (driverResistor, drivers, driverToAir, passage) = (known.Resistor, known.Drivers.Npn, known.ToAir, known.Passage);
        return known;
    }

    private readonly Dictionary<(SizedOutputs, double), DriverChoice> driversFor = [];

    private sealed record DriverChoice(SizedDrivers Drivers, ElectricResistance Resistor, ThermalResistance ToAir, SizedPassage Passage, bool AreEnough, bool AreCalmer);

    private DriverChoice DriversFor(SizedOutputs o)
    {
        var hardest = Ratings.MaxBy(r => r.PeakCurrent.Amperes)!;
        var standing = Standing(o, hardest.PeakCurrent);
        var all = set.Of<Transistor>().Where(t => t.Polarity == Polarity.Npn).OrderBy(t => (double)t.MaxPowerDissipation.Watts);
        var tried = new List<SizedDrivers>();
        bool IsCooler(Transistor t, SizedDrivers than) => UnitMath.Max(t.JunctionToCase, Complement(t).JunctionToCase) < than.ToCase && t.MaxPowerDissipation < o.Npn.MaxPowerDissipation;
        (SizedDrivers Drivers, ThermalResistance ToAir, SizedPassage Passage, double Asked)? found = null;
        foreach (var t in all)
        {
            if (found is { } f && !IsCooler(t, f.Drivers))
                continue;
            var made = new SizedDrivers(t, Complement(t), o, hardest, standing, Between, PreDrivers, targets, basis);
            tried.Add(made);
            if (made.Short.Count == 0)
                found = Calmest(o, made, found);
            if (found is { Asked: <= 1 })
                break;
        }

        var isEnough = found is not null;
        var chosen = found?.Drivers ?? tried.Where(d => d.Npn != o.Npn).DefaultIfEmpty(tried[^1]).OrderBy(d => d.Short.Count).ThenByDescending(d => (double)d.Npn.MaxPowerDissipation.Watts).First();
        return new(chosen, driverResistor, found?.ToAir ?? chosen.ToAir, found?.Passage ?? SizedPassage.Unknown, isEnough, isEnough && chosen != tried.First(d => d.Short.Count == 0));
    }

    // Asked for at each look at a budget or a stage; the rail alone moves them.
    private SizedPreDrivers PreDrivers
    {
        get
        {
            if (preDrivers is not { } known || known.Rail != supply!.NoLoad.Volts)
                preDrivers = known = (supply!.NoLoad.Volts, SizedPreDrivers.Of(set, supply.NoLoad, targets, basis));
            return known.Of;
        }
    }

    private (double Rail, SizedPreDrivers Of)? preDrivers;

    // Drivers warm with the programme and nothing follows them: the smallest sink whose idle current behind a passage leaves the loop enough margin, and where none does, larger drivers, whose
    // junctions are nearer to their cases.
    private (SizedDrivers Drivers, ThermalResistance ToAir, SizedPassage Passage, double Asked)? Calmest(SizedOutputs o, SizedDrivers made,
        (SizedDrivers Drivers, ThermalResistance ToAir, SizedPassage Passage, double Asked)? best)
    {
        if (SinkFor(o) is not { } sink || Loop() is not { } loop)
            return best ?? (made, made.ToAir, SizedPassage.Unknown, 0);
        try
        {
            var heats = SizedPassage.Heats(o, made.Npn, made.Pnp, driverResistor, PreDrivers, Ratings, targets.Phase);
            var on = new SizedSink(sink.Device, o, targets, basis);
            (SizedDrivers, ThermalResistance, SizedPassage, double Asked) On(ThermalResistance toAir)
            {
                var (run, asked) = WithSpreader(made, split => SizedPassage.Of(o, sink.Device, on, heats, toAir, made.ToCase, split), loop);
                return (made, toAir, run, asked);
            }

            // The smallest that is enough, or nearly as good as the largest; each larger one is better.
            var sinks = made.SinksThatDo.ToArray();
            var at = On(sinks[^1]);
            var most = Math.Max(1, at.Asked / Calmer);
            for (int low = -1, high = sinks.Length - 1; high - low > 1;)
            {
                var middle = (low + high) / 2;
                if (On(sinks[middle]) is var tried && tried.Asked <= most)
                    (high, at) = (middle, tried);
                else
                    low = middle;
            }

            if (best is not { } b || at.Asked <= 1 || at.Asked < b.Asked * Smaller)
                best = at;
        }
        catch (Exception e) when (e is RefusedValueException or ShortfallException or InvalidOperationException)
        {
            best ??= (made, made.ToAir, SizedPassage.Unknown, double.PositiveInfinity); // no rail for such currents, or no base to mount on: both are said elsewhere
        }

        return best;
    }

    // As little drift of the spreader as leaves the loop enough margin, or asks the least of it.
    private (SizedPassage Passage, double Asked) WithSpreader(SizedDrivers made, Func<double, SizedPassage> of, SizedLoop loop)
    {
        (SizedPassage Passage, double Asked)? best = null;
        foreach (var split in SizedPassage.Splits)
        {
            var run = of(split);
            if (best is not null && run.Least < SizedPassage.LeastKept)
                break;
            var asked = loop.SlowestFor(DistortionUse(made.Npn, run)) / loop.FastestSafe();
            if (best is { } b && asked >= b.Asked)
                break;
            best = (run, asked);
            if (asked <= 1)
                break;
        }

        return best!.Value;
    }

    // Of what is asked of the loop, what a larger sink must leave at most, to be worth its place, where nothing is enough; a larger driver more (common practice, no source).
    private const double Calmer = 0.97, Smaller = 0.94;
    private SizedPassage passage = SizedPassage.Unknown;
    private ThermalResistance driverToAir = 12.K_per_W;

    private Transistor Complement(Transistor npn) => set.Of<Transistor>().Where(t => t.Polarity == Polarity.Pnp).MinBy(p => Unlike(npn, p))!;

    // The drivers' standing current clears the outputs' stored charge at full current, four times as fast as the highest frequency asks.
    private ElectricCurrent Standing(SizedOutputs o, ElectricCurrent peak)
    {
        var slowest = UnitMath.Min(o.Npn.TransitionFrequency, o.Pnp.TransitionFrequency);
        var of1A = ChargeControl.LimitFrequency(1.A, peak, slowest);
        var needed = ChargeMargin * (targets.Highest / of1A);
        var resistor = Math.Clamp(ESeries.E12.AtMost(DriverVolts / needed), 10, 100);
        driverResistor = resistor.Ohm;
        return (DriverVolts / resistor).A;
    }

    private const double ChargeMargin = 4, DriverVolts = 1.4;

    // The junctions keep their limit while the worst sine lasts at high mains; with music they stay below the temperature of their safe area, and the sink below the thermostat.
    private DevicePick<HeatSinkCard>? SinkFor(SizedOutputs o)
    {
        var key = (o, (double)Least.Power.Watts);
        if (!sinks.TryGetValue(key, out var pick))
            sinks[key] = pick = SmallestSink(o);
        return pick;
    }

    private DevicePick<HeatSinkCard>? SmallestSink(SizedOutputs o)
    {
        var at = set.Of<HeatSinkCard>().ToDictionary(s => s, s => new SizedSink(s, o, targets, basis));
        var air = targets.Air.Kelvins;
        return set.Smallest(
            s => 1 / s.ToAir.Si,
            new DeviceNeed<HeatSinkCard>("room on its base", s => at[s].BaseShare),
            new DeviceNeed<HeatSinkCard>("cooling for the worst sine", s => (basis.Junction.Kelvins - air) / at[s].JunctionRise),
            new DeviceNeed<HeatSinkCard>("cooling for music below the thermostat", s => (at[s].CutOff.Kelvins - basis.CutTolerance.Kelvins - air) / at[s].MusicRise),
            new DeviceNeed<HeatSinkCard>("cooling for music before an event", s => (basis.Case.Kelvins - air) / at[s].MusicJunctionRise),
            new DeviceNeed<HeatSinkCard>("cooling for the safe area on the heat of the worst sine", s => 1 / o.LastingUse(at[s].Case, Ratings)));
    }

    private void TellSink()
    {
        if (outputs is not { } o)
            return;
        Choose("T_case", basis.Case, "what thermostat and sink keep the cases of the output transistors to");
        Choose("T_jmax", basis.Junction, "limit of the design, below the cards'");
        if (SinkFor(o) is not { } sink)
        {
            Miss("The set has no heat sink.");
            return;
        }

        var at = new SizedSink(sink.Device, o, targets, basis);
        Take("sink", sink.Device, sink.Because);
        Choose("theta_SA", at.ToAir, "sink of one channel at the heat of music, with the error of its reckoning");
        Choose("T_cut", at.CutOff, "where the cases of the output transistors come to the temperature of their safe area");
        Choose("T_out", Math.Abs((at.IdleJunction - basis.Idle).Kelvins) <= IdleOff ? basis.Idle : (IdleStep * Math.Round(at.IdleJunction.DegreesCelsius / IdleStep)).degC,
            "output junctions, idle and warm: about what this sink leaves of the idle heat");
        if (!sink.IsEnough)
            Miss($"No sink of the set has enough {Lists.And([.. sink.Short.Select(s => s.What)])}; {sink.Device.Name} comes nearest.");
    }

    // How far off the design bears what was taken for granted, less what it reckons besides; and in what steps one speaks of such a temperature.
    private const double IdleOff = 8, IdleStep = 5;
}
