using System.Text;

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
            ? lines.Skip(1).Where(IsWithin).ToHashSet(StringComparer.Ordinal)
            : null;
    }

    /// <summary>Replaces the list in one step.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="folder">The folder.</param>
    /// <param name="beside">A folder of the same disk, in which it is written first.</param>
    /// <param name="files">The files, as paths from the folder.</param>
    public static void Write(Disk disk, string folder, string beside, IEnumerable<string> files)
    {
        var written = Path.Combine(beside, ListFile);
        disk.Write(written, Encoding.UTF8.GetBytes(string.Join('\n', files.Order(StringComparer.Ordinal).Prepend(FirstLine)) + "\n"));
        disk.Rename(written, Path.Combine(folder, ListFile));
    }

    /// <summary>Every file below a folder, as a path from it with strokes; the list and what a run notes for itself are none of the book.</summary>
    public static IReadOnlyList<string> Under(string folder) =>
    [
        .. Directory.GetFiles(folder, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(folder, f).Replace('\\', '/'))
            .Where(f => f is not (ListFile or BookPromise.File)).Order(StringComparer.Ordinal),
    ];

    /// <summary>Whether a path stays in the folder that it starts from.</summary>
    public static bool IsWithin(string file) => file.Length > 0 && !Path.IsPathRooted(file) && !file.Split('/', '\\').Contains("..");
}
