using System.Globalization;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Text;

namespace EightOhm.Cells.Editing;

/// <summary>What the compiler has against a cell, at the places of the text as it is written.</summary>
internal static class Faults
{
    // "string? s": a cell asks for no watch over nulls, and the mark does no harm.
    private const string Annotation = "CS8632";

    /// <summary>The errors and warnings.</summary>
    /// <param name="document">The cell with its literals lifted, as it is compiled.</param>
    /// <param name="changes">What was changed for that.</param>
    /// <param name="text">The text as it is written.</param>
    /// <param name="ct">Stops it.</param>
    public static async Task<IReadOnlyList<Fault>> Of(Document document, IReadOnlyList<TextChange> changes, SourceText text, CancellationToken ct)
    {
        var model = (await document.GetSemanticModelAsync(ct).ConfigureAwait(false))!;
        var places = new TypedPlaces(changes);
        // An assembly that a cell names and nobody finds is told by the whole alone.
        return [.. model.GetDiagnostics(cancellationToken: ct).Concat(model.Compilation.GetDeclarationDiagnostics(ct))
            .Where(d => d.Severity >= DiagnosticSeverity.Warning && !d.IsSuppressed && d.Id != Annotation && d.Location.SourceTree == model.SyntaxTree)
            .Select(d => Of(d, places, text)).Distinct().OrderBy(f => f.From).ThenBy(f => f.To)];
    }

    private static Fault Of(Diagnostic diagnostic, TypedPlaces places, SourceText text)
    {
        var span = diagnostic.Location.SourceSpan;
        var from = Math.Min(places.Of(span.Start), text.Length);
        var to = Math.Clamp(places.Of(span.End), from, text.Length);
        return new(from, to, text.Lines.GetLinePosition(from).Line + 1, diagnostic.GetMessage(CultureInfo.InvariantCulture), diagnostic.Severity == DiagnosticSeverity.Error);
    }
}
