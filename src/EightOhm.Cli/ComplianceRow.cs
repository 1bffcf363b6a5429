namespace EightOhm.Cli;

/// <summary>One line of the compliance sheet, in words ready to be shown.</summary>
internal sealed record ComplianceRow(string Requirement, string Value, string Limit, string Margin, string State)
{
    public static readonly IReadOnlyList<string> Headings = ["Requirement", "Value", "Limit", "Margin", "State"];

    public IReadOnlyList<string> Columns => [Requirement, Value, Limit, Margin, State];
}
