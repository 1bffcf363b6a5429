using Spectre.Console;
using Table = EightOhm.Display.Tables.Table;

namespace EightOhm.Cli.Consoles;

/// <summary>A table on the console: in columns where they fit, else row by row, each value after its heading.</summary>
internal static class ConsoleTable
{
    private const int Gap = 2;

    public static void Show(IAnsiConsole console, Table table)
    {
        foreach (var line in Lines(table, console.Profile.Width))
            console.WriteLine(line);
    }

    public static void ShowWithCaption(IAnsiConsole console, Table table)
    {
        foreach (var line in Folding.Lines(table.Caption, console.Profile.Width))
            console.WriteLine(line);
        Show(console, table);
    }

    public static IReadOnlyList<string> Lines(Table table, int width)
    {
        var rows = table.Rows.Prepend(table.Headings).ToList();
        var widths = Widths(rows, width - (Gap * (table.Headings.Count - 1)));
        return widths is null ? Stacked(table, width) : InColumns(table, rows, widths);
    }

    // The widest columns give way first, none below its widest piece; null when even that is too wide.
    private static int[]? Widths(List<IReadOnlyList<string>> rows, int room)
    {
        var columns = Enumerable.Range(0, rows[0].Count).ToList();
        var least = columns.Select(i => rows.Max(r => Folding.Least(r[i]))).ToArray();
        var widths = columns.Select(i => rows.Max(r => r[i].Split('\n').Max(l => l.Length))).ToArray();
        if (least.Sum() > room)
            return null;
        while (widths.Sum() > room)
        {
            var widest = columns.Where(i => widths[i] > least[i]).MaxBy(i => widths[i]);
            widths[widest]--;
        }

        return widths;
    }

    private static List<string> InColumns(Table table, List<IReadOnlyList<string>> rows, int[] widths)
    {
        var lines = new List<string>();
        for (var i = 0; i < rows.Count; i++)
        {
            var cells = rows[i].Select((text, column) => Folding.Lines(text, widths[column])).ToList();
            for (var line = 0; line < cells.Max(c => c.Count); line++)
            {
                lines.Add(string.Join(new string(' ', Gap), cells.Select((cell, column) =>
                {
                    var text = line < cell.Count ? cell[line] : "";
                    return table.Figures.Contains(column) ? text.PadLeft(widths[column]) : text.PadRight(widths[column]);
                })).TrimEnd());
            }

            if (i == 0)
                lines.Add(new string('─', widths.Sum() + (Gap * (widths.Length - 1))));
        }

        return lines;
    }

    private static List<string> Stacked(Table table, int width)
    {
        var lines = new List<string>();
        foreach (var row in table.Rows)
        {
            lines.AddRange(Folding.Lines(row[0], width, hang: Gap));
            for (var i = 1; i < row.Count; i++)
            {
                if (row[i].Length > 0)
                    lines.AddRange(Folding.Lines($"{table.Headings[i]}: {row[i].Replace('\n', ' ')}", width, Gap, 2 * Gap));
            }

            lines.Add("");
        }

        return lines;
    }
}
