using System.Text;
using EightOhm.Cli.Book;
using EightOhm.Display;
using EightOhm.Display.Formulas;
using EightOhm.Teaching;

namespace EightOhm.Cli.Teaching;

/// <summary>The teacher's key as a page, and the same questions without it.</summary>
internal static class KeyPage
{
    /// <summary>Stands in every such page, so that nothing else is written over.</summary>
    public const string Mark = "<!-- EightOhm exercises -->";

    /// <summary>Questions with answers, tolerances, hints, solutions and the usual wrong answers.</summary>
    public static string Of(TeacherKey key)
    {
        var seed = Seed(key);
        var body = new StringBuilder($"{Mark}\n<h1>Teacher’s key</h1>\n<p>{seed} Keep this page from the students.</p>\n");
        Each(body, key, e =>
        {
            Line(body, $"<p><strong>Answer:</strong> {Text(e.Answer)} ({Text(e.Tolerance)})</p>");
            if (e.Misconceptions.Count > 0)
            {
                body.Append("<p>Usual wrong answers, and what is said of them:</p>\n<ul>\n");
                foreach (var wrong in e.Misconceptions)
                    Line(body, $"<li>{Text(wrong.Given)}: {Text(wrong.Says)}</li>");
                body.Append("</ul>\n");
            }

            if (e.Hints.Count > 0)
                body.Append("<p>Hints:</p>\n<ol>\n").AppendJoin("", e.Hints.Select(h => $"<li>{Text(h)}</li>\n")).Append("</ol>\n");
            body.Append("<details open><summary>Worked solution</summary>\n").Append(Show.Html(e.Solution)).Append("\n</details>\n");
        });
        return PageTemplate.Alone($"Teacher’s key. {seed}", body.ToString());
    }

    /// <summary>The questions alone.</summary>
    public static string Questions(TeacherKey key)
    {
        var seed = Seed(key);
        var body = new StringBuilder($"{Mark}\n<h1>Exercises</h1>\n<p>{seed}</p>\n");
        Each(body, key, _ => { });
        return PageTemplate.Alone($"Exercises. {seed}", body.ToString());
    }

    private static string Seed(TeacherKey key) => key.Seed == 0
        ? "The book’s own numbers."
        : FormattableString.Invariant($"Numbers of seed {key.Seed}: students write Exercise.Seed = {key.Seed}; in a cell before the first exercise.");

    private static void Each(StringBuilder body, TeacherKey key, Action<KeyEntry> more)
    {
        foreach (var chapter in key.Exercises.GroupBy(e => e.Chapter))
        {
            Line(body, $"<h2>{Text(chapter.Key)}</h2>");
            foreach (var e in chapter)
            {
                Line(body, $"<h3>{Text(e.Id)}, {Text(e.LevelWords)}</h3>\n<p>{Text(e.Question)}</p>");
                more(e);
            }
        }
    }

    private static void Line(StringBuilder body, string html) => body.Append(html).Append('\n');

    private static string Text(string text) => SymbolHtml.Write(text);
}
