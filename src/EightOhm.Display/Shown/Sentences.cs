namespace EightOhm.Display;

/// <summary>Sentences that move with the design: <c>Say($"{n} pairs carry {P_D}.")</c>.</summary>
public static class Sentences
{
    /// <summary>A sentence with values in it, each in engineering notation in any culture. Shown, it is a paragraph on a page and a line on a console.</summary>
    /// <param name="sentence">An interpolated string; a number after a colon is the significant digits: <c>$"{T_j:3} at {P}"</c>. It may be written over
    /// several lines: each run of blanks and line ends is one blank.</param>
    /// <returns>The sentence.</returns>
    /// <example><code>Say($"{3} pairs of {0.22.Ohm} share {9.486833.A:3}.")   // 3 pairs of 220 mΩ share 9.49 A.</code></example>
    public static Sentence Say(FormattableString sentence) =>
        new(string.Join(' ', Show.Text(sentence).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));
}
