using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration.Attributes;
using EightOhm.Display.Tables;
using EightOhm.Record;

namespace EightOhm.Cli.Comparing;

/// <summary>What differs between two records as comma-separated values: one line an input, requirement or result.</summary>
internal static class ChangesCsv
{
    /// <summary>How every such file begins.</summary>
    public const string Mark = "what,name,was,is,asked,state,moved by,could be cured by";

    public static string Of(RecordChanges changes)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = new CsvWriter(text, CultureInfo.InvariantCulture))
            csv.WriteRecords(Rows(changes));
        return text.ToString();
    }

    private static IEnumerable<Row> Rows(RecordChanges changes) =>
    [
        .. changes.Moved.Select(c => new Row("input", c.Name, ChangeTables.Reads(c.Before), ChangeTables.Reads(c.After), "", "", "", "")),
        .. changes.Requirements.Select(r => new Row(
            "requirement", r.Label, r.Before?.Value ?? "", r.After?.Value ?? "", ChangeTables.Asked(r), ChangeTables.State(r), ChangeTables.Chains(r), ChangeTables.Cures(r))),
        .. changes.Entries.Select(c => new Row("result", c.Name, ChangeTables.Reads(c.Before), ChangeTables.Reads(c.After), "", "", ChangeTables.Chain(c.Chain), "")),
    ];

    private sealed record Row(
        [property: Name("what")] string What,
        [property: Name("name")] string Name,
        [property: Name("was")] string Was,
        [property: Name("is")] string Is,
        [property: Name("asked")] string Asked,
        [property: Name("state")] string State,
        [property: Name("moved by")] string MovedBy,
        [property: Name("could be cured by")] string Cures);
}
