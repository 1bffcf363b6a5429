using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <summary>The idle currents of one output device between which a promise of static distortion holds at a level.</summary>
/// <param name="Least">Below it the crossover shows.</param>
/// <param name="Best">Where the distortion is least.</param>
/// <param name="Greatest">Above it the gain near zero is too high; null where the promise holds up to the highest current considered.</param>
/// <param name="Promise">The static distortion promised; a lower bound at high frequency.</param>
/// <param name="AtBest">The static distortion at the best current.</param>
/// <param name="HighestIdle">The highest idle current that was considered.</param>
public sealed record BiasWindow(
    [property: Symbol("I_min")] ElectricCurrent Least,
    [property: Symbol("I_best")] ElectricCurrent Best,
    [property: Symbol("I_max")] ElectricCurrent? Greatest,
    [property: Symbol("THD")] Ratio Promise,
    [property: Symbol("THD_best")] Ratio AtBest,
    ElectricCurrent HighestIdle)
{
    /// <summary>Whether a band of idle currents is inside.</summary>
    /// <param name="least">The least of the band; greater than 0 A.</param>
    /// <param name="greatest">The greatest of the band; at least the least.</param>
    /// <exception cref="ArgumentOutOfRangeException">The band is upside down or not positive.</exception>
    public bool Holds(ElectricCurrent least, ElectricCurrent greatest)
    {
        Guard.Positive(least);
        Guard.AtLeast(greatest, least);
        return least >= Least && greatest <= (Greatest ?? HighestIdle);
    }

    /// <inheritdoc/>
    public override string ToString() => Greatest is { } top
        ? $"{QuantityFormat.Short(Promise)} holds from {QuantityFormat.Short(Least)} to {QuantityFormat.Short(top)} a transistor"
        : $"{QuantityFormat.Short(Promise)} holds from {QuantityFormat.Short(Least)} up to {QuantityFormat.Short(HighestIdle)} a transistor and above";
}
