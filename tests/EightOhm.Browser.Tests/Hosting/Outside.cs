namespace EightOhm.Browser.Tests.Hosting;

/// <summary>A place outside the clone, with an empty package cache and an empty home, in which the tool is installed from the feed alone: what a stranger has.</summary>
internal static class Outside
{
    /// <summary>How long one command may take.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromMinutes(5);

    private static readonly Lock Gate = new();
    private static Task<Burrow>? made;

    /// <summary>The place; the first that asks makes it.</summary>
    /// <param name="feed">The folder that <c>dotnet pack</c> filled.</param>
    public static Task<Burrow> With(string feed)
    {
        lock (Gate)
            return made ??= Make(feed);
    }

    private static async Task<Burrow> Make(string feed)
    {
        var burrow = new Burrow(emptyPackageCache: true);
        await Install(burrow, feed);
        // What notebooks ask for comes from the tool's own feed from here on.
        return burrow;
    }

    /// <summary>Installs the tool into a place of its own.</summary>
    /// <param name="burrow">The place.</param>
    /// <param name="feed">The folder that <c>dotnet pack</c> filled.</param>
    /// <returns>The tool's program.</returns>
    public static async Task<string> Install(Burrow burrow, string feed)
    {
        await File.WriteAllTextAsync(burrow.Below("nuget.config"),
            $"""<configuration><packageSources><add key="eightohm" value="{feed}" /></packageSources></configuration>""");
        await Command.Must(burrow.Root, burrow.Environment, Patience, "dotnet", "tool", "install", "EightOhm.Cli", "--version", Clone.Version, "--tool-path", burrow.Below("tool"));
        return burrow.Tool();
    }

    /// <summary>The tool's program.</summary>
    public static string Tool(this Burrow burrow) => burrow.Below("tool", OperatingSystem.IsWindows() ? "eightohm.exe" : "eightohm");
}
