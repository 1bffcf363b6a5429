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
        var rails = supply!.Rails.Line().OfOne(targets.Channels, targets.Channels * basis.Besides);
        var found = new List<SizedOutputs>();
        SizedOutputs? nearest = null;
        foreach (var (n, p) in Couples())
        {
            Work.Checkpoint();
            var made = Fewest(n, p, rails);
            if (made.Short.Count == 0 && basis.VoltageUse.DecimalFractions * Math.Min(n.MaxCollectorEmitterVoltage.Volts, p.MaxCollectorEmitterVoltage.Volts) >= Between.Volts && SinkFor(made) is { IsEnough: true })
                found.Add(made);
            if (nearest is null || Nearer(made, nearest))
                nearest = made;
        }

        outputs = found.OrderBy(o => o.Pairs * ((double)o.Npn.MaxPowerDissipation.Watts + Mounting)).FirstOrDefault() ?? nearest!;
        outputsBecause = found.Count > 0
            ? "the least of the set whose voltage, safe area, dissipation and current are enough at high mains, into the rated loads and phases"
            : "the nearest of the set; none is enough at high mains, into the rated loads and phases";
        (npn, pnp, pairs, emitterResistor) = (outputs.Npn, outputs.Pnp, outputs.Pairs, outputs.EmitterResistor);
    }

    // A pair costs its mounting as well: in watts of rating, about (common practice, no source).
    private const double Mounting = 50;

    // As few pairs as the area, the heat, the current and a sink of the set allow.
    private SizedOutputs Fewest(Transistor n, Transistor p, RailLine rails)
    {
        SizedOutputs? best = null;
        var current = Ratings.Max(r => r.PeakCurrent.Amperes) / SizedOutputs.Greatest(n, basis.GainLeft).Amperes;
        for (var k = Math.Clamp((int)Math.Ceiling(current), 1, basis.MostPairs); k <= basis.MostPairs; k++)
        {
            var made = SizedOutputs.Of(n, p, k, targets, basis, rails, Ratings);
            if (best is null || made.Short.Count <= best.Short.Count)
                best = made;
            if (made.Short.Count == 0 && SinkFor(made) is { IsEnough: true })
                return made;
        }

        return best!;
    }

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
        Choose("n", pairs, "as few pairs as safe area, dissipation, current and a sink of the set allow");
        Choose("R_E", emitterResistor, "keeps the bias from running away with the spreader on the sink");
        Choose("I_1max", o.GreatestEach, "peak current of one transistor: its gain falls beyond");
        if (Between > npn.MaxCollectorEmitterVoltage * basis.VoltageUse.DecimalFractions)
            Miss($"No output transistor of the set bears both rails at high mains together with everything else; {npn.Name} comes nearest.");
        foreach (var what in o.Short)
            Miss($"{Words(pairs)} of {npn.Name} and {pnp.Name} are not enough: {what}.");
        Choose("P_idlemax", PreferredValues.Up((double)o.Idling.Watts * 1.3, 2).W, "idle dissipation of a channel with some room");
        Choose("I_avail", PreferredValues.Up(Ratings.Max(r => r.PeakCurrent.Amperes) * 1.25, 2).A, "room above the peak current of the rated loads");
    }

    private static string Words(int n) => n == 1 ? "One pair" : $"{n} pairs";

    private void TellDrivers()
    {
        if (outputs is not { } o)
            return;
        var hardest = Ratings.MaxBy(r => r.PeakCurrent.Amperes)!;
        var standing = Standing(o, hardest.PeakCurrent);
        var each = UnitMath.Min(hardest.PeakCurrent / pairs, npn.GainTable[^1].Current);
        var gain = Math.Min(npn.GainAt(UnitMath.Max(each, npn.GainTable[0].Current)), pnp.GainAt(UnitMath.Min(UnitMath.Max(each, pnp.GainTable[0].Current), pnp.GainTable[^1].Current)));
        var peak = standing + Drivers.BaseCurrent(hardest.PeakCurrent, gain);
        var heat = Drivers.WorstHeat(supply!.NoLoad, hardest.Load, targets.Phase, gain, standing);
        foreach (var (role, polarity) in new[] { ("driver npn", Polarity.Npn), ("driver pnp", Polarity.Pnp) })
        {
            var pick = Transistors(polarity, [
                new("voltage", t => basis.VoltageUse.DecimalFractions * (t.MaxCollectorEmitterVoltage / Between)),
                new("current", t => t.MaxCollectorCurrent / (2 * peak)),
                new("dissipation", t => (double)(t.MaxPowerDissipation / (3 * heat))),
                new("transition frequency", t => t.TransitionFrequency / npn.TransitionFrequency),
            ]);
            Take(role, pick.Device, pick.Because);
            if (!pick.IsEnough)
                Miss($"No {polarity.ToString().ToLowerInvariant()} transistor of the set is enough for a driver: {string.Join(" and ", pick.Short.Select(s => s.What))}; {pick.Device.Name} comes nearest.");
        }

        foreach (var (role, polarity) in new[] { ("small npn", Polarity.Npn), ("small pnp", Polarity.Pnp) })
        {
            var pick = Transistors(polarity, [new("voltage", t => t.MaxCollectorEmitterVoltage / Between), new("current", t => t.MaxCollectorCurrent / 20.mA)]);
            Take(role, pick.Device, pick.Because);
        }
    }

    private DevicePick<Transistor> Transistors(Polarity polarity, IReadOnlyList<DeviceNeed<Transistor>> needs) =>
        set.Smallest(t => t.Polarity == polarity, t => (double)t.MaxPowerDissipation.Watts, needs)!;

    // The drivers' standing current clears the outputs' stored charge at full current, three times as fast as the highest frequency asks.
    private ElectricCurrent Standing(SizedOutputs o, ElectricCurrent peak)
    {
        var slowest = UnitMath.Min(o.Npn.TransitionFrequency, o.Pnp.TransitionFrequency);
        var of1A = ChargeControl.LimitFrequency(1.A, peak, slowest);
        var needed = ChargeMargin * (targets.Highest / of1A);
        var resistor = Math.Clamp(PreferredValues.AtMostOf12(DriverVolts / needed), 10, 100);
        Choose("R_drv", resistor.Ohm, "standing current of the drivers enough to clear the outputs' charge at the highest frequency");
        return (DriverVolts / resistor).A;
    }

    private const double ChargeMargin = 3.3, DriverVolts = 1.4;

    // The junctions keep their limit while the worst sine lasts at high mains, and music stays below the thermostat.
    private DevicePick<HeatSinkCard>? SinkFor(SizedOutputs o)
    {
        var each = Math.Max(o.Npn.JunctionToCase.Si, o.Pnp.JunctionToCase.Si) + basis.Insulator.Si;
        var worst = (double)o.Worst.Watts;
        var left = basis.Junction.Kelvins - targets.Air.Kelvins - (worst / (2 * o.Pairs) * each);
        var music = CutOff(o).Kelvins - targets.Air.Kelvins;
        return set.Smallest<HeatSinkCard>(
            s => 1 / s.ToAir.Si,
            new DeviceNeed<HeatSinkCard>("conductance for the worst sine", s => left / worst / s.ToAir.Si),
            new DeviceNeed<HeatSinkCard>("conductance for music below the thermostat", s => music / (double)o.Music.Watts / s.ToAir.Si));
    }

    // When the thermostat opens the cases are as warm as their area is taken for.
    // Where so few pairs leave nothing, and say so, it opens a little above the air.
    private Temperature CutOff(SizedOutputs o) => Math.Floor(Math.Max(
        basis.Case.DegreesCelsius - (basis.Insulator.Si * (double)o.Worst.Watts / (2 * o.Pairs)), targets.Air.DegreesCelsius + LeastRise)).degC;

    private const double LeastRise = 10;

    private void TellSink()
    {
        if (outputs is not { } o)
            return;
        Choose("T_cut", CutOff(o), "where the cases of the output transistors come to the temperature of their safe area");
        if (SinkFor(o) is not { } sink)
        {
            Miss("The set has no heat sink.");
            return;
        }

        Take("sink", sink.Device, sink.Because);
        Choose("theta_SA", sink.Device.ToAir, "sink of one channel, as its card rates it");
        if (!sink.IsEnough)
            Miss($"No sink of the set has enough {string.Join(" and ", sink.Short.Select(s => s.What))}; {sink.Device.Name} comes nearest.");
    }
}
