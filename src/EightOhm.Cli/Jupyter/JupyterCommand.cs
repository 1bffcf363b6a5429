using System.CommandLine;

namespace EightOhm.Cli.Jupyter;

/// <summary>The arguments and options of <c>eightohm jupyter install</c>.</summary>
internal sealed class JupyterCommand : Command
{
    private readonly Option<string?> path = new("--path") { Description = "Jupyter's kernels folder, made if it is not there; the one that Jupyter looks in if not given.", HelpName = "folder" };

    private readonly Option<string?> feed = new("--feed") { Description = "A folder with the packages of EightOhm, instead of those that the tool brings.", HelpName = "folder" };

    private readonly Option<string?> kernel = new("--kernel") { Description = "The program dotnet-interactive, if you have it; it is installed for you if not given.", HelpName = "file" };

    public JupyterCommand()
        : base("jupyter", "Puts the kernel of these notebooks, with EightOhm's packages, into Jupyter.")
    {
        Install = new Command("install", "Writes the kernel .NET (C#) into Jupyter's kernels folder, so that a notebook in any folder finds EightOhm.");
        Install.Options.Add(path);
        Install.Options.Add(feed);
        Install.Options.Add(kernel);
        Subcommands.Add(Install);
    }

    public Command Install { get; }

    public InstallRequest Request(ParseResult parsed) => new(parsed.GetValue(path), parsed.GetValue(feed), parsed.GetValue(kernel));
}

/// <summary>What the person asked for.</summary>
/// <param name="Path">The kernels folder, or null for Jupyter's own.</param>
/// <param name="Feed">A folder with packages, or null for the tool's.</param>
/// <param name="Kernel">The kernel's program, or null to install it.</param>
internal sealed record InstallRequest(string? Path, string? Feed, string? Kernel);
