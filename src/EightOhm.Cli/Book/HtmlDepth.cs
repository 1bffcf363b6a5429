using System.Text.RegularExpressions;

namespace EightOhm.Cli.Book;

/// <summary>How deep elements of HTML stand in each other.</summary>
/// <remarks>A parser looks through all open elements at each new one: some ten thousand take it many seconds. Nobody has written such a text for a reader.</remarks>
internal static partial class HtmlDepth
{
    // At which browsers stop to put one element into another.
    private const int Most = 512;

    /// <summary>Whether elements stand deeper in each other than a browser would show them.</summary>
    public static bool IsTooDeep(string html)
    {
        // Behind the last sign that closes a tag there is none: without it each beginning would be followed to the end of the text.
        var text = html.AsSpan(0, html.LastIndexOf('>') + 1);
        var (depth, deepest) = (0, 0);
        foreach (var tag in Tag().EnumerateMatches(text))
        {
            if (text[tag.Index + tag.Length - 2] == '/')
                continue;
            depth = text[tag.Index + 1] == '/' ? Math.Max(0, depth - 1) : depth + 1;
            deepest = Math.Max(deepest, depth);
        }

        return deepest > Most;
    }

    // Of elements that end by a tag of their own: not those without content, nor those that end where the next begins.
    [GeneratedRegex("</?(?!(?:area|base|br|col|dd|dt|embed|hr|img|input|li|link|meta|option|p|source|tbody|td|tfoot|th|thead|tr|track|wbr)\\b)[a-z][a-z0-9-]*\\b[^>]*>", RegexOptions.IgnoreCase)]
    private static partial Regex Tag();
}
