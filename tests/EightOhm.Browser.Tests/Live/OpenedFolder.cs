using System.Diagnostics;
using System.Globalization;
using System.Text;
using EightOhm.Browser.Tests.Hosting;

namespace EightOhm.Browser.Tests.Live;

/// <summary><c>eightohm open</c> at work on a folder, in a process of its own, for a person with a home of its own.</summary>
internal sealed class OpenedFolder : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(3);

    private readonly Process process;
    private readonly StringBuilder said = new();
    private readonly TaskCompletionSource<Uri> address = new(TaskCreationOptions.RunContinuationsAsynchronously);

    private OpenedFolder(string folder, string home)
    {
        Folder = folder;
        process = Command.Start(folder, Person(home), Hear, [.. Signals, "dotnet", Program, "open", folder, "--no-browser"]);
    }

    /// <summary>The program of this build.</summary>
    public static string Program { get; } = Path.Combine(AppContext.BaseDirectory, "EightOhm.Cli.dll");

    /// <summary>The folder.</summary>
    public string Folder { get; }

    /// <summary>The printed address, good for one window.</summary>
    public Uri Address => address.Task.Result;

    /// <summary>The server without its page.</summary>
    public Uri Place => new(Address.GetLeftPart(UriPartial.Authority));

    // What a shell in the background has set to be ignored would be ignored by the program too.
    private static string[] Signals => OperatingSystem.IsLinux() ? ["env", "--default-signal=INT"] : [];

    /// <summary>What a program of a person with this home has for an environment.</summary>
    public static Dictionary<string, string?> Person(string home) => new() { ["HOME"] = home, ["XDG_DATA_HOME"] = Path.Combine(home, "data"), ["DOTNET_CLI_HOME"] = home };

    /// <summary>Opens a folder, and waits for the address.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="home">The person's home.</param>
    public static async Task<OpenedFolder> Start(string folder, string home)
    {
        var opened = new OpenedFolder(folder, home);
        await opened.address.Task.WaitAsync(Patience);
        return opened;
    }

    /// <summary>Ends it as a person does, by Ctrl-C.</summary>
    /// <returns>The exit code.</returns>
    public async Task<int> End()
    {
        using (var sent = Process.Start("kill", ["-INT", process.Id.ToString(CultureInfo.InvariantCulture)]))
            await sent.WaitForExitAsync();
        await process.WaitForExitAsync().WaitAsync(Patience);
        return process.ExitCode;
    }

    public async ValueTask DisposeAsync()
    {
        if (!process.HasExited)
            process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync();
        process.Dispose();
    }

    private void Hear(string line)
    {
        lock (said)
            said.AppendLine(line);
        if (line.StartsWith("Open at ", StringComparison.Ordinal))
            address.TrySetResult(new Uri(line["Open at ".Length..].Trim()));
        else if (line.StartsWith("eightohm:", StringComparison.OrdinalIgnoreCase) || line.Contains("Unhandled", StringComparison.Ordinal))
            address.TrySetException(new InvalidOperationException(line));
    }
}
