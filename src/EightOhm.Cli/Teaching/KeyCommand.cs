using System.CommandLine;

namespace EightOhm.Cli.Teaching;

/// <summary>The arguments and options of <c>eightohm key</c>.</summary>
internal sealed class KeyCommand : Command
{
    private readonly Argument<string> folder = new("out-folder") { Description = "Where the pages go; made if it is not there." };

    // Read as text, so that a bad one is refused in our words.
    private readonly Option<string> seed = new("--seed") { Description = "The seed of the numbers; 0, if not given, for the book's own.", HelpName = "number", DefaultValueFactory = _ => "0" };

    public KeyCommand()
        : base("key", "Writes a teacher's key of the course's exercises, and the sheet of questions that goes with it.")
    {
        Arguments.Add(folder);
        Options.Add(seed);
    }

    public KeyRequest Request(ParseResult parsed) => new(parsed.GetValue(folder)!, KeyRequest.SeedOf(parsed.GetValue(seed)!));
}
