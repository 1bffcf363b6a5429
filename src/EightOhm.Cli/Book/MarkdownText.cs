using System.Text.RegularExpressions;
using EightOhm.Cli.Notebooks;
using Markdig;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace EightOhm.Cli.Book;

/// <summary>Markdown cells as HTML that needs no other file: pictures come into the page, links to notebooks lead to their pages.</summary>
/// <param name="folder">The notebook's folder, which its relative links start from.</param>
internal sealed partial class MarkdownText(string folder)
{
    // What notebook programs understand too: a chapter must read the same in both.
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder()
        .UsePipeTables()
        .UseTaskLists()
        .UseAutoLinks()
        .UseAutoIdentifiers(Markdig.Extensions.AutoIdentifiers.AutoIdentifierOptions.GitHub)
        .Build();

    /// <exception cref="ArgumentException">Something stands too deep in itself.</exception>
    public string ToHtml(NotebookCell cell)
    {
        var document = Markdown.Parse(cell.Source, Pipeline);
        foreach (var link in document.Descendants<LinkInline>().ToList())
        {
            if (link.IsImage)
                BringIn(link, cell);
            else if (link.Url is { } url && !url.Contains(':', StringComparison.Ordinal))
                link.Url = ToPage(url);
        }

        // A drawing in letters scrolls within itself on a phone: the keyboard must reach it.
        return CleanHtml.Of(Flat(document.ToHtml(Pipeline))).Replace("<pre>", "<pre tabindex=\"0\">", StringComparison.Ordinal);
    }

    /// <summary>Refuses a text that nobody could have meant: nested without end.</summary>
    /// <exception cref="RunFailure">There is such a text.</exception>
    public static void Check(NotebookFile notebook)
    {
        foreach (var cell in notebook.Cells.Where(c => c.IsMarkdown))
        {
            try
            {
                Flat(Markdown.ToHtml(cell.Source, Pipeline));
            }
            catch (ArgumentException)
            {
                throw RunFailure.BadInput($"{notebook.FileLabel}, cell {cell.Number}: quotes, lists, links or elements of HTML stand too deep in each other. Make the text flatter.");
            }
        }
    }

    // As Markdown itself refuses what is too deep.
    private static string Flat(string html) => HtmlDepth.IsTooDeep(html) ? throw new ArgumentException("Elements of HTML stand too deep in each other.", nameof(html)) : html;

    /// <summary>The plain text of the first heading; null where there is none.</summary>
    public static string? FirstHeading(string markdown) =>
        Markdown.Parse(markdown, Pipeline).Descendants<HeadingBlock>().FirstOrDefault() is { Inline: { } inline }
            ? string.Concat(inline.Descendants().Select(Words)).Trim()
            : null;

    /// <summary>The question that a text opens with, or else its first sentence; empty where it has no paragraph of its own.</summary>
    public static string Opening(string markdown)
    {
        if (Markdown.Parse(markdown, Pipeline).OfType<ParagraphBlock>().FirstOrDefault() is not { Inline: { } inline })
            return "";
        var sentences = SentenceEnd().Split(string.Concat(inline.Descendants().Select(Words)).Trim());
        return sentences.FirstOrDefault(s => s.EndsWith('?')) ?? sentences[0];
    }

    private static string Words(MarkdownObject inline) => inline switch
    {
        LiteralInline literal => literal.Content.ToString(),
        CodeInline code => code.Content,
        HtmlEntityInline entity => entity.Transcoded.ToString(),
        LineBreakInline => " ",
        _ => "",
    };

    private static string ToPage(string url)
    {
        const string Ending = ".ipynb";
        var path = url.Split('#', 2);
        return path[0].EndsWith(Ending, StringComparison.OrdinalIgnoreCase)
            ? string.Join('#', [path[0][..^Ending.Length] + ".html", .. path[1..]])
            : url;
    }

    [GeneratedRegex(@"(?<=[.?!])\s+(?=[\p{Lu}\d])")]
    private static partial Regex SentenceEnd();

    private void BringIn(LinkInline image, NotebookCell cell)
    {
        var url = image.Url ?? "";
        if (url.StartsWith("data:", StringComparison.Ordinal))
            return;

        var picture = url.StartsWith("attachment:", StringComparison.Ordinal)
            ? cell.Attachment(Uri.UnescapeDataString(url["attachment:".Length..]))
            : PictureFile.DataUri(folder, url);
        if (picture is not null)
        {
            image.Url = picture;
            return;
        }

        // A page that loads nothing from elsewhere keeps the words for the picture, and the way to it.
        image.IsImage = false;
        image.GetAttributes().AddClass("missing-picture");
    }
}
