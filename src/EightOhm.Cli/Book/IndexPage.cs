using System.Text;
using EightOhm.Cli.Ends;
using EightOhm.Cli.Notebooks;
using EightOhm.Cli.Sheets;
using EightOhm.Display;
using EightOhm.Display.Tables;
using static EightOhm.Cli.Book.PageTemplate;

namespace EightOhm.Cli.Book;

/// <summary>The first page: what can hurt, how the design complies, what moved, what gave no answer, and the chapters.</summary>
internal static class IndexPage
{
    private const string Caution =
        "Mains wiring, supply rails and charged reservoir capacitors can kill, also after switching off; heat sinks burn. " +
        "Calculations do not make work on them safe: follow your local electrical codes, and leave mains work to people qualified for it.";

    public static string Of(BookContent book, IReadOnlyList<Chapter> chapters, string banner)
    {
        var body = new StringBuilder();
        body.Append("<section class=\"text\">\n<h1>").Append(Escape(book.Title)).Append("</h1>\n");
        body.Append("<p class=\"caution\"><strong>Caution.</strong> ").Append(Caution).Append("</p>\n").Append(banner);
        body.Append("<h2>Compliance</h2>\n");
        foreach (var tally in DesignSheets.Tallies(book.Designs))
            body.Append("<p>").Append(Escape(tally)).Append("</p>\n");
        Items(body, "", book.Set.Select(Escape));
        body.Append("</section>\n");
        foreach (var design in book.Designs.Where(d => d.Compliance.Table.Rows.Count > 0))
            Sheet(body, design.Compliance.Table);
        if (book.Designs.Any(d => d.Moved is not null))
        {
            var moved = book.Designs.SelectMany(d => d.Moved ?? []).ToList();
            body.Append("<h2 id=\"moved\">What moved</h2>\n").Append(moved.Count == 0 ? "<p>Nothing moved with it.</p>\n" : "");
            foreach (var table in moved)
                Sheet(body, table);
        }

        body.Append("<section class=\"text\">\n");
        Ends(body, "No answer", book.Log, NoticeKind.NoAnswer);
        Ends(body, "Cells that failed", book.Log, NoticeKind.Failed);
        body.Append("<h2>Chapters</h2>\n");
        Items(body, " class=\"chapters\"", chapters.Select(c =>
            $"<a href=\"{Address(c.PageFile)}\">{Escape(c.Title)}</a> <span class=\"quiet\">{Escape(c.Notebook.Label)}</span>"));
        body.Append("</section>");
        foreach (var record in book.Designs.Select(d => d.Record))
            body.Append("\n<p class=\"quiet\">The design record: <a href=\"").Append(Address(record)).Append("\">").Append(Escape(record)).Append("</a></p>");
        return Page(book.Title, "", "", body.ToString());
    }

    private static void Sheet(StringBuilder body, Table table) =>
        body.Append("<div class=\"output sheet\">").Append(table.ToHtml()).Append("</div>\n");

    private static void Ends(StringBuilder body, string heading, RunLog log, NoticeKind kind)
    {
        var causes = log.Causes(kind).ToList();
        if (causes.Count == 0)
            return;
        body.Append("<h2>").Append(heading).Append("</h2>\n");
        Items(body, "", causes.Select(c => $"{Link(c.First.Place)}: {Escape(c.First.Says)}{Escape(CellEnds.After(c.After))}"));
    }

    private static string Link(CellPlace place) =>
        $"<a href=\"{Address(Chapter.PageOf(place.Notebook))}#{ChapterPage.Anchor(place.Cell.Number)}\">{Escape(place.InBook)}</a>";

    private static void Items(StringBuilder body, string attributes, IEnumerable<string> items)
    {
        var all = items.ToList();
        if (all.Count == 0)
            return;
        body.Append("<ul").Append(attributes).Append(">\n");
        foreach (var item in all)
            body.Append("<li>").Append(item).Append("</li>\n");
        body.Append("</ul>\n");
    }
}
