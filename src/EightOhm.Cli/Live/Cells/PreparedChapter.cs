using EightOhm.Cells.Compiling;
using EightOhm.Cells.Sources;

namespace EightOhm.Cli.Live.Cells;

/// <summary>The cells of one chapter on their way through the compiler, no further than was asked for.</summary>
/// <param name="notebook">The notebook's file.</param>
/// <param name="references">What cells are compiled against.</param>
/// <param name="secret">By which kept images are known; null to keep none on the disk.</param>
internal sealed class PreparedChapter(string notebook, CellReferences references, byte[]? secret)
{
    private readonly Images images = new(KeptImages.Open(notebook, secret));
    private readonly List<CompiledCell> cells = [];
    private IReadOnlyList<string> texts = [];
    private NotebookCompiler? compiler;

    /// <summary>A cell that was asked for.</summary>
    public CompiledCell this[int cell] => cells[cell];

    /// <summary>The keys of the first cells.</summary>
    /// <param name="now">The code of all cells, in order.</param>
    /// <param name="last">The place of the last one asked for.</param>
    public IReadOnlyList<string> Keys(IReadOnlyList<string> now, int last)
    {
        if (compiler is null || !texts.Take(cells.Count).SequenceEqual(now.Take(cells.Count)))
        {
            compiler = new NotebookCompiler(references, Path.GetDirectoryName(notebook)!, images);
            cells.Clear();
        }

        texts = now;
        while (cells.Count <= last)
            cells.Add(compiler.Next(now[cells.Count]));
        if (cells.Count == now.Count)
            images.Save();
        return [.. cells.Select(c => c.Key)];
    }

    // What was compiled while the page is open is at hand, kept on the disk or not.
    private sealed class Images(KeptImages? kept) : IKeptImages
    {
        private readonly Dictionary<string, CompiledCell> mine = new(StringComparer.Ordinal);
        private bool isNew;

        public CompiledCell? Find(string key) => mine.GetValueOrDefault(key) ?? kept?.Find(key);

        public void Add(CompiledCell cell)
        {
            mine[cell.Key] = cell;
            kept?.Add(cell);
            isNew = true;
        }

        public void Save()
        {
            if (isNew)
                kept?.Save();
            isNew = false;
        }
    }
}
