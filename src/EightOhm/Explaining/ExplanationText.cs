using System.Text;

namespace EightOhm.Explaining;

/// <summary>Writes an explanation as plain text, a line a step.</summary>
internal static class ExplanationText
{
    public static string Write(Explanation explanation)
    {
        var text = new StringBuilder();
        Write(text, explanation, "");
        return text.ToString().TrimEnd();
    }

    public static string Line(WorkingLine line) => string.Join(" = ", line.Parts().Select(MathText.Write));

    private static void Write(StringBuilder text, Explanation e, string indent)
    {
        foreach (var where in e.Where)
            text.Append(indent).Append("with ").Append(Line(where)).Append('\n');
        foreach (var line in e.Lines)
            text.Append(indent).Append(Line(line)).Append('\n');
        if (e.Solved is { } solved)
        {
            text.Append(indent).Append(solved).Append('\n');
        }

        if (e.Source is not null)
            text.Append(indent).Append("source: ").Append(e.Source).Append('\n');
        foreach (var opened in e.Opened)
            Write(text, opened, indent + "  ");
    }
}
