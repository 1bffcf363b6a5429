using EightOhm.Quantities;

namespace EightOhm.Noise;

/// <summary>One named part of a noise budget.</summary>
/// <remarks>Equality is by value.</remarks>
public sealed record NoiseContribution
{
    /// <summary>Makes a contribution.</summary>
    /// <param name="name">What makes the noise; not empty.</param>
    /// <param name="density">Its density referred to the input; 0 V/√Hz or more.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The density is negative.</exception>
    public NoiseContribution(string name, VoltageNoiseDensity density)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        Name = name;
        // Integrals make many of these: the words are made only where they are said.
        Density = density >= Reach<VoltageNoiseDensity>.Least && density <= Reach<VoltageNoiseDensity>.Most ? density : Guard.NotNegative(density, $"the density of \"{name}\"", "Give its magnitude, rms: noise has no sign.");
    }

    /// <summary>What makes the noise.</summary>
    public string Name { get; }

    /// <summary>Its density referred to the input, rms.</summary>
    public VoltageNoiseDensity Density { get; }
}
