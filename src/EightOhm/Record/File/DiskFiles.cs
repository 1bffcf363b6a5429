namespace EightOhm.Record;

/// <summary>The real disk.</summary>
internal class DiskFiles : IFileLayer
{
    public virtual byte[]? Read(string path)
    {
        try
        {
            return OrdinaryFile.Read(path);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return null;
        }
    }

    public virtual void Write(string path, byte[] bytes) => OrdinaryFile.Write(path, bytes);

    public virtual void Rename(string from, string to) => File.Move(from, to, overwrite: true);

    public virtual void Discard(string path)
    {
        if (!File.Exists(path))
            return;
        try
        {
            // Only who can have it alone may remove it: a writer at work holds it.
            using (new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.None))
            {
            }

            File.Delete(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Somebody else's, or a folder that is not ours to write: reading the record is still possible.
        }
    }
}
