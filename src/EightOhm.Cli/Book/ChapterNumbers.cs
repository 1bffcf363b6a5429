using System.Globalization;
using AngleSharp.Dom;

namespace EightOhm.Cli.Book;

/// <summary>Numbers a chapter's sections, formulas and figures, and gives each an anchor of its own.</summary>
/// <param name="chapter">The chapter.</param>
internal sealed class ChapterNumbers(Chapter chapter)
{
    private readonly HashSet<string> anchors = new(StringComparer.Ordinal);
    private int sections, formulas, figures;

    /// <summary>Numbers the page in its order.</summary>
    /// <param name="main">The page's text.</param>
    public void Write(IElement main)
    {
        foreach (var heading in main.QuerySelectorAll("h2, h3, h4").ToList())
            Cautions(heading);
        foreach (var element in main.QuerySelectorAll("h1, h2, h3, h4, div.eo-working, figure.eo-figure, figure.eo-schematic").ToList())
        {
            if (element.LocalName[0] == 'h')
                Heading(element);
            else if (element.LocalName == "div")
                Formula(element);
            else
                Figure(element);
        }
    }

    // In a notebook only a heading can be linked to; here the box itself can, and says what it is.
    private void Cautions(IElement heading)
    {
        if (!heading.TextContent.Trim().Equals("caution", StringComparison.OrdinalIgnoreCase) || heading.NextElementSibling is not { LocalName: "blockquote" } box)
            return;
        box.Id = heading.Id;
        anchors.Add(heading.Id ?? "");
        heading.Remove();
    }

    private void Heading(IElement heading)
    {
        // Sections of different cells may bear the same title.
        var wanted = heading.Id is { Length: > 0 } id ? id : "section";
        var anchor = wanted;
        for (var n = 2; !anchors.Add(anchor); n++)
            anchor = Join(wanted, "-", n);
        heading.Id = anchor;
        var isTitle = heading.LocalName == "h1";
        if (isTitle && heading.FirstChild is IText first)
            first.TextContent = Chapter.WithoutNumber(first.TextContent, chapter.Number);
        var number = isTitle ? chapter.Number : heading.LocalName == "h2" ? Next(ref sections) : "";
        if (number.Length > 0)
            heading.Prepend(Span(heading.Owner!, "no", number), heading.Owner!.CreateTextNode(" "));
    }

    private void Formula(IElement working)
    {
        var number = Next(ref formulas);
        working.Id = "formula-" + number;
        working.Append(Link(working.Owner!, working.Id, $"({number})", $"Formula {number}"));
    }

    private void Figure(IElement figure)
    {
        var number = Next(ref figures);
        figure.Id = "figure-" + number;
        var document = figure.Owner!;
        var caption = document.CreateElement("figcaption");
        caption.Append(Link(document, figure.Id, $"Figure {number}", null));
        figure.Append(caption);
    }

    private static IElement Link(IDocument document, string anchor, string words, string? spoken)
    {
        var link = document.CreateElement("a");
        link.ClassName = "no";
        link.SetAttribute("href", "#" + anchor);
        if (spoken is not null)
            link.SetAttribute("aria-label", spoken);
        link.TextContent = words;
        return link;
    }

    private static IElement Span(IDocument document, string name, string words)
    {
        var span = document.CreateElement("span");
        span.ClassName = name;
        span.TextContent = words;
        return span;
    }

    private string Next(ref int count) => chapter.Number.Length > 0 ? Join(chapter.Number, ".", ++count) : Join("", "", ++count);

    private static string Join(string a, string between, int n) => string.Create(CultureInfo.InvariantCulture, $"{a}{between}{n}");
}
