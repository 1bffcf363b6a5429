using EightOhm.Cells.Sources;

namespace EightOhm.Cells.Compiling;

/// <summary>What the cells of one notebook hang on, kept beside it: to read them takes the compiler some 20 ms a cell.</summary>
/// <remarks>Believed as compiled cells are (<see cref="KeptImages"/>), and only for the very texts that were read, by the EightOhm that read them.</remarks>
public sealed class KeptGraph
{
    private const int Format = 1;
    private const int KeyDigits = 32;

    private readonly KeptFile file;

    private KeptGraph(KeptFile file) => this.file = file;

    /// <summary>What is kept of a notebook.</summary>
    /// <param name="notebook">The notebook's file.</param>
    /// <param name="secret">This person's secret; null where there is none, and nothing is kept then.</param>
    /// <returns>Its place, whether it holds something or not; null where nothing can be kept.</returns>
    public static KeptGraph? Open(string notebook, byte[]? secret) => KeptFile.Of(notebook, ".graph", secret) is { } file ? new(file) : null;

    /// <summary>The graph of cells; null where it is not kept.</summary>
    /// <param name="cells">The code of the notebook's cells, in order.</param>
    public CellGraph? Find(IReadOnlyList<string> cells)
    {
        ArgumentNullException.ThrowIfNull(cells);
        var key = Key(cells);
        return file.Load().Select(bytes => Read(bytes, key, cells.Count)).FirstOrDefault(graph => graph is not null);
    }

    /// <summary>Keeps a graph in place of the one before.</summary>
    /// <param name="cells">The code of the notebook's cells, in order.</param>
    /// <param name="graph">What was read of them.</param>
    /// <returns>Whether it could be written.</returns>
    public bool Keep(IReadOnlyList<string> cells, CellGraph graph)
    {
        ArgumentNullException.ThrowIfNull(cells);
        ArgumentNullException.ThrowIfNull(graph);
        return file.Save([Write(Key(cells), graph)]);
    }

    private static string Key(IEnumerable<string> cells) => Fingerprint.Of([NotebookCompiler.Build, .. cells], KeyDigits);

    private static byte[] Write(string key, CellGraph graph) => KeptBytes.Of(Format, writer =>
    {
        writer.Write(key);
        writer.WriteList(graph.Cells, cell =>
        {
            writer.Write(cell.Position);
            writer.Write(cell.Unknown ?? "");
            writer.WriteList(cell.Reads, writer.WriteName);
            writer.WriteWrites(cell.Writes);
            writer.WriteList(cell.Defines, writer.Write);
            writer.WriteList(cell.Warnings, writer.Write);
            writer.Write(cell.ChangesWorld);
        });
        writer.WriteList(graph.Links.Cells, link =>
        {
            writer.Write(link.Always);
            writer.WriteList(link.Uses, writer.Write);
            writer.WriteList(link.FunctionUses, writer.Write);
        });
        foreach (var pairs in new[] { graph.Links.Changes, graph.Links.Holds, graph.Links.Overtaken })
        {
            writer.WriteList(pairs, pair =>
            {
                writer.Write(pair.Item1);
                writer.Write(pair.Item2);
            });
        }
    });

    private static CellGraph? Read(byte[] bytes, string key, int count) => KeptBytes.Read(bytes, Format, reader =>
    {
        if (reader.ReadString() != key)
            return null;
        var cells = reader.ReadList(() => new CellReading(reader.ReadInt32(), reader.ReadString() is { Length: > 0 } unknown ? unknown : null)
        {
            Reads = reader.ReadList(reader.ReadName),
            Writes = reader.ReadWrites(),
            Defines = reader.ReadList(reader.ReadString),
            Warnings = reader.ReadList(reader.ReadString),
            ChangesWorld = reader.ReadBoolean(),
        });
        var links = reader.ReadList(() => new CellLink(reader.ReadBoolean(), Places(), Places()));
        var graph = new CellGraph(cells, new CellLinks(links, Pairs(), Pairs(), Pairs()));
        return cells.Count == count && links.Count == count ? graph : null;

        int Place() => reader.ReadInt32() is var place && place >= 0 && place < cells.Count ? place : throw new FormatException("It names a cell that is not there.");
        HashSet<int> Places() => [.. reader.ReadList(Place)];
        List<(int, int)> Pairs() => reader.ReadList(() => (Place(), Place()));
    });
}
