using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Noise;

/// <summary>Independent noises together: their squares add, not they themselves.</summary>
public static partial class NoiseSum
{
    /// <summary>The density of independent noise voltages in series: √Σe².</summary>
    /// <remarks>All at the same place (the input, say) and rms. Two that come from one source add before they are squared.</remarks>
    /// <param name="parts">The densities; none is no noise.</param>
    /// <exception cref="ArgumentNullException">There is no list.</exception>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 7: noise summation", Symbol = "e_n")]
    [RecordName("noise-sum.of-densities")]
    public static VoltageNoiseDensity OfDensities(IReadOnlyList<VoltageNoiseDensity> parts) => Sqrt(Sum(parts, e => e * e));

    /// <summary>The voltage of independent noise voltages in series, rms: √ΣE².</summary>
    /// <remarks>All at the same place, rms, each over its own bandwidth.</remarks>
    /// <param name="parts">The voltages, rms; none is no noise.</param>
    /// <exception cref="ArgumentNullException">There is no list.</exception>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 7: noise summation", Symbol = "E_n")]
    [RecordName("noise-sum.of-voltages")]
    public static ElectricPotential OfVoltages(IReadOnlyList<ElectricPotential> parts)
    {
        Guard.InReach(Largest(parts), nameof(parts));
        return Sqrt(Sum(parts, E => E * E));
    }

    private static ElectricPotential Largest(IReadOnlyList<ElectricPotential> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        return parts.Count == 0 ? default : parts.MaxBy(E => Math.Abs(E.Volts));
    }
}
