using System.Text;
using static EightOhm.Cli.Book.PageTemplate;

namespace EightOhm.Cli.Book;

/// <summary>The page of one chapter: its contents beside its text, the way to its neighbours above and below.</summary>
internal static class ChapterPage
{
    /// <param name="text">The chapter's text.</param>
    /// <param name="book">The book's title.</param>
    /// <param name="banner">The sentence at the top of every page, as HTML; may be empty.</param>
    /// <param name="before">The chapter before, or null.</param>
    /// <param name="after">The chapter after, or null.</param>
    public static string Of(ChapterText text, string book, string banner, Chapter? before, Chapter? after)
    {
        var chapter = text.Chapter;
        return Page(new PageParts($"{chapter.Heading} · {book}", book, chapter.Root, banner + text.Html)
        {
            Turns = Turns(chapter.Root, before, after),
            Contents = Contents(text.Sections),
        });
    }

    private static string Contents(IReadOnlyList<Section> sections)
    {
        var listed = sections.Where(s => s.Level > 1 && s.Anchor.Length > 0).ToList();
        if (listed.Count < 2)
            return "";
        var list = new StringBuilder("<ol>\n");
        foreach (var section in listed)
        {
            list.Append(section.Level > 2 ? "<li class=\"below\">" : "<li>").Append("<a href=\"#").Append(Escape(section.Anchor)).Append("\"><span class=\"no\">")
                .Append(Escape(section.Number)).Append("</span> ").Append(Escape(section.Title)).Append("</a></li>\n");
        }

        return list.Append("</ol>").ToString();
    }

    private static string Turns(string root, Chapter? before, Chapter? after) => Link(root, before, "Previous", "prev") + Link(root, after, "Next", "next");

    private static string Link(string root, Chapter? chapter, string word, string rel) => chapter is null
        ? ""
        : $"<a rel=\"{rel}\" href=\"{root}{Address(chapter.PageFile)}\">{word}<span class=\"title\">: {Escape(chapter.Heading)}</span></a>";
}
