using EightOhm.Explaining;

namespace EightOhm.Display.Formulas;

/// <summary>Writes a working as LaTeX: its lines under one another, what the symbols stand for, the numbered sources.</summary>
internal static class ExplanationLatex
{
    public static string Write(Explanation explanation)
    {
        var sources = explanation.Sources;
        var lines = Lines(explanation, sources).Concat(sources.Select((s, i) => Small(FormattableString.Invariant($"[{i + 1}] {s}"))));
        return $"$$\\begin{{gathered}}{string.Join("\\\\ ", lines)}\\end{{gathered}}$$";
    }

    private static IEnumerable<string> Lines(Explanation e, IReadOnlyList<string> sources)
    {
        for (var i = 0; i < e.Lines.Count; i++)
        {
            var mark = i == e.Lines.Count - 1 && e.Source is not null ? FormattableString.Invariant($"\\quad\\text{{[{sources.ToList().IndexOf(e.Source) + 1}]}}") : "";
            yield return Line(e.Lines[i]) + mark;
            foreach (var note in e.Lines[i].Cases)
                yield return $"\\text{{case: if }} {Latex.Write(note.InSymbols)}\\text{{; here }} {Latex.Write(note.InNumbers)}\\text{{; other cases do not apply}}";
        }

        if (e.Solved is { } solved)
            yield return Small(solved.ToString());
        if (e.Worked is { } worked)
            yield return Small($"worked: {worked}");
        if (e.Where.Count > 0)
            yield return $"\\text{{where }} {string.Join(";\\quad ", e.Where.Select(Line))}";
        foreach (var line in e.Opened.SelectMany(o => Lines(o, sources)))
            yield return line;
    }

    private static string Line(WorkingLine line) => string.Join(Joint(line.Joint), line.Parts().Select(Latex.Write));

    private static string Joint(string joint) => joint switch { " ⇔ " => " \\Leftrightarrow ", ": " => "\\text{: }", _ => joint };

    private static string Small(string text) => $"{{\\scriptsize {Latex.Words(text)}}}";
}
