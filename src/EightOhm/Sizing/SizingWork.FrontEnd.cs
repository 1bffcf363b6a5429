using EightOhm.Protection;
using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Sizing;

/// <content>What follows from the level: feedback, slew rate, and the limits of protection.</content>
internal sealed partial class SizingWork
{
    // Feedback's lower arm with the servo in parallel, as the design has it.
    private const double LowerArm = 24.9, ServoArm = 2_490;
    // Heat that the design allows each of the feedback resistors.
    private const double FeedbackWatts = 0.5;
    // What the bias resistor takes, halfway between the terminals (82 Ω) and the rated source (132 Ω): both are within the tolerance then.
    private const double InputLoss = 107.0 / 10_000;
    private const double SlewMargin = 6;

    // Source and series resistor of the input filter, and its corner over the highest frequency: a fortieth of a decibel there.
    private const double InputOhms = 132, FilterRatio = 16;

    private void TellFrontEnd()
    {
        var gain = targets.Rated.RmsVoltage / targets.Sensitivity;
        if (gain > 1)
        {
            // Of the lower arms about the design's, the one whose feedback resistor comes nearest to a made value: half a step of the series alone may be more than the sensitivity allows.
            var (arm, feedback) = ESeries.E96.Values.Select(v => 10 * v).Where(r => Math.Abs((r / LowerArm) - 1) < 0.1).Select(r => (r, ESeries.E192.Nearest(Exact(r)))).MinBy(p => Math.Abs(Math.Log(p.Item2 / Exact(p.r))));
            double Exact(double r) => 1 / ((1 / r) + (1 / ServoArm)) * ((gain * (1 + InputLoss)) - 1);
            Choose("R_g", arm.Ohm, "with the feedback resistor, the gain nearest to what the sensitivity asks");
            Choose("R_f", feedback.Ohm, "feedback for rated power at the sensitivity, the loss of the input network made up for");
            var volts = targets.Rated.RmsVoltage.Volts;
            Choose("n_f", (int)Math.Ceiling(volts * volts / feedback / FeedbackWatts), "as many as share the heat of a lasting sine at rated power");
        }
        else
            Miss("The sensitivity is more than rated power needs: the amplifier would have to attenuate.");
        TellSlewRate(gain);
        TellCoil();
        var corner = FilterRatio * targets.Highest.Hertz;
        Choose("C_in", ElectricCapacitance.FromFarads(ESeries.E12.AtMost(1 / (2 * Math.PI * InputOhms * corner))), "as low a corner as leaves the highest frequency alone: less noise, less of what a cable picks up");
        // An amplifier of another level has another gain: half to twice what it needs is still a line-level amplifier's.
        Choose("A_lo", Gain.FromRatio(PreferredValues.Down(gain * 0.8, 2)), "a fifth below what rated power needs at the sensitivity");
        Choose("A_hi", Gain.FromRatio(PreferredValues.Up(gain * 1.25, 2)), "a quarter above it");
    }

    // The reactance of the output coil at the highest frequency is a small part of the load, whatever the load: its damping factor stays.
    private void TellCoil()
    {
        var most = targets.Load.Ohms / CoilDamping / (2 * Math.PI * targets.Highest.Hertz);
        var turns = MostTurns;
        while (turns > LeastTurns && OutputNetworks.AirCoil.Inductance(turns, CoilDiameter, turns * CoilPitch).Henries > most)
            turns--;
        Choose("n_coil", turns, "as many turns as the damping factor at the highest frequency allows");
    }

    // Of the design's former and wire: mean diameter, and from turn to turn. A winding as flat as the least of them is still in reach of its formula.
    private static readonly Length CoilDiameter = Length.FromMillimeters(11.3125), CoilPitch = Length.FromMillimeters(1.3125);
    private const int MostTurns = 14, LeastTurns = 5;
    private const double CoilDamping = 45;

    // As fast as the signal asks, and as fast as the loop must be for the stage's distortion at the highest frequency.
    private void TellSlewRate(double gain)
    {
        var need = Feedback.SlewRate.Needed(targets.Highest, targets.Rated.PeakVoltage).VoltsPerSeconds * SlewMargin * 1.1;
        var (slew, because) = (need, "room above the highest frequency at full power");
        if (StageHarmonics() is { Count: > 0 } harmonics && gain > 1)
        {
            // Loop gain at the highest frequency for a slew rate: one pole, set by the same capacitor.
            double Loop(double s) => s / (gain * 2 * Math.PI * InputResistance * TailAmperes * targets.Highest.Hertz);
            double Use(double s) => harmonics.Max(h => h.Left(Loop(s)) / h.Allowed);
            var most = Fastest / targets.Highest.Hertz / Loop(1);
            while (slew < most && Use(slew) > DistortionUse)
                (slew, because) = (slew * 1.05, "a loop fast enough for the distortion of the output stage at the highest frequency");
            if (Use(slew) > 1)
                Miss("Distortion at the highest frequency asks for a faster loop than the output transistors allow: more pairs, or a gentler promise.");
        }

        Choose("SR", ElectricPotentialChangeRate.FromVoltsPerSeconds(PreferredValues.Up(slew, 2)), because);
    }

    // The static stage with its bias as set and as it drifts, into each load: allowance for stored charge in it, as the design reckons.
    private List<(Func<double, double> Left, double Allowed)> StageHarmonics()
    {
        if (outputs is not { } o || supply is not { } s)
            return [];
        var made = new List<(Func<double, double>, double)>();
        try
        {
            var stage = o.With(drivers, Complement(drivers), driverResistor, SizedDrivers.PreResistor);
            foreach (var r in Ratings)
            {
                var transfer = stage.Transfer(r.Load, r.PeakVoltage);
                foreach (var drift in Drifts)
                {
                    var harmonics = transfer.BiasedAt(drift * o.IdleCurrent).Harmonics(r.PeakVoltage, highest: 8);
                    made.Add((loop => ChargeAllowance * Math.Sqrt(Enumerable.Range(2, 3).Sum(k => Math.Pow(Feedback.LoopErrors.AfterGainAbovePole(harmonics.Harmonic(k), loop / k).DecimalFractions, 2))),
                        (Same(r.Load, targets.Load) ? basis.Distortion : basis.LeastDistortion).DecimalFractions));
                }
            }
        }
        catch (Exception e) when (e is RefusedValueException or ShortfallException or InvalidOperationException)
        {
            return []; // a stage that cannot swing so far has other shortages, and says them
        }

        return made;
    }

    // r_e of half the tail current and the degeneration; the loop's unity-gain frequency stays well below the outputs' f_T.
    private const double InputResistance = 60.7, TailAmperes = 4e-3, Fastest = 2.5e6;
    private const double ChargeAllowance = 2.5, DistortionUse = 0.85;
    // Of the idle current, as it drifts and is trimmed.
    private static readonly double[] Drifts = [0.93, 1, 1.4];
}
