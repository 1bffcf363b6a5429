using System.Net;
using System.Text;
using EightOhm.Explaining;

namespace EightOhm.Display.Formulas;

/// <summary>Writes a working as HTML: each line a row of maths between equals signs, formulas that it calls one level down, the source in small print.</summary>
/// <remarks>No style sheet and no script: what is lost when a host strips styles is only the indent.</remarks>
public static class ExplanationHtml
{
    /// <summary>The working as HTML.</summary>
    /// <param name="explanation">The working.</param>
    public static string Write(Explanation explanation)
    {
        ArgumentNullException.ThrowIfNull(explanation);
        var html = new StringBuilder("<div class=\"eo-working\">");
        Write(html, explanation);
        return html.Append("</div>").ToString();
    }

    private static void Write(StringBuilder html, Explanation e)
    {
        foreach (var where in e.Where)
            html.Append("<div class=\"eo-where\">with&#xA0;").Append(Line(where)).Append("</div>");
        foreach (var line in e.Lines)
            html.Append("<div class=\"eo-line\">").Append(Line(line)).Append("</div>");
        if (e.Solved is { } solved)
            html.Append("<div class=\"eo-solved\"><small>").Append(Text(solved.ToString())).Append("</small></div>");
        if (e.Source is not null)
            html.Append("<div class=\"eo-source\"><small>source: ").Append(Text(e.Source)).Append("</small></div>");
        if (e.Opened.Count == 0)
            return;
        html.Append("<ul class=\"eo-opened\">");
        foreach (var opened in e.Opened)
        {
            html.Append("<li>");
            Write(html, opened);
            html.Append("</li>");
        }

        html.Append("</ul>");
    }

    private static string Line(WorkingLine line) => string.Join(" = ", line.Parts().Select(MathMl.Write));

    private static string Text(string text) => WebUtility.HtmlEncode(text);
}
