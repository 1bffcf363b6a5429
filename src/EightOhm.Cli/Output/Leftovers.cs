using System.Diagnostics;
using System.Globalization;

namespace EightOhm.Cli.Output;

/// <summary>The files and folders that a run makes beside their places: their names, and what runs that were killed have left of them.</summary>
internal static class Leftovers
{
    private const string File = ".tmp";
    private const string Folder = ".new";

    /// <summary>Where a file is written before it takes its place: in the same folder, hidden, named for the process.</summary>
    public static string FileBeside(string target) => Beside(target, File);

    /// <summary>Where a folder is written before it takes its place.</summary>
    public static string FolderBeside(string target) => Beside(target, Folder);

    /// <summary>Whether a name is that of a file beside its place.</summary>
    /// <param name="name">The name, without its folder.</param>
    /// <param name="of">The file whose place it is, without its folder.</param>
    public static bool IsBeside(string name, string of) => Number(name, of, File) is not null;

    /// <summary>The folders that runs no longer there have left beside a place.</summary>
    public static IReadOnlyList<string> FoldersOf(string target) =>
        Path.GetDirectoryName(target) is { } parent && Directory.Exists(parent)
            ? [.. Directory.GetDirectories(parent, $".{Path.GetFileName(target)}.*{Folder}").Where(d => Number(Path.GetFileName(d), Path.GetFileName(target), Folder) is { } id && !IsRunning(id)).Order(StringComparer.Ordinal)]
            : [];

    /// <summary>Removes the files that runs no longer there have left beside some of a folder's files.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="isOurs">Whether such a file's place is one of ours, by its name.</param>
    /// <returns>How many there were.</returns>
    public static int SweepFiles(string folder, Func<string, bool> isOurs)
    {
        var count = 0;
        foreach (var path in Directory.GetFiles(folder, ".*" + File))
        {
            var name = Path.GetFileName(path);
            var place = Path.GetFileNameWithoutExtension(Path.GetFileNameWithoutExtension(name)).TrimStart('.');
            if (!isOurs(place) || Number(name, place, File) is not { } id || IsRunning(id))
                continue;
            try
            {
                System.IO.File.Delete(path);
                count++;
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                // A folder that is not ours to write is read all the same.
            }
        }

        return count;
    }

    private static string Beside(string target, string ending) =>
        Path.Combine(Path.GetDirectoryName(target)!, string.Create(CultureInfo.InvariantCulture, $".{Path.GetFileName(target)}.{Environment.ProcessId}{ending}"));

    private static int? Number(string name, string of, string ending) =>
        name.StartsWith($".{of}.", StringComparison.Ordinal) && name.EndsWith(ending, StringComparison.Ordinal) && name.Length > of.Length + 2 + ending.Length
        && int.TryParse(name.AsSpan()[(of.Length + 2)..^ending.Length], NumberStyles.None, CultureInfo.InvariantCulture, out var id)
            ? id
            : null;

    // A process of our own number that is not we is gone: in a container every run may have the same.
    private static bool IsRunning(int id)
    {
        if (id == Environment.ProcessId)
            return false;
        try
        {
            using var process = Process.GetProcessById(id);
            return !process.HasExited;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }
}
