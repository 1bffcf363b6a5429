using EightOhm.Cells;

namespace EightOhm.Cli.Jupyter;

/// <summary>Where Jupyter looks for kernels, and where what they need is kept.</summary>
internal static class KernelFolders
{
    /// <summary>The name that the stored notebooks ask for.</summary>
    public const string Name = ".net-csharp";

    /// <summary>The kernels folder of this person's Jupyter: where Jupyter's variable says, else where its documentation says for the system.</summary>
    public static string OfThisPerson()
    {
        if (Variable("JUPYTER_DATA_DIR") is { } said)
            return Path.Combine(said, "kernels");
        var home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
        var data = OperatingSystem.IsWindows() ? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.ApplicationData), "jupyter")
            : OperatingSystem.IsMacOS() ? Path.Combine(home, "Library", "Jupyter")
            : Path.Combine(Variable("XDG_DATA_HOME") ?? Path.Combine(home, ".local", "share"), "jupyter");
        return Path.Combine(data, "kernels");
    }

    /// <summary>Where the feed and the kernel's program are kept: they must outlive the tool's own folder, which an update replaces.</summary>
    public static string Kept() => PersonalData.Folder ?? "eightohm";

    /// <summary>Makes a folder that can be written into.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="called">What it is, as the message begins.</param>
    /// <param name="instead">What to do where it cannot be written, a sentence.</param>
    /// <exception cref="RunFailure">It cannot be made or written.</exception>
    public static string Writable(string folder, string called, string instead)
    {
        try
        {
            Directory.CreateDirectory(folder);
            var trial = Path.Combine(folder, $".eightohm-{Environment.ProcessId}");
            File.WriteAllBytes(trial, []);
            File.Delete(trial);
            return Path.GetFullPath(folder);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            throw RunFailure.BadInput($"{called} '{folder}' cannot be written: {e.Message} {instead}");
        }
    }

    private static string? Variable(string name) => Environment.GetEnvironmentVariable(name) is { Length: > 0 } value ? value : null;
}
