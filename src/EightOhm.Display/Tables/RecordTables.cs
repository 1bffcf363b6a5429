using EightOhm.Record;
using EightOhm.Explaining;

namespace EightOhm.Display.Tables;

/// <summary>The record as tables: its entries, and how its requirements stand.</summary>
public static class RecordTables
{
    /// <summary>The entries: symbol, value, where it comes from, state.</summary>
    /// <param name="entries">The entries.</param>
    /// <param name="design">The design's name, for the caption; may be empty.</param>
    [Shows]
    public static Table Entries(IEnumerable<Entry> entries, string design = "") => new(
        ["entry", "value", "comes from", "state"],
        [.. entries.Select(IReadOnlyList<string> (e) => [MathText.Name(e.Name), e.Reads, Origin(e), e.State])],
        [1],
        design);

    /// <summary>The compliance sheet: each requirement with value, limit, margin and state in words.</summary>
    /// <param name="requirements">The requirements.</param>
    [Shows]
    public static Table Compliance(IEnumerable<Requirement> requirements) => new(
        ["requirement", "entry", "value", "asked", "margin", "state"],
        [.. requirements.Select(IReadOnlyList<string> (r) => [r.Says ?? "", MathText.Name(r.Entry), r.Reads, r.Limit.ToString(), r.Margin?.ToString() ?? "–", r.State])],
        [2],
        "How the requirements stand");

    private static string Origin(Entry entry) => entry.Role switch
    {
        EntryRole.Let => entry.Expression is { } rule ? MathText.Write(Workings.InSymbols(rule)) : entry.Rule ?? "",
        EntryRole.Found => $"found from {string.Join(", ", entry.From.Select(MathText.Name))}",
        _ => entry.Note ?? "",
    };

    /// <summary>A whole record: its entries under its name.</summary>
    /// <param name="record">The record.</param>
    [Shows]
    public static Table Whole(DesignRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return Entries(record.Entries, record.Name);
    }

    /// <summary>One requirement.</summary>
    /// <param name="requirement">The requirement.</param>
    [Shows]
    public static Table One(Requirement requirement) => Compliance([requirement]);

}
