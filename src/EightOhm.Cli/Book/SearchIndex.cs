using System.Text.Encodings.Web;
using System.Text.Json;

namespace EightOhm.Cli.Book;

/// <summary>The words of the book, a line a section, as a script: a page opened from the disk may load that, and nothing else.</summary>
internal static class SearchIndex
{
    public const string File = "search-index.js";

    // The default encoder also escapes what could end a script element.
    private static readonly JsonSerializerOptions Readable = new() { Encoder = JavaScriptEncoder.Create(System.Text.Unicode.UnicodeRanges.All) };

    /// <param name="texts">The chapters' texts.</param>
    public static string Of(IEnumerable<ChapterText> texts)
    {
        var lines = texts.SelectMany(text => text.Sections.Select(s => JsonSerializer.Serialize(
            new[]
            {
                PageTemplate.Address(text.Chapter.PageFile) + (s.Anchor.Length > 0 ? "#" + Uri.EscapeDataString(s.Anchor) : ""),
                s.Heading,
                s.Level > 1 ? text.Chapter.Heading : "",
                PlainText.Of(s.Text),
            },
            Readable)));
        return $"window.eightOhmWords = [\n{string.Join(",\n", lines)}\n];\n";
    }
}
