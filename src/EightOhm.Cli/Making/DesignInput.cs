using EightOhm.Cells;
using EightOhm.Cli.Notebooks;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace EightOhm.Cli.Making;

/// <summary>An input verb in a cell of a design: a target, a choice, an assumption with its value, or a part with its card.</summary>
/// <param name="Name">The entry's name, a part's role.</param>
/// <param name="Verb">Target, Choose, Assume or Part.</param>
/// <param name="Code">How its value is written; null for a part.</param>
/// <param name="Value">The value; a part's card file.</param>
/// <param name="At">Where the value stands in the cell.</param>
/// <param name="Words">Where the reason stands, from what separates it from the value on, with its text; null where there is none.</param>
/// <param name="CardType">The type of card that a part asks for; null for a transistor's.</param>
internal sealed record DesignInput(string Name, string Verb, LiteralCode? Code, object Value, TextSpan At, (TextSpan At, string Text)? Words, string? CardType = null)
{
    private static readonly string[] Verbs = ["Target", "Choose", "Assume", "Part"];

    public bool IsPart => Verb == "Part";

    /// <summary>The inputs of a cell, in its order. An input whose value is no literal is none that can be rewritten.</summary>
    public static IReadOnlyList<DesignInput> Of(string source) =>
        [.. CellText.Parse(source).DescendantNodes().OfType<InvocationExpressionSyntax>().Select(Read).OfType<DesignInput>()];

    private static DesignInput? Read(InvocationExpressionSyntax call)
    {
        if (call.Expression is not MemberAccessExpressionSyntax { Name: var method } || !Verbs.Contains(method.Identifier.ValueText))
            return null;
        var arguments = call.ArgumentList.Arguments;
        if (arguments.Count < 2 || Text(arguments[0].Expression) is not { } name)
            return null;
        if (method.Identifier.ValueText == "Part")
        {
            return Text(arguments[1].Expression) is { } file
                ? new(name, "Part", null, file, arguments[1].Expression.Span, null, (method as GenericNameSyntax)?.TypeArgumentList.Arguments[0].ToString())
                : null;
        }

        if (LiteralCode.Read(arguments[1].Expression) is not var (code, value))
            return null;
        (TextSpan, string)? words = arguments.Count > 2 && arguments[2].NameColon?.Name.Identifier.ValueText is null or "because" or "note" or "basis" && Text(arguments[2].Expression) is { } text
            ? (TextSpan.FromBounds(arguments[2].NameColon is null ? arguments.GetSeparator(1).Span.End : arguments[2].Expression.SpanStart, arguments[2].Expression.Span.End), text)
            : null;
        return new(name, method.Identifier.ValueText, code, value, arguments[1].Expression.Span, words);
    }

    private static string? Text(ExpressionSyntax expression) => expression switch
    {
        LiteralExpressionSyntax l when l.IsKind(SyntaxKind.StringLiteralExpression) => l.Token.ValueText,
        BinaryExpressionSyntax b when b.IsKind(SyntaxKind.AddExpression) => Text(b.Left) is { } left && Text(b.Right) is { } right ? left + right : null,
        _ => null,
    };
}
