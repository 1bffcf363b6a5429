using System.CommandLine;
using System.Globalization;
using EightOhm.Cli.Running;

namespace EightOhm.Cli.Printing;

/// <summary>The arguments and options of <c>eightohm book</c>.</summary>
internal sealed class BookCommand : Command
{
    private readonly Argument<string> notebooks = new("notebook-or-folder") { Description = "A notebook (.ipynb), a folder of notebooks, or a folder of such folders." };

    private readonly Option<string> pdf = new("--pdf") { Description = "The document to print into.", HelpName = "file.pdf", Required = true };

    private readonly Option<bool> noCode = new("--no-code") { Description = "Leaves the cells' code out; their results stay." };

    private readonly Option<string?> revision = new("--revision") { Description = "What the title page calls this state of the design; without it the record's fingerprint.", HelpName = "words" };

    // A document on paper bears the day of its printing; whoever wants the same bytes again names it.
    private readonly Option<string> date = new("--date")
    {
        Description = "The date on the title page, as year-month-day; without it that of today.",
        HelpName = "2027-01-31",
        DefaultValueFactory = _ => TimeProvider.System.GetLocalNow().ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
    };

    private readonly Option<string> limit = RunCommand.LimitOption();

    public BookCommand()
        : base("book", "Runs notebooks and prints them as one document, with Chromium: title page, contents, how the design complies, every chapter.")
    {
        Arguments.Add(notebooks);
        Options.Add(pdf);
        Options.Add(noCode);
        Options.Add(revision);
        Options.Add(date);
        Options.Add(limit);
    }

    public RunRequest Request(ParseResult parsed) => new(
        parsed.GetValue(notebooks)!,
        [],
        Full: false,
        () => PrintedBook.Prepare(parsed.GetValue(pdf)!, new PrintOptions(!parsed.GetValue(noCode), parsed.GetValue(revision), Day(parsed.GetValue(date)!))),
        Save: false,
        RunCommand.Limit(parsed.GetValue(limit)!));

    private static DateOnly Day(string text) => DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
        ? day
        : throw RunFailure.BadInput($"--date '{text}' must be a date as year-month-day, such as 2027-01-31.");
}
