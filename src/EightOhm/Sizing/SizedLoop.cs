using EightOhm.Devices;
using EightOhm.Feedback;
using EightOhm.InputStages;
using EightOhm.Noise;
using EightOhm.Numerics;
using EightOhm.Quantities;
using EightOhm.SecondStages;
using UnitsNet;

namespace EightOhm.Sizing;

/// <summary>Pair, capacitor and divider as one loop, at the corners where its margins are least and its noise is most: what the degeneration and the crossover can be.</summary>
/// <remarks>A crossover is that of one pole: fraction over 2π, the pair's resistance and the capacitor. Tail current over capacitor is the slew rate, so at one crossover less degeneration is less
/// noise and less slew rate.</remarks>
internal sealed class SizedLoop
{
    // As the design has them: second stage with its follower and cascode, what stands at its input, bias resistor, mirror.
    private const double SecondAmperes = 11e-3, SecondOhms = 22, FollowerOhms = 510, FollowerGain = 100, PairFarads = 10e-12, OutputOhms = 200e3;

    /// <summary>What second stage and its current source stand at: half as much again as the pair and the slope at its output ask, and no less than what its gain was reckoned with.</summary>
    internal static ElectricCurrent SecondStageFor(ElectricCurrent tail, ElectricPotentialChangeRate slew, ElectricCapacitance stray) =>
        UnitMath.Max(SecondAmperes.A, PreferredValues.Up(StageRoom * StageCurrent.Needed(slew, tail / slew, stray, FollowersBase).Amperes, 3).A);

    private static readonly ElectricCurrent FollowersBase = 0.1.mA;
    private const double StageRoom = 1.5;
    private static readonly ElectricResistance BaseResistance = 8.Ohm, MirrorResistor = 330.Ohm, MirrorBase = 30.Ohm;
    // The pair, as warm as its volts and its tail make it in the case.
    private static readonly ElectricPotential PairVoltage = 7.V;
    private static readonly ThermalResistance PairToAir = 300.K_per_W;
    private static readonly ElectricCapacitance Coupling = 10.uF;
    private static readonly double[] InnerPicofarads = [270, 330, 390, 470, 560, 680, 820, 1000];
    private static readonly double[] Degenerations = [.. ESeries.E24.Values.Select(v => 10 * v), .. ESeries.E24.Values.Select(v => 100 * v).Where(r => r <= 220)];
    private const double UsualDegeneration = 39;

    // Tolerances, and how far the idle current falls behind after a passage (common practice, no source).
    private const double CapacitorTolerance = 5, TailLeast = 0.9, TailMost = 1.1, IdleLeft = 0.94;

    // Above what is asked: a degree of each margin and, where it can be had, a tenth of a decibel and more, for what is left out here.
    private const double MarginRoom = 1, DistanceRoom = 0.01, NoiseRoom = 0.15, LeastNoiseRoom = 0.03;
    // Hz, Hz, Hz, and a part of what is found.
    private const double Slowest = 50e3, Fastest = 5e6, Closely = 5e3, Nearly = 1e-6;

    private readonly Transistor input, mirror, second;
    private readonly ElectricResistance upper, lower, source, bias;
    private readonly ElectricCapacitance filter;
    private readonly AmplifierTargets targets;
    private readonly SizingBasis basis;
    private readonly double fraction, slewNeed, unbalance;
    private readonly ElectricCurrent tail;
    private readonly Dictionary<double, double> fastest = [];
    private readonly Dictionary<(double Hertz, double Ohms), double> signalToNoise = [];

    public SizedLoop(Transistor input, Transistor mirror, Transistor second, ElectricCapacitance stray, (ElectricResistance Upper, ElectricResistance Lower) divider, (ElectricResistance Source, ElectricCapacitance Filter, ElectricResistance Bias) network, ElectricCurrent tail, ElectricPotentialChangeRate slewNeed, AmplifierTargets targets, SizingBasis basis)
    {
        (this.input, this.mirror, this.second, Stray, this.tail, this.targets, this.basis) = (input, mirror, second, stray, tail, targets, basis);
        (upper, lower) = divider;
        (source, filter, bias) = network;
        fraction = FeedbackLoop.Fraction(lower, upper);
        unbalance = Unbalance();
        this.slewNeed = slewNeed.VoltsPerSeconds * (1 + (CapacitorTolerance / 100)) / TailLeast;
    }

    /// <summary>What stands at the second stage's output beside the compensation.</summary>
    public ElectricCapacitance Stray { get; }

    /// <summary>The choice: degeneration, crossover, the capacitor at the second stage's input, and what could not be had.</summary>
    /// <param name="Degeneration">In each emitter of the pair.</param>
    /// <param name="Slew">Slew rate, which with the tail current is the capacitor.</param>
    /// <param name="Inner">From the second stage's input to its rail.</param>
    /// <param name="Meets">Which of slew, distortion, margin and noise the choice meets.</param>
    public sealed record Choice(ElectricResistance Degeneration, ElectricPotentialChangeRate Slew, ElectricCapacitance Inner, Promises Meets);

    /// <summary>What a loop can promise together.</summary>
    [Flags]
    public enum Promises
    {
        /// <summary>Nothing.</summary>
        None = 0,

        /// <summary>Noise over the whole band.</summary>
        Noise = 1,

        /// <summary>Distortion of the output stage and of the pair.</summary>
        Distortion = 2,

        /// <summary>Room above the steepest slope of the largest sine.</summary>
        Slew = 4,

        /// <summary>All of them, with the margins, which are never given up.</summary>
        All = Noise | Distortion | Slew,
    }

    /// <summary>The degeneration nearest to the usual one with which a crossover keeps all promises; where none does, the one that keeps the most, slew first, noise last.</summary>
    /// <param name="use">Distortion of all sources over what is allowed, of a crossover in Hz and the pair's harmonics there; falling with the crossover.</param>
    public Choice Choose(Func<double, PairHarmonics, double> use)
    {
        var roomy = OfPromises(use, DistortionUse, NoiseRoom);
        return roomy.Meets == Promises.All ? roomy : OfPromises(use, LeastRoom, LeastNoiseRoom);
    }

    /// <summary>Whether some degeneration leaves no more than is allowed of the distortion at its fastest crossover of enough margin: else no choice keeps all promises, and need not be looked for.</summary>
    /// <param name="use">As for a choice.</param>
    public bool MayKeep(Func<double, PairHarmonics, double> use) => Degenerations.Any(ohms => FastestSafe(ohms) is var hertz && use(hertz, PairAt(hertz, ohms)) <= LeastRoom);

    /// <summary>The slowest crossover that leaves what is allowed of the distortion, in Hz, at the usual degeneration.</summary>
    /// <param name="use">As for a choice.</param>
    public double SlowestFor(Func<double, PairHarmonics, double> use) => SlowestFor(use, DistortionUse, UsualDegeneration);

    // The outputs' distortion falls with the crossover, and the pair's with the slew rate that it brings.
    private double SlowestFor(Func<double, PairHarmonics, double> use, double most, double ohms)
    {
        double Use(double f) => use(f, PairAt(f, ohms));
        var (low, high) = (targets.Highest.Hertz, 1e4 * targets.Highest.Hertz);
        return Use(low) <= most ? 0 : Halving.NarrowedByRatio(f => Use(f) > most, low, high, Nearly).High;
    }

    private Choice OfPromises(Func<double, PairHarmonics, double> use, double most, double noiseRoom)
    {
        (Promises Meets, double Ohms, double Hertz)? best = null;
        foreach (var ohms in Degenerations.OrderBy(r => Math.Abs(Math.Log(r / UsualDegeneration))))
        {
            Work.Checkpoint();
            var distortion = SlowestFor(use, most, ohms);
            // What cannot be nearer to the distortion than the best so far is not looked at closely.
            if (best is { Meets: Promises.Slew | Promises.Noise, Hertz: var reached } && !IsSafe(distortion, ohms) && !(IsSafe(reached, ohms) && IsQuiet(reached, ohms, noiseRoom)))
                continue;
            var safe = FastestSafe(ohms);
            var slew = Crossover(Math.Max(slewNeed, PairNeed(ohms)), ohms);
            var isWithin = distortion <= safe;
            var least = isWithin ? Math.Max(slew, distortion) : slew;
            var quiet = least <= safe && IsQuiet(least, ohms, noiseRoom) ? FastestQuiet(ohms, safe, noiseRoom) : 0;
            var meets = (slew <= safe ? Promises.Slew : 0) | (isWithin ? Promises.Distortion : 0) | (least <= quiet ? Promises.Noise : 0);
            // Between the least that is asked and the most that is allowed, so that either may move a little; as near to the distortion as may be where that is beyond it.
            var fastest = meets.HasFlag(Promises.Noise) ? Math.Min(safe, quiet) : safe;
            var at = !isWithin || least > fastest ? fastest : meets.HasFlag(Promises.Noise) ? Math.Sqrt(least * fastest) : least;
            // Of equals the faster where distortion is what is short, the quieter where it is noise: of the next smaller resistors.
            if (best is not { } b || meets > b.Meets || (meets == b.Meets && IsNearer(meets, (ohms, at), (b.Ohms, b.Hertz))))
                best = (meets, ohms, at);
            if (meets == Promises.All)
                break;
        }

        var (kept, chosen, hertz) = best!.Value;
        return new(chosen.Ohm, ElectricPotentialChangeRate.FromVoltsPerSeconds(Slew(hertz, chosen)), InnerCapacitor(hertz, chosen) ?? InnerPicofarads[^1].pF, kept);
    }

    private static bool IsNearer(Promises meets, (double Ohms, double Hertz) a, (double Ohms, double Hertz) b) =>
        meets.HasFlag(Promises.Slew) && (meets.HasFlag(Promises.Noise) ? !meets.HasFlag(Promises.Distortion) && a.Hertz > b.Hertz : a.Ohms < b.Ohms);

    /// <summary>The highest crossover with the margins asked for, at the usual degeneration: what a stage that needs a faster loop must do without.</summary>
    public double FastestSafe() => FastestSafe(UsualDegeneration);

    private double PairOhms(double ohms) => ohms + (Junction.ThermalVoltage(basis.Pair).Volts / (tail.Amperes / 2));

    private double Slew(double hertz, double ohms) => 2 * Math.PI * hertz * PairOhms(ohms) * tail.Amperes / fraction;

    private double Crossover(double slew, double ohms) => slew * fraction / (2 * Math.PI * PairOhms(ohms) * tail.Amperes);

    // The slew rate at which the pair's own third harmonic is what the design allows of the distortion: V_T/6·u³·G/V_p, with the share at the ends of tail and capacitor.
    private double PairNeed(double ohms)
    {
        var peak = targets.Rated.PeakVoltage.Volts;
        var share = Math.Cbrt(PairShare * basis.Distortion.DecimalFractions * 6 * peak * fraction / Junction.ThermalVoltage(basis.Pair).Volts);
        return SlewRate.Needed(targets.Highest, targets.Rated.PeakVoltage).VoltsPerSeconds / share * (1 + (CapacitorTolerance / 100)) / TailLeast;
    }

    // A little below what the design allows a harmonic of the pair; and of all the distortion, what is left for what is reckoned here in part.
    private const double PairShare = 0.65, DistortionUse = 0.95, LeastRoom = 0.99;

    /// <summary>What the pair leaves at the output of the largest sine of a load, as fractions.</summary>
    /// <param name="Second">Second harmonic, by the mirror's error, of a peak in volts.</param>
    /// <param name="Third">Third, of a peak in volts.</param>
    public readonly record struct PairHarmonics(Func<double, double> Second, Func<double, double> Third);

    // As the design reckons them, at the ends of tail and capacitor; a pair that slews leaves no sine.
    private PairHarmonics PairAt(double hertz, double ohms)
    {
        var V_T = Junction.ThermalVoltage(basis.Pair);
        var share = 2 * Math.PI * targets.Highest.Hertz / Slew(hertz, ohms) * (1 + (CapacitorTolerance / 100)) / TailLeast;
        double Of(Func<ElectricPotential, Ratio, Ratio, Gain, ElectricPotential, Ratio> harmonic, double peak) =>
            share * peak + unbalance >= SlewingShare ? double.PositiveInfinity
            : harmonic(V_T, Ratio.FromDecimalFractions(share * peak), Ratio.FromDecimalFractions(unbalance), Gain.FromRatio(1 / fraction), peak.V).DecimalFractions;
        return new(peak => Of(PairDistortion.SecondHarmonic, peak), peak => Of(PairDistortion.ThirdHarmonic, peak));
    }

    // Half of what the mirror errs by: base currents, unlike junctions and unlike resistors (common practice, no source), as the design has them.
    private double Unbalance()
    {
        var (V_T, half) = (Junction.ThermalVoltage(basis.Pair), tail / 2);
        return (1 - CurrentMirror.Transfer(1, GainOf(mirror, half)) + (CurrentMirror.ErrorOfMismatch(V_T, Unlike, half, MirrorResistor) + CurrentMirror.ErrorOfResistors(V_T, 2 * EmitterTolerance, half, MirrorResistor)).DecimalFractions) / 2;
    }

    private static readonly Ratio Unlike = 5.percent, EmitterTolerance = 1.percent;
    private const double SlewingShare = 0.95;

    private double FastestSafe(double ohms) => fastest.TryGetValue(ohms, out var known) ? known : fastest[ohms] = Halving.Narrowed(f => IsSafe(f, ohms), Slowest, Fastest, 14, Closely).Low;

    private double FastestQuiet(double ohms, double safe, double room) => IsQuiet(safe, ohms, room) ? safe : Halving.Narrowed(f => IsQuiet(f, ohms, room), Slowest, safe, 8).Low;

    private bool IsSafe(double hertz, double ohms)
    {
        if (hertz > Fastest || InnerCapacitor(hertz, ohms) is not { } inner)
            return false;
        var at = LoopStability.Of(Corner(hertz, ohms, inner, -CapacitorTolerance, basis.Cold).OuterLoop());
        return at.PhaseMargin is { } margin && margin.Degrees >= basis.PhaseMargin.Degrees + MarginRoom && at.SensitivityPeak is { } peak && 1 / peak >= basis.Distance + DistanceRoom;
    }

    // The least that keeps the margin of the loop around the second stage.
    private ElectricCapacitance? InnerCapacitor(double hertz, double ohms)
    {
        foreach (var pico in InnerPicofarads)
        {
            if (LoopStability.Of(Corner(hertz, ohms, pico.pF, CapacitorTolerance, basis.Pair).InnerLoop()).PhaseMargin is { } margin && margin.Degrees >= basis.InnerMargin.Degrees + MarginRoom)
                return pico.pF;
        }

        return null;
    }

    private bool IsQuiet(double hertz, double ohms, double room)
    {
        if (!signalToNoise.TryGetValue((hertz, ohms), out var known))
            signalToNoise[(hertz, ohms)] = known = SignalToNoise(hertz, ohms);
        return known >= basis.SignalToNoise.Decibels + room;
    }

    // In decibels, at the corner of most noise; none where the loop around the second stage has no margin.
    private double SignalToNoise(double hertz, double ohms)
    {
        if (InnerCapacitor(hertz, ohms) is not { } inner)
            return double.NegativeInfinity;
        var closed = Corner(hertz, ohms, inner, -CapacitorTolerance, basis.Pair).ClosedLoop() * fraction;
        var level = InputNetwork.Level(source, filter, Coupling, bias).Ratio;
        var (gain, follower) = SecondStageFollower();
        var noise = new InputStageNoise
        {
            Temperature = basis.InsideAir(targets) + (PairVoltage * (TailMost * tail / 2) * PairToAir),
            TailCurrent = tail,
            CurrentGain = GainOf(input, tail / 2),
            BaseResistance = BaseResistance,
            Degeneration = ohms.Ohm,
            Source = source,
            Filter = (1 - (CapacitorTolerance / 100)) * filter,
            Coupling = Coupling,
            Bias = bias,
            Upper = upper,
            Lower = lower,
            MirrorDegeneration = MirrorResistor,
            MirrorBaseResistance = MirrorBase,
            MirrorGain = GainOf(mirror, tail / 2),
            CascodeGain = GainOf(input, tail / 2),
            SecondStageBase = follower / FollowerGain,
            SecondStageVoltage = SecondStageNoise.Voltage(basis.InsideAir(targets), SecondAmperes.A, gain, SecondOhms.Ohm, follower, FollowerOhms.Ohm),
            SecondStageCapacitance = inner + ElectricCapacitance.FromFarads(PairFarads) + second.OutputCapacitance + (tail / ElectricPotentialChangeRate.FromVoltsPerSeconds(Slew(hertz, ohms))),
        };
        return noise.Spectrum().Over(1.Hz, 100.MHz, f => closed.Magnitude(f) / level).SnrAgainst(targets.Sensitivity).Decibels;
    }

    private MillerAmplifier Corner(double hertz, double ohms, ElectricCapacitance inner, double capacitor, Temperature pair)
    {
        return new AmplifierStages
        {
            TailCurrent = tail,
            Degeneration = ohms.Ohm,
            Transistor = second,
            Current = SecondAmperes.A,
            EmitterResistor = SecondOhms.Ohm,
            Temperature = basis.InsideAir(targets),
            FollowerCurrent = SecondStageFollower().Current,
            FollowerGain = FollowerGain,
            IsCascoded = true,
            Capacitor = tail / ElectricPotentialChangeRate.FromVoltsPerSeconds(Slew(hertz, ohms)),
            InputCapacitance = inner + ElectricCapacitance.FromFarads(PairFarads),
            OutputResistance = OutputOhms.Ohm,
            OutputCapacitance = Stray,
            OutputPole = basis.OutputPole,
            IdleCurrent = 1.A,
            DriverPole = basis.DriverPole,
            Feedback = fraction,
        }.At(capacitor.percent, -basis.PoleSpread, pair, IdleLeft.A, basis.Delay);
    }

    private (double Gain, ElectricCurrent Current) SecondStageFollower()
    {
        var gain = GainOf(second, SecondAmperes.A);
        var atBase = second.BaseEmitterVoltageAt(SecondAmperes.A, basis.InsideAir(targets)) + (SecondAmperes.A * SecondOhms.Ohm);
        return (gain, StageGain.FollowerCurrent(SecondAmperes.A, gain, atBase, FollowerOhms.Ohm));
    }

    /// <summary>Current gain of a card; beyond its table that of the table's end.</summary>
    internal static double GainOf(Transistor t, ElectricCurrent at) => t.GainAt(UnitMath.Max(t.GainTable[0].Current, UnitMath.Min(t.GainTable[^1].Current, at)));
}
