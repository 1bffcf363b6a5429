using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace EightOhm.Mutants;

/// <summary>One wrong letter put into a file: what stood there and what stands there now.</summary>
internal sealed record Mutant(string File, TextSpan Span, string Was, string Is, int Line)
{
    /// <summary>Every mutant of a file: signs of arithmetic and comparison, the larger for the smaller, a number a little off, a sum for its mean, sine for cosine.</summary>
    public static IEnumerable<Mutant> In(string file, SyntaxTree tree)
    {
        foreach (var node in tree.GetRoot().DescendantNodes())
        {
            // What a guard refuses and what an attribute says are other tests' business.
            if (node.Ancestors().Any(up => up is AttributeSyntax or ThrowStatementSyntax or ThrowExpressionSyntax or InterpolatedStringExpressionSyntax)
                || node.FirstAncestorOrSelf<InvocationExpressionSyntax>() is { } call && call.Expression.ToString().StartsWith("Guard.", StringComparison.Ordinal))
                continue;
            foreach (var (span, was, now) in Of(node))
                yield return new Mutant(file, span, was, now, tree.GetLineSpan(span).StartLinePosition.Line + 1);
        }
    }

    private static IEnumerable<(TextSpan Span, string Was, string Is)> Of(SyntaxNode node)
    {
        switch (node)
        {
            case BinaryExpressionSyntax binary when Swaps.TryGetValue(binary.OperatorToken.Kind(), out var other):
                yield return (binary.OperatorToken.Span, binary.OperatorToken.Text, other);
                break;
            case IdentifierNameSyntax { Identifier.Text: var name } identifier when Names.TryGetValue(name, out var instead) && identifier.Parent is MemberAccessExpressionSyntax or InvocationExpressionSyntax:
                yield return (identifier.Identifier.Span, name, instead);
                break;
            case LiteralExpressionSyntax literal when literal.IsKind(SyntaxKind.NumericLiteralExpression) && literal.Token.Value is double or int:
                var value = Convert.ToDouble(literal.Token.Value, System.Globalization.CultureInfo.InvariantCulture);
                if (value is > 1 and < 1000)
                    yield return (literal.Span, literal.Token.Text, literal.Token.Value is int whole ? $"{whole + 1}" : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{value * 1.05:R}"));
                break;
        }
    }

    private static readonly Dictionary<SyntaxKind, string> Swaps = new()
    {
        [SyntaxKind.PlusToken] = "-",
        [SyntaxKind.MinusToken] = "+",
        [SyntaxKind.AsteriskToken] = "/",
        [SyntaxKind.SlashToken] = "*",
        [SyntaxKind.LessThanToken] = ">",
        [SyntaxKind.GreaterThanToken] = "<",
        [SyntaxKind.LessThanEqualsToken] = ">",
        [SyntaxKind.GreaterThanEqualsToken] = "<",
        [SyntaxKind.AmpersandAmpersandToken] = "||",
        [SyntaxKind.BarBarToken] = "&&",
        [SyntaxKind.EqualsEqualsToken] = "!=",
    };

    private static readonly Dictionary<string, string> Names = new(StringComparer.Ordinal)
    {
        ["Max"] = "Min",
        ["Min"] = "Max",
        ["MaxBy"] = "MinBy",
        ["MinBy"] = "MaxBy",
        ["Sin"] = "Cos",
        ["Cos"] = "Sin",
        ["Sum"] = "Average",
        ["First"] = "Last",
        ["Last"] = "First",
    };
}
