using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Ratings;

/// <summary>All that distorts in one amplifier, held against one promise: the most that several sources can be together.</summary>
/// <remarks>Harmonics of one order are sines of one frequency, so they add by their phases, which nobody knows: at worst as magnitudes. Those of different orders add in power, as in
/// <see cref="HarmonicDistortion.OfRatios"/>. Sources held one by one against the promise, or added as squares throughout, give a number that is too good; all added as magnitudes one that is too bad.</remarks>
/// <example><code>new DistortionBudget(20.kHz, 80.kHz, [new("outputs", [10.ppm, 30.ppm]), new("pair", [5.ppm, 6.ppm])]).Total   // 39 ppm</code></example>
public sealed record DistortionBudget
{
    /// <summary>Makes a budget.</summary>
    /// <param name="f">The fundamental; greater than 0 Hz.</param>
    /// <param name="f_bw">Bandwidth of the measurement: harmonics beyond it do not count; greater than 0 Hz, at most a thousand times the fundamental.</param>
    /// <param name="sources">The sources, each under a name of its own; one of which no single harmonics are known has its whole figure as its third, and adds to the largest then.</param>
    /// <exception cref="ArgumentOutOfRangeException">A frequency is out of range.</exception>
    /// <exception cref="ArgumentException">There is no source, or two have the same name.</exception>
    public DistortionBudget(Frequency f, Frequency f_bw, IReadOnlyList<DistortionSource> sources)
    {
        ArgumentNullException.ThrowIfNull(sources);
        var within = Guard.Between(Guard.Positive(f_bw) / Guard.Positive(f), 0, 1000, "f_bw/f", "So many harmonics nobody measures: a lower bandwidth, or a higher fundamental.");
        if (sources.Count == 0)
            throw new ArgumentException("Give at least one source of distortion.", nameof(sources));
        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (var source in sources)
        {
            ArgumentNullException.ThrowIfNull(source, nameof(sources));
            if (!names.Add(source.Name))
                throw new ArgumentException($"\"{source.Name}\" stands in the budget twice. Give each source a name of its own, for example \"{source.Name} 2\".", nameof(sources));
        }

        Sources = [.. sources];
        // 80 kHz are four times 20 kHz, whatever a double makes of it.
        Orders = [.. Enumerable.Range(2, Math.Max(0, (int)Math.Floor(within * (1 + 1e-12)) - 1)).Select(n => Ratio.FromDecimalFractions(Sources.Sum(s => s.Harmonic(n).DecimalFractions)))];
    }

    /// <summary>What stands above its table: of what, into which load.</summary>
    public string Title { get; init; } = "Distortion";

    /// <summary>The sources, as given.</summary>
    public IReadOnlyList<DistortionSource> Sources { get; }

    /// <summary>Each order within the bandwidth, from the second up: the sources' magnitudes added.</summary>
    public IReadOnlyList<Ratio> Orders { get; }

    /// <summary>All together: the root of the sum of the orders' squares; none where no harmonic lies within the bandwidth.</summary>
    [Symbol("THD")]
    [Worked("the magnitudes of each order added, then the root of the sum of the orders' squares", Source = "R. L. Boylestad & L. Nashelsky, Electronic Devices and Circuit Theory, 11th ed., sec. 12.6: amplifier distortion; sines of one frequency and unknown phases: the triangle inequality")]
    public Ratio Total => Orders.Count == 0 ? Ratio.Zero : HarmonicDistortion.OfRatios(Orders);

    /// <summary>What a source makes alone, of the orders within the bandwidth.</summary>
    /// <param name="source">One of the sources.</param>
    /// <returns>The root of the sum of its harmonics' squares, as a fraction of the fundamental.</returns>
    /// <exception cref="ArgumentNullException">There is no source.</exception>
    [Worked("the root of the sum of the harmonics' squares")]
    public Ratio Alone(DistortionSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return Orders.Count == 0 ? Ratio.Zero : HarmonicDistortion.OfRatios([.. Orders.Select((_, i) => source.Harmonic(i + 2))]);
    }

    /// <summary>Whether the other has the same title, sources and orders.</summary>
    /// <param name="other">The other budget.</param>
    public bool Equals(DistortionBudget? other) => other is not null && Title == other.Title && Sources.SequenceEqual(other.Sources) && Orders.SequenceEqual(other.Orders);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Sources.Count, Total);
}
