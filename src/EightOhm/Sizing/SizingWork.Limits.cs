using EightOhm.Devices;
using EightOhm.Protection;
using EightOhm.Quantities;
using EightOhm.SafeAreas;
using UnitsNet;

namespace EightOhm.Sizing;

/// <content>Limiter, relay and dc detector.</content>
internal sealed partial class SizingWork
{
    // As the design states them: sense junction and its spread, resistors, the lowest note, and the invented box.
    private const double SenseResistor = 220, BoxHenriesPerOhm = 0.5e-3 / 8;
    private static readonly Temperature Cold = 10.degC, Warm = 55.degC;
    private static readonly ElectricPotential Sense = 650.mV, SenseSpread = 10.mV;
    private static readonly Ratio Resistance = 1.percent, DetectorSpread = 10.percent;
    private static readonly Frequency LowestNote = 10.Hz;
    private static readonly double[] PulseWatts = [1, 2, 3, 5, 7, 10, 15, 20, 25, 50];

    private VoltageCurrentLimiter? limiter;

    // Midway between what the load needs and what the area allows, each with the spread of the parts.
    private void TellLimiter()
    {
        if (outputs is not { } o)
            return;
        DeratedArea[] areas = [new SafeArea(npn).For(basis.Case, SizedOutputs.Event), new SafeArea(pnp).For(basis.Case, SizedOutputs.Event)];
        var loads = Ratings.Select(r => o.AtHighMains.Rail is var rail
            ? new LoadEllipse(rail, UnitMath.Min(r.PeakVoltage, rail / (1 + (emitterResistor / (pairs * r.Load)))), r.Load, targets.Phase, emitterResistor, pairs) : null!).ToArray();
        // The loads' margins are long to find: not asked for where the area's alone is no better than the best.
        double Margin(VoltageCurrentLimiter l, double best) => WithMost(l) is var most && areas.Min(a => most.MarginTo(a, Cold).Margin) is var left && left > best && WithLeast(l) is var least
            ? Math.Min(left, loads.Min(load => least.MarginTo(load, Warm).Margin))
            : left;
        (double Margin, VoltageCurrentLimiter? Limiter) best = (0, null);
        foreach (var (r2, r3) in from a in LogSteps(30, 3000, 15) from b in LogSteps(2000, 200_000, 15) select (a, b))
            Try(r2, r3);
        for (var step = 1.25; step > 1.01 && best.Limiter is { } at; step = Math.Sqrt(step))
        {
            foreach (var (x, y) in Around)
                Try(at.ToOutput.Ohms * Math.Pow(step, x), at.ToRail.Ohms * Math.Pow(step, y));
        }

        if (best.Limiter is not { } found)
        {
            Miss("No limiter of one slope lies between the loads and the safe area of so many pairs.");
            return;
        }

        limiter = found;
        if (best.Margin < 1)
            Miss("The limiter has no room between the loads and the safe area with the spread of its parts: more pairs, or parts of less spread.");
        Choose("R_1", SenseResistor.Ohm, "low against the sense transistor's base current");
        Choose("R_2", limiter.ToOutput, "together with the resistor to the rail: the locus with most room to load and area alike");
        Choose("R_3", limiter.ToRail, "together with the resistor to the output: the locus with most room to load and area alike");
        var held = WithMost(limiter).CurrentAt(0.V, Cold).Amperes;
        Choose("P_REr", PulseWatts.FirstOrDefault(w => w * PulseFactor >= held * held * emitterResistor.Ohms, PulseWatts[^1]).W, "bears what the limiter lets through for the length of an event");

        void Try(double r2, double r3)
        {
            var made = new VoltageCurrentLimiter(SenseResistor.Ohm, ESeries.E192.Nearest(r2).Ohm, ESeries.E192.Nearest(r3).Ohm, emitterResistor, Sense);
            try
            {
                if (Margin(made, best.Margin) is var margin && margin > best.Margin)
                    best = (margin, made);
            }
            catch (Exception e) when (e is RefusedValueException or ShortfallException)
            {
                // a locus that ends before the rail
            }
        }
    }

    // A resistor of wire bears a short pulse of several times its rating (common practice, no source).
    private const double PulseFactor = 4.5;
    private static readonly (int X, int Y)[] Around = [(0, 1), (0, -1), (1, 0), (-1, 0), (1, 1), (-1, -1), (1, -1), (-1, 1)];

    private static VoltageCurrentLimiter WithMost(VoltageCurrentLimiter l) => l.WithSpread(-Resistance, SenseSpread, -Resistance, -Resistance, Resistance);

    private static VoltageCurrentLimiter WithLeast(VoltageCurrentLimiter l) => l.WithSpread(Resistance, -SenseSpread, Resistance, Resistance, -Resistance);

    private static IEnumerable<double> LogSteps(double from, double to, int steps) => Enumerable.Range(0, steps).Select(i => from * Math.Pow(to / from, i / (steps - 1.0)));

    private void TellRelay()
    {
        if (supply is not { } s)
            return;
        var rail = s.NoLoad;
        var coil = targets.MinimumLoad!.Value * basis.VoiceCoil.DecimalFractions;
        var current = UnitMath.Max(LoudspeakerFault.Current(rail, coil), limiter is { } l ? pairs * WithMost(l).CurrentAt(rail, Cold) : default);
        Choose("L_vc", PreferredValues.Down(BoxHenriesPerOhm * targets.Load.Ohms, 3).H, "voice coil of a box of the rated load (invented box)");
        Choose("R_vc", PreferredValues.Down((targets.Load * basis.VoiceCoil.DecimalFractions).Ohms, 3).Ohm, "voice coil of a box of the rated load, dc (invented box)");
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
            Miss($"No relay of the set breaks a rail at high mains through the least load's voice coils: {Lists.And([.. pick.Short.Select(x => x.What)])}; {pick.Device.Name} comes nearest.");
    }

    private void TellDetector()
    {
        if (supply is not { } s)
            return;
        // The margin goes with the time constant where that is long against the note.
        var tau = 1.0;
        for (var tries = 0; tries < 20; tries++)
            tau *= DetectorRoom / new DcProtection(Sense, tau.s, 1).WithSpread(-DetectorSpread, -SenseSpread).NoteMargin(s.NoLoad, LowestNote, Warm);
        Choose("tau_dc", PreferredValues.Up(tau, 2).s, "lets the lowest note at full level begin without a trip");
        Choose("E_vcmax", PreferredValues.Up(CoilJoulesPerWatt * (double)targets.Power.Watts, 2).J, "grows with the power that the loudspeaker is made for");
        Choose("V_mute", Misbehaves, "rail below which the amplifier misbehaves");
    }

    private ElectricPotential Misbehaves => PreferredValues.Down(MuteShare * targets.Rated.PeakVoltage.Volts, 2).V;

    private const double DetectorRoom = 1.02, CoilJoulesPerWatt = 0.8, MuteShare = 0.45;
}
