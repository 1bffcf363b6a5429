using System.Globalization;
using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using EightOhm.Cli.Book;
using EightOhm.Cli.Sheets;
using EightOhm.Display.Formulas;
using static EightOhm.Cli.Book.PageTemplate;

namespace EightOhm.Cli.Printing;

/// <summary>The book as one page: title, contents, how the designs stand, every chapter.</summary>
internal static class OneDocument
{
    public static string Of(BookContent book, PrintOptions options)
    {
        var chapters = book.Notebooks.Select(Chapter.Of).ToList();
        var links = new ChapterLinks(chapters);
        var texts = chapters.Select(c => ChapterText.Of(c, links)).ToList();
        var body = new StringBuilder();
        Title(body, book, options);
        Contents(body, book, texts);
        foreach (var design in book.Designs)
        {
            body.Append("<article>\n");
            DesignPart.Write(body, design);
            body.Append("</article>\n");
        }

        foreach (var text in texts)
            body.Append("<article>\n").Append(Chapters(text, chapters, options.WithCode)).Append("\n</article>\n");
        return Alone(book.Title, body.ToString(), Embedded.Text("print.css") + Font());
    }

    private static void Title(StringBuilder body, BookContent book, PrintOptions options)
    {
        body.Append("<section class=\"title-page\">\n<h1>").Append(Escape(book.Title)).Append("</h1>\n<p>Design papers</p>\n<dl>");
        foreach (var (what, value) in new[] { ("Revision", options.Revision ?? book.Fingerprint), ("Date", options.Date.ToString("d MMMM yyyy", CultureInfo.InvariantCulture)) })
            body.Append("<dt>").Append(what).Append("</dt><dd>").Append(Escape(value)).Append("</dd>");
        body.Append("</dl>\n");
        foreach (var tally in DesignSheets.Tallies(book.Designs))
            body.Append("<p>").Append(Escape(tally)).Append("</p>\n");
        body.Append(Banner(book.Banner)).Append(IndexPage.Caution).Append("</section>\n");
    }

    private static void Contents(StringBuilder body, BookContent book, List<ChapterText> texts)
    {
        body.Append("<nav class=\"all-contents\" aria-label=\"Contents\">\n<h2>Contents</h2>\n");
        foreach (var part in texts.GroupBy(t => t.Chapter.Notebook.Folder))
        {
            body.Append("<h3>").Append(Escape(IndexPage.PartTitle(part.Key, book.Designs))).Append("</h3>\n<ol>\n");
            foreach (var text in part)
            {
                body.Append("<li><a href=\"#").Append(Prefix(text.Chapter)).Append("\">").Append(Escape(text.Chapter.Heading)).Append("</a><ol>");
                foreach (var section in text.Sections.Where(s => s.Level == 2))
                    body.Append("<li><a href=\"#").Append(Prefix(text.Chapter)).Append(Escape(section.Anchor)).Append("\">").Append(Escape(section.Heading)).Append("</a></li>");
                body.Append("</ol></li>\n");
            }

            body.Append("</ol>\n");
        }

        body.Append("</nav>\n");
    }

    // Anchors of different chapters may be the same: each gets its chapter's name before it.
    private static string Chapters(ChapterText text, List<Chapter> chapters, bool withCode)
    {
        var page = new HtmlParser().ParseDocument($"<!doctype html><body><div id=\"\">{text.Html}</div></body>").Body!.FirstElementChild!;
        var prefix = Prefix(text.Chapter);
        foreach (var element in page.QuerySelectorAll("[id]"))
            element.Id = prefix + element.Id;
        page.Id = prefix;
        foreach (var link in page.QuerySelectorAll("a[href]"))
        {
            var href = link.GetAttribute("href")!;
            if (href.StartsWith('#'))
                link.SetAttribute("href", "#" + prefix + href[1..]);
            else if (chapters.FirstOrDefault(c => href.Split('#')[0] == text.Chapter.Root + Address(c.PageFile)) is { } other)
                link.SetAttribute("href", "#" + Prefix(other) + href.Split('#').ElementAtOrDefault(1));
        }

        foreach (var gone in page.QuerySelectorAll(withCode ? "script, .packages, .table-file" : "script, .packages, .table-file, .code-cell").ToList())
            gone.Remove();
        foreach (var code in page.QuerySelectorAll(".code-cell"))
            code.SetAttribute("open", "");
        return page.OuterHtml;
    }

    // A page that stands alone carries its font.
    private static string Font() =>
        MathsFont.Css.Replace(MathsFont.FileName, $"data:font/woff2;base64,{Convert.ToBase64String(MathsFont.Bytes())}", StringComparison.Ordinal) + "\n";

    private static string Prefix(Chapter chapter) => chapter.Notebook.Label.Replace('/', '-') + "--";
}
