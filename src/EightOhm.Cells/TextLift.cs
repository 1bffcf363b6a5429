using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace EightOhm.Cells;

/// <summary>Lets a cell write <c>$"{x}"</c>: a quantity in an interpolated string reads as the trade writes it, in any culture.</summary>
/// <remarks>Each value passes through <see cref="EightOhm.Quantities.InText"/>, which leaves all but quantities alone. A program has a string
/// builder of its own for this; a cell cannot declare one. The text of a line changes in place, so line numbers in messages stay the cell's.</remarks>
internal static class TextLift
{
    private const string Before = "EightOhm.Quantities.InText.Of(";

    /// <summary>The cell's code with the values of its interpolated strings passed through; the same text when there are none.</summary>
    /// <param name="code">The cell's code.</param>
    public static string Rewrite(string code)
    {
        if (!code.Contains('$', StringComparison.Ordinal))
            return code;
        return CellText.With(code, CellText.Parse(code).DescendantNodes().OfType<InterpolationSyntax>()
            .Where(i => !i.ContainsDiagnostics && !IsConstant(i) && i.Expression is not LiteralExpressionSyntax)
            .SelectMany(i => CellText.Around(Before, i.Expression.Span)));
    }

    // Where the language asks for a constant a text of constants must stay one.
    private static bool IsConstant(InterpolationSyntax text) => text.Ancestors().Any(a => a switch
    {
        LocalDeclarationStatementSyntax local => local.IsConst,
        FieldDeclarationSyntax field => field.Modifiers.Any(SyntaxKind.ConstKeyword),
        AttributeSyntax or ConstantPatternSyntax or CaseSwitchLabelSyntax => true,
        EqualsValueClauseSyntax { Parent: ParameterSyntax } => true,
        _ => false,
    });
}
