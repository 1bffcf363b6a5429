using System.Text;
using EightOhm.Cells;
using EightOhm.Cli.Notebooks;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace EightOhm.Cli.Book;

/// <summary>A quiet tint for C#, by the compiler's own reading of the code, which is in the process anyway.</summary>
internal static class CodeTint
{
    public static string ToHtml(string code)
    {
        var html = new StringBuilder();
        foreach (var token in CellText.Parse(code).DescendantTokens())
        {
            AddTrivia(html, token.LeadingTrivia);
            Add(html, Class(token), token.Text);
            AddTrivia(html, token.TrailingTrivia);
        }

        return html.ToString();
    }

    private static void AddTrivia(StringBuilder html, SyntaxTriviaList trivia)
    {
        foreach (var piece in trivia)
            Add(html, piece.Kind() is SyntaxKind.SingleLineCommentTrivia or SyntaxKind.MultiLineCommentTrivia ? "c" : null, piece.ToFullString());
    }

    private static string? Class(SyntaxToken token) => token.Kind() switch
    {
        SyntaxKind.NumericLiteralToken => "n",
        SyntaxKind.StringLiteralToken or SyntaxKind.CharacterLiteralToken or SyntaxKind.SingleLineRawStringLiteralToken or
            SyntaxKind.MultiLineRawStringLiteralToken or SyntaxKind.InterpolatedStringStartToken or SyntaxKind.InterpolatedVerbatimStringStartToken or
            SyntaxKind.InterpolatedStringTextToken or SyntaxKind.InterpolatedStringEndToken => "s",
        SyntaxKind.IdentifierToken when token.Text == "var" => "k",
        var kind when SyntaxFacts.IsKeywordKind(kind) => "k",
        _ => null,
    };

    private static void Add(StringBuilder html, string? name, string text)
    {
        var escaped = PageTemplate.Escape(text);
        if (name is null || text.Length == 0)
            html.Append(escaped);
        else
            html.Append("<span class=\"").Append(name).Append("\">").Append(escaped).Append("</span>");
    }
}
