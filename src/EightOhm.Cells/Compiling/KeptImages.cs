namespace EightOhm.Cells.Compiling;

/// <summary>The compiled cells of one notebook, in a file beside it that may be deleted at any time.</summary>
/// <remarks>A compiled cell is run without anybody reading it: only what this person's own EightOhm has compiled is believed, which a code of his own
/// over each cell shows. What is not, or is cut off, is as if it were not there.</remarks>
public sealed class KeptImages : IKeptImages
{
    /// <summary>The folder beside the notebooks.</summary>
    public const string Folder = ".eightohm";

    private readonly Lock gate = new();
    private readonly KeptFile file;
    private readonly Dictionary<string, CompiledCell> cells = new(StringComparer.Ordinal);
    private readonly HashSet<string> used = new(StringComparer.Ordinal);
    private bool isChanged;

    private KeptImages(KeptFile file)
    {
        this.file = file;
        foreach (var cell in file.Load().Select(CellImage.Read).OfType<CompiledCell>())
            cells[cell.Key] = cell;
    }

    /// <summary>What is kept of a notebook.</summary>
    /// <param name="notebook">The notebook's file.</param>
    /// <param name="secret">This person's secret; null where there is none, and nothing is kept then.</param>
    /// <returns>The kept cells; null where nothing can be kept.</returns>
    public static KeptImages? Open(string notebook, byte[]? secret) => KeptFile.Of(notebook, ".cells", secret) is { } file ? new(file) : null;

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
            if (file.Save(cells.Values.Where(c => used.Contains(c.Key)).Select(CellImage.Write)))
                isChanged = false;
        }
    }
}
