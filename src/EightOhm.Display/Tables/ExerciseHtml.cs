using System.Text;
using EightOhm.Display.Formulas;
using EightOhm.Teaching;

namespace EightOhm.Display.Tables;

/// <summary>Exercises as HTML: question, verdict, hint, solution. A word and a sign, not a colour alone.</summary>
public static class ExerciseHtml
{
    /// <summary>The question and how to answer it.</summary>
    /// <param name="exercise">The exercise.</param>
    [Shows]
    public static string Write(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        var title = exercise.Id.Length > 0 ? $"<small>Exercise {Text(exercise.Title)}</small><br>" : "";
        return $"<div class=\"eo-exercise\">{title}<strong>{Text(exercise.Question)}</strong><br><small>{Text(exercise.AnswerWith)}</small></div>";
    }

    /// <summary>The verdict; a design task's limits as a list.</summary>
    /// <param name="verdict">The verdict.</param>
    [Shows]
    public static string Write(Verdict verdict)
    {
        ArgumentNullException.ThrowIfNull(verdict);
        var html = new StringBuilder("<div class=\"eo-verdict\">").Append(Text(verdict.Question)).Append("<br>").Append(Sign(verdict.Kind)).Append(Text(verdict.Line));
        if (verdict.Criteria.Count > 0)
        {
            html.Append("<ul class=\"eo-criteria\" style=\"list-style:none;padding-left:1em\">");
            foreach (var c in verdict.Criteria)
                html.Append("<li>").Append(c.Met ? "✓&#xA0;" : "✗&#xA0;").Append(Text(c.ToString())).Append("</li>");
            html.Append("</ul>");
        }

        return html.Append(verdict.Note.Length > 0 ? $"<p><small>{Text(verdict.Note)}</small></p>" : "").Append("</div>").ToString();
    }

    /// <summary>A hint and what comes after it.</summary>
    /// <param name="hint">The hint.</param>
    [Shows]
    public static string Write(Hint hint)
    {
        ArgumentNullException.ThrowIfNull(hint);
        return hint.Of == 0
            ? $"<div class=\"eo-hint\">{Text(hint.Text)}</div>"
            : FormattableString.Invariant($"<div class=\"eo-hint\"><strong>Hint {hint.Number} of {hint.Of}:</strong> {Text(hint.Text)}<br><small>{Text(hint.Next)}</small></div>");
    }

    /// <summary>The steps of a solution, formulas typeset with their numbers.</summary>
    /// <param name="solution">The solution.</param>
    [Shows]
    public static string Write(Solution solution)
    {
        ArgumentNullException.ThrowIfNull(solution);
        var html = new StringBuilder("<div class=\"eo-solution\"><p>").Append(Text(solution.Question)).Append("</p>");
        foreach (var step in solution.Steps)
            html.Append(step.Working is { } working ? ExplanationHtml.Write(working) : $"<p>{Text(step.Words)}</p>");
        return html.Append("<p><strong>").Append(Text(solution.Answer)).Append("</strong></p></div>").ToString();
    }

    private static string Sign(VerdictKind kind) => kind switch
    {
        VerdictKind.Right => "✓&#xA0;",
        VerdictKind.Wrong => "✗&#xA0;",
        _ => "",
    };

    private static string Text(string text) => SymbolHtml.Write(text);
}
