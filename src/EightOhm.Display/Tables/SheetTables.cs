using EightOhm.Display.Figures;
using EightOhm.Quantities;
using EightOhm.Ratings;
using UnitsNet;

namespace EightOhm.Display.Tables;

/// <summary>Data sheets as tables.</summary>
public static class SheetTables
{
    /// <summary>Sheets side by side; what a sheet does not print but its other figures imply stands in brackets.</summary>
    /// <param name="comparison">The comparison.</param>
    [Shows]
    public static Table SideBySide(SheetComparison comparison)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        return new Table(
            ["figure", .. comparison.Sheets.Select(s => s.Name)],
            [.. comparison.Rows.Select(IReadOnlyList<string> (row) => [row.What, .. row.Cells.Select(c => c.Origin == SheetCellOrigin.Follows ? $"({c.Text})" : c.Text)])],
            [],
            "As printed; in brackets what the sheet's other figures make it, within their roundings");
    }

    /// <summary>What distorts, source by source and order by order: down a column magnitudes add, along a row squares.</summary>
    /// <param name="budget">The budget.</param>
    [Shows]
    public static Table Budget(DistortionBudget budget)
    {
        ArgumentNullException.ThrowIfNull(budget);
        static string Short(Ratio d) => QuantityFormat.Short(d, 3);
        return new Table(
            ["source", .. budget.Orders.Select((_, i) => $"harmonic {i + 2}"), "alone"],
            [
                .. budget.Sources.Select(IReadOnlyList<string> (s) => [s.Name, .. budget.Orders.Select((_, i) => Short(s.Harmonic(i + 2))), Short(budget.Alone(s))]),
                ["all together", .. budget.Orders.Select(Short), Short(budget.Total)],
            ],
            [.. Enumerable.Range(1, budget.Orders.Count + 1)],
            $"{budget.Title}: magnitudes of one order added, squares of the orders");
    }

    /// <summary>What cannot all be true, contradiction by contradiction.</summary>
    /// <param name="audit">An audit that found a contradiction.</param>
    public static Table Contradictions(SheetAudit audit)
    {
        ArgumentNullException.ThrowIfNull(audit);
        return new Table(
            ["cannot all be true", "printed", "if the others hold"],
            [.. audit.Contradictions.SelectMany((c, n) => c.Figures.Select(IReadOnlyList<string> (f) =>
                [$"{n + 1}: {f.What}", f.Text, c.IfTheOthersHold(f) is { Length: > 0 } text ? text : "–"]))],
            [1],
            $"{audit.Sheet.Name}: the sheet contradicts itself");
    }

    /// <summary>An audit: the contradictions as a table, other verdicts in words; then the picture, where there are lines to draw.</summary>
    /// <param name="audit">The audit.</param>
    [Shows]
    public static string AuditHtml(SheetAudit audit)
    {
        ArgumentNullException.ThrowIfNull(audit);
        return (audit.Verdict == SheetVerdict.Contradictory ? Contradictions(audit).ToHtml() : ValueText.Words(audit))
            + (audit.Verdict == SheetVerdict.CannotTell ? "" : "\n" + SheetDiagram.Render(audit));
    }


    /// <summary>One sheet, with what follows from its figures.</summary>
    /// <param name="sheet">The sheet.</param>
    [Shows]
    public static Table One(SpecSheet sheet) => SideBySide(SpecSheet.Compare(sheet));

}
