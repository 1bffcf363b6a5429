using System.Diagnostics;
using EightOhm.Display;
using Microsoft.DotNet.Interactive.Events;
using DiagnosticSeverity = Microsoft.CodeAnalysis.DiagnosticSeverity;

namespace EightOhm.Cli.Ends;

/// <summary>Finds the line and the words of a failed cell in what the host reports.</summary>
internal static class CellFailures
{
    public static CellFailure? Find(IReadOnlyList<KernelEvent> events)
    {
        var failed = events.OfType<CommandFailed>().LastOrDefault();
        var error = events.OfType<ErrorProduced>().LastOrDefault();
        if (failed is null)
            return error is null ? null : new CellFailure(FailureKind.Failed, null, null, error.Message);

        var diagnostics = events.OfType<DiagnosticsProduced>().SelectMany(d => d.Diagnostics)
            .Where(d => d.Severity == DiagnosticSeverity.Error).ToList();
        if (failed.Exception is null or Microsoft.DotNet.Interactive.CodeSubmissionCompilationErrorException && diagnostics.Count > 0)
            return FromCompiler(diagnostics, failed.Message);

        return failed.Exception is { } exception
            ? FromException(exception)
            : new CellFailure(FailureKind.Failed, null, null, failed.Message);
    }

    private static CellFailure FromCompiler(
        List<Microsoft.DotNet.Interactive.Diagnostic> diagnostics, string otherwise)
    {
        if (diagnostics.Count == 0)
            return new CellFailure(FailureKind.Failed, null, null, otherwise);

        var first = diagnostics[0];
        var others = diagnostics.Skip(1).Select(d => $"\n  line {d.LinePositionSpan.Start.Line + 1}: {Words(d)}");
        return new CellFailure(FailureKind.Failed, first.LinePositionSpan.Start.Line + 1, null, Words(first) + string.Concat(others));
    }

    private static string Words(Microsoft.DotNet.Interactive.Diagnostic d) =>
        string.IsNullOrEmpty(d.Code) ? d.Message : $"error {d.Code}: {d.Message}";

    private static CellFailure FromException(Exception exception)
    {
        exception = FailureWords.Innermost(exception);
        var kind = exception is OperationCanceledException ? FailureKind.Cancelled
            : FailureWords.IsWithoutAnswer(exception) ? FailureKind.NoAnswer
            : FailureKind.Failed;
        var (line, reached) = LinesOf(exception);
        return new CellFailure(kind, line, reached, FailureWords.Of(exception));
    }

    /// <summary>The innermost frame that belongs to the cell being run (a function may come from an earlier cell), and the outermost.</summary>
    private static (int? Line, int? Reached) LinesOf(Exception exception)
    {
        var frames = new StackTrace(exception, fNeedFileInfo: true).GetFrames()
            .Select(f => (Cell: CellOf(f), Line: f.GetFileLineNumber()))
            .Where(f => f.Cell is not null && f.Line > 0)
            .ToList();
        return frames.Count == 0 ? (null, null) : (frames.First(f => f.Cell == frames[^1].Cell).Line, frames[^1].Line);
    }

    /// <summary>Scripts compile each cell into a class "Submission#n", which holds its functions and lambdas.</summary>
    private static string? CellOf(StackFrame frame)
    {
        var type = frame.GetMethod()?.DeclaringType;
        while (type?.DeclaringType is { } outer)
            type = outer;

        return type?.Name.StartsWith("Submission#", StringComparison.Ordinal) == true ? type.Name : null;
    }
}
