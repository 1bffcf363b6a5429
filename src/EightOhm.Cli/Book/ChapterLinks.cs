using System.Text.RegularExpressions;
using AngleSharp.Dom;

namespace EightOhm.Cli.Book;

/// <summary>Makes "chapter 5" in a text lead to that chapter.</summary>
/// <param name="chapters">The chapters of the book.</param>
internal sealed partial class ChapterLinks(IReadOnlyList<Chapter> chapters)
{
    private const string Texts = "section.text p, section.text li, section.text td, section.text blockquote, .output p, .output li";

    /// <param name="main">The page's text.</param>
    /// <param name="from">The page's chapter.</param>
    public void Write(IElement main, Chapter from)
    {
        foreach (var text in main.QuerySelectorAll(Texts).SelectMany(e => e.ChildNodes.OfType<IText>().Concat(e.QuerySelectorAll("em, strong").SelectMany(i => i.ChildNodes.OfType<IText>()))).Distinct().ToList())
        {
            if (text.ParentElement!.Closest("a, code, pre") is null && Named().IsMatch(text.TextContent))
                Link(text, from);
        }
    }

    private void Link(IText text, Chapter from)
    {
        var document = text.Owner!;
        var pieces = new List<INode>();
        var at = 0;
        foreach (Match number in Named().Matches(text.TextContent).SelectMany(m => Numbers().Matches(text.TextContent[..(m.Index + m.Length)], m.Index)))
        {
            if (Find(number.Value, from) is not { } chapter || chapter == from)
                continue;
            // The word goes with its number into the link where it stands before it.
            var start = Word().Match(text.TextContent[at..number.Index]) is { Success: true } word ? at + word.Index : number.Index;
            pieces.Add(document.CreateTextNode(text.TextContent[at..start]));
            var link = document.CreateElement("a");
            link.SetAttribute("href", from.Root + PageTemplate.Address(chapter.PageFile));
            link.SetAttribute("title", chapter.Title);
            link.TextContent = text.TextContent[start..(number.Index + number.Length)];
            pieces.Add(link);
            at = number.Index + number.Length;
        }

        if (at == 0)
            return;
        pieces.Add(document.CreateTextNode(text.TextContent[at..]));
        text.Replace([.. pieces]);
    }

    // A design's chapter names its own neighbours; what it has not, the course has. A chapter in two parts begins with the first.
    private Chapter? Find(string number, Chapter from) =>
        chapters.Where(c => c.Number == number || (c.Number.Length == number.Length + 1 && c.Number.StartsWith(number, StringComparison.Ordinal) && char.IsLetter(c.Number[^1])))
            .OrderBy(c => c.Notebook.Folder != from.Notebook.Folder).FirstOrDefault();

    [GeneratedRegex(@"\b[Cc]hapters?\s[0-9]+[a-z]?\b(?:(?:,\s|\sand\s|\sor\s|\sto\s|,\sand\s)[0-9]+[a-z]?\b(?![.,][0-9])(?!\s?[%°A-ZµΩ]))*")]
    private static partial Regex Named();

    [GeneratedRegex("[0-9]+[a-z]?")]
    private static partial Regex Numbers();

    [GeneratedRegex(@"[Cc]hapters?\s$")]
    private static partial Regex Word();
}
