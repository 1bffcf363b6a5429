using System.Text;
using static EightOhm.Cli.Book.PageTemplate;

namespace EightOhm.Cli.Book;

/// <summary>The page of one chapter.</summary>
internal static class ChapterPage
{
    public static string Of(Chapter chapter, string design, string banner, Chapter? before, Chapter? after)
    {
        var body = new StringBuilder();
        var markdown = new MarkdownText(Path.GetDirectoryName(chapter.Notebook.Path)!);
        foreach (var cell in chapter.Notebook.Cells)
        {
            if (cell.IsMarkdown)
                body.Append("<section class=\"text\">\n").Append(markdown.ToHtml(cell)).Append("</section>\n");
            else if (cell.IsCode)
                body.Append("<section id=\"").Append(Anchor(cell.Number)).Append("\">\n").Append(CodeCell.ToHtml(cell)).Append(OutputHtml.Of(cell.Outputs)).Append("</section>\n");
        }

        return Page($"{chapter.Title} · {design}", chapter.Root, Navigation(chapter.Root, before, after), banner + body.ToString().TrimEnd());
    }

    /// <summary>Where a cell stands in its page.</summary>
    public static string Anchor(int cell) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"cell-{cell}");

    private static string Navigation(string root, Chapter? before, Chapter? after) =>
        $"""
        <nav>
        <a href="{root}index.html">Contents</a>
        <span class="turn">{Link(root, before, "Previous", "prev")}{Link(root, after, "Next", "next")}</span>
        </nav>
        """;

    private static string Link(string root, Chapter? chapter, string word, string rel) => chapter is null
        ? ""
        : $"<a rel=\"{rel}\" href=\"{root}{Address(chapter.PageFile)}\">{word}<span class=\"title\">: {Escape(chapter.Title)}</span></a>";
}
