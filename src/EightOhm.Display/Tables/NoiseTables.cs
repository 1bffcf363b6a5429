using EightOhm.Noise;
using EightOhm.Quantities;

namespace EightOhm.Display.Tables;

/// <summary>A noise budget as a table: the largest part first, its share of the square, and what halving it buys.</summary>
public static class NoiseTables
{
    /// <summary>The budget, ranked.</summary>
    /// <param name="budget">The budget.</param>
    [Shows]
    public static Table Budget(NoiseBudget budget)
    {
        ArgumentNullException.ThrowIfNull(budget);
        IEnumerable<IReadOnlyList<string>> parts = budget.Ranked.Select(IReadOnlyList<string> (part) =>
            [part.Name, QuantityFormat.Short(part.Density), Percent(budget.ShareOf(part.Name))]);
        return new Table(
            ["contribution", "density at the input", "share of the power"],
            [.. parts, ["all together", QuantityFormat.Short(budget.Total), "100 %"], [$"with {budget.Largest.Name} halved", QuantityFormat.Short(budget.TotalWithLargestHalved), ""]],
            [1, 2],
            "Noise budget");
    }

    // A share of a square: decibels beside it would be taken for a voltage's.
    private static string Percent(UnitsNet.Ratio share) => $"{Engineering.Number(share.Percent, 3)} %";
}
