using System.Text.Json.Nodes;

namespace EightOhm.Cli.Running;

/// <summary>What running a cell gave: its outputs, or why it failed.</summary>
internal readonly record struct CellOutcome(JsonArray Outputs, CellFailure? Failure);

/// <summary>Why a cell failed.</summary>
/// <param name="Line">Line within the cell, from 1; null where the host cannot tell.</param>
/// <param name="Message">The compiler's or the library's own words.</param>
/// <param name="Cancelled">The cell stopped because it was asked to.</param>
internal sealed record CellFailure(int? Line, string Message, bool Cancelled);
