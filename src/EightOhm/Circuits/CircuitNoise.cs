using System.Numerics;
using EightOhm.Explaining;
using EightOhm.Noise;
using EightOhm.Quantities;
using EightOhm.Samples;
using UnitsNet;

namespace EightOhm.Circuits;

/// <summary>The noise at a node of a circuit, in all and by contribution, over frequency.</summary>
public sealed class CircuitNoise
{
    private const double Close = 1e-6;

    private const int MostPanels = 1 << 14;

    private readonly Excitation at;
    private readonly IReadOnlyList<(int Col, double Sign)> watch;
    private readonly double[] hertz, output;
    private readonly Complex[]? gains;

    private CircuitNoise(Excitation at, IReadOnlyList<(int Col, double Sign)> watch, string? from, string to, double[] hertz, double[] output, Complex[]? gains) =>
        (this.at, this.watch, From, To, this.hertz, this.output, this.gains) = (at, watch, from, to, hertz, output, gains);

    /// <summary>The node.</summary>
    public string To { get; }

    /// <summary>The input that it is referred to; null where none was named.</summary>
    public string? From { get; }

    /// <summary>Density at the node, rms, over frequency.</summary>
    public Curve<Frequency, VoltageNoiseDensity> Output => new(hertz, output);

    /// <summary>Density referred to the input, rms, over frequency.</summary>
    /// <exception cref="InvalidOperationException">No input was named, or at a frequency nothing of the input arrives at the node.</exception>
    public Curve<Frequency, VoltageNoiseDensity> InputReferred => new(hertz, [.. Gains().Select((g, i) => output[i] / Arrives(g.Magnitude, hertz[i]))]);

    /// <summary>Density at the node at a frequency.</summary>
    /// <param name="f">Greater than 0 Hz; it need not be one of the points.</param>
    /// <returns>V/√Hz, rms.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not positive.</exception>
    [Worked("the root of the sum of the squares of all contributions, by the adjoint of the node equations")]
    public VoltageNoiseDensity OutputAt(Frequency f) => VoltageNoiseDensity.FromSi(Math.Sqrt(Squares([Guard.Positive(f).Hertz], null).Sum(s => s[0])));

    /// <summary>Density referred to the input at a frequency.</summary>
    /// <param name="f">Greater than 0 Hz; it need not be one of the points.</param>
    /// <returns>V/√Hz, rms.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not positive.</exception>
    /// <exception cref="InvalidOperationException">No input was named, or nothing of it arrives at the node.</exception>
    [Worked("the density at the node over the gain from the input")]
    public VoltageNoiseDensity InputReferredAt(Frequency f) => OutputAt(f) / GainAt(f);

    /// <summary>The contributions at a frequency, the largest first: referred to the input where one was named, otherwise at the node.</summary>
    /// <param name="f">Greater than 0 Hz; it need not be one of the points.</param>
    /// <returns>The budget.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not positive.</exception>
    /// <exception cref="InvalidOperationException">Nothing of the input arrives at the node.</exception>
    [Worked("each noise by the adjoint of the node equations, over the gain from the input where one was named")]
    public NoiseBudget Budget(Frequency f)
    {
        var squares = Squares([Guard.Positive(f).Hertz], null);
        var gain = From is null ? 1 : GainAt(f);
        return new([.. at.System.Noises.Select((n, i) => new NoiseContribution(n.Name, VoltageNoiseDensity.FromSi(Math.Sqrt(squares[i][0]) / gain)))]);
    }

    /// <summary>The noise voltage at the node in a band with sharp ends.</summary>
    /// <param name="f_L">Lower end; greater than 0 Hz.</param>
    /// <param name="f_H">Upper end; above the lower.</param>
    /// <returns>V, rms.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ends are not in order.</exception>
    [Worked("the density's square integrated over the band: Gauss quadrature in panels of the logarithm of frequency, halved until nothing moves")]
    public ElectricPotential Total(Frequency f_L, Frequency f_H) => ElectricPotential.FromVolts(Math.Sqrt(Integral(f_L, f_H)));

    /// <summary>"noise at out, referred to in".</summary>
    public override string ToString() => $"noise at {To}{(From is null ? "" : $", referred to {From}")}: {QuantityFormat.Short(Output.Min)} to {QuantityFormat.Short(Output.Max)} at {To}";

    internal static CircuitNoise Of(Excitation at, IReadOnlyList<(int Col, double Sign)> watch, string? from, string to, double[] hertz)
    {
        if (at.System.Noises.Count == 0)
            throw new InvalidOperationException("Nothing in this circuit makes noise: it has no resistor and no device.");
        var gains = from is null ? null : new Complex[hertz.Length];
        var noise = new CircuitNoise(at, watch, from, to, hertz, new double[hertz.Length], gains);
        foreach (var square in noise.Squares(hertz, gains))
            for (var i = 0; i < hertz.Length; i++)
                noise.output[i] += square[i];
        for (var i = 0; i < hertz.Length; i++)
            noise.output[i] = Math.Sqrt(noise.output[i]);
        return noise;
    }

    // Density squared of each noise at each frequency.
    private double[][] Squares(double[] frequencies, Complex[]? gain)
    {
        double[][] squares = [.. at.System.Noises.Select(_ => new double[frequencies.Length])];
        SweepSolver.Solve(at.System, [.. frequencies.Select(f => Math.Tau * f)], gain is null ? null : at.Drive, watch, new NoiseTaker(at.System.Noises, squares, frequencies, gain, watch));
        return squares;
    }

    private Complex[] Gains() => gains ?? throw new InvalidOperationException($"No input was named: ask for c.Noise(\"{To}\", from: \"in\").");

    private double GainAt(Frequency f)
    {
        Gains();
        var (x, _) = SingleSolver.At(at.System, new Complex(0, Math.Tau * f.Hertz), at.Drive, null);
        var sum = Complex.Zero;
        foreach (var (col, sign) in watch)
            sum += sign * x[col];
        return Arrives(sum.Magnitude, f.Hertz);
    }

    private double Arrives(double gain, double hertz) => gain > 0
        ? gain
        : throw new InvalidOperationException($"Nothing of {From} arrives at {To} at {QuantityFormat.Short(Frequency.FromHertz(hertz))}: the noise there cannot be referred to it.");

    private double Integral(Frequency f_L, Frequency f_H)
    {
        double low = Math.Log(Guard.Positive(f_L).Hertz), high = Math.Log(Guard.Positive(f_H).Hertz);
        if (!(high > low))
            Guard.Refuse(nameof(f_H), f_H, $"above {QuantityFormat.Short(f_L)}");
        var last = double.NaN;
        for (var panels = 16; panels <= MostPanels; panels *= 2)
        {
            var sum = Integrate(low, high, panels);
            if (Math.Abs(sum - last) <= Close * sum)
                return sum;
            last = sum;
        }

        throw new InvalidOperationException("The noise density has peaks too sharp to be integrated: look for a resonance with almost no damping.");
    }

    private double Integrate(double low, double high, int panels)
    {
        // Three points a panel (Gauss), in the logarithm of frequency.
        ReadOnlySpan<double> points = [-0.7745966692414834, 0, 0.7745966692414834], weights = [5 / 9.0, 8 / 9.0, 5 / 9.0];
        double[] frequencies = new double[panels * 3], weight = new double[panels * 3];
        var half = (high - low) / panels / 2;
        for (var i = 0; i < frequencies.Length; i++)
        {
            frequencies[i] = Math.Exp(low + (half * ((2 * (i / 3)) + 1 + points[i % 3])));
            weight[i] = half * weights[i % 3] * frequencies[i];
        }

        return Squares(frequencies, null).Sum(s => s.Select((v, i) => v * weight[i]).Sum());
    }
}
