namespace EightOhm.Cli.Output;

/// <summary>The folder of the book. All is written to a new folder beside it, which takes its place at the very end.</summary>
internal sealed class OutFolder : IDisposable
{
    private readonly string target;
    private readonly string old;

    private OutFolder(string target)
    {
        this.target = target;
        var beside = Path.Combine(Path.GetDirectoryName(target)!, $".{Path.GetFileName(target)}.{Environment.ProcessId}");
        New = beside + ".new";
        old = beside + ".old";
    }

    /// <summary>Where the run writes; not yet the book that people see.</summary>
    public string New { get; }

    public string IndexPath => Path.Combine(target, Book.PageTemplate.IndexFile);

    /// <summary>Makes sure, before anything runs, that the book can be written there and replaces nothing but a book.</summary>
    public static OutFolder Prepare(string argument)
    {
        var target = Path.TrimEndingDirectorySeparator(Path.GetFullPath(argument));
        if (Path.GetDirectoryName(target) is null)
            throw RunFailure.BadInput($"The out folder '{argument}' is the root of the file system. Name a folder for the book alone with --out.");

        var folder = new OutFolder(target);
        try
        {
            for (var part = target; part is not null; part = Path.GetDirectoryName(part))
            {
                if (File.Exists(part))
                    throw RunFailure.BadInput($"The out folder '{argument}' cannot be written: '{Path.GetFileName(part)}' is a file. Name another folder with --out.");
            }

            if (Directory.Exists(target))
                folder.CheckReplaceable(argument);

            Directory.CreateDirectory(folder.New);
            return folder;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw RunFailure.BadInput($"The out folder '{argument}' cannot be written: {e.Message} Name another folder with --out.");
        }
    }

    /// <summary>Puts the new book in the place of the old.</summary>
    public void Publish()
    {
        var replaces = Directory.Exists(target);
        if (replaces)
            Directory.Move(target, old);

        try
        {
            Directory.Move(New, target);
        }
        catch when (replaces)
        {
            Directory.Move(old, target);
            throw;
        }

        if (replaces)
            Directory.Delete(old, recursive: true);
    }

    public void Dispose()
    {
        if (Directory.Exists(New))
            Directory.Delete(New, recursive: true);
    }

    private void CheckReplaceable(string argument)
    {
        var empty = !Directory.EnumerateFileSystemEntries(target).Any();
        var index = Path.Combine(target, Book.PageTemplate.IndexFile);
        if (!empty && !(File.Exists(index) && File.ReadAllText(index).Contains(Book.PageTemplate.Mark, StringComparison.Ordinal)))
        {
            throw RunFailure.BadInput(
                $"The out folder '{argument}' holds other things than a book of ours, and the new book would replace them. Name an empty or new folder with --out.");
        }

        // Renaming asks only the parent; a person who made the folder read-only meant the folder.
        var probe = Path.Combine(target, Path.GetFileName(New));
        File.WriteAllBytes(probe, []);
        File.Delete(probe);
    }
}
