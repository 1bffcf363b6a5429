using System.Globalization;
using System.Text.RegularExpressions;

namespace EightOhm.Browser.Tests.Hosting;

/// <summary>Comparison of printed texts: words equal, numbers within one unit of the last printed digit.</summary>
/// <remarks>The mathematics library of another processor may round the last digit the other way, never more.</remarks>
internal static partial class PrintedText
{
    /// <summary>The first difference in words, or null when the texts say the same.</summary>
    public static string? Difference(string stored, string computed)
    {
        var (expected, found) = (Number().Matches(stored), Number().Matches(computed));
        var words = Number().Split(Plain(stored)).SequenceEqual(Number().Split(Plain(computed)));
        if (!words || expected.Count != found.Count)
            return $"stored   “{stored}”\ncomputed “{computed}”";
        foreach (var (was, now) in expected.Zip(found))
            if (!Near(was.Value, now.Value))
                return $"{was.Value} is stored, {now.Value} computed, in “{stored}”";
        return null;
    }

    /// <summary>A text without any white space: hosts break and space the same words differently.</summary>
    public static string Unspaced(string text) => Space().Replace(text, "");

    private static string Plain(string text) => text.ReplaceLineEndings("\n").Trim();

    private static bool Near(string was, string now)
    {
        var decimals = Decimals(was);
        return decimals == Decimals(now)
            && Math.Abs(decimal.Parse(was, CultureInfo.InvariantCulture) - decimal.Parse(now, CultureInfo.InvariantCulture)) <= 1m / (decimal)Math.Pow(10, decimals);
    }

    private static int Decimals(string number) => number.IndexOf('.', StringComparison.Ordinal) is var point and >= 0 ? number.Length - point - 1 : 0;

    [GeneratedRegex(@"\d+(?:\.\d+)?")]
    private static partial Regex Number();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Space();
}
