using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using EightOhm.Explaining;

namespace EightOhm.Display.Formulas;

/// <summary>Running text as HTML with its symbols typeset: <c>V_CEO</c> is V with subscript CEO.</summary>
/// <remarks>In a table and a caption, where a formula's MathML would be too much. An underscore of no size stays in the text, so that what is copied,
/// read aloud or stripped of its tags still says V_CEO. Plain text keeps the symbols as they are.</remarks>
public static partial class SymbolHtml
{
    private const string Underscore = "<span style=\"font-size:0\">_</span>";

    /// <summary>The text, encoded, its symbols typeset.</summary>
    /// <param name="text">Text as it stands on a console. A symbol is a letter, a Greek letter's name or a short run of capitals with a subscript after an underscore; a file's or a part's name is none.</param>
    public static string Write(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var html = new StringBuilder();
        var at = 0;
        foreach (Match symbol in Symbol().Matches(text))
        {
            var (stem, subscript) = Symbols.Split(symbol.Value);
            // A word that only looks like one: "output_npn".
            if (stem.Length > 1 && stem == symbol.Groups["word"].Value && stem != "tc")
                continue;
            html.Append(Encoded(text[at..symbol.Index]))
                .Append(stem.Length == 1 || stem[0] is 'd' or 'Δ' ? $"<i>{Encoded(stem)}</i>" : Encoded(stem))
                .Append("<sub>").Append(Underscore).Append(Encoded(subscript)).Append("</sub>");
            at = symbol.Index + symbol.Length;
        }

        return html.Append(Encoded(text[at..])).ToString();
    }

    private static string Encoded(string text) => WebUtility.HtmlEncode(text);

    // One letter (or its difference, dT), a few capitals (SNR, H3), or a word that may be a Greek letter's name; then the subscripts. No part of a longer word or of a file's name; a stroke is a quotient's, P/R_L.
    [GeneratedRegex(@"(?<![\p{L}\p{N}_.\\])(?:[dΔ]?\p{L}|\p{Lu}[\p{Lu}\d]{1,4}|(?<word>\p{L}\p{Ll}+))_[\p{L}\p{N}]+(?:[_,][\p{L}\p{N}]+)*(?![\p{L}\p{N}_\\]|\.\p{L})")]
    private static partial Regex Symbol();
}
