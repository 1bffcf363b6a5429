using System.Text;
using EightOhm.Display.Tables;
using static EightOhm.Cli.Book.PageTemplate;

namespace EightOhm.Cli.Book;

/// <summary>The first page: the design, its chapters, how it complies, and what can hurt.</summary>
internal static class IndexPage
{
    private const string Caution =
        "Mains wiring, supply rails and charged reservoir capacitors can kill, also after switching off; heat sinks burn. " +
        "Calculations do not make work on them safe: follow your local electrical codes, and leave mains work to people qualified for it.";

    public static string Of(string design, IReadOnlyList<Chapter> chapters, Table sheet, IReadOnlyList<string> records)
    {
        var body = new StringBuilder();
        body.Append("<section class=\"text\">\n<h1>").Append(Escape(design)).Append("</h1>\n");
        body.Append("<p class=\"caution\"><strong>Caution.</strong> ").Append(Caution).Append("</p>\n<h2>Chapters</h2>\n<ul class=\"chapters\">\n");
        foreach (var chapter in chapters)
        {
            body.Append("<li><a href=\"").Append(Uri.EscapeDataString(chapter.PageFile)).Append("\">")
                .Append(Escape(chapter.Title)).Append("</a> <span class=\"quiet\">").Append(Escape(chapter.Notebook.Name)).Append("</span></li>\n");
        }

        body.Append("</ul>\n<h2>Compliance</h2>\n</section>\n")
            .Append(sheet.Rows.Count > 0 ? $"<div class=\"output sheet\">{sheet.ToHtml()}</div>" : "<p>The record holds no requirements.</p>");
        foreach (var record in records)
            body.Append("\n<p class=\"quiet\">The design record: <a href=\"").Append(Uri.EscapeDataString(record)).Append("\">").Append(Escape(record)).Append("</a></p>");
        return Page(design, "", body.ToString());
    }
}
