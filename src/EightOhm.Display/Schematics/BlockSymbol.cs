using EightOhm.Circuits;
using EightOhm.Display.Figures;
using static EightOhm.Display.Schematics.SymbolInk;

namespace EightOhm.Display.Schematics;

/// <summary>A box with words in it, as wide as its words need.</summary>
internal static class BlockSymbol
{
    private const double Least = 60, Most = 110, Pad = 8;

    /// <summary>The lines of a block: its name, then what it does.</summary>
    /// <param name="element">A block.</param>
    public static IReadOnlyList<string> Lines(Element element) =>
        [.. Names(element), .. TextMetrics.Wrap(DrawnText.Value(element), DrawnText.ValueSize, Most - (2 * Pad))];

    /// <summary>How many of the lines are its name.</summary>
    /// <param name="element">A block.</param>
    public static int NameLines(Element element) => Names(element).Count;

    private static IReadOnlyList<string> Names(Element element) => TextMetrics.Wrap(Spoken(element), DrawnText.NameSize, Most - (2 * Pad));

    /// <summary>The name as it is said: a name is one word, so that its underscores are its blanks.</summary>
    /// <param name="element">A block.</param>
    public static string Spoken(Element element) => element.Name.Replace('_', ' ');

    public static Symbol Of(Element element)
    {
        var words = Lines(element);
        var half = Math.Ceiling((Math.Clamp(words.Max(w => TextMetrics.Width(w, DrawnText.NameSize)), Least - (2 * Pad), Most) + (2 * Pad)) / 20) * 10;
        var halfHeight = Math.Max(20, Math.Ceiling(((words.Count * DrawnText.Row) + 8) / 20) * 10);
        var ends = element.Terminals.Select(t => t.Name).ToArray();
        return new(
            [new(ends[0], (int)-half - 10, 0, Way.ToLeft), new(ends[1], (int)half, 0, Way.ToRight)],
            new(-half, -halfHeight, 2 * half, 2 * halfHeight),
            [Rectangle(2 * half, 2 * halfHeight), Line(-half - 10, 0, -half - 6, 0), Arrow(-half, 0, -half - 10, 0)])
        {
            Turns = [Turn.None, Turn.LeftRight],
            NameRoom = new(-half, -halfHeight, 2 * half, 2 * halfHeight),
        };
    }
}
