using System.Globalization;
using EightOhm.Cells;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace EightOhm.Design.Tests.Truth;

/// <summary>What a design notebook's code may not type outside an input: a dimension, a figure, the design's name. It would not move with the design.</summary>
internal static class CodeTruth
{
    private static readonly string[] Inputs = ["Target", "Choose", "Assume", "Part"];

    // One half, twice, a square, 4·k·T: what a formula is made of. Anything else is somebody's choice.
    private const int LargestOfAFormula = 4;

    /// <summary>The faults of a code cell.</summary>
    /// <param name="code">The cell, its package lines left out.</param>
    /// <param name="names">The words of the design's name.</param>
    public static IEnumerable<string> Faults(string code, IReadOnlyCollection<string> names)
    {
        var root = CellText.Parse(code);
        foreach (var literal in root.DescendantNodes().OfType<LiteralExpressionSyntax>().Where(l => l.IsKind(SyntaxKind.NumericLiteralExpression)))
        {
            if (Fault(literal) is { } fault && !OfAnInput(literal))
                yield return fault;
        }

        foreach (var text in root.DescendantTokens().Where(IsText))
        {
            foreach (var fault in ProseTruth.Figures(text.ValueText).Concat(ProseTruth.Names(text.ValueText, names)))
                yield return fault;
        }

        foreach (var comment in root.DescendantTrivia().Where(t => t.IsKind(SyntaxKind.SingleLineCommentTrivia) || t.IsKind(SyntaxKind.MultiLineCommentTrivia)))
        {
            foreach (var fault in ProseTruth.Faults(comment.ToString(), names))
                yield return fault;
        }
    }

    private static string? Fault(LiteralExpressionSyntax literal)
    {
        var value = Convert.ToDouble(literal.Token.Value, CultureInfo.InvariantCulture);
        if (value == 0)
            return null;
        // (-10).degC has its unit behind the brackets.
        SyntaxNode at = literal;
        while (at.Parent is ParenthesizedExpressionSyntax or PrefixUnaryExpressionSyntax)
            at = at.Parent;
        if (at.Parent is MemberAccessExpressionSyntax unit && unit.Expression == at)
            return $"a dimension, \"{unit}\": make it an entry";
        return value == Math.Floor(value) && value <= LargestOfAFormula ? null : $"a bare number, \"{literal}\": make it an entry";
    }

    // The value of a design.Target("P", 100.W, …), however it is made up.
    private static bool OfAnInput(SyntaxNode literal) => literal.Ancestors().OfType<InvocationExpressionSyntax>().Any(call =>
        call.Expression is MemberAccessExpressionSyntax { Expression: IdentifierNameSyntax { Identifier.Text: "design" }, Name: var verb } && Inputs.Contains(verb.Identifier.Text));

    private static bool IsText(SyntaxToken token) => token.Kind() is SyntaxKind.StringLiteralToken or SyntaxKind.InterpolatedStringTextToken
        or SyntaxKind.SingleLineRawStringLiteralToken or SyntaxKind.MultiLineRawStringLiteralToken
        // The digits asked of a value, {P:3}, are a format and no figure.
        && token.Parent is not InterpolationFormatClauseSyntax;
}
