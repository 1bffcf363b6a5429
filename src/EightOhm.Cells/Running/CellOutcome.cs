using System.Text.Json.Nodes;

namespace EightOhm.Cells.Running;

/// <summary>What running a cell gave: what it showed, and why it did not come to its end.</summary>
/// <param name="Outputs">What it showed, also what came before a failure, as a notebook file holds it.</param>
/// <param name="Failure">Null when the cell ran to its end.</param>
public sealed record CellOutcome(JsonArray Outputs, CellFailure? Failure);

/// <summary>Why a cell did not come to its end.</summary>
/// <param name="Kind">Whether the design has no answer, or the cell's code is wrong.</param>
/// <param name="Line">Line within the cell, from 1; null where the host cannot tell.</param>
/// <param name="Reached">The line that the cell itself had come to, which may call what failed; null where the host cannot tell.</param>
/// <param name="Message">The compiler's or the library's own words.</param>
public sealed record CellFailure(FailureKind Kind, int? Line, int? Reached, string Message)
{
    /// <summary>The failure of a cell that does not compile.</summary>
    /// <param name="faults">Its faults, at least one.</param>
    public static CellFailure Of(IReadOnlyList<Compiling.CellFault> faults)
    {
        ArgumentNullException.ThrowIfNull(faults);
        var others = faults.Skip(1).Select(f => FormattableString.Invariant($"\n  line {f.Line}: {f.Words}"));
        return new(FailureKind.Failed, faults[0].Line, null, faults[0].Words + string.Concat(others));
    }
}

/// <summary>What a cell's failure means.</summary>
public enum FailureKind
{
    /// <summary>The library refused a value or could not reach a target: the design's numbers have no answer.</summary>
    NoAnswer,

    /// <summary>The code is wrong: it does not compile, or does what it must not.</summary>
    Failed,

    /// <summary>The cell stopped because it was asked to.</summary>
    Cancelled,
}
