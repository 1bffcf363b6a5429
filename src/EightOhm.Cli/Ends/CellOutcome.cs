using System.Text.Json.Nodes;

namespace EightOhm.Cli.Ends;

/// <summary>What running a cell gave: what it showed, and why it did not come to its end.</summary>
/// <param name="Outputs">What it showed, also what came before a failure.</param>
/// <param name="Failure">Null when the cell ran to its end.</param>
internal readonly record struct CellOutcome(JsonArray Outputs, CellFailure? Failure);

/// <summary>Why a cell did not come to its end.</summary>
/// <param name="Kind">Whether the design has no answer, or the cell's code is wrong.</param>
/// <param name="Line">Line within the cell, from 1; null where the host cannot tell.</param>
/// <param name="Reached">The line that the cell itself had come to, which may call what failed; null where the host cannot tell.</param>
/// <param name="Message">The compiler's or the library's own words.</param>
internal sealed record CellFailure(FailureKind Kind, int? Line, int? Reached, string Message);

/// <summary>What a cell's failure means.</summary>
internal enum FailureKind
{
    /// <summary>The library refused a value or could not reach a target: the design's numbers have no answer.</summary>
    NoAnswer,

    /// <summary>The code is wrong: it does not compile, or does what it must not.</summary>
    Failed,

    /// <summary>The cell stopped because it was asked to.</summary>
    Cancelled,
}
