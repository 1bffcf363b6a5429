using EightOhm.Devices;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <summary>A follower stage at one bias: what stands, what the gain is, what harmonics it makes.</summary>
public sealed record FollowerBias
{
    internal FollowerBias(EmitterFollowerStage stage, ElectricPotential bias, ElectricCurrent idle)
    {
        (Stage, BiasVoltage, IdleCurrent) = (stage, bias, idle);
        var standing = stage.Equations().StandingCurrents(idle.Amperes);
        (DriverCurrent, PreDriverCurrent) = (Current(0), Current(1));
        GainAtZero = Curve([0.0]).Gain[0].Y;

        ElectricCurrent? Current(int k) => k < standing.Count ? ElectricCurrent.FromAmperes(standing[k]) : null;
    }

    /// <summary>The stage.</summary>
    public EmitterFollowerStage Stage { get; }

    /// <summary>Between the two bases of the first stage.</summary>
    [Symbol("V_b")]
    public ElectricPotential BiasVoltage { get; }

    /// <summary>What the emitter resistor of one output device carries while the output current is zero.</summary>
    [Symbol("I_q")]
    public ElectricCurrent IdleCurrent { get; }

    /// <summary>Thermal voltage of the upper outputs.</summary>
    [Symbol("V_T")]
    public ElectricPotential ThermalVoltage => Devices.Junction.ThermalVoltage(Stage.Junction);

    /// <summary>Incremental emitter resistance of one output device at idle, V_T/I_q.</summary>
    [Symbol("r_e")]
    public ElectricResistance EmitterResistance => Crossover.EmitterResistance(ThermalVoltage, IdleCurrent);

    /// <summary>The drop on one external emitter resistor: what a meter reads.</summary>
    [Symbol("V_RE")]
    public ElectricPotential DropOnEmitterResistor => IdleCurrent * Stage.EmitterResistor;

    /// <summary>Incremental gain dv_out/dv_in at zero output, of the whole stage.</summary>
    [Symbol("A_0")]
    public Gain GainAtZero { get; }

    /// <summary>What the gain tends to where one side carries a large current, base currents left aside: R_L/(R_L + (R_E + r_int)/n).</summary>
    [Symbol("A_far")]
    public Gain LargeSignalGain => Crossover.LargeSignalGain(Stage.Load, Stage.TotalEmitterResistance, Stage.Pairs);

    /// <summary>What the drivers' emitter resistor carries at idle; none without drivers.</summary>
    [Symbol("I_dr")]
    public ElectricCurrent? DriverCurrent { get; }

    /// <summary>What the pre-drivers' emitter resistor carries at idle; none without pre-drivers.</summary>
    [Symbol("I_pre")]
    public ElectricCurrent? PreDriverCurrent { get; }

    /// <summary>The output voltage at an input voltage.</summary>
    /// <param name="input">At the middle of the bias, before the source's impedance; any sign.</param>
    /// <exception cref="InvalidOperationException">The solver did not converge; the message gives its last state.</exception>
    [Worked("the output at which the equations of all junctions hold, by Newton's method")]
    public ElectricPotential OutputFor(ElectricPotential input)
    {
        var solver = new FollowerSolver(Stage.Equations(), 1);
        solver.Given[0] = Guard.Finite(input.Volts, nameof(input));
        solver.Solve(BiasVoltage.Volts);
        return ElectricPotential.FromVolts(solver.Output[0]);
    }

    /// <summary>The input voltage that an output voltage asks for.</summary>
    /// <param name="output">Across the load; any sign.</param>
    /// <exception cref="InvalidOperationException">The solver did not converge; the message gives its last state.</exception>
    [Worked("the input at which the equations of all junctions hold, by Newton's method")]
    public ElectricPotential InputFor(ElectricPotential output) => Curve([output.Volts]).Transfer[0].X;

    /// <summary>The incremental gain dv_out/dv_in at an output voltage, from the slopes of the solved equations.</summary>
    /// <param name="output">Across the load; any sign.</param>
    /// <exception cref="InvalidOperationException">The solver did not converge; the message gives its last state.</exception>
    [Worked("the slope of the solved equations at that output")]
    public Gain GainAt(ElectricPotential output) => Curve([output.Volts]).Gain[0].Y;

    /// <summary>The incremental output resistance at an output voltage: R_L·(1/A − 1).</summary>
    /// <param name="output">Across the load; any sign.</param>
    /// <exception cref="InvalidOperationException">The solver did not converge; the message gives its last state.</exception>
    [Worked("R_L·(1/A − 1), A the slope of the solved equations at that output")]
    public ElectricResistance OutputResistanceAt(ElectricPotential output) => Crossover.OutputResistance(GainAt(output), Stage.Load);

    /// <summary>Transfer and incremental gain over the output voltage, from −over to +over.</summary>
    /// <param name="over">The largest output voltage; greater than 0 V.</param>
    /// <param name="points">How many points, both ends and zero among them when odd; 2 to 100 001.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="InvalidOperationException">The solver did not converge; the message gives its last state.</exception>
    [Worked("the equations of all junctions solved at each output, by Newton's method")]
    public GainCurve Transfer(ElectricPotential over, int points = 401)
    {
        Guard.Positive(over);
        Guard.Between(points, 2, 100_001);
        // From the middle outwards both ways, so that the two ends are the same number but for the sign.
        return Curve([.. Enumerable.Range(0, points).Select(i => over.Volts * (2 * i - (points - 1)) / (points - 1))]);
    }

    /// <summary>Harmonics of a sine at the input that drives the output to a peak.</summary>
    /// <remarks>Static, so a LOWER BOUND: the charge of the outputs comes on top at high frequency, see <see cref="FollowerHarmonics.ChargeLimit"/>.
    /// Where the sides differ, the input's peak is half of what lies between the inputs for +level and −level.</remarks>
    /// <param name="level">Peak output voltage (not rms); greater than 0 V.</param>
    /// <param name="highest">The highest harmonic; 2 to 1000.</param>
    /// <param name="samples">Samples of the period; a multiple of 4, at least 4 times the highest harmonic.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="InvalidOperationException">The solver did not converge; the message gives its last state.</exception>
    [Worked("the solved transfer over one cycle of the sine, its Fourier series")]
    public FollowerHarmonics Harmonics(ElectricPotential level, int highest = 10, int samples = 4096)
    {
        var over = Stage.DistortionAt([BiasVoltage], level, highest, samples);
        return new FollowerHarmonics(this, level, over);
    }

    internal GainCurve Curve(double[] outputs)
    {
        var solver = new FollowerSolver(Stage.Equations(), outputs.Length);
        outputs.CopyTo(solver.Given.AsSpan());
        solver.Solve(BiasVoltage.Volts, outputGiven: true);
        var (gain, input) = (new double[outputs.Length], new double[outputs.Length]);
        solver.Gain(gain, input);
        return new GainCurve(IdleCurrent, input, outputs, gain);
    }
}
