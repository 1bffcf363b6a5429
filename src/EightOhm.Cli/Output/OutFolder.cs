namespace EightOhm.Cli.Output;

/// <summary>The folder of the book. All is written to a new folder beside it; at the very end each file takes its place, and what an earlier book had more is removed.</summary>
/// <remarks>A person's own files in the folder are never touched: only what stands on the list of what was written (<see cref="BookFiles"/>) is replaced or removed.</remarks>
internal sealed class OutFolder : IDisposable
{
    private readonly string target;
    private readonly string argument;
    private readonly Disk disk;
    private bool promised;

    private OutFolder(string target, string argument, Disk disk)
    {
        this.target = target;
        this.argument = argument;
        this.disk = disk;
        New = Leftovers.FolderBeside(target);
    }

    /// <summary>Where the run writes; not yet the book that people see.</summary>
    public string New { get; }

    public string IndexPath => Path.Combine(target, Book.PageTemplate.IndexFile);

    /// <summary>What an earlier run had left and what was done about it, a sentence each.</summary>
    public IReadOnlyList<string> Found { get; private set; } = [];

    /// <summary>Makes sure, before anything runs, that the book can be written there and replaces nothing but a book.</summary>
    public static OutFolder Prepare(string argument, Disk disk)
    {
        var target = Path.TrimEndingDirectorySeparator(Path.GetFullPath(argument));
        if (Path.GetDirectoryName(target) is null)
            throw RunFailure.BadInput($"The out folder '{argument}' is the root of the file system. Name a folder for the book alone with --out.");

        var folder = new OutFolder(target, argument, disk);
        try
        {
            for (var part = target; part is not null; part = Path.GetDirectoryName(part))
            {
                if (File.Exists(part))
                    throw RunFailure.BadInput($"The out folder '{argument}' cannot be written: '{Path.GetFileName(part)}' is a file. Name another folder with --out.");
            }

            folder.Found = BookRecovery.At(target, disk);
            if (Directory.Exists(target))
                folder.CheckReplaceable();
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

    /// <summary>Notes what is to take its place, so that a later run can complete it.</summary>
    /// <param name="save">The promise of the notebooks and records that go with the book; null where it goes alone.</param>
    public void Promise(string? save)
    {
        var now = BookFiles.Under(New);
        disk.Write(Path.Combine(New, BookPromise.File), Output.Promise.ToBytes(new BookPromise(now, save)));
        // With notebooks to go after it, it counts for nothing before they are promised as well.
        promised = save is null;
    }

    /// <summary>Puts the new book in the place of the old.</summary>
    public void Publish()
    {
        promised = true;
        BookRecovery.Complete(New, target, disk);
        promised = false;
    }

    public void Dispose()
    {
        if (promised)
            return;
        try
        {
            disk.DeleteFolder(New);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Something that was ended still writes there: the next run sweeps it.
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
        var probe = Leftovers.FileBeside(Path.Combine(target, "book"));
        Leftovers.SweepFiles(target, place => place == "book");
        File.WriteAllBytes(probe, []);
        File.Delete(probe);
    }
}
