using EightOhm.Devices;
using EightOhm.Quantities;
using EightOhm.Ratings;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Sizing;

/// <content>Transformer, bridge and reservoirs.</content>
internal sealed partial class SizingWork
{
    // Of the surge rating, used at most when the bypass of the soft start closes.
    private const double PeakInverse = 1.25;

    private bool ChooseSupply()
    {
        bridge = set.Smallest<RectifierBridge>(b => b.AverageCurrent.Amperes * b.MaxReverseVoltage.Volts, BridgeNeeds());
        reservoirs = ChooseReservoirs();
        if (bridge is null || reservoirs is not { } caps)
            return false;
        // The rail must hold at rated power; where the lower load's power is not asked for, it is what that rail then gives.
        OutputRating[] must = Implied ? [targets.Rated] : Ratings;
        transformer = new SupplySizing(targets, basis, set, Budget).Transformer(must, Ratings, bridge.Device, caps.Count * caps.Card.Capacitance);
        if (transformer is null)
            return false;
        supply = new(targets, basis, transformer.Transformer, bridge.Device, caps.Count * caps.Card.Capacitance);
        if (Implied)
            FollowRail(supply);
        return true;
    }

    private IReadOnlyList<DeviceNeed<RectifierBridge>> BridgeNeeds() =>
    [
        // One bridge on a centre-tapped winding: a diode that blocks sees both halves.
        new("reverse voltage", b => b.MaxReverseVoltage.Volts / (PeakInverse * 2 * (supply?.NoLoad.Volts ?? (1.3 * targets.Rated.PeakVoltage.Volts)))),
        new("average current", b => b.AverageCurrent / Mean),
    ];

    private (ReservoirCapacitor Card, int Count, string Because, bool Enough)? ChooseReservoirs()
    {
        var rail = supply?.Winding.Rated.Volts * Math.Sqrt(2) ?? (1.25 * targets.Rated.PeakVoltage.Volts);
        var farads = Mean.Amperes / (2 * targets.Mains.Hertz * basis.Ripple.DecimalFractions * rail);
        var volts = (supply?.NoLoad.Volts ?? (1.5 * targets.Rated.PeakVoltage.Volts)) / basis.CapacitorUse.DecimalFractions;
        var ripple = supply is { } s ? Ratings.Max(r => RippleOf(s, r)) : 0;
        var cards = set.Of<ReservoirCapacitor>();
        var enough = cards.Where(c => c.RatedVoltage.Volts >= volts)
            .Select(c => (Card: c, Count: (int)Math.Ceiling(Math.Max(1, Math.Max(farads / c.Capacitance.Farads, ripple / c.RippleCurrent.Amperes)) - 1e-9)))
            .Where(c => c.Count <= basis.MostReservoirs)
            .OrderBy(c => c.Count * c.Card.Capacitance.Farads * c.Card.RatedVoltage.Volts * c.Card.RatedVoltage.Volts).ThenBy(c => c.Count).ToList();
        if (enough.Count > 0)
            return (enough[0].Card, enough[0].Count, "the least of the set with enough voltage without load at high mains, capacitance for the ripple and ripple current", true);
        var nearest = cards.OrderByDescending(c => Math.Min(1, c.RatedVoltage.Volts / volts)).ThenByDescending(c => c.Capacitance.Farads).FirstOrDefault();
        return nearest is null ? null : (nearest, basis.MostReservoirs, "the nearest of the set; none has voltage, capacitance and ripple current enough", false);
    }

    private static double RippleOf(SizedSupply supply, OutputRating r)
    {
        try
        {
            return supply.Playing(r) is var playing ? Math.Max(playing.Positive.CapacitorRipple.Amperes, playing.Negative.CapacitorRipple.Amperes) : 0;
        }
        catch (ShortfallException)
        {
            return 0; // the transformer is not enough, and said to be
        }
    }

    // What the rail that holds at rated power gives the lower load, in two digits.
    private void FollowRail(SizedSupply at)
    {
        for (var tries = 0; tries < 40 && at.Lacks(Least, Budget(Least)) > default(ElectricPotential); tries++)
            targets = targets with { MinimumLoadPower = PreferredValues.Down((double)Least.Power.Watts * 0.97, 2).W };
    }

    private void TellSupply()
    {
        if (bridge is not { } b)
            Miss("The set has no rectifier bridge.");
        else
        {
            Take("bridge", b.Device, b.Because);
            if (!b.IsEnough)
                Miss($"No bridge of the set has enough {string.Join(" and ", b.Short.Select(s => s.What))}; {b.Device.Name} comes nearest.");
        }

        if (reservoirs is not { } caps)
            Miss("The set has no reservoir capacitor.");
        else
        {
            Take("reservoir", caps.Card, caps.Because);
            Choose("n_res", caps.Count, "as few as carry capacitance and ripple current");
            if (!caps.Enough)
                Miss($"No reservoir of the set is enough, {basis.MostReservoirs} of them on a rail; {caps.Card.Name} comes nearest.");
        }

        if (transformer is not { } t)
        {
            Miss($"The set has no transformer for {QuantityFormat.Short(targets.Line)} at {QuantityFormat.Short(targets.Mains)}.");
            return;
        }

        Take("transformer", t.Transformer, t.Because, t.Text);
        if (!t.Enough)
            Miss($"No transformer of the set carries {(targets.Channels == 1 ? "the channel" : $"{targets.Channels} channels")} at rated power; {t.Transformer.Name} comes nearest.");
        var bleeder = Math.Pow(supply!.NoLoad.Volts, 2) / BleederWatts;
        Choose("R_bl", PreferredValues.AtLeastOf12(bleeder).Ohm, "empties the reservoir without much heat at high mains");
    }

    // Of each bleeder at high mains, about.
    private const double BleederWatts = 1.5;
}
