using System.Diagnostics;
using EightOhm.Display;

namespace EightOhm.Cells.Running;

/// <summary>Finds the line and the words of a cell that threw.</summary>
public static class CellFailures
{
    /// <summary>What an exception out of a cell says.</summary>
    /// <param name="exception">What the cell threw.</param>
    public static CellFailure Of(Exception exception)
    {
        exception = FailureWords.Innermost(exception);
        var kind = exception is OperationCanceledException ? FailureKind.Cancelled
            : FailureWords.IsWithoutAnswer(exception) ? FailureKind.NoAnswer
            : FailureKind.Failed;
        var (line, reached) = LinesOf(exception);
        return new CellFailure(kind, line, reached, FailureWords.Of(exception));
    }

    // The innermost frame that belongs to the cell being run (a function may come from an earlier cell), and the outermost.
    private static (int? Line, int? Reached) LinesOf(Exception exception)
    {
        var frames = new StackTrace(exception, fNeedFileInfo: true).GetFrames()
            .Select(f => (Cell: CellOf(f), Line: f.GetFileLineNumber()))
            .Where(f => f.Cell is not null && f.Line > 0)
            .ToList();
        return frames.Count == 0 ? (null, null) : (frames.First(f => f.Cell == frames[^1].Cell).Line, frames[^1].Line);
    }

    // Each cell is compiled into a class "Submission#n", which holds its functions and lambdas.
    private static string? CellOf(StackFrame frame)
    {
        var type = frame.GetMethod()?.DeclaringType;
        while (type?.DeclaringType is { } outer)
            type = outer;

        return type?.Name.StartsWith("Submission#", StringComparison.Ordinal) == true ? type.Name : null;
    }
}
