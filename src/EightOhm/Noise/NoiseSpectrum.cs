using EightOhm.Explaining;
using EightOhm.Quantities;
using EightOhm.Samples;
using MathNet.Numerics.Integration;
using UnitsNet;

namespace EightOhm.Noise;

/// <summary>Independent noises of one circuit over frequency: the budget at any frequency, and over any response.</summary>
/// <remarks>All at the same place, the input say; a response then tells what of it is left where it is measured. Two that come from one source are one source.</remarks>
public sealed class NoiseSpectrum
{
    // Relative, of each panel. White, 1/f and a few poles are there after the first subdivision.
    private const double Accuracy = 1e-10;

    private readonly NoiseSource[] sources;

    /// <summary>Puts sources together.</summary>
    /// <param name="sources">One or more, each under a name of its own.</param>
    /// <exception cref="ArgumentException">There is no source, or two have one name.</exception>
    public NoiseSpectrum(IReadOnlyList<NoiseSource> sources)
    {
        ArgumentNullException.ThrowIfNull(sources);
        if (sources.Count == 0)
            throw new ArgumentException("A spectrum of noise has one source or more.", nameof(sources));
        if (sources.GroupBy(s => s.Name, StringComparer.Ordinal).FirstOrDefault(g => g.Count() > 1) is { } twice)
            throw new ArgumentException($"\"{twice.Key}\" stands in the spectrum twice. Give each source a name of its own, for example \"{twice.Key} 2\".", nameof(sources));
        this.sources = [.. sources];
    }

    /// <summary>The sources, in the order given.</summary>
    public IReadOnlyList<NoiseSource> Sources => sources;

    /// <summary>The budget at a frequency.</summary>
    /// <param name="f">Greater than 0 Hz.</param>
    /// <returns>Each source's density there, the largest first.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not positive.</exception>
    [Worked("each source's density at the frequency, their squares added")]
    public NoiseBudget At(Frequency f)
    {
        Guard.Positive(f);
        return new([.. sources.Select(s => s.At(f))]);
    }

    /// <summary>The density of all sources together, over frequency.</summary>
    /// <param name="f_L">The lowest frequency; greater than 0 Hz.</param>
    /// <param name="f_H">The highest; greater than f_L.</param>
    /// <param name="points">How many, evenly over the logarithm; 2 to 10 000.</param>
    /// <returns>The total density, V/√Hz, over frequency.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The band is upside down or the points too few or too many.</exception>
    [Worked("the root of the sum of squares at frequencies evenly over the logarithm")]
    public Curve<Frequency, VoltageNoiseDensity> Total(Frequency f_L, Frequency f_H, int points = 121)
    {
        CheckBand(f_L, f_H);
        Guard.Between(points, 2, 10_000);
        var step = Math.Log(f_H / f_L) / (points - 1);
        return new([.. Enumerable.Range(0, points).Select(i => f_L * Math.Exp(step * i)).Select(f => (f, At(f).Total))]);
    }

    /// <summary>The noise over a band behind a response: √∫e²·|H|²·A² df, of each source and of all.</summary>
    /// <remarks>Adaptive Gauss-Kronrod quadrature over the logarithm of the frequency, in panels of half a decade. The band has sharp edges; a response that falls off by itself needs none,
    /// so let f_H be far above it: beyond the corner f_c of one pole to f_H there is a share of about 2/π·f_c/f_H of its noise power.</remarks>
    /// <param name="f_L">The lower edge; greater than 0 Hz: 1/f noise down to 0 Hz has no end.</param>
    /// <param name="f_H">The upper edge; greater than f_L.</param>
    /// <param name="response">Magnitude of the gain from the place of the sources to where it is measured; flat, of one, when not given.</param>
    /// <param name="weighting">None, or A.</param>
    /// <returns>The voltages, rms, the largest first.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The band is upside down or begins at 0 Hz.</exception>
    [Worked("∫e²·|H|² df over the band, weighted where asked, by adaptive Gauss-Kronrod quadrature over the logarithm of the frequency")]
    public NoiseTotals Over(Frequency f_L, Frequency f_H, Func<Frequency, Gain>? response = null, NoiseWeighting weighting = NoiseWeighting.None)
    {
        CheckBand(f_L, f_H);
        double low = Math.Log(f_L.Hertz), width = Math.Log(f_H.Hertz) - low;
        var panels = 1 + (int)(2 * width / Math.Log(10));
        // All sources are looked at in the same places: what they pass through is asked for once.
        Dictionary<double, (Frequency F, double Gain)> places = [];
        double Gain(Frequency f) => (response?.Invoke(f).Ratio ?? 1) * (weighting == NoiseWeighting.A ? AWeighting.Response(f).Ratio : 1);

        double Power(NoiseSource source)
        {
            // Of a white source there is nothing to ask at each of thousands of places.
            var white = source.White?.Si;
            double Integrand(double u)
            {
                Work.Checkpoint();
                var seen = places.TryGetValue(u, out var place);
                var f = seen ? place.F : Frequency.FromHertz(Math.Exp(u));
                var density = white ?? source.At(f).Density.Si;
                if (!seen)
                    places.Add(u, place = (f, Gain(f)));
                var e = density * place.Gain;
                return e * e * f.Hertz;
            }

            var sum = 0.0;
            for (var i = 0; i < panels; i++)
                sum += GaussKronrodRule.Integrate(Integrand, low + (width * i / panels), low + (width * (i + 1) / panels), out _, out _, Accuracy);
            return sum;
        }

        return new([.. sources.Select(s => new NoiseVoltage(s.Name, ElectricPotential.FromVolts(Math.Sqrt(Power(s)))))]) { From = f_L, To = f_H, Weighting = weighting };
    }

    /// <inheritdoc/>
    public override string ToString() => $"noise of {string.Join(", ", sources.Select(s => s.Name))}; At a frequency it is a budget, Over a band a voltage";

    private static void CheckBand(Frequency f_L, Frequency f_H)
    {
        Guard.Between(f_L, Frequency.FromHertz(1e-9), Frequency.FromHertz(1e12), hint: "1/f noise down to 0 Hz has no end: take one over the time you listen, for example 0.01.Hz for 100 s.");
        Guard.Between(f_H, Frequency.FromHertz(1e-9), Frequency.FromHertz(1e12));
        Guard.Positive(f_H - f_L, "f_H less f_L", "The band is upside down: give its lower edge first, then its upper one.");
    }
}
