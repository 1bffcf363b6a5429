using EightOhm.Display.Formulas;

namespace EightOhm.Display;

/// <summary>A sentence as a paragraph, its symbols typeset.</summary>
internal static class SentenceHtml
{
    public static string Write(Sentence sentence) => $"<p class=\"eo-sentence\">{SymbolHtml.Write(sentence.Text)}</p>";
}
