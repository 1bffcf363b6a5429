using Spectre.Console;
using Table = EightOhm.Display.Tables.Table;

namespace EightOhm.Cli.Running;

/// <summary>The compliance sheet on the console.</summary>
internal static class ComplianceTable
{
    public static void Show(IAnsiConsole console, Table sheet)
    {
        if (sheet.Rows.Count == 0)
        {
            console.WriteLine("The record holds no requirements.");
            return;
        }

        var table = new Spectre.Console.Table { Border = TableBorder.Simple };
        for (var i = 0; i < sheet.Headings.Count; i++)
            table.AddColumn(new TableColumn(Markup.Escape(sheet.Headings[i])) { Alignment = sheet.Figures.Contains(i) ? Justify.Right : Justify.Left });
        foreach (var row in sheet.Rows)
            table.AddRow([.. row.Select(text => new Text(text))]);
        console.Write(table);
    }
}
