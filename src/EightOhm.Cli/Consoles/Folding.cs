using System.Text.RegularExpressions;

namespace EightOhm.Cli.Consoles;

/// <summary>Folds text into lines of a width: between words, never inside a number or between it and its unit.</summary>
internal static partial class Folding
{
    private const char Glue = '\u00A0';

    /// <summary>The widest piece that cannot be folded.</summary>
    public static int Least(string text) => Words(text).Max(w => w.Length);

    /// <summary>The lines; one that holds a single longer piece is longer than the width.</summary>
    /// <param name="text">The text; its own line ends stay.</param>
    /// <param name="width">The width in characters.</param>
    /// <param name="first">Spaces before the first line.</param>
    /// <param name="hang">Spaces before every other.</param>
    public static IReadOnlyList<string> Lines(string text, int width, int first = 0, int hang = 0)
    {
        var lines = new List<string>();
        var line = new string(' ', first);
        foreach (var paragraph in PlainText.Of(text).Split('\n'))
        {
            foreach (var word in Words(paragraph))
            {
                if (line.Trim().Length > 0 && line.Length + 1 + word.Length > width)
                {
                    lines.Add(line);
                    line = new string(' ', hang);
                }

                line += line.Trim().Length > 0 ? " " + word : word;
            }

            lines.Add(line);
            line = new string(' ', hang);
        }

        return lines;
    }

    private static IEnumerable<string> Words(string text) =>
        NumberAndUnit().Replace(text, Glue.ToString()).Split(' ').Select(w => w.Replace(Glue, ' '));

    [GeneratedRegex(@"(?<=[0-9]) (?=\S{1,8}(\s|$))|(?<=[−±≤≥<>~]) (?=[0-9])")]
    private static partial Regex NumberAndUnit();
}
