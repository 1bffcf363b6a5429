using System.CommandLine;
using System.Globalization;
using EightOhm.Cli.Output;
using EightOhm.Cli.Running;

namespace EightOhm.Cli;

/// <summary>The arguments and options of <c>eightohm run</c>.</summary>
internal sealed class RunCommand : Command
{
    private readonly Argument<string> notebooks = new("notebook-or-folder")
    {
        Description = "A notebook (.ipynb), a folder whose notebooks are run in name order, or a folder of such folders: a course and designs, the course first.",
    };

    private readonly Option<string[]> set = new("--set")
    {
        Description = "Moves an input of the record (target, choice, assumption, part) for this run, and shows what moves with it; with nothing after the sign it is again what the chapter says. May be repeated.",
        HelpName = "name=value with unit",
        DefaultValueFactory = _ => [],
    };

    private readonly Option<string> output = new("--out")
    {
        Description = "The folder of the book.",
        HelpName = "folder",
        DefaultValueFactory = _ => Path.Combine("artifacts", "book"),
    };

    private readonly Option<bool> save = new("--save")
    {
        Description = "Writes the outputs into the notebooks, and the record, too.",
    };

    private readonly Option<bool> full = new("--full")
    {
        Description = "With --set: runs every cell, also those that do not hang on what was set.",
    };

    private readonly Option<string> limit = LimitOption();

    public RunCommand()
        : base("run", "Runs notebooks, shows how the design complies, and writes the book.")
    {
        Arguments.Add(notebooks);
        Options.Add(set);
        Options.Add(output);
        Options.Add(full);
        Options.Add(save);
        Options.Add(limit);
    }

    /// <summary>The option that limits how long a cell may take.</summary>
    public static Option<string> LimitOption() => new("--limit")
    {
        Description = "The longest that a cell may take, in seconds.",
        HelpName = "seconds",
        DefaultValueFactory = _ => "60",
    };

    public RunRequest Request(ParseResult parsed) => new(
        parsed.GetValue(notebooks)!,
        parsed.GetValue(set)!,
        parsed.GetValue(full),
        () => new BookPages(OutFolder.Prepare(parsed.GetValue(output)!, Disk.Real)),
        parsed.GetValue(save),
        Limit(parsed.GetValue(limit)!));

    /// <summary>The limit as a time, or a refusal.</summary>
    public static TimeSpan Limit(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var seconds) && seconds is > 0 and <= 86400
            ? TimeSpan.FromSeconds(seconds)
            : throw RunFailure.BadInput($"--limit must be a number of seconds, more than 0 and at most 86400 (was '{text}').");
}
