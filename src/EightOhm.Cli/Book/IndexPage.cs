using System.Text;
using AngleSharp.Html.Parser;
using EightOhm.Cli.Ends;
using EightOhm.Cli.Notebooks;
using EightOhm.Cli.Sheets;
using EightOhm.Display;
using static EightOhm.Cli.Book.PageTemplate;

namespace EightOhm.Cli.Book;

/// <summary>The first page: what can hurt, how each design stands, what moved, what gave no answer, then the chapters with a line each.</summary>
internal static class IndexPage
{
    /// <summary>What can hurt, before anything else.</summary>
    public const string Caution =
        "<p class=\"caution\"><strong>Caution.</strong> Mains wiring, supply rails and charged reservoir capacitors can kill, also after switching off; heat sinks burn. " +
        "Calculations do not make work on them safe: follow your local electrical codes, and leave mains work to people qualified for it.</p>\n";

    public static string Of(BookContent book, IReadOnlyList<Chapter> chapters, string banner)
    {
        var body = new StringBuilder();
        body.Append("<section class=\"text\">\n<h1>").Append(Escape(book.Title)).Append("</h1>\n").Append(banner).Append(Caution);
        Items(body, "", book.Set.Select(Escape));
        body.Append("</section>\n");
        foreach (var design in book.Designs)
            DesignPart.Write(body, design);
        if (book.Designs.Count == 0)
            body.Append("<p>").Append(ComplianceSheet.Nothing).Append("</p>\n");
        body.Append("<section class=\"text\">\n");
        Ends(body, "No answer", book.Log, NoticeKind.NoAnswer);
        Ends(body, "Cells that failed", book.Log, NoticeKind.Failed);
        foreach (var part in chapters.GroupBy(c => c.Notebook.Folder))
        {
            body.Append("<h2>").Append(Escape(PartTitle(part.Key, book.Designs))).Append("</h2>\n");
            Items(body, " class=\"chapters\"", part.Select(Line));
        }

        body.Append("</section>");
        var page = new HtmlParser().ParseDocument($"<!doctype html><body>{body}</body>").Body!;
        TableCaptions.Write(page);
        TableFiles.Write(page, "compliance");
        foreach (var row in page.QuerySelectorAll(".sheet tr").Where(r => r.LastElementChild?.TextContent.StartsWith("not met", StringComparison.Ordinal) == true))
            row.ClassName = "not-met";
        return Page(new PageParts(book.Title, "", "", page.InnerHtml.Trim()));
    }

    // A folder is named for what it holds: its design, or itself in words.
    public static string PartTitle(string folder, IReadOnlyList<DesignSheet> designs) => folder.Length == 0
        ? "Chapters"
        : designs.FirstOrDefault(d => d.Record.StartsWith(folder + "/", StringComparison.Ordinal))?.Name is { } design
            ? $"The papers of {design}"
            : string.Concat(folder[..1].ToUpperInvariant(), folder[1..].Replace('-', ' '));

    private static string Line(Chapter c)
    {
        var number = c.Number.Length > 0 ? $"<span class=\"no\">{Escape(c.Number)}</span> " : "";
        var opening = c.Opening.Length > 0 && !c.IsPaper ? $"<br><span class=\"quiet\">{Escape(c.Opening)}</span>" : "";
        return $"<a href=\"{Address(c.PageFile)}\">{number}{Escape(c.Title)}</a>{opening}";
    }

    private static void Ends(StringBuilder body, string heading, RunLog log, NoticeKind kind)
    {
        var causes = log.Causes(kind).ToList();
        if (causes.Count == 0)
            return;
        body.Append("<h2>").Append(heading).Append("</h2>\n");
        Items(body, "", causes.Select(c => $"{Link(c.First.Place)}: {Escape(c.First.Says)}{Escape(CellEnds.After(c.After))}"));
    }

    private static string Link(CellPlace place)
    {
        var folder = place.Notebook.Folder.Length > 0 ? $"{Escape(place.Notebook.Folder)}, " : "";
        return $"<a href=\"{Address(Chapter.PageOf(place.Notebook))}#{ChapterText.Anchor(place.Cell.Number)}\">{folder}{Escape(place.InBook)}</a>";
    }

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
