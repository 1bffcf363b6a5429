using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace EightOhm.Cells;

/// <summary>A cell's code as text that is changed in place: line numbers in messages stay the cell's.</summary>
internal static class CellText
{
    /// <summary>How a cell is parsed.</summary>
    public static CSharpParseOptions Script { get; } = new(LanguageVersion.Preview, kind: SourceCodeKind.Script);

    /// <summary>The code as the compiler reads it.</summary>
    /// <param name="code">The cell's code.</param>
    public static CompilationUnitSyntax Parse(string code) => CSharpSyntaxTree.ParseText(code, Script).GetCompilationUnitRoot();

    /// <summary>What puts a call around a piece of the code.</summary>
    /// <param name="call">The call with its opening bracket.</param>
    /// <param name="span">The piece.</param>
    public static IEnumerable<TextChange> Around(string call, TextSpan span) => [new(new TextSpan(span.Start, 0), call), new(new TextSpan(span.End, 0), ")")];

    /// <summary>The code with the changes made; the same text when there are none.</summary>
    /// <param name="code">The cell's code.</param>
    /// <param name="changes">What is put in and taken out, no two of them on the same letters.</param>
    public static string With(string code, IEnumerable<TextChange> changes)
    {
        var all = changes.OrderBy(c => c.Span.Start).ToList();
        return all.Count == 0 ? code : SourceText.From(code).WithChanges(all).ToString();
    }
}
