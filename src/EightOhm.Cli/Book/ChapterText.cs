using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace EightOhm.Cli.Book;

/// <summary>A chapter's text as HTML, numbered and linked, with its sections.</summary>
/// <param name="Chapter">The chapter.</param>
/// <param name="Html">Its text.</param>
/// <param name="Sections">Its sections, the chapter itself first where it has a heading.</param>
/// <param name="Words">All its words, code included, to find where a symbol is first shown.</param>
internal sealed record ChapterText(Chapter Chapter, string Html, IReadOnlyList<Section> Sections, string Words)
{
    private const int LongestInIndex = 4000;

    /// <param name="chapter">The chapter.</param>
    /// <param name="links">The way to the other chapters.</param>
    public static ChapterText Of(Chapter chapter, ChapterLinks links)
    {
        var main = new HtmlParser().ParseDocument($"<!doctype html><body>{Cells(chapter)}</body>").Body!;
        new ChapterNumbers(chapter).Write(main);
        links.Write(main, chapter);
        TableCaptions.Write(main);
        TableFiles.Write(main, chapter.Notebook.Name);
        return new ChapterText(chapter, main.InnerHtml.Trim(), Read(main, chapter), main.TextContent);
    }

    /// <summary>Where a cell stands in its page.</summary>
    public static string Anchor(int cell) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"cell-{cell}");

    private static string Cells(Chapter chapter)
    {
        var body = new StringBuilder();
        var markdown = new MarkdownText(Path.GetDirectoryName(chapter.Notebook.Path)!);
        foreach (var cell in chapter.Notebook.Cells)
        {
            if (cell.IsMarkdown)
                body.Append("<section class=\"text\">\n").Append(markdown.ToHtml(cell)).Append("</section>\n");
            else if (cell.IsCode)
                body.Append("<section class=\"cell\" id=\"").Append(Anchor(cell.Number)).Append("\">\n").Append(CodeCell.ToHtml(cell, chapter.IsPaper)).Append(OutputHtml.Of(cell)).Append("</section>\n");
        }

        return body.ToString();
    }

    private static List<Section> Read(IElement main, Chapter chapter)
    {
        var sections = new List<(IElement? Heading, StringBuilder Text)> { (null, new StringBuilder()) };
        foreach (var element in main.QuerySelectorAll("h1, h2, h3, p, li, caption, figcaption, div.eo-working, td"))
        {
            if (element.LocalName is "h1" or "h2" or "h3")
                sections.Add((element, new StringBuilder()));
            else if (sections[^1].Text.Length < LongestInIndex && element.Closest("li, td") is var inner && (inner is null || inner == element))
                sections[^1].Text.Append(element.TextContent).Append(' ');
        }

        return
        [
            .. sections.Where(s => s.Heading is not null || s.Text.Length > 0).Select(s => s.Heading is { } heading
                ? new Section(heading.LocalName[1] - '0', heading.QuerySelector("span.no")?.TextContent ?? "", Title(heading), heading.Id!, One(s.Text.ToString()))
                : new Section(1, chapter.Number, chapter.Title, "", One(s.Text.ToString()))),
        ];
    }

    private static string Title(IElement heading)
    {
        var number = heading.QuerySelector("span.no")?.TextContent ?? "";
        return One(heading.TextContent[number.Length..]);
    }

    private static string One(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
