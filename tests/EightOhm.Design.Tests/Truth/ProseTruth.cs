using System.Text.RegularExpressions;

namespace EightOhm.Design.Tests.Truth;

/// <summary>What a design notebook's own words may not say: a figure, a verdict or the design's name. Another input would make them false.</summary>
internal static partial class ProseTruth
{
    /// <summary>The faults of a markdown cell or a comment, each with the words around it.</summary>
    /// <param name="text">The text.</param>
    /// <param name="names">The words of the design's name.</param>
    public static IEnumerable<string> Faults(string text, IReadOnlyCollection<string> names)
    {
        // A caution says what may happen to anybody, not how this design stands; figures and names are none of its business either.
        var judged = Caution().Replace(text, "");
        return Found(Figure(), text, "a figure")
            .Concat(Found(Counted(), text, "a figure in words"))
            .Concat(Found(Verdict(), judged, "a verdict"))
            .Concat(Names(text, names));
    }

    /// <summary>Where a text says the name of the design.</summary>
    public static IEnumerable<string> Names(string text, IReadOnlyCollection<string> names) =>
        names.SelectMany(name => Found(new Regex($@"\b{Regex.Escape(name)}\b", RegexOptions.IgnoreCase), text, "the design's name"));

    /// <summary>Where a text has a figure that stands by itself: not the 3 of R_3 or the 20 of T_20k.</summary>
    public static IEnumerable<string> Figures(string text) => Found(Figure(), text, "a figure");

    private static IEnumerable<string> Found(Regex what, string text, string told) =>
        what.Matches(text).Select(m => $"{told}, \"{m.Value}\", in \"…{Around(text, m)}…\"");

    private static string Around(string text, Match match)
    {
        var from = Math.Max(0, match.Index - 30);
        return text[from..Math.Min(text.Length, match.Index + match.Length + 30)].ReplaceLineEndings(" ");
    }

    [GeneratedRegex(@"(?<![\p{L}\p{N}_>])\p{Nd}[\p{Nd}.,]*")]
    private static partial Regex Figure();

    // A count of parts, or an amount with its unit; that something has two sides or two ways is so for any design.
    [GeneratedRegex(@"\b(?:three|four|five|six|seven|eight|nine|ten|eleven|twelve|twenty|fifty|hundred)\s+(?:pairs?|transistors?|boxes|channels?|volts?|amperes?|watts?|ohms?|kelvins?|seconds?|minutes?|hours?|percent|per cent)\b(?! without noticing)", RegexOptions.IgnoreCase)]
    private static partial Regex Counted();

    // What somebody concludes of this design. What happens if or when a part fails is no conclusion.
    [GeneratedRegex(@"\b(?:(?:un)?met|passes|passed|satisf(?:y|ies|ied)|suffic(?:es|ient|iently)|insufficient|exceed(?:s|ed)?|ample|plenty|enough|complies|too (?:small|large|hot|cold|little|much|low|high|weak|slow)|holds(?=\s*(?:[.,;:]|under|with|at|over|everywhere|$)))\b|(?<!\b(?:if|when|whose|that)\b[^.;:]{0,80})\bfail(?:s|ed)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Verdict();

    [GeneratedRegex(@"^>.*$", RegexOptions.Multiline)]
    private static partial Regex Caution();
}
