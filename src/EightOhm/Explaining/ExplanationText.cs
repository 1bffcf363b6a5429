using System.Text;

namespace EightOhm.Explaining;

/// <summary>Writes an explanation as plain text, a line a step; the sources are numbered at its end.</summary>
internal static class ExplanationText
{
    public static string Write(Explanation explanation)
    {
        var text = new StringBuilder();
        var sources = explanation.Sources;
        Write(text, explanation, "", sources);
        for (var i = 0; i < sources.Count; i++)
            text.Append(FormattableString.Invariant($"[{i + 1}] {sources[i]}\n"));
        return text.ToString().TrimEnd();
    }

    public static string Line(WorkingLine line) => string.Join(line.Joint, line.Parts().Select(MathText.Write));

    public static string Case(CaseNote note) =>
        $"case: if {MathText.Write(note.InSymbols)}; here {MathText.Write(note.InNumbers)}; other cases do not apply";

    private static void Write(StringBuilder text, Explanation e, string indent, IReadOnlyList<string> sources)
    {
        for (var i = 0; i < e.Lines.Count; i++)
        {
            text.Append(indent).Append(Line(e.Lines[i]));
            if (i == e.Lines.Count - 1 && e.Source is not null)
                text.Append(FormattableString.Invariant($"  [{sources.ToList().IndexOf(e.Source) + 1}]"));
            text.Append('\n');
            foreach (var note in e.Lines[i].Cases)
                text.Append(indent).Append(Case(note)).Append('\n');
        }

        if (e.Solved is { } solved)
            text.Append(indent).Append(solved).Append('\n');
        if (e.Worked is { } worked)
            text.Append(indent).Append("worked: ").Append(worked).Append('\n');
        if (e.Where.Count > 0)
            text.Append(indent).Append("where ").AppendJoin("; ", e.Where.Select(Line)).Append('\n');
        foreach (var opened in e.Opened)
            Write(text, opened, indent + "  ", sources);
    }
}
