namespace EightOhm.Cli.Output;

/// <summary>Several files that are replaced together: all are written beside their places first, then each takes its place.</summary>
internal sealed class SavedFiles : IDisposable
{
    private readonly List<(string Written, string Target)> files = [];

    /// <summary>Refuses, before anything runs, a folder in which nothing can be written.</summary>
    public static void CheckWritable(string folder)
    {
        var probe = Path.Combine(folder, $".save.{Environment.ProcessId}.tmp");
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
        var there = File.Exists(target) ? File.ReadAllBytes(target) : null;
        if (there is null ? read is not null : read is null || !there.AsSpan().SequenceEqual(read))
            throw RunFailure.BadInput($"{Path.GetFileName(target)} was changed by another program during the run; nothing was written. Close it there, and run again.");

        var written = Path.Combine(Path.GetDirectoryName(target)!, $".{Path.GetFileName(target)}.{Environment.ProcessId}.tmp");
        files.Add((written, target));
        using var file = new FileStream(written, FileMode.Create);
        file.Write(content);
        file.Flush(flushToDisk: true);
    }

    public void Publish()
    {
        foreach (var (written, target) in files)
            File.Move(written, target, overwrite: true);
        files.Clear();
    }

    public void Dispose()
    {
        foreach (var (written, _) in files)
            File.Delete(written);
    }
}
