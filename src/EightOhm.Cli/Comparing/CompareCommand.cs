using System.CommandLine;

namespace EightOhm.Cli.Comparing;

/// <summary>The arguments and options of <c>eightohm compare</c>.</summary>
internal sealed class CompareCommand : Command
{
    private readonly Argument<string> before = new("record") { Description = "The record of the design before." };

    private readonly Argument<string> after = new("other-record") { Description = "The record of the design after." };

    private readonly Option<string?> page = new("--page") { Description = "Writes the differences as a page, too.", HelpName = "file.html" };

    private readonly Option<string?> csv = new("--csv") { Description = "Writes the differences as comma-separated values, too.", HelpName = "file.csv" };

    public CompareCommand()
        : base("compare", "Shows what differs between two kept records: inputs, requirements with failures first, results.")
    {
        Arguments.Add(before);
        Arguments.Add(after);
        Options.Add(page);
        Options.Add(csv);
    }

    public CompareRequest Request(ParseResult parsed) =>
        new(parsed.GetValue(before)!, parsed.GetValue(after)!, parsed.GetValue(page), parsed.GetValue(csv));
}

/// <summary>What the person asked for.</summary>
/// <param name="Before">The record before.</param>
/// <param name="After">The record after.</param>
/// <param name="Page">The file of the page, or null.</param>
/// <param name="Csv">The file of the comma-separated values, or null.</param>
internal sealed record CompareRequest(string Before, string After, string? Page, string? Csv);
