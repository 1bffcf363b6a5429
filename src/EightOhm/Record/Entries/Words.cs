using System.Text;

namespace EightOhm.Record;

/// <summary>The texts of a person as the record keeps them.</summary>
internal static class Words
{
    /// <summary>The text without control characters, which would reach a terminal raw, and without halves of characters, which no file can hold.</summary>
    public static string? Clean(string? text)
    {
        if (text is null || text.EnumerateRunes().All(IsGood))
            return text;
        var clean = new StringBuilder();
        foreach (var rune in text.EnumerateRunes().Where(IsGood))
            clean.Append(rune.ToString());
        return clean.ToString();
    }

    // What is no character (half a pair) is enumerated as the replacement sign.
    private static bool IsGood(Rune rune) => rune != Rune.ReplacementChar && (!Rune.IsControl(rune) || rune.Value is '\n' or '\t');
}
