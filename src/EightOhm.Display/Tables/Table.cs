using System.Text;
using EightOhm.Display.Formulas;

namespace EightOhm.Display.Tables;

/// <summary>A table a practitioner can read at a glance: a heading row, words to the left, figures to the right.</summary>
/// <param name="Headings">The column headings.</param>
/// <param name="Rows">The rows, each as wide as the headings.</param>
/// <param name="Figures">The columns that hold figures, from 0.</param>
/// <param name="Caption">What the table is; may be empty.</param>
public sealed record Table(IReadOnlyList<string> Headings, IReadOnlyList<IReadOnlyList<string>> Rows, IReadOnlyList<int> Figures, string Caption = "")
{
    /// <summary>The table as HTML; figures keep to the right by attribute, which survives where styles are stripped; words to the left by style as well, since Jupyter's own would send them right. Symbols are typeset.</summary>
    public string ToHtml()
    {
        var html = new StringBuilder("<table class=\"eo-table\">");
        if (Caption.Length > 0)
            html.Append("<caption>").Append(Text(Caption)).Append("</caption>");
        html.Append("<thead><tr>");
        for (var i = 0; i < Headings.Count; i++)
            html.Append("<th scope=\"col\" ").Append(Side(i)).Append('>').Append(Text(Headings[i])).Append("</th>");
        html.Append("</tr></thead><tbody>");
        foreach (var row in Rows)
        {
            html.Append("<tr>");
            for (var i = 0; i < row.Count; i++)
                html.Append("<td ").Append(Side(i)).Append('>').Append(Text(row[i])).Append("</td>");
            html.Append("</tr>");
        }

        return html.Append("</tbody></table>").ToString();
    }

    /// <summary>The table as text in columns; symbols stay as they are typed, V_CEO.</summary>
    public override string ToString()
    {
        var all = Rows.Prepend(Headings).ToList();
        var widths = Headings.Select((_, i) => all.Max(r => r[i].Length)).ToList();
        var lines = all.Select(r => string.Join("  ", r.Select((c, i) => Figures.Contains(i) ? c.PadLeft(widths[i]) : c.PadRight(widths[i]))).TrimEnd());
        return (Caption.Length > 0 ? Caption + "\n" : "") + string.Join("\n", lines);
    }

    private string Side(int column) => Figures.Contains(column) ? "align=\"right\"" : "align=\"left\" style=\"text-align:left\"";

    private static string Text(string text) => SymbolHtml.Write(text);
}
