using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Noise;

/// <summary>The noise of one source over a band.</summary>
/// <param name="Name">What makes it.</param>
/// <param name="Voltage">Over the band, rms.</param>
public sealed record NoiseVoltage(string Name, ElectricPotential Voltage);

/// <summary>Noises over a band, the largest first: what a meter behind the response reads, and what each source has of it.</summary>
public sealed class NoiseTotals
{
    internal NoiseTotals(IReadOnlyList<NoiseVoltage> parts)
    {
        Ranked = [.. parts.OrderByDescending(p => p.Voltage.Volts).ThenBy(p => p.Name, StringComparer.Ordinal)];
        Total = NoiseSum.OfVoltages([.. Ranked.Select(p => p.Voltage)]);
    }

    /// <summary>The sources, the largest first; equal ones by name.</summary>
    public IReadOnlyList<NoiseVoltage> Ranked { get; }

    /// <summary>All together, rms.</summary>
    public ElectricPotential Total { get; }

    /// <summary>The lower edge of the band.</summary>
    public Frequency From { get; internal init; }

    /// <summary>The upper edge of the band.</summary>
    public Frequency To { get; internal init; }

    /// <summary>How the band is weighted.</summary>
    public NoiseWeighting Weighting { get; internal init; }

    /// <summary>The largest source.</summary>
    public NoiseVoltage Largest => Ranked[0];

    /// <summary>The share of a source in the square of the total (in noise power).</summary>
    /// <param name="name">The source's name.</param>
    /// <returns>The share, as a fraction.</returns>
    /// <exception cref="ArgumentException">There is no source of that name.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no noise at all.</exception>
    [Worked("the square of the source's voltage over the square of the total")]
    public Ratio ShareOf(string name)
    {
        var part = Ranked.FirstOrDefault(p => string.Equals(p.Name, name, StringComparison.Ordinal))
            ?? throw new ArgumentException($"There is no source \"{name}\"; there are {string.Join(", ", Ranked.Select(p => $"\"{p.Name}\""))}.", nameof(name));
        var share = part.Voltage / Guard.Positive(Total, "the total", "Shares of no noise have no value.");
        return Ratio.FromDecimalFractions(share * share);
    }

    /// <summary>The signal-to-noise ratio against a voltage at the same place.</summary>
    /// <param name="V_s">The signal, rms; greater than 0 V.</param>
    /// <returns>The ratio of voltages.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The signal is not positive, or there is no noise.</exception>
    [Worked("Snr.OfVoltages with the total of the band")]
    public Gain SnrAgainst(ElectricPotential V_s) => Snr.OfVoltages(V_s, Total);

    /// <summary>That ratio as a sheet must print it: with its reference, its band and its weighting.</summary>
    /// <param name="V_s">The signal, rms; greater than 0 V.</param>
    /// <returns>For example: 115.9 dB re 1.2 V rms, 1 Hz to 10 MHz, unweighted.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The signal is not positive, or there is no noise.</exception>
    public string Statement(ElectricPotential V_s) =>
        $"{QuantityFormat.Short(Levels(SnrAgainst(V_s)))} dB re {QuantityFormat.Short(V_s)} rms, {QuantityFormat.Short(From)} to {QuantityFormat.Short(To)}, {(Weighting == NoiseWeighting.A ? "A-weighted" : "unweighted")}";

    /// <inheritdoc/>
    public override string ToString() => $"{QuantityFormat.Short(Total)} rms, {QuantityFormat.Short(From)} to {QuantityFormat.Short(To)}, {(Weighting == NoiseWeighting.A ? "A-weighted" : "unweighted")}; most of it: {Largest.Name}";

    private static double Levels(Gain ratio) => Math.Round(ratio.Decibels, 1);
}
