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

    // Tried in this order: the longest wait last, the strongest limiter first.
    private static readonly double[] Delays = [1, 2];
    private static readonly double[] Shares = [1, 0.68, 0.47, 0.33, 0.22];
    private static readonly double[] Fuses = [0.1, 0.125, 0.16, 0.2, 0.25, 0.315, 0.4, 0.5, 0.63, 0.8, 1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8, 10, 12.5, 16, 20, 25, 32];

    private ElectricCurrent Idle => targets.Channels * ((pairs * (outputs?.IdleCurrent ?? default)) + (DriverVolts / 47).A + basis.Besides);

    private void TellMains()
    {
        if (supply is not { } s || outputs is null)
            return;
        Ratio[] deviations = [-targets.MainsTolerance, targets.MainsTolerance];
        // At their largest the reservoirs ask most of all that follows.
        var rails = s.Rails.WithReservoirs(1 + s.Bank.Card.Tolerance.DecimalFractions);
        var first = ESeries.E12.Nearest(Math.Sqrt(2) * targets.Line.Volts * (1 + targets.MainsTolerance.DecimalFractions) / InrushAmperes);
        var (ohms, seconds) = (first, Delays[0]);
        SoftStart[] starts = [];
        double Reached() => starts.Min(o => o.RailAtBypass / o.FinalRail);
        foreach (var (r, t) in from t in Delays from k in Shares select (ESeries.E12.Nearest(first * k), t))
        {
            var on = rails.SwitchedOn(targets.Line, basis.LineResistance, InrushLimiter.Resistor(r.Ohm), t.s, Idle);
            SoftStart[] made = [.. deviations.Select(x => SoftStart.Of(on.AtMains(x)))];
            if (starts.Length > 0 && made.Any(o => o.Peak.Amperes > MostInrush))
                continue;
            (ohms, seconds, starts) = (r, t, made);
            if (Reached() >= Filled && starts.All(o => o.BypassPeak.Amperes <= MostBypass))
                break;
        }

        var fills = Reached() >= LeastFilled;
        if (!fills)
            Miss("At idle the rails do not fill before the soft start's bypass, whatever the limiter: less idle current, fewer pairs among others, or a stiffer transformer.");

        Choose("R_soft", ohms.Ohm, fills ? "limits the inrush at high mains and still fills the reservoirs at idle before the bypass" : "limits the inrush at high mains");
        Choose("t_soft", seconds.s, fills ? "when the reservoirs are nearly full" : "the longest wait that was tried");
        Choose("E_soft", PreferredValues.Up(starts.Max(o => o.LimiterEnergy.Joules) * 1.3, 2).J, "room above the pulse at high mains, with the reservoirs at their largest");
        TellFuse(s, starts);
    }

    private void TellFuse(SizedSupply s, SoftStart[] starts)
    {
        var volts = 2 * s.Winding.NoLoad.Volts;
        double Needed(ElectricApparentPower power) => Fuse.Rating(Transformer.PrimaryCurrent(power, targets.Line), FuseUse, FuseWarm).Amperes;
        string because;
        double needed;
        try
        {
            var rms = Ratings.SelectMany(r => new[] { s.Playing(r, targets.Lowest), s.Playing(r, 1.kHz) }).Max(p => p.HalfWindingRms.Amperes);
            (needed, because) = (Needed((volts * rms).VA), "the smallest rating that carries all channels at rated power; time-lag, for the inrush");
        }
        catch (ShortfallException)
        {
            // The transformer cannot carry it, and is said not to: its own rating is what a fuse is for.
            (needed, because) = (Needed(s.Transformer.Rating), "the smallest rating that carries the transformer's own; time-lag, for the inrush");
        }

        Choose("I_fuse", Fuses.FirstOrDefault(f => f >= needed, PreferredValues.Up(needed, 2)).A, because);
        var pulse = starts.Max(o => Fuse.LeastMelting(o.WholePulse, FusePulse).Si);
        Choose("W_fuse", new JouleIntegral(PreferredValues.Up(pulse * 1.2, 2)), "room above the pulse of a switch-on (invented)");
    }

    // The rail at the bypass, of its final value; and the peaks from the mains when it closes and before.
    private const double Filled = 0.85, LeastFilled = 0.8, MostBypass = 30, MostInrush = 36;
    private static readonly Ratio FuseUse = 75.percent, FuseWarm = 95.percent, FusePulse = 22.percent;
}
