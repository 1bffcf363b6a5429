using System.Text;
using EightOhm.Display.Formulas;
using static EightOhm.Cli.Book.PageTemplate;

namespace EightOhm.Cli.Book;

/// <summary>The symbols of the book: what each stands for, and the chapter that shows it first.</summary>
internal static class SymbolsPage
{
    public static string Of(BookContent book, IReadOnlyList<ChapterText> texts)
    {
        var body = new StringBuilder("<section class=\"text\">\n<h1>Symbols</h1>\n<p>What each symbol stands for, and the chapter that shows it first.</p>\n</section>\n");
        foreach (var part in book.Symbols.GroupBy(s => s.Of).OrderBy(g => g.Key.Length == 0))
        {
            var rows = part.Select(s => (Symbol: s, First: First(s, texts))).Where(r => r.First is not null || r.Symbol.Of.Length > 0)
                .DistinctBy(r => (r.Symbol.Symbol, r.Symbol.Meaning)).OrderBy(r => r.Symbol.Symbol, StringComparer.OrdinalIgnoreCase).ToList();
            if (rows.Count > 0)
                Table(body, part.Key.Length > 0 ? $"In the record of {part.Key}" : "In results and formulas", rows);
        }

        return Page(new PageParts($"Symbols · {book.Title}", book.Title, "", body.ToString().TrimEnd()));
    }

    private static Chapter? First(SymbolMeaning symbol, IReadOnlyList<ChapterText> texts) => texts.FirstOrDefault(t => symbol.IsIn(t.Words))?.Chapter;

    private static void Table(StringBuilder body, string heading, List<(SymbolMeaning Symbol, Chapter? First)> rows)
    {
        body.Append("<h2>").Append(Escape(heading)).Append("</h2>\n<div class=\"output\"><table class=\"eo-table symbols\">")
            .Append("<thead><tr><th scope=\"col\">symbol</th><th scope=\"col\">stands for</th><th scope=\"col\">first shown</th></tr></thead><tbody>\n");
        foreach (var (symbol, first) in rows)
        {
            body.Append("<tr><td>").Append(SymbolHtml.Write(symbol.Symbol)).Append("</td><td>").Append(SymbolHtml.Write(symbol.Meaning)).Append("</td><td>")
                .Append(first is null ? "–" : $"<a href=\"{Address(first.PageFile)}\">{Escape(first.Heading)}</a>").Append("</td></tr>\n");
        }

        body.Append("</tbody></table></div>\n");
    }
}
