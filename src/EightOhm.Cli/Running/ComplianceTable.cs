using Spectre.Console;

namespace EightOhm.Cli.Running;

/// <summary>The compliance sheet on the console.</summary>
internal static class ComplianceTable
{
    public static void Show(IAnsiConsole console, IReadOnlyList<ComplianceRow> rows)
    {
        if (rows.Count == 0)
        {
            console.WriteLine("The record holds no requirements.");
            return;
        }

        var table = new Table { Border = TableBorder.Simple };
        foreach (var heading in ComplianceRow.Headings)
            table.AddColumn(heading);
        foreach (var row in rows)
            table.AddRow([.. row.Columns.Select(text => new Text(text))]);
        console.Write(table);
    }
}
