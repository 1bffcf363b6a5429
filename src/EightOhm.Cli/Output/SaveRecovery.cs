using System.Diagnostics;

namespace EightOhm.Cli.Output;

/// <summary>Completes, or takes back, what a run that was killed had promised of notebooks and records.</summary>
internal static class SaveRecovery
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(10);

    /// <summary>Looks for what was left in the folder of the notebooks, in those in it, and in the one above it: a run of one design finds what a run of all has left.</summary>
    /// <returns>What was found and done, a sentence each.</returns>
    public static IReadOnlyList<string> Around(string path, Disk disk)
    {
        var folder = Directory.Exists(path) ? Path.GetFullPath(path) : Path.GetDirectoryName(Path.GetFullPath(path))!;
        if (!Directory.Exists(folder))
            return [];
        string?[] around = [folder, .. Directory.GetDirectories(folder).Order(StringComparer.Ordinal), Path.GetDirectoryName(folder)];
        List<string> said = [.. around.OfType<string>().Select(f => At(f, disk)).OfType<string>()];
        // What was written before anything was promised: nothing had moved.
        var swept = around[..^1].Sum(f => Leftovers.SweepFiles(f!, SavePromise.IsOurs));
        if (swept > 0 && said.Count == 0)
            said.Add("A run before this one was ended before it put anything in place; what it had written beside the notebooks was removed.");
        return said;
    }

    /// <summary>For a command that only reads, or writes beside: what stands in a folder may be half of what a run promised. Looks as a run there would, and changes nothing.</summary>
    /// <param name="folder">The folder.</param>
    /// <returns>A sentence that says so; null where no promise stands.</returns>
    public static string? Unfinished(string folder)
    {
        var full = Path.GetFullPath(folder);
        return new[] { full, Path.GetDirectoryName(full) }.OfType<string>().FirstOrDefault(f => File.Exists(Path.Combine(f, SavePromise.File))) is { } found
            ? $"A run has not ended putting its notebooks and records in place in '{found}': what stands there may be of two runs. If none is at work, the next eightohm run there completes it or takes it back, and says so."
            : null;
    }

    /// <summary>Looks in one folder.</summary>
    /// <returns>What was done, or null where there was nothing to do.</returns>
    public static string? At(string root, Disk disk)
    {
        var path = Path.Combine(root, SavePromise.File);
        if (!File.Exists(path))
            return null;
        string? said;
        using (var held = Hold(path))
        {
            if (held is null)
                return null;
            var bytes = new byte[Math.Min(held.Length, 1 << 24)];
            held.ReadExactly(bytes);
            said = Promise.Read<SavePromise>(bytes) is { } promise ? Complete(root, path, promise, disk) : null;
        }

        disk.Delete(path);
        return said ?? "A run before this one was ended before it put anything in place; notebooks and record are as they were.";
    }

    private static string Complete(string root, string path, SavePromise promise, Disk disk)
    {
        var files = promise.Files.Select(f => (f.Before, Name: f.Place, Place: SavedPlace.Of(Path.Combine(root, f.Place)), f.Written))
            .Select(f => (f.Before, f.Name, f.Place, Written: Path.Combine(Path.GetDirectoryName(f.Place)!, f.Written))).ToList();
        var waiting = files.Where(f => File.Exists(f.Written) && Leftovers.IsBeside(Path.GetFileName(f.Written), Path.GetFileName(f.Place))).ToList();
        var changed = waiting.Where(f => SavedPlace.Fingerprint(f.Place) != f.Before).ToList();
        if (changed.Count > 0 && waiting.Count == files.Count)
        {
            foreach (var (_, _, _, written) in waiting)
                disk.Delete(written);
            if (promise.Book is { } made)
                BookRecovery.EndWith(made, path, counts: false, disk);
            return $"A run before this one was ended before it put its notebooks and record in place, and {changed[0].Name} was changed since: that run was taken back.";
        }

        if (promise.Book is { } book)
            BookRecovery.EndWith(book, path, counts: true, disk);
        foreach (var (_, _, place, written) in waiting.Except(changed))
            disk.Rename(written, place);
        foreach (var (_, _, _, written) in changed)
            disk.Delete(written);
        return changed.Count == 0
            ? "A run before this one was ended while it put its files in place; that was completed now: book, notebooks and record are those of that run."
            : $"A run before this one was ended while it put its files in place; that was completed now, but {string.Join(", ", changed.Select(c => c.Name))} had been changed since and was left so. Run again with --save.";
    }

    // Null when a run that was still at work has ended it by itself.
    private static FileStream? Hold(string path)
    {
        for (var watch = Stopwatch.StartNew(); File.Exists(path); Thread.Sleep(50))
        {
            try
            {
                return new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.None);
            }
            catch (FileNotFoundException)
            {
                return null;
            }
            catch (IOException) when (watch.Elapsed < Longest)
            {
                // Another run is putting its files in place.
            }
            catch (IOException)
            {
                throw RunFailure.BadInput($"Another run has been putting its files in place for {Longest.TotalSeconds:0} s. End it, and run again.");
            }
        }

        return null;
    }
}
