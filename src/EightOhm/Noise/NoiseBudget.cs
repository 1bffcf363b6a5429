using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Noise;

/// <summary>Independent noises of one circuit, each referred to its input, the largest first.</summary>
/// <remarks>Squares add, so the largest rules: <see cref="Gained"/> says what halving it buys, and a small part is not worth a thought.
/// Equality is by value: the same parts, in whatever order they were given.</remarks>
public sealed record NoiseBudget
{
    /// <summary>Makes a budget.</summary>
    /// <param name="parts">The contributions, each under a name of its own; at least one of them above zero.</param>
    /// <exception cref="ArgumentNullException">There is no list or no contribution in a place of it.</exception>
    /// <exception cref="ArgumentException">Two contributions have the same name.</exception>
    /// <exception cref="ArgumentOutOfRangeException">All contributions are zero, or there are none.</exception>
    public NoiseBudget(IReadOnlyList<NoiseContribution> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (var part in parts)
        {
            ArgumentNullException.ThrowIfNull(part, nameof(parts));
            if (!names.Add(part.Name))
                throw new ArgumentException($"\"{part.Name}\" stands in the budget twice. Give each contribution a name of its own, for example \"{part.Name} 2\".", nameof(parts));
        }

        Ranked = [.. parts.OrderByDescending(p => p.Density.Si).ThenBy(p => p.Name, StringComparer.Ordinal)];
        Total = Guard.Positive(NoiseSum.OfDensities([.. Ranked.Select(p => p.Density)]), "the total of the noise budget", "Give at least one contribution above zero: shares of nothing have no value.");
    }

    /// <summary>The contributions, the largest first; equal ones by name.</summary>
    public IReadOnlyList<NoiseContribution> Ranked { get; }

    /// <summary>All together, referred to the input: the root of the sum of squares.</summary>
    public VoltageNoiseDensity Total { get; }

    /// <summary>The largest contribution.</summary>
    public NoiseContribution Largest => Ranked[0];

    /// <summary>The total with the largest contribution halved and the others as they are.</summary>
    public VoltageNoiseDensity TotalWithLargestHalved =>
        NoiseSum.OfDensities([Largest.Density / 2, .. Ranked.Skip(1).Select(p => p.Density)]);

    /// <summary>What halving the largest contribution buys: the total over the total then, at most 2 (6.02 dB).</summary>
    public Gain Gained => Gain.FromRatio(Total / TotalWithLargestHalved);

    /// <summary>The share of a contribution in the square of the total (in noise power); all shares make 100 %.</summary>
    /// <param name="name">The contribution's name.</param>
    /// <exception cref="ArgumentException">There is no contribution of that name.</exception>
    [Worked("the square of the contribution over the square of the total")]
    public Ratio ShareOf(string name)
    {
        var part = Ranked.FirstOrDefault(p => string.Equals(p.Name, name, StringComparison.Ordinal))
            ?? throw new ArgumentException($"There is no contribution \"{name}\" in this budget; there are {string.Join(", ", Ranked.Select(p => $"\"{p.Name}\""))}.", nameof(name));
        var ratio = part.Density / Total;
        return Ratio.FromDecimalFractions(ratio * ratio);
    }

    /// <summary>Whether the other budget has the same contributions.</summary>
    /// <param name="other">The other budget.</param>
    public bool Equals(NoiseBudget? other) => other is not null && Ranked.SequenceEqual(other.Ranked);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = default(HashCode);
        foreach (var part in Ranked)
            hash.Add(part);
        return hash.ToHashCode();
    }
}
