using EightOhm.Quantities;
using EightOhm.Supply;

namespace EightOhm.Display.Tables;

/// <summary>A supply as tables.</summary>
public static class RectifierTables
{
    /// <summary>The solution beside the rules of thumb, with their errors.</summary>
    /// <param name="estimates">The estimates.</param>
    [Shows]
    public static Table Estimates(SupplyEstimates estimates)
    {
        ArgumentNullException.ThrowIfNull(estimates);
        return new Table(
            ["figure", "in the time domain", "by rule", "error", "rule"],
            [.. estimates.Rows.Select(IReadOnlyList<string> (r) => [r.What, QuantityFormat.Short(r.Solved), QuantityFormat.Short(r.Estimated), Error(r), r.Rule])],
            [1, 2, 3],
            "The supply beside its rules of thumb");
    }

    private static string Error(EstimateRow row) => $"{(row.Error.Percent > 0 ? "+" : "")}{Engineering.Number(row.Error.Percent, 2)} %";
}
