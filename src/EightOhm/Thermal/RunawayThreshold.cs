using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>What becomes of a transistor whose idle current something has raised.</summary>
/// <param name="Current">The current from which on it runs away by itself; null where none does before the junction is at 300 °C.</param>
/// <param name="JunctionThere">The junction at that current; where it is far past the limit the transistor is lost before it runs away.</param>
/// <param name="CurrentAtLimit">The current at which the junction limit is passed.</param>
/// <param name="Limit">The junction limit.</param>
public sealed record RunawayThreshold(
    [property: Symbol("I_2")] ElectricCurrent? Current,
    [property: Symbol("T_2")] Temperature? JunctionThere,
    [property: Symbol("I_J")] ElectricCurrent CurrentAtLimit,
    [property: Symbol("T_J")] Temperature Limit)
{
    /// <summary>In words, with the one digit that is honest.</summary>
    public override string ToString() =>
        (Current is { } I && JunctionThere is { } T
            ? $"From about {QuantityFormat.Short(I, 1)} on it runs away by itself, its junction near {QuantityFormat.Short(T, 2)}"
            : "No current runs away by itself before its junction is at 300 °C")
        + $"; the junction limit of {QuantityFormat.Short(Limit)} is passed at {QuantityFormat.Short(CurrentAtLimit, 2)}.";
}
