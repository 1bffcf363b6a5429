namespace EightOhm.Cli.Output;

/// <summary>Notebooks and records that are replaced together: all are written beside their places first, then promised, then each takes its place.</summary>
/// <param name="root">The folder of the notebooks, in or below which they all stand.</param>
/// <param name="disk">The disk.</param>
internal sealed class SavedFiles(string root, Disk disk) : IDisposable
{
    private readonly List<(string Written, string Target, byte[]? Read)> files = [];
    private bool promised;

    /// <summary>Refuses, before anything runs, a folder in which nothing can be written.</summary>
    public static void CheckWritable(string folder)
    {
        var probe = Leftovers.FileBeside(Path.Combine(folder, "save.json"));
        try
        {
            File.WriteAllBytes(probe, []);
            File.Delete(probe);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw RunFailure.BadInput($"--save cannot write into '{Path.GetFileName(folder)}': {e.Message} Make the folder writable, or run without --save.");
        }
    }

    /// <summary>Writes new content beside its place, unless another program has changed the file during the run.</summary>
    /// <param name="target">The file.</param>
    /// <param name="read">What the run read there; null when there was no file.</param>
    /// <param name="content">What is to stand there.</param>
    public void Add(string target, byte[]? read, byte[] content)
    {
        CheckUnchanged(target, read);
        var place = SavedPlace.Of(target);
        var written = Leftovers.FileBeside(place);
        files.Add((written, target, read));
        disk.Write(written, content);
        SavedPlace.KeepMode(written, place);
    }

    /// <summary>Puts the book and the files in their places. Killed anywhere in it, the next run completes it or takes it back.</summary>
    /// <param name="book">What goes with them; null where they go alone.</param>
    public void Publish(IPublication? book)
    {
        if (files.Count == 0)
        {
            book?.Promise(null);
            book?.Publish();
            return;
        }

        var path = Path.Combine(root, SavePromise.File);
        try
        {
            using var held = Hold(path);
            foreach (var (_, target, read) in files)
                CheckUnchanged(target, read);
            book?.Promise(path);
            held.Write(Output.Promise.ToBytes(Promised(book)));
            // From here on the run counts, whatever ends it.
            promised = true;
            disk.Flush(held);
            book?.Publish();
            foreach (var (written, target, _) in files)
                disk.Rename(written, SavedPlace.Of(target));
            promised = false;
        }
        finally
        {
            if (!promised)
                disk.Delete(path);
        }
    }

    public void Dispose()
    {
        if (promised)
            return;
        foreach (var (written, _, _) in files)
            File.Delete(written);
    }

    private SavePromise Promised(IPublication? book) => new(book?.New, [.. files.Select(f =>
        new PromisedFile(Path.GetRelativePath(root, f.Target).Replace('\\', '/'), Path.GetFileName(f.Written), f.Read is null ? null : SavedPlace.Fingerprint(f.Read)))]);

    // Two runs at once: the second waits for the first, and then finds its files changed.
    private FileStream Hold(string path)
    {
        for (var attempt = 0; ; attempt++)
        {
            SaveRecovery.At(root, disk);
            try
            {
                return new FileStream(path, FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None);
            }
            catch (IOException) when (attempt < 3 && File.Exists(path))
            {
                // Another run came first.
            }
        }
    }

    private static void CheckUnchanged(string target, byte[]? read)
    {
        var there = File.Exists(target) ? File.ReadAllBytes(target) : null;
        if (there is null ? read is not null : read is null || !there.AsSpan().SequenceEqual(read))
            throw RunFailure.BadInput($"{Path.GetFileName(target)} was changed by another program during the run; nothing was written. Close it there, and run again.");
    }
}
