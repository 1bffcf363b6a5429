using System.Collections.Frozen;
using EightOhm.Quantities;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace EightOhm.Notebook;

/// <summary>Lets a cell write <c>Explain(() => Sqrt(100.W * 8.Ohm))</c>: inside a lambda an argument's literals become calls of their getters.</summary>
/// <remarks>The compiler takes no extension property into an expression tree (CS9296), but it takes the getter behind it. The text of a line
/// changes in place, so line numbers in messages stay the cell's.</remarks>
internal static class LiteralLift
{
    private static readonly FrozenSet<string> Names = typeof(Literals).GetMethods()
        .Where(m => m.IsStatic && m.Name.StartsWith("get_", StringComparison.Ordinal))
        .Select(m => m.Name["get_".Length..])
        .ToFrozenSet(StringComparer.Ordinal);

    private static readonly CSharpParseOptions Script = new(LanguageVersion.Preview, kind: SourceCodeKind.Script);

    /// <summary>The cell's code with its literals lifted; the same text when there are none.</summary>
    /// <param name="code">The cell's code.</param>
    public static string Rewrite(string code)
    {
        if (!code.Contains("=>", StringComparison.Ordinal))
            return code;
        var found = CSharpSyntaxTree.ParseText(code, Script).GetRoot().DescendantNodes()
            .OfType<MemberAccessExpressionSyntax>()
            .Where(m => m.Expression.IsKind(SyntaxKind.NumericLiteralExpression) && Names.Contains(m.Name.Identifier.ValueText) && InLambdaArgument(m))
            .Select(m => new TextChange(m.Span, $"EightOhm.Quantities.Literals.get_{m.Name.Identifier.ValueText}({m.Expression})"))
            .ToList();
        return found.Count == 0 ? code : SourceText.From(code).WithChanges(found).ToString();
    }

    private static bool InLambdaArgument(SyntaxNode node) =>
        node.Ancestors().OfType<LambdaExpressionSyntax>().Any(l => l.Parent is ArgumentSyntax);
}
