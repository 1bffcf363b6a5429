using System.Security.Cryptography;

namespace EightOhm.Cells.Compiling;

/// <summary>A file beside a notebook that may be deleted at any time, and is believed only where this person's own EightOhm has written it: a code of his own stands over each part.
/// What is not believed, or is cut off, is as if it were not there.</summary>
internal sealed class KeptFile
{
    private const int CodeLength = 32;

    private readonly string path;
    private readonly byte[] secret;

    private KeptFile(string path, byte[] secret) => (this.path, this.secret) = (path, secret);

    /// <summary>The file of a notebook; null where nothing can be kept.</summary>
    /// <param name="notebook">The notebook's file.</param>
    /// <param name="ending">What it holds.</param>
    /// <param name="secret">This person's secret; null where there is none.</param>
    public static KeptFile? Of(string notebook, string ending, byte[]? secret) =>
        secret is not null && Path.GetDirectoryName(Path.GetFullPath(notebook)) is { } home
            ? new(Path.Combine(home, KeptImages.Folder, Path.GetFileNameWithoutExtension(notebook) + ending), secret)
            : null;

    /// <summary>The parts that are believed.</summary>
    public IEnumerable<byte[]> Load()
    {
        byte[] all;
        try
        {
            if (!File.Exists(path))
                yield break;
            // Before its codes are looked at it is anybody's.
            all = OrdinaryFile.Read(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            yield break;
        }

        for (var at = 0; at + CodeLength + sizeof(int) <= all.Length;)
        {
            var length = BitConverter.ToInt32(all, at + CodeLength);
            if (length < 0 || length > all.Length - at - CodeLength - sizeof(int))
                yield break;
            var bytes = all.AsSpan(at + CodeLength + sizeof(int), length).ToArray();
            if (CryptographicOperations.FixedTimeEquals(HMACSHA256.HashData(secret, bytes), all.AsSpan(at, CodeLength)))
                yield return bytes;
            at += CodeLength + sizeof(int) + length;
        }
    }

    /// <summary>Writes it anew.</summary>
    /// <param name="parts">What it is to hold.</param>
    /// <returns>Whether it could be written: a folder of somebody else's keeps nothing, and that is all.</returns>
    public bool Save(IEnumerable<byte[]> parts)
    {
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            var fresh = FormattableString.Invariant($"{path}.{Environment.ProcessId}");
            try
            {
                using (var writer = new BinaryWriter(File.Create(fresh)))
                {
                    foreach (var bytes in parts)
                    {
                        writer.Write(HMACSHA256.HashData(secret, bytes));
                        writer.WriteBlock(bytes);
                    }
                }

                File.Move(fresh, path, overwrite: true);
                return true;
            }
            finally
            {
                File.Delete(fresh);
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}
