using System.Linq;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace EightOhm.Generators;

/// <summary>Makes a formula's expression fit an expression tree: members of the object get their owner, literals their plain call,
/// and constants stay as they were written.</summary>
/// <remarks>An extension property inside an expression tree does not compile (CS9296), its getter does. The compiler would work 1.0/6 into
/// 0.1667 and a constant's name into its value; a call round the number keeps it from that and gives the same bits.</remarks>
internal sealed class StepsRewriter(SemanticModel model) : CSharpSyntaxRewriter
{
    /// <summary>The name of the object a formula belongs to.</summary>
    public const string Self = "self";

    private const string Literals = "global::EightOhm.Quantities.Literals";
    private const string Steps = "global::EightOhm.Explaining.FormulaSteps";

    public string Text(ExpressionSyntax expression) => Visit(expression).ToString();

    public override SyntaxNode? VisitThisExpression(ThisExpressionSyntax node) => SyntaxFactory.IdentifierName(Self);

    public override SyntaxNode? VisitIdentifierName(IdentifierNameSyntax node)
    {
        if (node.Parent is MemberAccessExpressionSyntax access && access.Name == node)
            return node;
        if (IsConstant(node))
            return Constant(node.Identifier.Text, node);
        return model.GetSymbolInfo(node).Symbol is { IsStatic: false, Kind: SymbolKind.Property or SymbolKind.Field or SymbolKind.Method }
            ? SyntaxFactory.ParseExpression($"{Self}.{node.Identifier.Text}")
            : node;
    }

    public override SyntaxNode? VisitMemberAccessExpression(MemberAccessExpressionSyntax node) =>
        IsLiteral(node) ? SyntaxFactory.ParseExpression($"{Literals}.get_{node.Name.Identifier.Text}({Visit(node.Expression)})")
        : IsConstant(node) ? Constant(node.Name.Identifier.Text, node)
        : base.VisitMemberAccessExpression(node);

    // Of two constants the left one is kept apart; deeper ones have been when their turn comes.
    public override SyntaxNode? VisitBinaryExpression(BinaryExpressionSyntax node)
    {
        var visited = (BinaryExpressionSyntax)base.VisitBinaryExpression(node)!;
        return IsLeaf(node.Left) && IsLeaf(node.Right) && model.GetConstantValue(node).HasValue && visited.Left.ToString() == node.Left.ToString()
            ? visited.WithLeft(SyntaxFactory.ParseExpression($"{Steps}.Kept({visited.Left}) "))
            : visited;
    }

    private static bool IsLeaf(ExpressionSyntax side) => !side.DescendantNodesAndSelf().OfType<BinaryExpressionSyntax>().Any();

    private bool IsConstant(ExpressionSyntax node) =>
        model.GetSymbolInfo(node).Symbol is IFieldSymbol { HasConstantValue: true, ContainingType.TypeKind: not TypeKind.Enum };

    private static ExpressionSyntax Constant(string name, ExpressionSyntax value) => SyntaxFactory.ParseExpression($"{Steps}.Constant(\"{name}\", {value.WithoutTrivia()})");

    // 100.W, and also (-25).degC or x.W: the owner of an extension property is the extension block inside the class.
    private bool IsLiteral(MemberAccessExpressionSyntax node) =>
        model.GetSymbolInfo(node).Symbol is IPropertySymbol { IsStatic: false, ContainingType.ContainingType: { Name: "Literals" } holder }
        && holder.ContainingNamespace.ToDisplayString() == "EightOhm.Quantities";
}
