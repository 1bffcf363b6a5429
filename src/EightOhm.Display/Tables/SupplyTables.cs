using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Display.Tables;

/// <summary>The supply as tables: the voltage-swing budget, the mains, the switch-on.</summary>
public static class SupplyTables
{
    /// <summary>A voltage-swing budget: each loss with its why, and the rail needed.</summary>
    /// <param name="budget">The budget.</param>
    [Shows]
    public static Table Budget(SwingBudget budget)
    {
        ArgumentNullException.ThrowIfNull(budget);
        return new Table(
            ["from the output to the rail", "positive", "negative", "on", "why"],
            [["peak output", QuantityFormat.Short(budget.Peak), QuantityFormat.Short(budget.Peak), "", $"with {QuantityFormat.Short(budget.PeakCurrent)} into the load"],
                .. budget.Losses.Select(IReadOnlyList<string> (l) => [l.Name, QuantityFormat.Short(l.Positive), QuantityFormat.Short(l.Negative), Way(l.On), l.Why]),
                ["rail needed at its minimum", QuantityFormat.Short(budget.NeededPositive), QuantityFormat.Short(budget.NeededNegative), "", "the needier way decides"]],
            [1, 2],
            "Voltage-swing budget");
    }

    /// <summary>A voltage-swing budget against rails: margins, who clips first, where there is most to gain.</summary>
    /// <param name="verdict">The verdict.</param>
    [Shows]
    public static Table Verdict(SwingVerdict verdict)
    {
        ArgumentNullException.ThrowIfNull(verdict);
        return new Table(
            ["rail", "needed", "there is", "margin"],
            [["positive", QuantityFormat.Short(verdict.Budget.NeededPositive), QuantityFormat.Short(verdict.Rails.Positive), Signed(verdict.MarginPositive)],
                ["negative", QuantityFormat.Short(verdict.Budget.NeededNegative), QuantityFormat.Short(verdict.Rails.Negative), Signed(verdict.MarginNegative)]],
            [1, 2, 3],
            $"Voltage-swing budget against the rails: {verdict}");
    }

    /// <summary>Everything that the mains moves.</summary>
    /// <param name="table">The table.</param>
    [Shows]
    public static Table Mains(MainsTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        var part = Engineering.Number(table.Tolerance.Percent, 3);
        return new Table(
            ["what", $"mains −{part} %", "nominal", $"mains +{part} %", "rating", "used at high mains"],
            [.. table.Rows.Select(IReadOnlyList<string> (r) =>
                [r.Name, r.Low.ToString(), r.Nominal.ToString(), r.High.ToString(), r.Limit is null ? "" : QuantityFormat.Short(r.Limit), Used(r)])],
            [1, 2, 3, 4, 5],
            $"Mains ±{part} %");
    }

    /// <summary>Both worst moments of a switch-on.</summary>
    /// <param name="peaks">The peaks.</param>
    [Shows]
    public static Table Inrush(InrushPeaks peaks)
    {
        ArgumentNullException.ThrowIfNull(peaks);
        return new Table(
            ["switched on", "without limiter", "with limiter"],
            [["at the peak of the mains: empty capacitors", QuantityFormat.Short(peaks.Capacitors), QuantityFormat.Short(peaks.CapacitorsLimited)],
                ["at zero: saturated core, a bound", QuantityFormat.Short(peaks.Core), QuantityFormat.Short(peaks.CoreLimited)]],
            [1, 2],
            $"Primary current, peak; the fuse is governed by {peaks.Governs}: {QuantityFormat.Short(peaks.Governing)}, half a period of it {QuantityFormat.Short(peaks.HalfPeriodPulse)}");
    }

    private static string Way(SwingPath path) => path switch
    {
        SwingPath.Both => "both ways",
        SwingPath.Drive => "the drive",
        _ => "the output transistor",
    };

    // A word beside the sign: a margin below zero is told by more than a dash.
    private static string Signed(ElectricPotential margin) => margin < default(ElectricPotential) ? $"{QuantityFormat.Short(margin)}, falls short" : QuantityFormat.Short(margin);

    private static string Used(MainsRow row) => row.ShareAtHigh is { } share ? $"{Engineering.Number(share * 100, 3)} %{(row.Holds ? "" : ", exceeded")}" : "";
}
