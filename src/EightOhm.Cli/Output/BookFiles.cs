namespace EightOhm.Cli.Output;

/// <summary>The list of what the runner wrote into a folder, kept in the folder: only that is ever replaced or removed there.</summary>
internal static class BookFiles
{
    public const string ListFile = "book-files.txt";

    private const string FirstLine = "Written by EightOhm. A new run replaces these files, and no other.";

    /// <summary>The files of the list, as paths from the folder; null where there is no list of ours.</summary>
    public static IReadOnlySet<string>? Read(string folder)
    {
        var path = Path.Combine(folder, ListFile);
        if (!File.Exists(path))
            return null;
        var lines = File.ReadAllLines(path);
        // A line that leads out of the folder was not written by us.
        return lines.Length > 0 && lines[0] == FirstLine
            ? lines.Skip(1).Where(l => l.Length > 0 && !Path.IsPathRooted(l) && !l.Split('/').Contains("..")).ToHashSet(StringComparer.Ordinal)
            : null;
    }

    public static void Write(string folder, IEnumerable<string> files) =>
        File.WriteAllText(Path.Combine(folder, ListFile), string.Join('\n', files.Order(StringComparer.Ordinal).Prepend(FirstLine)) + "\n");

    /// <summary>Every file below a folder, as a path from it with strokes.</summary>
    public static IReadOnlyList<string> Under(string folder) =>
        [.. Directory.GetFiles(folder, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(folder, f).Replace('\\', '/')).Order(StringComparer.Ordinal)];
}
