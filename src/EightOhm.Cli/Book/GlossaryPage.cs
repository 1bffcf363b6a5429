using System.Text;
using System.Text.RegularExpressions;
using EightOhm.Display.Formulas;
using static EightOhm.Cli.Book.PageTemplate;

namespace EightOhm.Cli.Book;

/// <summary>The words of the trade, a sentence each, from docs/glossary.md.</summary>
internal static partial class GlossaryPage
{
    private const string Source = "glossary.md";

    public static string Of(string book)
    {
        var body = new StringBuilder("<section class=\"text\">\n<h1>Glossary</h1>\n<dl class=\"glossary\">\n");
        foreach (var (term, says) in Terms())
            body.Append("<dt id=\"").Append(Anchor(term)).Append("\">").Append(SymbolHtml.Write(term)).Append("</dt><dd>").Append(SymbolHtml.Write(says)).Append("</dd>\n");
        return Page(new PageParts($"Glossary · {book}", book, "", body.Append("</dl>\n</section>").ToString()));
    }

    /// <summary>The terms with their sentences, in the order of the alphabet.</summary>
    public static IReadOnlyList<(string Term, string Says)> Terms() =>
        [.. Line().Matches(Embedded.Text(Source)).Select(m => (m.Groups[1].Value, m.Groups[2].Value.Trim())).OrderBy(t => t.Item1, StringComparer.OrdinalIgnoreCase)];

    private static string Anchor(string term) => Other().Replace(term.ToLowerInvariant(), "-");

    [GeneratedRegex(@"^- \*\*(.+?)\*\*: (.+)$", RegexOptions.Multiline)]
    private static partial Regex Line();

    [GeneratedRegex("[^a-z0-9]+")]
    private static partial Regex Other();
}
