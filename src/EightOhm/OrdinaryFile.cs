namespace EightOhm;

/// <summary>Files read whole, as others may have put them there (no pipe, on which reading waits for ever, and nothing without end), and files written whole.</summary>
public static class OrdinaryFile
{
    /// <summary>The largest file that is read whole, in bytes: 64 MB, far more than any record, card or notebook needs.</summary>
    public const long Most = 64L << 20;

    /// <summary>A whole file's bytes.</summary>
    /// <param name="path">The file, or a link to it.</param>
    /// <returns>The bytes; none for a pipe or a device, which have no length.</returns>
    /// <exception cref="IOException">It is missing, cannot be read, or is larger than <see cref="Most"/>.</exception>
    /// <exception cref="UnauthorizedAccessException">It is a folder, or not for us to read.</exception>
    public static byte[] Read(string path)
    {
        if (At(path) is { } file)
        {
            if (file.Length == 0)
                return [];
            if (file.Length > Most)
                throw new IOException(FormattableString.Invariant($"{Path.GetFileName(path)} has {file.Length >> 20} MB, and more than {Most >> 20} MB is not read."));
        }

        return File.ReadAllBytes(path);
    }

    /// <summary>Writes a whole file and waits until it is on the disk.</summary>
    /// <param name="path">The file; an earlier one is replaced.</param>
    /// <param name="bytes">Its content.</param>
    /// <exception cref="IOException">It cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">It is a folder, or not for us to write.</exception>
    public static void Write(string path, ReadOnlySpan<byte> bytes)
    {
        using var file = new FileStream(path, FileMode.Create, FileAccess.Write, FileShare.None);
        file.Write(bytes);
        file.Flush(flushToDisk: true);
    }

    /// <summary>Whether there is a file with more than so many bytes.</summary>
    /// <param name="path">The file, or a link to it.</param>
    /// <param name="bytes">The number of bytes; 0 or more.</param>
    public static bool IsLarger(string path, long bytes) => At(path) is { } file && file.Length > bytes;

    // Null where there is no file: who reads it then says so.
    private static FileInfo? At(string path)
    {
        FileSystemInfo? file = new FileInfo(path);
        if (file.LinkTarget is not null)
            file = file.ResolveLinkTarget(returnFinalTarget: true);
        return file is FileInfo { Exists: true } found ? found : null;
    }
}
