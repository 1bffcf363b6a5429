namespace EightOhm.Cli.Live;

/// <summary>The place of the copies that cells work on, gone with the program; what a killed one has left is swept by the next.</summary>
internal sealed class WorkingFolder : IDisposable
{
    private const string Prefix = "eightohm-open-", Owner = "owner.json";

    // One without an owner may be a moment old, and its owner about to be written.
    private static readonly TimeSpan Old = TimeSpan.FromDays(1);

    private WorkingFolder(string path) => Path = path;

    /// <summary>The folder.</summary>
    public string Path { get; }

    /// <summary>Makes one, and removes those whose owner is gone.</summary>
    /// <param name="place">The folder in which it is made; null for the system's for passing files.</param>
    public static WorkingFolder Make(string? place = null)
    {
        place ??= System.IO.Path.GetTempPath();
        foreach (var left in Directory.GetDirectories(place, Prefix + "*").Where(IsLeft))
            Remove(left);
        // Nobody else may read it: it has a name that cannot be guessed, and is its owner's alone.
        var made = new WorkingFolder(Made(place));
        File.WriteAllBytes(System.IO.Path.Combine(made.Path, Owner), FolderOwner.Here.ToBytes());
        return made;
    }

    public void Dispose() => Remove(Path);

    private static string Made(string place)
    {
        var path = System.IO.Path.Combine(place, Prefix + System.IO.Path.GetRandomFileName());
        return (OperatingSystem.IsWindows()
            ? Directory.CreateDirectory(path)
            : Directory.CreateDirectory(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute)).FullName;
    }

    private static bool IsLeft(string folder) => FolderOwner.Read(System.IO.Path.Combine(folder, Owner)) is { } owner
        ? !owner.IsRunning
        : DateTime.UtcNow - Directory.GetLastWriteTimeUtc(folder) > Old;

    private static void Remove(string folder)
    {
        try
        {
            Directory.Delete(folder, recursive: true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Another person's, or a process that is just ending still writes there.
        }
    }
}
