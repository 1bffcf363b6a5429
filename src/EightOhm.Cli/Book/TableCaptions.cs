using AngleSharp.Dom;

namespace EightOhm.Cli.Book;

/// <summary>Keeps captions short: what one says beyond its first clause stands below the table.</summary>
internal static class TableCaptions
{
    // A line and a half at the width of a page.
    private const int Longest = 90;

    public static void Write(IElement main)
    {
        foreach (var caption in main.QuerySelectorAll("table.eo-table > caption").Where(c => c.TextContent.Length > Longest).ToList())
        {
            // Only where the clause ends in plain text: a symbol's subscript is not taken apart.
            if (caption.FirstChild is not IText first || first.TextContent.IndexOf(": ", StringComparison.Ordinal) is not (> 0 and var at))
                continue;
            var document = caption.Owner!;
            var says = document.CreateElement("p");
            says.ClassName = "table-says";
            var rest = first.TextContent[(at + 2)..];
            first.TextContent = first.TextContent[..at];
            says.AppendChild(document.CreateTextNode(rest.Length > 0 ? char.ToUpperInvariant(rest[0]) + rest[1..] : ""));
            while (first.NextSibling is { } next)
                says.AppendChild(next);
            caption.ParentElement!.After(says);
        }
    }
}
