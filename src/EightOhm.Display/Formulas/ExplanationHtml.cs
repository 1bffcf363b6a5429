using System.Net;
using System.Text;
using EightOhm.Explaining;

namespace EightOhm.Display.Formulas;

/// <summary>Writes a working as HTML: each line a row of maths between equals signs, one line that says what the symbols stand for,
/// formulas that it calls one level down, the sources numbered at the end in small print.</summary>
/// <remarks>No style sheet and no script: what is lost when a host strips styles is only the indent.</remarks>
public static class ExplanationHtml
{
    /// <summary>The working as HTML.</summary>
    /// <param name="explanation">The working.</param>
    public static string Write(Explanation explanation)
    {
        ArgumentNullException.ThrowIfNull(explanation);
        var sources = explanation.Sources;
        var html = new StringBuilder("<div class=\"eo-working\">");
        Write(html, explanation, sources);
        for (var i = 0; i < sources.Count; i++)
            html.Append("<div class=\"eo-source\"><small>").Append(Text(FormattableString.Invariant($"[{i + 1}] {sources[i]}"))).Append("</small></div>");
        return html.Append("</div>").ToString();
    }

    private static void Write(StringBuilder html, Explanation e, IReadOnlyList<string> sources)
    {
        for (var i = 0; i < e.Lines.Count; i++)
        {
            html.Append("<div class=\"eo-line\">").Append(Line(e.Lines[i]));
            if (i == e.Lines.Count - 1 && e.Source is not null)
                html.Append(FormattableString.Invariant($"&#x2003;<small class=\"eo-ref\">[{sources.ToList().IndexOf(e.Source) + 1}]</small>"));
            html.Append("</div>");
            foreach (var note in e.Lines[i].Cases)
                Small(html, "eo-case", $"case: if {MathMl.Write(note.InSymbols)}; here {MathMl.Write(note.InNumbers)}; other cases do not apply");
        }

        if (e.Solved is { } solved)
            Small(html, "eo-solved", Text(solved.ToString()));
        if (e.Worked is { } worked)
            Small(html, "eo-worked", Text($"worked: {worked}"));
        if (e.Where.Count > 0)
            html.Append("<div class=\"eo-where\">where&#xA0;").AppendJoin("; ", e.Where.Select(Line)).Append("</div>");
        if (e.Opened.Count == 0)
            return;
        html.Append("<ul class=\"eo-opened\">");
        foreach (var opened in e.Opened)
        {
            html.Append("<li>");
            Write(html, opened, sources);
            html.Append("</li>");
        }

        html.Append("</ul>");
    }

    private static void Small(StringBuilder html, string name, string inner) =>
        html.Append("<div class=\"").Append(name).Append("\"><small>").Append(inner).Append("</small></div>");

    private static string Line(WorkingLine line) => string.Join(line.Joint, line.Parts().Select(MathMl.Write));

    private static string Text(string text) => WebUtility.HtmlEncode(text);
}
