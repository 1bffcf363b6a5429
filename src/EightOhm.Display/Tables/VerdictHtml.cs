using System.Net;
using EightOhm.Teaching;

namespace EightOhm.Display.Tables;

/// <summary>What an exercise says of an answer, as HTML: a word and a sign, not a colour alone.</summary>
public static class VerdictHtml
{
    /// <summary>The verdict as HTML.</summary>
    /// <param name="verdict">The verdict.</param>
    [Shows]
    public static string Write(Verdict verdict)
    {
        ArgumentNullException.ThrowIfNull(verdict);
        return $"<div class=\"eo-verdict\">{Text(verdict.Question)}<br>{(verdict.Right ? "✓" : "✗")}&#xA0;{Text(verdict.Given)}: {Text(verdict.Says)}</div>";
    }

    private static string Text(string text) => WebUtility.HtmlEncode(text);
}
