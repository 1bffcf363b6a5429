using EightOhm.Devices;
using EightOhm.InputStages;
using EightOhm.OutputStages;
using EightOhm.Protection;
using EightOhm.Quantities;
using EightOhm.Ratings;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Sizing;

/// <content>What follows from the level: feedback, slew rate, and the limits of protection.</content>
internal sealed partial class SizingWork
{
    // Feedback's lower arm, and the servo's in parallel with it, as the design has them.
    private const double LowerArm = 24.9, ServoArm = 1_650;
    // What the servo's output reaches, and how much of it must reach the summing node: the worst offset of the design's input stage and a quarter more.
    private static readonly ElectricPotential ServoReach = 12.V, ServoAuthority = 148.mV;
    // Heat that the design allows each of the feedback resistors.
    private const double FeedbackWatts = 0.5;
    // What the bias resistor takes, halfway between the terminals (47 Ω) and the rated source (97 Ω): both are within the tolerance then.
    private const double InputLoss = 72.0 / BiasOhms;
    private const double SlewMargin = 6, BiasOhms = 10_000;

    // Source and series resistor of the input filter, and its corner over the highest frequency: a fiftieth of a decibel there.
    private const double InputOhms = 97, FilterRatio = 20;

    private void TellFrontEnd()
    {
        var gain = targets.Rated.RmsVoltage / targets.Sensitivity;
        if (Divider() is var (arm, feedback, servo))
        {
            var outweighs = Outweighs(arm, feedback, servo);
            Choose("R_sv", servo.Ohm, outweighs ? "small enough for the servo to outweigh the worst offset of the input stage" : "half of the usual, for the servo to do what it can against the offset of the input stage");
            if (!outweighs)
                Miss("With so little gain the servo does not outweigh the worst offset of the input stage through a resistor of half the usual: fewer volts at the input, or transistors of less spread.");
            Choose("R_g", arm.Ohm, "with the feedback resistor, the gain nearest to what the sensitivity asks");
            Choose("R_f", feedback.Ohm, "feedback for rated power at the sensitivity, the loss of the input network made up for");
            var volts = targets.Rated.RmsVoltage.Volts;
            Choose("n_f", (int)Math.Ceiling(volts * volts / feedback / FeedbackWatts), "as many as share the heat of a lasting sine at rated power");
        }
        else
            Miss("The sensitivity is more than rated power needs: the amplifier would have to attenuate.");
        TellLoop();
        TellCoil();
        Choose("C_in", InputFilter, "as low a corner as leaves the highest frequency alone: less noise, less of what a cable picks up");
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

    private ElectricCapacitance InputFilter => ElectricCapacitance.FromFarads(ESeries.E12.AtMost(1 / (2 * Math.PI * InputOhms * FilterRatio * targets.Highest.Hertz)));

    // Of the lower arms about the design's, the one whose feedback resistor comes nearest to a made value: half a step of the series alone may be more than the sensitivity allows.
    private (double Lower, double Upper, double Servo)? Divider()
    {
        var gain = targets.Rated.RmsVoltage / targets.Sensitivity;
        if (gain <= 1)
            return null;
        // A small amplifier's feedback resistor takes more of the servo's current than a large one's.
        for (var servo = ServoArm; ; servo = ESeries.E96.AtMost(0.99 * servo))
        {
            double Exact(double r) => ((gain * (1 + InputLoss)) - 1) / ((1 / r) + (1 / servo));
            var (lower, upper) = ESeries.E96.Values.Select(v => 10 * v).Where(r => Math.Abs((r / LowerArm) - 1) < 0.1).Select(r => (r, ESeries.E192.Nearest(Exact(r)))).MinBy(p => Math.Abs(Math.Log(p.Item2 / Exact(p.r))));
            if (Outweighs(lower, upper, servo) || servo < ServoArm / 2)
                return (lower, upper, servo);
        }
    }

    private static bool Outweighs(double lower, double upper, double servo) => DcServo.Authority(ServoReach, upper.Ohm, lower.Ohm, servo.Ohm) >= ServoAuthority;

    private SizedLoop? Loop()
    {
        if (Divider() is not var (arm, feedback, servo))
            return null;
        var second = ForSecondStage() ?? set.Of<Transistor>().Where(t => t.Polarity == Polarity.Pnp).MaxBy(t => t.MaxCollectorEmitterVoltage.Volts)!;
        var input = ForInput(Polarity.Npn, (TailAmperes / 2).A).Card;
        var mirror = ForInput(Polarity.Pnp, (TailAmperes / 2).A).Card;
        var stray = Stray(second);
        if (loop is not { } known || known.Input != input || known.Mirror != mirror || known.Second != second || known.Stray != stray.Farads)
            loop = (input, mirror, second, stray.Farads, new(input, mirror, second, stray, (feedback.Ohm, (1 / ((1 / arm) + (1 / servo))).Ohm), (InputOhms.Ohm, InputFilter, BiasOhms.Ohm),
                TailAmperes.A, SlewMargin * Feedback.SlewRate.Needed(targets.Highest, targets.Rated.PeakVoltage), targets, basis));
        return loop.Value.Of;
    }

    // All else that it takes stays the same in the rounds.
    private (Transistor Input, Transistor Mirror, Transistor Second, double Stray, SizedLoop Of)? loop;

    // The loop is as fast as slew rate and distortion ask, and no faster than margin and noise allow; degeneration sets one against the other.
    private void TellLoop()
    {
        if (Loop() is not { } loop)
        {
            Choose("SR", ElectricPotentialChangeRate.FromVoltsPerSeconds(PreferredValues.Up(SlewMargin * 1.2 * Feedback.SlewRate.Needed(targets.Highest, targets.Rated.PeakVoltage).VoltsPerSeconds, 2)), "room above the highest frequency at full power");
            return;
        }

        var chosen = loop.Choose(DistortionUse());
        if (!chosen.Meets.HasFlag(SizedLoop.Promises.Slew))
            Miss("The largest sine at the highest frequency asks for a faster loop than its margin allows: a higher gain, or less room above the slope.");
        if (!chosen.Meets.HasFlag(SizedLoop.Promises.Distortion))
            Miss($"Distortion at the highest frequency asks for a faster loop than its margin allows: {(basis.IdleHeat is null ? "more pairs" : "more dissipation at idle, for more pairs")}, or a gentler promise.");
        if (!chosen.Meets.HasFlag(SizedLoop.Promises.Noise))
            Miss("Signal to noise over the whole band asks for less than pair and divider make in the band that slew rate and distortion ask for: more volts at the input, or a lower promise.");
        Choose("SR", ElectricPotentialChangeRate.FromVoltsPerSeconds(PreferredValues.Up(chosen.Slew.VoltsPerSeconds, 3)), chosen.Meets == SizedLoop.Promises.All
            ? "a loop between what slew rate and distortion ask for and what margin and noise allow"
            : "the loop that keeps its margin and most of the promises");
        Choose("I_2", SizedLoop.SecondStageFor(TailAmperes.A, chosen.Slew, loop.Stray), "half as much again as tail and slope ask of the second stage");
        Choose("R_deg", chosen.Degeneration, "in each emitter of the input pair: slew rate against noise, at the crossover of the loop");
        Choose("C_in2", chosen.Inner, "as small as the margin of the loop around the second stage allows");
    }

    // All the distortion at the highest frequency over what is allowed: the static stage with its bias as set and as it drifts, into each load, with the allowance for stored charge and each order
    // divided by the loop, as the design reckons; beside it the pair, and what the others come to. Nothing where there is no stage.
    private Func<double, SizedLoop.PairHarmonics, double> DistortionUse() => DistortionUse(drivers, passage);

    private Func<double, SizedLoop.PairHarmonics, double> DistortionUse(Transistor driver, SizedPassage drifts)
    {
        var made = new List<(double[] Static, double Peak, double Allowed)>();
        try
        {
            foreach (var (r, harmonics) in HarmonicsWith(driver))
            {
                var allowed = (Same(r.Load, targets.Load) ? basis.Distortion : basis.LeastDistortion).DecimalFractions;
                foreach (var h in harmonics.Between((1 - Trim) * drifts.Least, (1 + Trim) * drifts.Greatest).Append(harmonics.At(1)))
                    made.Add((h, r.PeakVoltage.Volts, allowed));
            }
        }
        catch (Exception e) when (e is RefusedValueException or ShortfallException or InvalidOperationException)
        {
            made.Clear(); // a stage that cannot swing so far has other shortages, and says them
        }

        return (crossover, pair) => made.Count == 0 ? 0 : made.Max(m => Together(m.Static, crossover / targets.Highest.Hertz, pair, m.Peak) / m.Allowed);
    }

    // Sinks, spreaders and loops are tried on the same stage; nothing where there is none.
    private (OutputRating Rating, SizedHarmonics Of)[] HarmonicsWith(Transistor driver)
    {
        if (outputs is not { } o || supply is null)
            return [];
        var key = (o, driver, driverResistor.Ohms, (double)Least.Power.Watts);
        if (stages.TryGetValue(key, out var made))
            return made;
        var stage = o.With(driver, Complement(driver), driverResistor, PreDrivers);
        return stages[key] = [.. Ratings.Select(r => (r, new SizedHarmonics(stage.Transfer(r.Load, r.PeakVoltage), o.IdleCurrent, r.PeakVoltage)))];
    }

    private readonly Dictionary<(SizedOutputs, Transistor, double, double), (OutputRating, SizedHarmonics)[]> stages = [];

    // Magnitudes of one order add, squares of the orders.
    private double Together(double[] followers, double loop, SizedLoop.PairHarmonics pair, double peak)
    {
        var all = 0.0;
        for (var k = 2; k <= SizedHarmonics.Highest; k++)
        {
            var left = (ChargeAllowance * Feedback.LoopErrors.AfterGainAbovePole(Ratio.FromDecimalFractions(followers[k - 2]), loop / k).DecimalFractions)
                + (k == 2 ? pair.Second(peak) + (OthersShare * basis.Distortion.DecimalFractions) : k == 3 ? pair.Third(peak) : 0);
            all += left * left;
        }

        return Math.Sqrt(all);
    }

    private const double TailAmperes = 6e-3;
    // Second stage and rail, of the distortion promised: a little above what they come to as the design has them (common practice, no source).
    private const double ChargeAllowance = 2.5, OthersShare = 0.05;
    // Of the idle current: as it is trimmed.
    private const double Trim = 0.02;
}
