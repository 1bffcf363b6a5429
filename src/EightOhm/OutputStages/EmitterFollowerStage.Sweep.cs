using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <content>Families over the bias: each solution starts from the last.</content>
public sealed partial record EmitterFollowerStage
{
    /// <summary>Transfer and incremental gain at several biases: the family of a chart.</summary>
    /// <param name="idle">Idle currents of one output device; each greater than 0 A.</param>
    /// <param name="over">The largest output voltage; greater than 0 V. The curves run from −over to +over.</param>
    /// <param name="points">Points of each curve; 2 to 100 001.</param>
    /// <exception cref="ArgumentException">No idle current is given, or an input is out of range.</exception>
    /// <exception cref="InvalidOperationException">The solver did not converge; the message gives its last state.</exception>
    public IReadOnlyList<GainCurve> GainFamily(IReadOnlyList<ElectricCurrent> idle, ElectricPotential over, int points = 401)
    {
        AtLeastOne(idle, nameof(idle));
        return [.. idle.Select(i => BiasedAt(i).Transfer(over, points))];
    }

    /// <summary>Static distortion over the idle current, at an output level.</summary>
    /// <param name="idle">Idle currents of one output device, best in order; each greater than 0 A.</param>
    /// <param name="level">Peak output voltage (not rms); greater than 0 V.</param>
    /// <param name="highest">The highest harmonic; 2 to 1000.</param>
    /// <param name="samples">Samples of the period; a multiple of 4, at least 4 times the highest harmonic.</param>
    /// <exception cref="ArgumentException">No idle current is given, or an input is out of range.</exception>
    /// <exception cref="InvalidOperationException">The solver did not converge; the message gives its last state.</exception>
    [Worked("for each idle current, the harmonics of the solved transfer over a sine of that output")]
    public DistortionOverBias DistortionAt(IReadOnlyList<ElectricCurrent> idle, ElectricPotential level, int highest = 10, int samples = 4096)
    {
        AtLeastOne(idle, nameof(idle));
        return DistortionAt([.. idle.Select(i => BiasedAt(i).BiasVoltage)], level, highest, samples);
    }

    /// <summary>Static distortion over the bias voltage, at an output level.</summary>
    /// <param name="bias">Bias voltages, best in order; each greater than 0 V.</param>
    /// <param name="level">Peak output voltage (not rms); greater than 0 V.</param>
    /// <param name="highest">The highest harmonic; 2 to 1000.</param>
    /// <param name="samples">Samples of the period; a multiple of 4, at least 4 times the highest harmonic.</param>
    /// <exception cref="ArgumentException">No bias is given, or an input is out of range.</exception>
    /// <exception cref="InvalidOperationException">The solver did not converge; the message gives its last state.</exception>
    [Worked("for each idle current, the harmonics of the solved transfer over a sine of that output")]
    public DistortionOverBias DistortionAt(IReadOnlyList<ElectricPotential> bias, ElectricPotential level, int highest = 10, int samples = 4096)
    {
        AtLeastOne(bias, nameof(bias));
        var volts = Guard.Positive(level).Volts;
        var peaks = new FollowerSolver(Equations(), 2);
        double[] input = new double[2], gain = new double[2];
        return Sweep(bias, highest, samples, b =>
        {
            (peaks.Given[0], peaks.Given[1]) = (volts, -volts);
            peaks.Solve(b, outputGiven: true);
            peaks.Gain(gain, input);
            return (input[0] - input[1]) / 2;
        });
    }

    /// <summary>Static distortion over the bias voltage, for one sine at the input.</summary>
    /// <param name="bias">Bias voltages, best in order; each greater than 0 V.</param>
    /// <param name="inputPeak">Peak of the sine at the input, around 0 V; greater than 0 V.</param>
    /// <param name="highest">The highest harmonic; 2 to 1000.</param>
    /// <param name="samples">Samples of the period; a multiple of 4, at least 4 times the highest harmonic.</param>
    /// <exception cref="ArgumentException">No bias is given, or an input is out of range.</exception>
    /// <exception cref="InvalidOperationException">The solver did not converge; the message gives its last state.</exception>
    [Worked("for each idle current, the harmonics of the solved transfer over a sine of that input")]
    public DistortionOverBias DistortionDriven(IReadOnlyList<ElectricPotential> bias, ElectricPotential inputPeak, int highest = 10, int samples = 4096)
    {
        AtLeastOne(bias, nameof(bias));
        var volts = Guard.Positive(inputPeak).Volts;
        return Sweep(bias, highest, samples, _ => volts);
    }

    private DistortionOverBias Sweep(IReadOnlyList<ElectricPotential> bias, int highest, int samples, Func<double, double> peakAt)
    {
        Guard.Between(highest, 2, 1000);
        Guard.Between(samples, 4 * highest, 1 << 22);
        if (samples % 4 != 0)
            Guard.Refuse(nameof(samples), samples, "a multiple of 4, so that both peaks and both zeros of the sine are samples");
        var equations = Equations();
        var series = new CosineSeries(samples, highest);
        var solver = new FollowerSolver(equations, series.Points);
        var found = new DistortionOverBias(bias.Count);
        for (var k = 0; k < bias.Count; k++)
        {
            Work.Report(k, bias.Count);
            var volts = Guard.Positive(bias[k], nameof(bias)).Volts;
            var peak = peakAt(volts);
            if (k == 0 || peak != found.InputPeaks[k - 1])
                series.Fill(solver.Given, peak);
            solver.Solve(volts);
            (found.BiasVoltages[k], found.IdleCurrents[k], found.InputPeaks[k]) = (volts, equations.IdleCurrent(volts), peak);
            if (double.IsNaN(found.IdleCurrents[k]))
                _ = BiasedBy(bias[k]); // refuses it, and says what would do
            var fundamental = series.Of(1, solver.Output);
            var squares = 0.0;
            var shares = new double[highest - 1];
            for (var h = 2; h <= highest; h++)
            {
                shares[h - 2] = series.Of(h, solver.Output) / fundamental;
                squares += shares[h - 2] * shares[h - 2];
            }

            (found.Fundamentals[k], found.Distortions[k], found.Each[k]) = (fundamental, Math.Sqrt(squares), shares);
        }

        return found;
    }

    private static void AtLeastOne<T>(IReadOnlyList<T> list, string name)
    {
        ArgumentNullException.ThrowIfNull(list, name);
        if (list.Count == 0)
            throw new ArgumentException("Give at least one bias.", name);
    }
}
