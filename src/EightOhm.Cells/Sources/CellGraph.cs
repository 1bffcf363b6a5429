namespace EightOhm.Cells.Sources;

/// <summary>The cells of one notebook, and what each takes from the others and from the record, without any of them run.</summary>
public sealed class CellGraph
{
    internal CellGraph(IReadOnlyList<CellReading> cells, CellLinks links) => (Cells, Links) = (cells, links);

    /// <summary>The readings, in the notebook's order.</summary>
    public IReadOnlyList<CellReading> Cells { get; }

    internal CellLinks Links { get; }

    /// <summary>Reads a notebook.</summary>
    /// <param name="cells">The code of its cells, in order.</param>
    /// <param name="references">What they are compiled against.</param>
    /// <param name="before">What the kernel has run before the first, such as the extension's usings.</param>
    public static CellGraph Read(IEnumerable<string> cells, CellReferences references, params IEnumerable<string> before)
    {
        ArgumentNullException.ThrowIfNull(cells);
        ArgumentNullException.ThrowIfNull(references);
        var texts = cells.ToList();
        var read = Read(texts, references, before.ToList());
        // The symbols of cells compiled against few assemblies and against all are not the same: all of them anew.
        return read.Cells.Any(c => c.Unknown == NotebookReader.NotCompiled) && references.WithAll() is var all && all != references ? Read(texts, all, before.ToList()) : read;
    }

    private static CellGraph Read(List<string> cells, CellReferences references, List<string> before)
    {
        var reader = new NotebookReader(references);
        foreach (var code in before)
            reader.Read(code);
        var readings = cells.Select(reader.Read).ToList();
        return Of(reader, readings);
    }

    /// <summary>The graph of cells that were just read.</summary>
    /// <param name="reader">What has read them, and nothing since.</param>
    /// <param name="readings">The readings, with their code.</param>
    internal static CellGraph Of(NotebookReader reader, IReadOnlyList<CellReading> readings) => new([.. readings.Select(r => r.WithoutCode())], LinkFinder.Of(reader, readings));

    /// <summary>The cells that must run because entries have moved.</summary>
    /// <param name="moved">The entries that moved; a record's name left empty means whatever record.</param>
    public Rerun CellsToRun(IEnumerable<EntryName> moved) => CellsToRun(moved, []);

    /// <summary>The cells that must run because entries have moved and others of the cells were changed, these themselves included.</summary>
    /// <param name="moved">The entries that moved; a record's name left empty means whatever record.</param>
    /// <param name="changed">The places of the cells that were changed.</param>
    public Rerun CellsToRun(IEnumerable<EntryName> moved, IEnumerable<int> changed)
    {
        var entries = moved.ToHashSet();
        var again = new SortedSet<int>(changed);
        Links.Spread(again);
        // Of a changed cell nobody can say which of its entries stay as they are.
        entries.UnionWith(again.SelectMany(i => Cells[i].Writes).Select(w => w.Entry));
        if (entries.Count == 0 && again.Count == 0)
            return new([], [], []);
        for (var (cells, names) = (-1, -1); cells != again.Count || names != entries.Count;)
        {
            (cells, names) = (again.Count, entries.Count);
            for (var i = 0; i < Cells.Count; i++)
            {
                if (Cells[i].Unknown is not null)
                    entries.Add(new EntryName("", ""));
                entries.UnionWith(Cells[i].Writes.Where(w => w.Sources.Any(s => IsMoved(s, entries))).Select(w => w.Entry).ToList());
                if (Cells[i].Unknown is not null || Cells[i].Reads.Any(r => IsMoved(r, entries)))
                    again.Add(i);
            }

            Links.Spread(again);
        }

        return new([.. again], [.. Links.Needed(again)], [.. entries]);
    }

    /// <summary>The earlier cells that one cell needs in a fresh kernel, through whatever others: what they define or change is used.</summary>
    /// <param name="cell">The cell's place.</param>
    public IReadOnlyCollection<int> NeededBefore(int cell) => Links.Needed([cell]);

    /// <summary>The cells that must be made again with one because they hold or change what it makes, or it what they make; itself included.</summary>
    /// <param name="cell">The cell's place.</param>
    internal IReadOnlyCollection<int> LinkedTo(int cell)
    {
        var again = new SortedSet<int> { cell };
        Links.Spread(again);
        return again;
    }

    private static bool IsMoved(EntryName read, HashSet<EntryName> moved) =>
        read.IsEvery ? moved.Any(m => SameRecord(m, read)) : moved.Contains(read) || moved.Any(m => SameRecord(m, read) && (m.IsEvery || (m.Name == read.Name && m.IsRequirement == read.IsRequirement)));

    private static bool SameRecord(EntryName a, EntryName b) => a.Record.Length == 0 || b.Record.Length == 0 || a.Record == b.Record;
}
