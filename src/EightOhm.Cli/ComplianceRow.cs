using EightOhm.Record;

namespace EightOhm.Cli;

/// <summary>One line of the compliance sheet, in words ready to be shown.</summary>
internal sealed record ComplianceRow(string Requirement, string Value, string Limit, string Margin, string State)
{
    public static readonly IReadOnlyList<string> Headings = ["Requirement", "Value", "Limit", "Margin", "State"];

    public IReadOnlyList<string> Columns => [Requirement, Value, Limit, Margin, State];

    public static ComplianceRow Of(Requirement requirement) => new(
        requirement.Says is { } says ? $"{says} ({requirement.Entry})" : requirement.Entry,
        requirement.Reads,
        requirement.Limit.ToString(),
        requirement.Margin?.ToString() ?? "–",
        requirement.State);
}
