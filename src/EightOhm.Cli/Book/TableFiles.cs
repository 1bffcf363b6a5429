using System.Globalization;
using AngleSharp.Dom;
using CsvHelper;

namespace EightOhm.Cli.Book;

/// <summary>Beside each table a link that saves it as comma-separated values: the values stand in the link, so that it works without a network or a script.</summary>
internal static class TableFiles
{
    // Spreadsheet programs take a file without this sign for one of an older alphabet, and Ω for two letters.
    private const string Mark = "%EF%BB%BF";

    /// <param name="main">The page's text.</param>
    /// <param name="page">What the files' names begin with.</param>
    public static void Write(IElement main, string page)
    {
        var count = 0;
        foreach (var table in main.QuerySelectorAll("table.eo-table").ToList())
        {
            var document = table.Owner!;
            var link = document.CreateElement("a");
            link.ClassName = "table-file";
            link.SetAttribute("href", "data:text/csv;charset=utf-8," + Mark + Uri.EscapeDataString(Values(table)));
            link.SetAttribute("download", string.Create(CultureInfo.InvariantCulture, $"{page}-table-{++count}.csv"));
            link.TextContent = "CSV";
            link.SetAttribute("aria-label", $"Save this table as CSV{(table.QuerySelector("caption")?.TextContent is { Length: > 0 } caption ? ": " + caption : "")}");
            table.After(link);
        }
    }

    private static string Values(IElement table)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = new CsvWriter(text, CultureInfo.InvariantCulture))
        {
            foreach (var row in table.QuerySelectorAll("tr"))
            {
                foreach (var cell in row.Children)
                    csv.WriteField(cell.TextContent);
                csv.NextRecord();
            }
        }

        return text.ToString();
    }
}
