using System.Collections.Frozen;
using EightOhm.Quantities;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace EightOhm.Cells;

/// <summary>Lets a cell write <c>Explain(() => Sqrt(100.W * 8.Ohm))</c>: inside a lambda an argument's literals become calls of their getters,
/// and a quotient of numbers keeps its numbers apart.</summary>
/// <remarks>The compiler takes no extension property into an expression tree (CS9296), but it takes the getter behind it; and it would work
/// 1.0/6 into 0.1667 before anybody could show it. The text of a line changes in place, so line numbers in messages stay the cell's.</remarks>
internal static class LiteralLift
{
    private const string Kept = "EightOhm.Explaining.FormulaSteps.Kept(";

    private static readonly FrozenSet<string> Names = typeof(Literals).GetMethods()
        .Where(m => m.IsStatic && m.Name.StartsWith("get_", StringComparison.Ordinal))
        .Select(m => m.Name["get_".Length..])
        .ToFrozenSet(StringComparer.Ordinal);

    /// <summary>The cell's code with its literals lifted; the same text when there are none.</summary>
    /// <param name="code">The cell's code.</param>
    public static string Rewrite(string code) => CellText.With(code, Changes(code));

    /// <summary>What is put in and taken out for that.</summary>
    /// <param name="code">The cell's code.</param>
    public static IReadOnlyList<TextChange> Changes(string code) =>
        [.. CellText.Parse(code).DescendantNodes()
            .SelectMany(n => n switch
            {
                MemberAccessExpressionSyntax m when IsLiteral(m) && InLambdaArgument(m) => Getter(m),
                BinaryExpressionSyntax b when IsQuotient(b) && InLambdaArgument(b) && MayChange(b) => CellText.Around(Kept, First(b.Left).Span),
                _ => [],
            })];

    // 100.W, and also (-10).degC or (1.5).V; not x.W of a variable, which may be any property.
    private static bool IsLiteral(MemberAccessExpressionSyntax node) => Names.Contains(node.Name.Identifier.ValueText)
        && node.Expression is LiteralExpressionSyntax or ParenthesizedExpressionSyntax && IsNumber(node.Expression);

    // 100.W becomes get_W(100): the call is put before the number, the unit gives way to its bracket.
    private static IEnumerable<TextChange> Getter(MemberAccessExpressionSyntax node) =>
    [
        new(new TextSpan(node.SpanStart, 0), $"EightOhm.Quantities.Literals.get_{node.Name.Identifier.ValueText}("),
        new(TextSpan.FromBounds(node.Expression.Span.End, node.Span.End), ")"),
    ];

    // A quotient of bare numbers, the innermost of them: its first number is kept apart, and the compiler leaves the whole as it is written.
    private static bool IsQuotient(BinaryExpressionSyntax node) => node.IsKind(SyntaxKind.DivideExpression) && IsNumber(node)
        && !node.DescendantNodes().Any(d => d.IsKind(SyntaxKind.DivideExpression));

    private static ExpressionSyntax First(ExpressionSyntax e) => e switch
    {
        ParenthesizedExpressionSyntax p => First(p.Expression),
        BinaryExpressionSyntax b => First(b.Left),
        _ => e,
    };

    private static bool IsNumber(ExpressionSyntax e) => e switch
    {
        LiteralExpressionSyntax l => l.IsKind(SyntaxKind.NumericLiteralExpression),
        ParenthesizedExpressionSyntax p => IsNumber(p.Expression),
        PrefixUnaryExpressionSyntax u => u.Kind() is SyntaxKind.UnaryMinusExpression or SyntaxKind.UnaryPlusExpression && IsNumber(u.Operand),
        CastExpressionSyntax c => IsNumber(c.Expression),
        BinaryExpressionSyntax b => IsNumber(b.Left) && IsNumber(b.Right),
        _ => false,
    };

    private static bool InLambdaArgument(SyntaxNode node) =>
        node.Ancestors().OfType<LambdaExpressionSyntax>().Any(l => l.Parent is ArgumentSyntax);

    // Where the language asks for a constant (a pattern, a statement's const) the number must stay one.
    private static bool MayChange(SyntaxNode node) =>
        !node.Ancestors().TakeWhile(a => a is not LambdaExpressionSyntax { Parent: ArgumentSyntax }).Any(a => a is PatternSyntax or StatementSyntax or ParameterSyntax);
}
