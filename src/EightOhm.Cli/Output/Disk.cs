namespace EightOhm.Cli.Output;

/// <summary>The few things that a run does to the disk when it puts its files in place, so that tests can stop between any two of them.</summary>
internal class Disk
{
    public static Disk Real { get; } = new();

    /// <summary>Writes a whole file and waits until it is on the disk.</summary>
    public virtual void Write(string path, ReadOnlySpan<byte> bytes) => OrdinaryFile.Write(path, bytes);

    /// <summary>Waits until what was written to an open file is on the disk.</summary>
    public virtual void Flush(FileStream file) => file.Flush(flushToDisk: true);

    /// <summary>Puts a file in another's place in one step.</summary>
    public virtual void Rename(string from, string to) => File.Move(from, to, overwrite: true);

    /// <summary>Removes a file, if it is there.</summary>
    public virtual void Delete(string path) => File.Delete(path);

    /// <summary>Removes a folder with all in it, if it is there.</summary>
    public virtual void DeleteFolder(string path)
    {
        if (Directory.Exists(path))
            Directory.Delete(path, recursive: true);
    }
}
