using System.Text.RegularExpressions;

namespace EightOhm.Cli.Output;

/// <summary>Puts the files of a new book in their places, at the end of a run or for one that was killed in it.</summary>
internal static partial class BookRecovery
{
    /// <summary>Completes, or removes, what runs that were killed have left beside a book.</summary>
    /// <param name="target">The folder of the book.</param>
    /// <param name="disk">The disk.</param>
    /// <returns>What was found and done, a sentence each.</returns>
    public static IReadOnlyList<string> At(string target, Disk disk)
    {
        var said = new List<string>();
        foreach (var made in Leftovers.FoldersOf(target))
        {
            var promise = Read(made);
            // The notebooks' promise goes last and is looked at first: if it is there, it counts, and takes the book along.
            if (promise?.Save is { } save && File.Exists(save) && SaveRecovery.At(Path.GetDirectoryName(save)!, disk) is { } done)
            {
                said.Add(done);
            }
            else if (promise is { Save: null })
            {
                Complete(made, target, disk);
                said.Add("A run before this one was ended while it put its book in place; that was completed now.");
            }

            disk.DeleteFolder(made);
        }

        return said;
    }

    /// <summary>Moves what has not moved yet, then removes what an earlier book had more.</summary>
    /// <param name="made">The folder in which the book was made and promised.</param>
    /// <param name="target">The folder of the book.</param>
    /// <param name="disk">The disk.</param>
    public static void Complete(string made, string target, Disk disk)
    {
        if (Read(made) is not { } promise)
            return;
        Directory.CreateDirectory(target);
        var before = BookFiles.Read(target) ?? new HashSet<string>();
        // Whatever happens in between, the list names every file of ours; the index goes last, for it leads to the others.
        BookFiles.Write(disk, target, made, before.Union(promise.Files));
        foreach (var file in promise.Files.OrderBy(f => f == Book.PageTemplate.IndexFile))
        {
            var (written, place) = (Path.Combine(made, file), Path.Combine(target, file));
            if (!File.Exists(written))
                continue;
            Directory.CreateDirectory(Path.GetDirectoryName(place)!);
            disk.Rename(written, place);
        }

        foreach (var file in before.Except(promise.Files))
            Remove(target, file, disk);
        BookFiles.Write(disk, target, made, promise.Files);
        disk.Delete(Path.Combine(made, BookPromise.File));
    }

    /// <summary>Completes, or removes, the book of a run whose notebooks are completed or taken back.</summary>
    /// <param name="made">The folder in which it was made.</param>
    /// <param name="save">The promise of these notebooks, which the book must name.</param>
    /// <param name="counts">Whether it is completed.</param>
    /// <param name="disk">The disk.</param>
    public static void EndWith(string made, string save, bool counts, Disk disk)
    {
        // Anybody could have written a promise: a folder that does not name it in turn is left alone.
        if (Target(made) is not { } target || Read(made) is not { } promise || promise.Save != save)
            return;
        if (counts)
            Complete(made, target, disk);
        disk.DeleteFolder(made);
    }

    // Null where the folder's name is none that we give.
    private static string? Target(string made) =>
        Made().Match(Path.GetFileName(made)) is { Success: true } name ? Path.Combine(Path.GetDirectoryName(made)!, name.Groups["of"].Value) : null;

    private static BookPromise? Read(string made)
    {
        var path = Path.Combine(made, BookPromise.File);
        return File.Exists(path) ? Promise.Read<BookPromise>(File.ReadAllBytes(path)) : null;
    }

    private static void Remove(string target, string file, Disk disk)
    {
        var path = Path.Combine(target, file);
        if (!File.Exists(path))
            return;
        disk.Delete(path);
        for (var folder = Path.GetDirectoryName(path)!; folder.Length > target.Length && !Directory.EnumerateFileSystemEntries(folder).Any(); folder = Path.GetDirectoryName(folder)!)
            Directory.Delete(folder);
    }

    [GeneratedRegex(@"^\.(?<of>.+)\.[0-9]+\.new$")]
    private static partial Regex Made();
}
