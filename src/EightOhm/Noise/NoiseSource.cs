using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Noise;

/// <summary>One named source of noise, its density over frequency.</summary>
/// <remarks>Of the input or of any other one place of the circuit, the same for all sources of a spectrum.</remarks>
public sealed class NoiseSource
{
    private readonly Func<Frequency, VoltageNoiseDensity> density;

    /// <summary>A source whose density depends on the frequency.</summary>
    /// <param name="name">What makes the noise; not empty.</param>
    /// <param name="density">Its density, rms, at a frequency.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public NoiseSource(string name, Func<Frequency, VoltageNoiseDensity> density)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(density);
        (Name, this.density) = (name, density);
    }

    /// <summary>A white source.</summary>
    /// <param name="name">What makes the noise; not empty.</param>
    /// <param name="density">Its density, rms; 0 V/√Hz or more.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The density is negative.</exception>
    public NoiseSource(string name, VoltageNoiseDensity density)
        : this(name, _ => density) => White = new NoiseContribution(name, density).Density;

    /// <summary>What makes the noise.</summary>
    public string Name { get; }

    /// <summary>Its density where it is the same at every frequency; else null.</summary>
    internal VoltageNoiseDensity? White { get; }

    /// <inheritdoc/>
    public override string ToString() => $"source of noise: {Name}";

    /// <summary>Its density at a frequency.</summary>
    /// <param name="f">Greater than 0 Hz.</param>
    internal NoiseContribution At(Frequency f) => new(Name, density(f));
}
