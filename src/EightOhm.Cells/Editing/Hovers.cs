using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.FindSymbols;

namespace EightOhm.Cells.Editing;

/// <summary>What there is to know of a name in a cell.</summary>
internal static class Hovers
{
    /// <summary>What there is to know of the name at a place; null where there is none.</summary>
    public static async Task<HoverAnswer?> At(Document document, int offset, CancellationToken ct)
    {
        var root = (await document.GetSyntaxRootAsync(ct).ConfigureAwait(false))!;
        var token = root.FindToken(offset);
        // Just behind a name is still on it.
        if (!IsName(token, offset) && offset > 0)
            token = root.FindToken(offset - 1);
        if (!IsName(token, offset))
            return null;
        var symbol = await SymbolFinder.FindSymbolAtPositionAsync(document, token.SpanStart, ct).ConfigureAwait(false);
        if (symbol is null or IErrorTypeSymbol)
            return null;
        // The name of a type that is made stands for the constructor that is called.
        if (symbol is INamedTypeSymbol && token.Parent is SimpleNameSyntax { Parent: BaseObjectCreationExpressionSyntax made })
            symbol = (await document.GetSemanticModelAsync(ct).ConfigureAwait(false))!.GetSymbolInfo(made, ct).Symbol ?? symbol;
        return new(new SymbolDocs(symbol).Whole(), token.SpanStart, token.Span.End);
    }

    private static bool IsName(SyntaxToken token, int offset) =>
        (token.IsKind(SyntaxKind.IdentifierToken) || token.Kind() is SyntaxKind.NewKeyword or SyntaxKind.ThisKeyword) && token.Span.Start <= offset && offset <= token.Span.End;
}
