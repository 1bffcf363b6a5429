using EightOhm.Devices;
using EightOhm.Protection;
using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Sizing;

/// <content>Soft start, fuse and relay.</content>
internal sealed partial class SizingWork
{
    // A limited inrush stays below what a household circuit takes without a word (common practice, no source).
    private const double InrushAmperes = 12;
    private const double FuseUse = 0.75;

    // Tried in this order: the longest wait last, the strongest limiter first.
    private static readonly double[] Delays = [1, 2];
    private static readonly double[] Shares = [1, 0.68, 0.47, 0.33];
    private static readonly double[] Fuses = [0.1, 0.125, 0.16, 0.2, 0.25, 0.315, 0.4, 0.5, 0.63, 0.8, 1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8, 10, 12.5, 16, 20, 25, 32];

    private ElectricCurrent Idle => targets.Channels * ((pairs * (outputs?.IdleCurrent ?? default)) + (DriverVolts / 47).A + basis.Besides);

    private void TellMains()
    {
        if (supply is not { } s || outputs is null)
            return;
        var high = s.Rails.AtMains(targets.MainsTolerance);
        var line = targets.Line * (1 + targets.MainsTolerance.DecimalFractions);
        var first = PreferredValues.NearestOf12(Math.Sqrt(2) * line.Volts / InrushAmperes);
        var (ohms, seconds) = (first, 1.0);
        foreach (var (r, t) in from t in Delays from k in Shares select (PreferredValues.NearestOf12(first * k), t))
        {
            (ohms, seconds) = (r, t);
            var start = SoftStart.Of(high.SwitchedOn(line, basis.LineResistance, InrushLimiter.Resistor(r.Ohm), t.s, Idle));
            if (start.Short <= default(ElectricPotential) && start.BypassPeak <= start.Peak)
                break;
        }

        Choose("R_soft", ohms.Ohm, "limits the inrush at high mains and still fills the reservoirs at idle before the bypass");
        Choose("t_soft", seconds.s, "when the reservoirs are nearly full");
        try
        {
            var most = Ratings.Select(r => s.Playing(r).ApparentPower).MaxBy(p => p.Voltamperes);
            var needed = Fuse.Rating(Transformer.PrimaryCurrent(most, targets.Line), Ratio.FromDecimalFractions(FuseUse), 100.percent);
            var rating = Fuses.FirstOrDefault(f => f >= needed.Amperes, PreferredValues.Up(needed.Amperes, 2));
            Choose("I_fuse", rating.A, "the smallest rating that carries all channels at rated power; slow-blow, for the inrush");
        }
        catch (ShortfallException)
        {
            // The transformer cannot carry it, and is said not to: its own rating is what a fuse is for.
            Choose("I_fuse", Fuses.First(f => f >= s.Transformer.Rating.Voltamperes / targets.Line.Volts).A, "the smallest rating that carries the transformer's own");
        }
    }

    private void TellRelay()
    {
        if (supply is not { } s)
            return;
        var rail = s.NoLoad;
        var coil = targets.MinimumLoad!.Value * basis.VoiceCoil.DecimalFractions;
        var current = LoudspeakerFault.Current(rail, coil);
        var pick = set.Smallest<Relay>(
            r => r.DcVoltage.Volts * r.DcCurrent.Amperes,
            new DeviceNeed<Relay>("dc voltage", r => r.DcVoltage / rail),
            new DeviceNeed<Relay>("dc current", r => r.DcCurrent / current),
            new DeviceNeed<Relay>("carried current", r => r.CarriedCurrent / Ratings.MaxBy(x => x.RmsCurrent.Amperes)!.RmsCurrent));
        if (pick is null)
        {
            Miss("The set has no relay.");
            return;
        }

        Take("relay", pick.Device, pick.Because);
        if (!pick.IsEnough)
            Miss($"No relay of the set breaks a rail at high mains through the least load's voice coils: {string.Join(" and ", pick.Short.Select(x => x.What))}; {pick.Device.Name} comes nearest.");
        Choose("R_vc", PreferredValues.Down((targets.Load * basis.VoiceCoil.DecimalFractions).Ohms, 3).Ohm, "voice coil of a box of the rated load, dc (invented box)");
    }
}
