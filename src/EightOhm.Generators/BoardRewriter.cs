using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace EightOhm.Generators;

/// <summary>Makes a formula's expression fit an expression tree: members of the object get their owner, literals their plain call.</summary>
/// <remarks>An extension property inside an expression tree does not compile (CS9296), its getter does.</remarks>
internal sealed class BoardRewriter(SemanticModel model) : CSharpSyntaxRewriter
{
    /// <summary>The name of the object a formula belongs to.</summary>
    public const string Self = "self";

    private const string Literals = "global::EightOhm.Quantities.Literals";

    public string Text(ExpressionSyntax expression) => Visit(expression).ToString();

    public override SyntaxNode? VisitThisExpression(ThisExpressionSyntax node) => SyntaxFactory.IdentifierName(Self);

    public override SyntaxNode? VisitIdentifierName(IdentifierNameSyntax node)
    {
        if (node.Parent is MemberAccessExpressionSyntax access && access.Name == node)
            return node;
        return model.GetSymbolInfo(node).Symbol is { IsStatic: false, Kind: SymbolKind.Property or SymbolKind.Field or SymbolKind.Method }
            ? SyntaxFactory.ParseExpression($"{Self}.{node.Identifier.Text}")
            : node;
    }

    public override SyntaxNode? VisitMemberAccessExpression(MemberAccessExpressionSyntax node) =>
        IsLiteral(node)
            ? SyntaxFactory.ParseExpression($"{Literals}.get_{node.Name.Identifier.Text}({Visit(node.Expression)})")
            : base.VisitMemberAccessExpression(node);

    // 100.W, and also (-25).degC or x.W: the owner of an extension property is the extension block inside the class.
    private bool IsLiteral(MemberAccessExpressionSyntax node) =>
        model.GetSymbolInfo(node).Symbol is IPropertySymbol { IsStatic: false, ContainingType.ContainingType: { Name: "Literals" } holder }
        && holder.ContainingNamespace.ToDisplayString() == "EightOhm.Quantities";
}
