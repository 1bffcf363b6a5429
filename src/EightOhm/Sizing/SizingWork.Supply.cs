using EightOhm.Devices;
using EightOhm.Protection;
using EightOhm.Quantities;
using EightOhm.Ratings;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Sizing;

/// <content>Transformer, bridge and reservoirs.</content>
internal sealed partial class SizingWork
{
    private bool ChooseSupply()
    {
        bridge = set.Smallest(b => b.AverageCurrent.Amperes * b.MaxReverseVoltage.Volts, BridgeNeeds());
        reservoirs = ChooseReservoirs();
        if (bridge is null || reservoirs is not { Bank: var bank })
            return false;
        // The rail must hold at rated power; where the lower load's power is not asked for, it is what that rail then gives.
        OutputRating[] must = Implied ? [targets.Rated] : Ratings;
        transformer = new SupplySizing(targets, supplies, set, Budget).Transformer(must, Ratings, bridge.Device, bank);
        if (transformer is null)
            return false;
        supply = transformer.Supply;
        if (Implied)
            FollowRail(supply);
        return true;
    }

    // One bridge on a centre-tapped winding: a diode that blocks sees both halves, and each rail's current passes two of the four in turn.
    private IReadOnlyList<DeviceNeed<RectifierBridge>> BridgeNeeds()
    {
        var peak = supply?.NoLoad.Volts ?? (1.4 * targets.Rated.PeakVoltage.Volts);
        var turns = targets.Line.Volts * Math.Sqrt(2) / peak;
        return
        [
            new("reverse voltage", b => basis.VoltageUse.DecimalFractions * b.MaxReverseVoltage.Volts / (2 * peak)),
            new("average current", b => b.AverageCurrent / Mean),
            new("surge current", b => b.SurgeCurrent.Amperes / (SurgeMargin * InrushAmperes * turns)),
            new("cooling", b => Cooling(b)),
        ];
    }

    // What its junction may rise over what it does, mounted on the chassis, while the worst rating lasts: about, and by the supply itself once there is one.
    private double Cooling(RectifierBridge b)
    {
        var about = 2 * (double)RectifierDissipation.OfRail(1, b.Threshold, b.SlopeResistance, Mean, RmsOverMean * Mean).Watts;
        var heat = supply is { } s ? Math.Max(about, BridgeRoom * Ratings.Max(r => HeatOf(b, s, r))) : about;
        var left = b.MaxJunctionTemperature.Kelvins - basis.InsideAir(targets).Kelvins - basis.JunctionRoom.Kelvins;
        return left / (heat * (b.JunctionToCase.Si + basis.BridgeToAir.Si));
    }

    private double HeatOf(RectifierBridge b, SizedSupply at, OutputRating r)
    {
        double Of(RailFigures rail) => (double)RectifierDissipation.OfRail(1, b.Threshold, b.SlopeResistance, rail.LoadMean, rail.WindingRms).Watts;
        return WorstPlaying(at, r, playing => Of(playing.Positive) + Of(playing.Negative));
    }

    // Another bridge changes the currents a little.
    private const double BridgeRoom = 1.01;

    // A stiff supply's winding current over the rail's mean; and what a diode sees more than the limiter's first peak.
    private const double RmsOverMean = 2, SurgeMargin = 1.5;

    private (ReservoirBank Bank, string Because, bool Enough)? ChooseReservoirs()
    {
        var rail = supply?.Winding.Rated.Volts * Math.Sqrt(2) ?? (1.25 * targets.Rated.PeakVoltage.Volts);
        var farads = Math.Max(Mean.Amperes / (2 * targets.Mains.Hertz * basis.Ripple.DecimalFractions * rail), HoldUpFarads());
        var volts = (supply?.NoLoad.Volts ?? (1.4 * targets.Rated.PeakVoltage.Volts)) / basis.CapacitorUse.DecimalFractions;
        var ripple = supply is { } s ? RippleRoom * Ratings.Max(r => RippleOf(s, r)) : 0;
        var cards = set.Of<ReservoirCapacitor>();
        var enough = cards.Where(c => c.RatedVoltage.Volts >= volts)
            .Select(c => new ReservoirBank(c, (int)Math.Ceiling(Math.Max(1, Math.Max(farads / c.Capacitance.Farads, ripple / c.RippleCurrent.Amperes)) - 1e-9)))
            .Where(c => c.Count <= basis.MostReservoirs)
            .OrderBy(c => c.Capacitance.Farads * c.Card.RatedVoltage.Volts * c.Card.RatedVoltage.Volts).ThenBy(c => c.Count).ToList();
        if (enough.Count > 0)
            return (enough[0], "the least of the set with enough voltage without load at high mains, ripple current, and capacitance for the ripple and for the time until the relay is open", true);
        var nearest = cards.OrderByDescending(c => Math.Min(1, c.RatedVoltage.Volts / volts)).ThenByDescending(c => c.Capacitance.Farads).FirstOrDefault();
        return nearest is null ? null : (new(nearest, basis.MostReservoirs), "the nearest of the set; none has voltage, capacitance and ripple current enough", false);
    }

    private const double RippleRoom = 1.05;

    // Without mains the rails must stay above the voltage at which the amplifier misbehaves until the relay is open, at low mains, with the smallest of each capacitor.
    private double HoldUpFarads()
    {
        if (supply is not { } s || outputs is null)
            return 0;
        var drawn = (targets.Channels * Ratings.Max(r => r.PeakCurrent.Amperes) / Math.PI).A + Idle;
        try
        {
            var playing = s.Playing(Ratings.MaxBy(r => r.PeakCurrent.Amperes)!, 1.kHz);
            var lowest = s.Line.AtMains(-targets.MainsTolerance).At(drawn) - (playing.PositiveMean - playing.Positive.Minimum);
            var until = NoticeSeconds + set.Of<Relay>().Select(r => r.ReleaseTime.Seconds).DefaultIfEmpty(0).Max();
            return HoldUpRoom * until / Mute.HoldUp(ElectricCapacitance.FromFarads(1), lowest, Misbehaves, drawn).Seconds / (1 - s.Bank.Card.Tolerance.DecimalFractions);
        }
        catch (Exception e) when (e is RefusedValueException or ShortfallException)
        {
            return 0; // a rail that is not there, or too low at once, has other shortages, and says them
        }
    }

    // Until missing mains are noticed, as the design states it; and what a look at the mean current may miss.
    private const double NoticeSeconds = 30e-3, HoldUpRoom = 1.04;

    private double RippleOf(SizedSupply at, OutputRating r) => WorstPlaying(at, r, playing => Math.Max(playing.Positive.CapacitorRipple.Amperes, playing.Negative.CapacitorRipple.Amperes));

    private double WorstPlaying(SizedSupply at, OutputRating r, Func<DualSteadySupply, double> figure)
    {
        try
        {
            return Math.Max(figure(at.Playing(r, targets.Lowest)), figure(at.Playing(r, 1.kHz)));
        }
        catch (ShortfallException)
        {
            return 0; // the transformer is not enough, and said to be
        }
    }

    // What the rail that holds at rated power gives the lower load, in two digits.
    private void FollowRail(SizedSupply at)
    {
        for (var tries = 0; tries < 15 && !at.Holds(Least, Budget(Least)); tries++)
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

        if (reservoirs is not { Bank: var bank } caps)
            Miss("The set has no reservoir capacitor.");
        else
        {
            Take("reservoir", bank.Card, caps.Because);
            Choose("n_res", bank.Count, "as few as bring the capacitance and carry the ripple current");
            if (!caps.Enough)
                Miss($"No reservoir of the set is enough, {basis.MostReservoirs} of them on a rail; {bank.Card.Name} comes nearest.");
        }

        if (transformer is not { } t)
        {
            Miss($"The set has no transformer for {QuantityFormat.Short(targets.Line)} at {QuantityFormat.Short(targets.Mains)}.");
            return;
        }

        Take("transformer", t.Supply.Transformer, t.Because, t.Text);
        if (!t.Enough)
            Miss($"No transformer of the set carries {(targets.Channels == 1 ? "the channel" : $"{targets.Channels} channels")} at rated power; {t.Supply.Transformer.Name} comes nearest.");
        TellBleeder(supply!);
    }

    // As much as the time to a safe rail allows, as little heat as that takes.
    private void TellBleeder(SizedSupply s)
    {
        var largest = s.Bank.Capacitance.Farads * (1 + s.Bank.Card.Tolerance.DecimalFractions);
        var most = 0.95 * basis.SafeTime.Seconds / (largest * Math.Log(Math.Max(2, s.NoLoad / basis.SafeVoltage)));
        var cool = s.NoLoad.Volts * s.NoLoad.Volts / CoolWatts;
        var ohms = ESeries.E12.AtMost(Math.Min(most, Math.Max(cool, 100)));
        var watts = s.NoLoad.Volts * s.NoLoad.Volts / ohms;
        Choose("R_bl", ohms.Ohm, "empties the reservoirs in time with little heat");
        Choose("P_bl", Resistors.FirstOrDefault(w => w >= 2.05 * watts, PreferredValues.Up(2.05 * watts, 1)).W, "twice its heat at high mains");
    }

    // Of a bleeder where time allows it; and what resistors are made for.
    private const double CoolWatts = 1.5;
    private static readonly double[] Resistors = [0.5, 1, 2, 3, 5, 7, 10, 15, 20, 25, 50];
}
