using EightOhm.Quantities;
using EightOhm.Numerics;
using EightOhm.Explaining;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <summary>An output stage of complementary followers in class B, or AB when it idles: its heat over level, load and phase, and the worst of it.</summary>
/// <remarks>Heat is that of the transistors; their emitter resistors' is told apart. Class B is exact; class AB is exact for the law of
/// <see cref="SideCurrents"/>. Saturation voltages, drivers and the charge stored at high frequency are left out. Equality is by value, a rail
/// function by reference.</remarks>
public sealed record ClassBStage
{
    // A level found by root finding must pass the limit that it was found on.
    private const double Rounding = 1 + 1e-9;
    private const int LevelSteps = 32;

    /// <summary>A stage on rails that do not sag.</summary>
    /// <param name="rail">One rail (not rail to rail); greater than 0 V.</param>
    /// <param name="pairs">Pairs in parallel; 1 or more.</param>
    /// <param name="R_E">Emitter resistor of one transistor; 0 Ω or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public ClassBStage(ElectricPotential rail, int pairs, ElectricResistance R_E)
    {
        var volts = Guard.Positive(rail).Volts;
        RailAtLevel = _ => volts;
        Pairs = Guard.Positive(pairs);
        EmitterResistor = Guard.NotNegative(R_E);
        Sags = false;
    }

    /// <summary>Pairs in parallel.</summary>
    [Symbol("n")]
    public int Pairs { get; }

    /// <summary>Emitter resistor of one transistor.</summary>
    [Symbol("R_E")]
    public ElectricResistance EmitterResistor { get; }

    /// <summary>Idle current of one pair; 0 A is class B.</summary>
    [Symbol("I_q")]
    public ElectricCurrent Idle { get; init => field = Guard.NotNegative(value, nameof(Idle)); }

    /// <summary>A transistor's own series resistance in the emitter: it shapes the crossover, and its heat is the transistor's.</summary>
    [Symbol("r_int")]
    public ElectricResistance InternalResistance { get; init => field = Guard.NotNegative(value, nameof(InternalResistance)); }

    /// <summary>Temperature of the junctions, which sets the thermal voltage of the crossover; 55 °C if not given.</summary>
    [Symbol("T_j")]
    public Temperature Junction { get; init => field = Guard.Positive(value, nameof(Junction)); } = 55.degC;

    /// <summary>How far the mains is from nominal: the rails go with it.</summary>
    [Symbol("x")]
    public Ratio Mains { get; private init; }

    /// <summary>One rail without signal.</summary>
    [Symbol("V")]
    public ElectricPotential Rail => ElectricPotential.FromVolts(RailVolts(0));

    private Func<double, double> RailAtLevel { get; init; }

    private bool Sags { get; init; }

    private SideCurrentLaw Law => new(Pairs * Idle.Amperes, (EmitterResistor.Ohms + InternalResistance.Ohms) / Pairs, EmitterBias.ThermalVoltage(Junction).Volts);

    private double Resistor => EmitterResistor.Ohms / Pairs;

    /// <summary>The stage on the rail that its supply gives at each level into the load in question.</summary>
    /// <param name="rail">From the load's peak voltage to one rail at that level, at nominal mains; it should fall smoothly.</param>
    public ClassBStage WithRail(Func<ElectricPotential, ElectricPotential> rail)
    {
        ArgumentNullException.ThrowIfNull(rail);
        return this with { RailAtLevel = level => rail(ElectricPotential.FromVolts(level)).Volts, Sags = true };
    }

    /// <summary>The stage on a table of rails: straight lines between its levels, its first and last value beyond them.</summary>
    /// <param name="levels">Peak voltages at the load, ascending; at least two.</param>
    /// <param name="rails">One rail at each level, at nominal mains.</param>
    /// <exception cref="ArgumentException">The lists differ in length, are too short, or the levels do not ascend.</exception>
    public ClassBStage WithRail(IReadOnlyList<ElectricPotential> levels, IReadOnlyList<ElectricPotential> rails)
    {
        ArgumentNullException.ThrowIfNull(levels);
        ArgumentNullException.ThrowIfNull(rails);
        double[] x = [.. levels.Select(v => v.Volts)], y = [.. rails.Select(v => v.Volts)];
        if (x.Length < 2 || x.Length != y.Length || x.Zip(x.Skip(1)).Any(p => !(p.First < p.Second)))
            throw new ArgumentException($"A table of rails needs as many rails as levels, two or more, the levels ascending (had {x.Length} levels and {y.Length} rails).", nameof(levels));
        return this with { RailAtLevel = level => Between(x, y, level), Sags = true };
    }

    /// <summary>The stage when the mains, and with it every rail, is off its nominal value.</summary>
    /// <param name="x">By how much, such as 10.percent; more than −100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">No rail would be left.</exception>
    public ClassBStage AtMains(Ratio x) => this with { Mains = Guard.Between(x, (-99).percent, 100.percent) };

    /// <summary>One rail at a level.</summary>
    /// <param name="V_p">Peak voltage at the load; 0 V or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is negative.</exception>
    /// <exception cref="InvalidOperationException">The rail function gave no rail.</exception>
    public ElectricPotential RailAt(ElectricPotential V_p) => ElectricPotential.FromVolts(RailVolts(Guard.NotNegative(V_p).Volts));

    /// <summary>The greatest peak voltage at the load: where the rail at that level is used up.</summary>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="InvalidOperationException">The rail function gave no rail, or the level was not found.</exception>
    public ElectricPotential FullSwing(ElectricResistance Z, Angle phi) => ElectricPotential.FromVolts(Full(Need(Z, phi)));

    /// <summary>The powers at one level of a sine.</summary>
    /// <param name="V_p">Peak voltage at the load; from 0 V to <see cref="FullSwing"/>.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="InvalidOperationException">The rail function gave no rail.</exception>
    public StageHeat At(ElectricPotential V_p, ElectricResistance Z, Angle phi)
    {
        var (need, level) = (Need(Z, phi), Guard.NotNegative(V_p).Volts);
        var rail = RailVolts(level);
        if (level * need > rail * Rounding)
            Guard.Refuse(nameof(V_p), V_p, $"at most {QuantityFormat.Short(FullSwing(Z, phi))}", $"The rail at this level is {QuantityFormat.Short(ElectricPotential.FromVolts(rail))} and would be below the swing.");
        var (sum, squares) = Law.OverSine(level / Z.Ohms);
        var (supply, load, resistors) = (rail * sum, level * level / Z.Ohms * Math.Cos(phi.Radians) / 2, Resistor * squares);
        var total = supply - load - resistors;
        return new StageHeat(V_p, ElectricPotential.FromVolts(rail), Power.FromWatts(supply), Power.FromWatts(load), Power.FromWatts(resistors), Power.FromWatts(total), Power.FromWatts(total / (2 * Pairs)), Ratio.FromDecimalFractions(supply > 0 ? load / supply : 0));
    }

    /// <summary>The powers at each of many levels, for a chart.</summary>
    /// <param name="levels">Peak voltages at the load; each from 0 V to <see cref="FullSwing"/>.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public IReadOnlyList<StageHeat> Over(IEnumerable<ElectricPotential> levels, ElectricResistance Z, Angle phi) => [.. levels.Select(v => At(v, Z, phi))];

    /// <summary>The powers at evenly spaced levels from 0 V to full swing.</summary>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <param name="points">How many levels; 2 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public IReadOnlyList<StageHeat> Sweep(ElectricResistance Z, Angle phi, int points = 101)
    {
        Guard.Between(points, 2, 100_000);
        var full = FullSwing(Z, phi);
        return Over(Enumerable.Range(0, points).Select(i => full * (i / (points - 1.0))), Z, phi);
    }

    /// <summary>The level at which the transistors are hottest into a resistor, with the powers there.</summary>
    /// <param name="R">Load, resistive; greater than 0 Ω.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public StageHeat Worst(ElectricResistance R) => Worst(R, 0.deg);

    /// <summary>The level at which the transistors are hottest, from idle to full swing, with the powers there.</summary>
    /// <remarks>The heat grows with |φ| at every level, so over loads of one magnitude the worst has the largest phase.</remarks>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="InvalidOperationException">The rail function gave no rail, or full swing was not found.</exception>
    public StageHeat Worst(ElectricResistance Z, Angle phi)
    {
        if (!Sags && Idle.Amperes == 0)
            return At(ClassB.WorstLevel(Rail, Z, phi, EmitterResistor, Pairs), Z, phi);
        var (z, half, law, resistor) = (Z.Ohms, Math.Cos(phi.Radians) / 2, Law, Resistor);
        double Heat(double level)
        {
            var (sum, squares) = law.OverSine(level / z, coarse: true);
            return (RailVolts(level) * sum) - (level * level / z * half) - (resistor * squares);
        }

        return At(ElectricPotential.FromVolts(Hottest(Heat, Full(Need(Z, phi)), LevelSteps)), Z, phi);
    }

    /// <summary>The greatest instantaneous heat of one side, over all sine levels.</summary>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="InvalidOperationException">The rail function gave no rail, or full swing was not found.</exception>
    public StagePeak Peak(ElectricResistance Z, Angle phi)
    {
        var (z, lag, law, resistor) = (Z.Ohms, phi.Radians, Law, Resistor);
        (double Output, double Across, double Current) Moment(double level, double rail, double angle)
        {
            var (output, current) = (level * Math.Sin(angle), level / z * Math.Sin(angle - lag));
            var off = law.Off(Math.Abs(current), out _);
            var side = current > 0 ? off + current : off;
            return (output, rail - output - (side * resistor), side);
        }

        double Instant(double level, double rail, double angle) => Moment(level, rail, angle) is var m ? m.Across * m.Current : 0;
        (double X, double Value) Over(double level)
        {
            var rail = RailVolts(level);
            return Scan.Highest(angle => Instant(level, rail, angle), lag, lag + (2 * Math.PI), 64, 2e-6 * Math.PI);
        }

        var worst = Hottest(level => Over(level).Value, Full(Need(Z, phi)), LevelSteps / 2);
        var there = Moment(worst, RailVolts(worst), Over(worst).X);
        var heat = there.Across * there.Current;
        return new StagePeak(ElectricPotential.FromVolts(worst), Power.FromWatts(heat), Power.FromWatts(heat / Pairs), ElectricPotential.FromVolts(there.Output), ElectricPotential.FromVolts(there.Across), ElectricCurrent.FromAmperes(there.Current));
    }

    /// <summary>The powers of a sine that gives the load a power, such as an eighth of the rated one.</summary>
    /// <param name="P">The load's power; 0 W or more.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, between −90° and 90°.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or the swing too small for the power.</exception>
    public StageHeat Sine(Power P, ElectricResistance Z, Angle phi) => At(MusicDissipation.RmsCurrent(P, Z, phi) * Z * Math.Sqrt(2), Z, phi);

    /// <summary>The powers of a noise-like programme that gives the load a power: a Gaussian current, the magnitude and phase of the load as at every frequency.</summary>
    /// <remarks>Steady noise. A programme whose level comes and goes draws less from the supply for the same mean power, and so heats less. The rail is
    /// that of the sine with the same mean current.</remarks>
    /// <param name="P">The load's mean power; 0 W or more.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, between −90° and 90°.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or full swing is below 3 times the rms, where clipping would count.</exception>
    public ProgrammeHeat Noise(Power P, ElectricResistance Z, Angle phi)
    {
        var (need, rms) = (Need(Z, phi), MusicDissipation.RmsCurrent(P, Z, phi).Amperes);
        var volts = rms * Z.Ohms;
        var rail = RailVolts(volts * Math.Sqrt(Math.PI / 2));
        if (volts * need * MusicDissipation.LeastRoom > rail * Rounding)
            Guard.Refuse(nameof(P), P, $"at most {QuantityFormat.Short(Power.FromWatts(Math.Pow(rail / need / MusicDissipation.LeastRoom, 2) / Z.Ohms * Math.Cos(phi.Radians)))}", MusicDissipation.Clips);
        var (sum, squares) = Law.OverNoise(rms);
        var (supply, load, resistors) = (rail * sum, (double)P.Watts, Resistor * squares);
        var total = supply - load - resistors;
        var room = volts > 0 ? Gain.FromRatio(rail / need / volts) : Gain.FromRatio(1e6);
        return new ProgrammeHeat(ElectricPotential.FromVolts(volts), room, MusicDissipation.ClippedShare(room), ElectricPotential.FromVolts(rail), Power.FromWatts(supply), P, Power.FromWatts(resistors), Power.FromWatts(total), Power.FromWatts(total / (2 * Pairs)));
    }

    private static double Hottest(Func<double, double> heat, double full, int steps) => Scan.Highest(heat, 0, full, steps, 1e-6 * full).X;

    // Rail needed per volt at the load.
    private double Need(ElectricResistance Z, Angle phi) => LoadWithEmitterResistor.Magnitude(Z, phi, EmitterResistor, Pairs).Ohms / Z.Ohms;

    private double Full(double need)
    {
        var high = RailVolts(0) / need;
        if (!Sags || RailVolts(high) >= high * need)
            return high;
        return Brent.TryFindRoot(level => RailVolts(level) - (level * need), 0, high, 1e-10 * high, 100, out var full)
            ? full
            : throw new InvalidOperationException($"Full swing was not found between 0 V and {QuantityFormat.Short(ElectricPotential.FromVolts(high))}: the rail must fall smoothly with the level.");
    }

    private double RailVolts(double level) => RailAtLevel(level) * (1 + Mains.DecimalFractions) is var rail && rail > 0 && double.IsFinite(rail)
        ? rail
        : throw new InvalidOperationException($"The rail function gave no rail at {QuantityFormat.Short(ElectricPotential.FromVolts(level))} peak. It must give a rail above 0 V from no signal to full swing.");

    private static double Between(double[] x, double[] y, double level)
    {
        if (level <= x[0])
            return y[0];
        for (var i = 1; i < x.Length; i++)
            if (level <= x[i])
                return y[i - 1] + ((y[i] - y[i - 1]) * (level - x[i - 1]) / (x[i] - x[i - 1]));
        return y[^1];
    }
}
