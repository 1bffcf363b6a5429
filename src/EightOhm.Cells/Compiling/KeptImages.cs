using System.Security.Cryptography;

namespace EightOhm.Cells.Compiling;

/// <summary>The compiled cells of one notebook, in a file beside it that may be deleted at any time.</summary>
/// <remarks>A compiled cell is run without anybody reading it: only what this person's own EightOhm has compiled is believed, which a code of his own
/// over each cell shows. What is not, or is cut off, is as if it were not there.</remarks>
public sealed class KeptImages : IKeptImages
{
    /// <summary>The folder beside the notebooks.</summary>
    public const string Folder = ".eightohm";

    private const int CodeLength = 32;

    private readonly Lock gate = new();
    private readonly string path;
    private readonly byte[] secret;
    private readonly Dictionary<string, CompiledCell> cells = new(StringComparer.Ordinal);
    private readonly HashSet<string> used = new(StringComparer.Ordinal);
    private bool isChanged;

    private KeptImages(string path, byte[] secret) => (this.path, this.secret) = (path, secret);

    /// <summary>What is kept of a notebook.</summary>
    /// <param name="notebook">The notebook's file.</param>
    /// <param name="secret">This person's secret; null where there is none, and nothing is kept then.</param>
    /// <returns>The kept cells; null where nothing can be kept.</returns>
    public static KeptImages? Open(string notebook, byte[]? secret)
    {
        if (secret is null || Path.GetDirectoryName(Path.GetFullPath(notebook)) is not { } home)
            return null;
        var kept = new KeptImages(Path.Combine(home, Folder, Path.GetFileNameWithoutExtension(notebook) + ".cells"), secret);
        kept.Load();
        return kept;
    }

    /// <inheritdoc/>
    public CompiledCell? Find(string key)
    {
        lock (gate)
        {
            used.Add(key);
            return cells.GetValueOrDefault(key);
        }
    }

    /// <inheritdoc/>
    public void Add(CompiledCell cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        lock (gate)
        {
            cells[cell.Key] = cell;
            used.Add(cell.Key);
            isChanged = true;
        }
    }

    /// <summary>Writes the file anew where it has changed, without the cells that nobody asked for. Where it cannot be written nothing is kept, and that is all.</summary>
    public void Save()
    {
        lock (gate)
        {
            if (!isChanged && cells.Keys.All(used.Contains))
                return;
            try
            {
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                var fresh = FormattableString.Invariant($"{path}.{Environment.ProcessId}");
                try
                {
                    File.WriteAllBytes(fresh, Bytes());
                    File.Move(fresh, path, overwrite: true);
                }
                finally
                {
                    File.Delete(fresh);
                }

                isChanged = false;
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                // A folder of somebody else's: its cells are compiled again next time.
            }
        }
    }

    private byte[] Bytes()
    {
        using var stream = new MemoryStream();
        using var writer = new BinaryWriter(stream);
        foreach (var cell in cells.Values.Where(c => used.Contains(c.Key)))
        {
            var bytes = CellImage.Write(cell);
            writer.Write(HMACSHA256.HashData(secret, bytes));
            writer.Write(bytes.Length);
            writer.Write(bytes);
        }

        return stream.ToArray();
    }

    private void Load()
    {
        byte[] all;
        try
        {
            if (!File.Exists(path))
                return;
            all = File.ReadAllBytes(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return;
        }

        for (var at = 0; at + CodeLength + sizeof(int) <= all.Length;)
        {
            var length = BitConverter.ToInt32(all, at + CodeLength);
            if (length < 0 || length > all.Length - at - CodeLength - sizeof(int))
                return;
            var bytes = all.AsSpan(at + CodeLength + sizeof(int), length).ToArray();
            if (CryptographicOperations.FixedTimeEquals(HMACSHA256.HashData(secret, bytes), all.AsSpan(at, CodeLength)) && CellImage.Read(bytes) is { } cell)
                cells[cell.Key] = cell;
            at += CodeLength + sizeof(int) + length;
        }
    }
}
