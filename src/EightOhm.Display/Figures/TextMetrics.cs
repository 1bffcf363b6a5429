namespace EightOhm.Display.Figures;

/// <summary>How wide text will be, near enough and rather too wide: no font is at hand when a figure is laid out.</summary>
internal static class TextMetrics
{
    /// <summary>The width of a line of text in pixels at a font size.</summary>
    public static double Width(string text, double size) => size * text.Sum(CharacterWidth);

    /// <summary>The text in lines no wider than <paramref name="width"/>; a word that is wider by itself is cut short.</summary>
    public static IReadOnlyList<string> Wrap(string? text, double size, double width)
    {
        var lines = new List<string>();
        foreach (var word in (text ?? "").Split([' ', '\n', '\t', '\r'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (lines.Count > 0 && Width(lines[^1] + " " + word, size) <= width) lines[^1] += " " + word;
            else lines.Add(Cut(word, size, width));
        }
        return lines;
    }

    private static string Cut(string word, double size, double width)
    {
        if (Width(word, size) <= width) return word;
        var length = word.Length - 1;
        while (length > 1 && Width(word[..length] + "…", size) > width) length--;
        return word[..length] + "…";
    }

    private static double CharacterWidth(char c) => c switch
    {
        'i' or 'j' or 'l' or 'I' or '.' or ',' or ':' or ';' or '\'' or '|' or '!' => 0.30,
        ' ' or 'f' or 't' or 'r' or '(' or ')' or '/' or '-' => 0.38,
        'm' or 'w' or 'M' or 'W' or '→' or '—' or '…' or '@' or '%' or 'Ω' => 0.92,
        >= 'A' and <= 'Z' => 0.71,
        _ when char.IsHighSurrogate(c) || c > '\u2E80' => 1.0,
        _ => 0.59,
    };
}
