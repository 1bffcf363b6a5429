using System.Collections.Generic;
using System.Linq;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace EightOhm.Generators;

/// <summary>Finds divisions of whole numbers, which drop the rest as no formula on paper does.</summary>
internal static class WholeDivision
{
    public static IEnumerable<Diagnostic> Found(FormulaBody body, SemanticModel model) =>
        from division in body.All().SelectMany(e => e.DescendantNodesAndSelf()).OfType<BinaryExpressionSyntax>()
        where division.IsKind(SyntaxKind.DivideExpression) && IsWhole(model.GetTypeInfo(division).Type)
        select Diagnostic.Create(Problems.WholeDivision, division.GetLocation(), division.ToString(), Instead(division));

    private static bool IsWhole(ITypeSymbol? type) => type?.SpecialType is >= SpecialType.System_SByte and <= SpecialType.System_UInt64;

    private static string Instead(BinaryExpressionSyntax division) =>
        division.Right.IsKind(SyntaxKind.NumericLiteralExpression) ? $"{division.Left} / {division.Right}.0"
        : division.Left.IsKind(SyntaxKind.NumericLiteralExpression) ? $"{division.Left}.0 / {division.Right}"
        : $"{division.Left} / (double){division.Right}";
}
