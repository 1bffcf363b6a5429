using EightOhm.Display.Tables;

namespace EightOhm.Cli.Sheets;

/// <summary>One design of a run: its record, and how its requirements stand.</summary>
/// <param name="Name">The design's name.</param>
/// <param name="Record">The record's file, from the book's folder.</param>
/// <param name="Compliance">How its requirements stand.</param>
/// <param name="Moved">What moved with what was set: a table each for inputs, requirements and results that differ; null when nothing was set.</param>
internal sealed record DesignSheet(string Name, string Record, ComplianceSheet Compliance, IReadOnlyList<Table>? Moved);
