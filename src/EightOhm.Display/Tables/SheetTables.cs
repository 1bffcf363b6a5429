using EightOhm.Ratings;

namespace EightOhm.Display.Tables;

/// <summary>Data sheets as tables.</summary>
public static class SheetTables
{
    /// <summary>Sheets side by side; what a sheet does not print but its other figures imply stands in brackets.</summary>
    /// <param name="comparison">The comparison.</param>
    public static Table SideBySide(SheetComparison comparison)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        return new Table(
            ["figure", .. comparison.Sheets.Select(s => s.Name)],
            [.. comparison.Rows.Select(IReadOnlyList<string> (row) => [row.What, .. row.Cells.Select(c => c.Origin == SheetCellOrigin.Follows ? $"({c.Text})" : c.Text)])],
            [],
            "As printed; in brackets what the sheet's other figures make it, within their roundings");
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
}
