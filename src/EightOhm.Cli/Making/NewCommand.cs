using System.CommandLine;

namespace EightOhm.Cli.Making;

/// <summary>The arguments and options of <c>eightohm new</c>.</summary>
internal sealed class NewCommand : Command
{
    private readonly Argument<string> folder = new("folder") { Description = "The folder to make; it must not exist yet, or be empty." };

    private readonly Option<string?> name = new("--name") { Description = "The design's name; the folder's name in words if not given.", HelpName = "name" };

    private readonly Option<string[]> set = new("--set")
    {
        Description = "What the amplifier must do, or a choice of yours: what is not given follows from it or is as in the design that comes with EightOhm. May be repeated.",
        HelpName = "name=value with unit",
        DefaultValueFactory = _ => [],
        AllowMultipleArgumentsPerToken = true,
    };

    private readonly Option<string?> devices = new("--devices") { Description = "A folder of device cards to choose from, instead of the invented ones that come with EightOhm.", HelpName = "folder" };

    public NewCommand()
        : base("new", "Makes the notebooks of an amplifier of your own: targets, a first sizing of its parts with the reasons, and cards.")
    {
        Arguments.Add(folder);
        Options.Add(name);
        Options.Add(set);
        Options.Add(devices);
    }

    public NewRequest Request(ParseResult parsed) =>
        new(parsed.GetValue(folder)!, parsed.GetValue(name), parsed.GetValue(set)!, parsed.GetValue(devices));
}

/// <summary>What the person asked for.</summary>
/// <param name="Folder">The folder to make.</param>
/// <param name="Name">The design's name, or null.</param>
/// <param name="Set">Each "name=value with unit".</param>
/// <param name="Devices">A folder of cards, or null for the shipped ones.</param>
internal sealed record NewRequest(string Folder, string? Name, IReadOnlyList<string> Set, string? Devices);
