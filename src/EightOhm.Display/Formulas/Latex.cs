using EightOhm.Explaining;

namespace EightOhm.Display.Formulas;

/// <summary>Writes a formula as LaTeX, for hosts and papers that typeset it.</summary>
public static class Latex
{
    /// <summary>The formula as LaTeX, without dollar signs.</summary>
    /// <param name="node">The formula.</param>
    public static string Write(MathNode node) => node switch
    {
        NumberNode n => Number(n.Text),
        NameNode n => Name(n.Text),
        InfixNode n => $"{In(n.Left, MathText.LeftNeed(n))} {Sign(n.Sign)} {In(n.Right, MathText.RightNeed(n))}",
        WordsNode n => Words(n.Text),
        NegatedNode n => $"-{In(n.Inner, MathText.NegatedNeed(n))}",
        NotNode n => $"\\text{{not }} {In(n.Inner, 5)}",
        FractionNode n => $"\\frac{{{Write(n.Over)}}}{{{Write(n.Under)}}}",
        RootNode n => $"\\sqrt{{{Write(n.Inner)}}}",
        PowerNode n => $"{(MathText.NeedsBrackets(n) ? $"\\left({Write(n.Base)}\\right)" : Write(n.Base))}^{{{Write(n.Exponent)}}}",
        CallNode n => $"{(n.Owner is null ? "" : $"{In(n.Owner, 5)}.")}{Name(n.Name)}\\left({string.Join(", ", n.Arguments.Select(Write))}\\right)",
        SumNode n => $"\\sum_{{{Write(n.Item)} \\in {Write(n.Items)}}} {In(n.Term, MathText.TermNeed(n))}",
        CasesNode n => $"\\begin{{cases}}{string.Join("\\\\ ", n.Cases.Select(c => $"{Write(c.Value)} & {(c.When is null ? "\\text{otherwise}" : $"\\text{{if }} {Write(c.When)}")}"))}\\end{{cases}}",
        _ => throw new ArgumentException($"No LaTeX for a {node?.GetType().Name}.", nameof(node)),
    };

    /// <summary>The whole working as LaTeX lines, between double dollar signs.</summary>
    /// <param name="explanation">The working.</param>
    public static string Write(Explanation explanation)
    {
        ArgumentNullException.ThrowIfNull(explanation);
        return ExplanationLatex.Write(explanation);
    }

    /// <summary>The words as LaTeX text.</summary>
    internal static string Words(string text) => $"\\text{{{Escaped(text)}}}";

    private static string In(MathNode node, int need) => node.Binding < need ? $"\\left({Write(node)}\\right)" : Write(node);

    private static string Sign(string sign) => sign switch
    {
        "·" => "\\cdot",
        "−" => "-",
        "≤" => "\\le",
        "≥" => "\\ge",
        "∥" => "\\parallel",
        "≠" => "\\ne",
        "and" or "or" or "mod" => $"\\text{{ {sign} }}",
        _ => sign,
    };

    private static string Number(string text)
    {
        var at = text.IndexOf(' ', StringComparison.Ordinal);
        return at < 0 ? Plain(text) : $"{Plain(text[..at])}\\,\\text{{{Escaped(text[(at + 1)..])}}}";
    }

    // "1.381×10⁻²³" as a power.
    private static string Plain(string number)
    {
        var parts = number.Replace('−', '-').Split("×10");
        return parts.Length == 1
            ? Escaped(parts[0])
            : $"{parts[0]} \\times 10^{{{string.Concat(parts[1].Select(c => c == '⁻' ? '-' : (char)('0' + "⁰¹²³⁴⁵⁶⁷⁸⁹".IndexOf(c, StringComparison.Ordinal))))}}}";
    }

    private static string Escaped(string text) => string.Concat(text.Select(c => c switch
    {
        '%' or '_' or '&' or '#' or '$' or '{' or '}' => $"\\{c}",
        '^' or '~' => $"\\{c}{{}}",
        '\\' => "\\textbackslash{}",
        _ => c.ToString(),
    }));

    private static string Name(string name)
    {
        var (stem, sub) = Symbols.Split(name);
        var word = stem.Length == 1 ? stem : $"\\text{{{Escaped(stem)}}}";
        return sub.Length == 0 ? word : $"{word}_{{\\text{{{sub}}}}}";
    }
}
