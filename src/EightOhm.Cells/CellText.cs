using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Text;

namespace EightOhm.Cells;

/// <summary>A cell's code as text that is changed in place: line numbers in messages stay the cell's.</summary>
internal static class CellText
{
    /// <summary>How a cell is parsed.</summary>
    public static CSharpParseOptions Script { get; } = new(LanguageVersion.Preview, kind: SourceCodeKind.Script);

    /// <summary>The code with the changes made; the same text when there are none.</summary>
    /// <param name="code">The cell's code.</param>
    /// <param name="changes">What is put in and taken out, no two of them on the same letters.</param>
    public static string With(string code, IEnumerable<TextChange> changes)
    {
        var all = changes.OrderBy(c => c.Span.Start).ToList();
        return all.Count == 0 ? code : SourceText.From(code).WithChanges(all).ToString();
    }
}
