using System.Text.RegularExpressions;
using EightOhm.Circuits;
using EightOhm.Display.Figures;
using EightOhm.Explaining;
using EightOhm.Quantities;

namespace EightOhm.Display.Schematics;

/// <summary>The words beside a symbol: its name with its subscript, its value in the house's format.</summary>
internal static partial class DrawnText
{
    public const double NameSize = 14, ValueSize = 13, Row = 16, Small = 0.75;

    /// <summary>A name in stem and subscript: R1 and R_1 are R with 1, C_res C with res; a node called V+ stays as it is.</summary>
    /// <param name="name">A name of the circuit.</param>
    public static (string Stem, string Subscript) Split(string name)
    {
        if (name.Contains('_', StringComparison.Ordinal))
        {
            var (stem, subscript) = Symbols.Split(name);
            // A word is no symbol: upper_base is the upper base.
            return stem.Length > 2 && stem.All(char.IsLower) ? (Minus(name.Replace('_', ' ')), "") : (Minus(stem), Minus(subscript));
        }

        var numbered = Numbered().Match(name);
        return numbered.Success ? (numbered.Groups[1].Value, numbered.Groups[2].Value) : (Minus(name), "");
    }

    // A minus is as wide as a plus; a hyphen is not.
    private static string Minus(string text) => text.Replace('-', '−');

    /// <summary>What stands under the name; empty where there is nothing to say.</summary>
    /// <param name="element">An element.</param>
    public static string Value(Element element) => element switch
    {
        { Text.Length: > 0 } => element.Text,
        { Kind: ElementKind.VoltageSource or ElementKind.CurrentSource, Value: { } value } when QuantityKinds.Of(value.GetType()).ToSi(value) == 0 => "",
        { Value: { } value } => QuantityFormat.Short(value),
        { Bias: { } bias } => QuantityFormat.Short(bias),
        _ => "",
    };

    /// <summary>How wide a name is.</summary>
    /// <param name="name">A name of the circuit.</param>
    /// <param name="size">Its size.</param>
    public static double Width(string name, double size)
    {
        var (stem, subscript) = Split(name);
        return Plain(stem, size) + Plain(subscript, size * Small);
    }

    /// <summary>How wide a text is in the widest of the fonts that a page may have: digits and signs are wider there than in most.</summary>
    /// <param name="text">A text.</param>
    /// <param name="size">Its size.</param>
    public static double Plain(string text, double size) =>
        TextMetrics.Width(text, size) + (size * text.Sum(c => char.IsAsciiDigit(c) ? 0.05 : c is '−' or '+' or '±' or '×' ? 0.25 : 0));

    [GeneratedRegex(@"^(\p{L}+)(\d+[\p{L}\d]*)$")]
    private static partial Regex Numbered();
}
