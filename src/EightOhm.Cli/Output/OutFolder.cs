using System.Globalization;

namespace EightOhm.Cli.Output;

/// <summary>The folder of the book. All is written to a new folder beside it; at the very end each file takes its place, and what an earlier book had more is removed.</summary>
/// <remarks>A person's own files in the folder are never touched: only what stands on the list of what was written (<see cref="BookFiles"/>) is replaced or removed.</remarks>
internal sealed class OutFolder : IDisposable
{
    private readonly string target;
    private readonly string argument;

    private OutFolder(string target, string argument)
    {
        this.target = target;
        this.argument = argument;
        New = Path.Combine(Path.GetDirectoryName(target)!, string.Create(CultureInfo.InvariantCulture, $"{Beside}{Environment.ProcessId}.new"));
    }

    /// <summary>Where the run writes; not yet the book that people see.</summary>
    public string New { get; }

    public string IndexPath => Path.Combine(target, Book.PageTemplate.IndexFile);

    private string Beside => $".{Path.GetFileName(target)}.";

    /// <summary>Makes sure, before anything runs, that the book can be written there and replaces nothing but a book.</summary>
    public static OutFolder Prepare(string argument)
    {
        var target = Path.TrimEndingDirectorySeparator(Path.GetFullPath(argument));
        if (Path.GetDirectoryName(target) is null)
            throw RunFailure.BadInput($"The out folder '{argument}' is the root of the file system. Name a folder for the book alone with --out.");

        var folder = new OutFolder(target, argument);
        try
        {
            for (var part = target; part is not null; part = Path.GetDirectoryName(part))
            {
                if (File.Exists(part))
                    throw RunFailure.BadInput($"The out folder '{argument}' cannot be written: '{Path.GetFileName(part)}' is a file. Name another folder with --out.");
            }

            if (Directory.Exists(target))
                folder.CheckReplaceable();
            folder.Sweep();
            Directory.CreateDirectory(folder.New);
            return folder;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw RunFailure.BadInput($"The out folder '{argument}' cannot be written: {e.Message} Name another folder with --out.");
        }
    }

    /// <summary>Refuses, before any file is moved, to write over one that is not ours.</summary>
    public void CheckOwn()
    {
        var before = BookFiles.Read(target) ?? new HashSet<string>();
        if (BookFiles.Under(New).FirstOrDefault(f => !before.Contains(f) && Path.Exists(Path.Combine(target, f))) is { } own)
            throw RunFailure.BadInput($"The out folder '{argument}' holds '{own}', which is not of the book and would be replaced; nothing was written. Move it, or name another folder with --out.");
    }

    /// <summary>Puts the new book in the place of the old.</summary>
    public void Publish()
    {
        Directory.CreateDirectory(target);
        var before = BookFiles.Read(target) ?? new HashSet<string>();
        var now = BookFiles.Under(New);
        // Whatever happens in between, the list names every file of ours; the index goes last, for it leads to the others.
        BookFiles.Write(target, before.Union(now));
        foreach (var file in now.OrderBy(f => f == Book.PageTemplate.IndexFile))
        {
            var place = Path.Combine(target, file);
            Directory.CreateDirectory(Path.GetDirectoryName(place)!);
            File.Move(Path.Combine(New, file), place, overwrite: true);
        }

        foreach (var file in before.Except(now))
            Remove(file);
        BookFiles.Write(target, now);
    }

    public void Dispose()
    {
        if (Directory.Exists(New))
            Directory.Delete(New, recursive: true);
    }

    private void Remove(string file)
    {
        var path = Path.Combine(target, file);
        File.Delete(path);
        for (var folder = Path.GetDirectoryName(path)!; folder.Length > target.Length && Directory.Exists(folder) && !Directory.EnumerateFileSystemEntries(folder).Any(); folder = Path.GetDirectoryName(folder)!)
            Directory.Delete(folder);
    }

    // What runs that were killed have left beside the book.
    private void Sweep()
    {
        if (!Directory.Exists(Path.GetDirectoryName(target)))
            return;
        foreach (var left in Directory.GetDirectories(Path.GetDirectoryName(target)!, Beside + "*.new"))
        {
            if (int.TryParse(Path.GetFileName(left)[Beside.Length..^".new".Length], NumberStyles.None, CultureInfo.InvariantCulture, out var id) && !IsRunning(id))
                Directory.Delete(left, recursive: true);
        }
    }

    private static bool IsRunning(int id)
    {
        try
        {
            using var process = System.Diagnostics.Process.GetProcessById(id);
            return !process.HasExited;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }

    private void CheckReplaceable()
    {
        if (Directory.EnumerateFileSystemEntries(target).Any() && BookFiles.Read(target) is null)
        {
            throw RunFailure.BadInput(
                $"The out folder '{argument}' holds other things than a book of ours, or one without the list of its files ({BookFiles.ListFile}). Name an empty or new folder with --out.");
        }

        // Files move into the folder: a person who made it read-only meant that.
        var probe = Path.Combine(target, Path.GetFileName(New));
        File.WriteAllBytes(probe, []);
        File.Delete(probe);
    }
}
