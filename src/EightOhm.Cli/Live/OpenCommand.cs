using System.CommandLine;
using System.Globalization;

namespace EightOhm.Cli.Live;

/// <summary>The arguments and options of <c>eightohm open</c>.</summary>
internal sealed class OpenCommand : Command
{
    private readonly Argument<string> folder = new("folder")
    {
        Description = "A folder of notebooks (.ipynb), a folder of such folders, or one notebook.",
    };

    private readonly Option<string> port = new("--port")
    {
        Description = "The port on this machine at which the page is served; 0 for any that is free.",
        HelpName = "number",
        DefaultValueFactory = _ => "0",
    };

    private readonly Option<bool> noBrowser = new("--no-browser")
    {
        Description = "Prints the address and opens no browser.",
    };

    public OpenCommand()
        : base("open", "Serves notebooks to the browser of this machine: cells are edited and calculated, inputs are moved, and the sheet beside them answers.")
    {
        Arguments.Add(folder);
        Options.Add(port);
        Options.Add(noBrowser);
    }

    public OpenRequest Request(ParseResult parsed) => new(
        parsed.GetValue(folder)!,
        int.TryParse(parsed.GetValue(port), NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number <= 65535
            ? number
            : throw RunFailure.BadInput($"--port must be a whole number from 0 to 65535 (was '{parsed.GetValue(port)}')."),
        !parsed.GetValue(noBrowser));
}
