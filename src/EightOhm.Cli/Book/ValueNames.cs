using System.Net;
using System.Text.RegularExpressions;
using EightOhm.Cells;
using EightOhm.Cli.Notebooks;
using EightOhm.Display.Formulas;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace EightOhm.Cli.Book;

/// <summary>Names for values that a cell shows bare: what its last line calls them.</summary>
internal static partial class ValueNames
{
    // More would be the code again.
    private const int Longest = 60;

    /// <summary>The values with their names; null where the output is something else than bare values.</summary>
    /// <param name="html">The output.</param>
    /// <param name="source">The cell.</param>
    public static string? Of(string html, string source)
    {
        if (Bare().Match(html) is not { Success: true } bare || Last(source) is not { } last)
            return null;
        var value = bare.Groups[1].Value;
        var items = Items(last);
        var values = value.Split(", ");
        (ExpressionSyntax, string)[] pairs = items.Count == values.Length ? [.. items.Zip(values)] : [(last, value)];
        return string.Concat(pairs.Select(p => $"<p class=\"named-value\"><span class=\"name\">{Name(p.Item1)}</span> = <span class=\"eo-value\">{p.Item2}</span></p>"));
    }

    private static ExpressionSyntax? Last(string source) =>
        CellText.Parse(source).Members.LastOrDefault() is GlobalStatementSyntax { Statement: ExpressionStatementSyntax { SemicolonToken.IsMissing: true } statement }
            ? statement.Expression
            : null;

    private static SeparatedSyntaxList<ExpressionSyntax> Items(ExpressionSyntax list) => list switch
    {
        ImplicitArrayCreationExpressionSyntax a => a.Initializer.Expressions,
        ArrayCreationExpressionSyntax { Initializer: { } i } => i.Expressions,
        _ => default,
    };

    private static string Name(ExpressionSyntax expression)
    {
        if (expression is IdentifierNameSyntax name)
            return SymbolHtml.Write(name.Identifier.ValueText);
        var text = Blanks().Replace(expression.ToString(), " ");
        return $"<code>{WebUtility.HtmlEncode(text.Length > Longest ? text[..Longest] + "…" : text)}</code>";
    }

    [GeneratedRegex("^\\s*<span class=\"eo-value\">([^<]*)</span>\\s*$")]
    private static partial Regex Bare();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
