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

    /// <summary>Noise over a band, ranked.</summary>
    /// <param name="totals">The voltages of a spectrum's sources.</param>
    [Shows]
    public static Table Totals(NoiseTotals totals)
    {
        ArgumentNullException.ThrowIfNull(totals);
        IEnumerable<IReadOnlyList<string>> parts = totals.Ranked.Select(IReadOnlyList<string> (part) =>
            [part.Name, QuantityFormat.Short(part.Voltage), totals.Total.Volts > 0 ? Percent(totals.ShareOf(part.Name)) : "0 %"]);
        return new Table(
            ["contribution", "rms over the band", "share of the power"],
            [.. parts, ["all together", QuantityFormat.Short(totals.Total), "100 %"]],
            [1, 2],
            $"Noise from {QuantityFormat.Short(totals.From)} to {QuantityFormat.Short(totals.To)}, {(totals.Weighting == NoiseWeighting.A ? "A-weighted" : "unweighted")}");
    }

    // A share of a square: decibels beside it would be taken for a voltage's.
    private static string Percent(UnitsNet.Ratio share) => $"{Engineering.Number(share.Percent, 3)} %";
}
