using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Ratings;

/// <summary>One cause of distortion by its harmonics at the output, each over the fundamental.</summary>
public sealed record DistortionSource
{
    /// <summary>Makes a source.</summary>
    /// <param name="name">What distorts; not empty.</param>
    /// <param name="harmonics">The second, third, fourth … harmonic that it leaves at the output, of the fundamental, without sign; 0 for one that it does not make. Up to 1000; what is not given is none.</param>
    /// <exception cref="ArgumentException">The name is empty, or there are too many harmonics.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A harmonic is negative.</exception>
    public DistortionSource(string name, params IReadOnlyList<Ratio> harmonics)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(harmonics);
        if (harmonics.Count > 1000)
            throw new ArgumentException($"Give up to 1000 harmonics, beginning with the second (were {harmonics.Count}).", nameof(harmonics));
        foreach (var d in harmonics)
            Guard.NotNegative(d, $"a harmonic of \"{name}\"", "Give its magnitude: the phases of different sources are not known.");
        (Name, Harmonics) = (name, [.. harmonics]);
    }

    /// <summary>What distorts.</summary>
    public string Name { get; }

    /// <summary>Its harmonics, from the second up.</summary>
    public IReadOnlyList<Ratio> Harmonics { get; }

    /// <summary>One harmonic over the fundamental, none where it was not given.</summary>
    /// <param name="n">Its number; 2 or more.</param>
    /// <returns>The harmonic, as a fraction of the fundamental.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is below 2.</exception>
    [Explaining.Worked("as given; none beyond")]
    public Ratio Harmonic(int n) => Guard.Between(n, 2, int.MaxValue) - 2 < Harmonics.Count ? Harmonics[n - 2] : Ratio.Zero;

    /// <summary>Whether the other has the same name and harmonics.</summary>
    /// <param name="other">The other source.</param>
    public bool Equals(DistortionSource? other) => other is not null && Name == other.Name && Harmonics.SequenceEqual(other.Harmonics);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Name, Harmonics.Count);
}
