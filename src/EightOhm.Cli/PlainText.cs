using System.Text.RegularExpressions;

namespace EightOhm.Cli;

/// <summary>Text without control characters: on a terminal they would move the cursor or change what stands there, and in a page they mean nothing.</summary>
internal static partial class PlainText
{
    /// <summary>The text; line feeds and tabs stay.</summary>
    public static string Of(string text) => Control().Replace(text, "");

    // The marks that turn the direction of writing could show a number in another order.
    [GeneratedRegex(@"[\u0000-\u0008\u000B-\u001F\u007F-\u009F\u202A-\u202E\u2066-\u2069]")]
    private static partial Regex Control();
}
