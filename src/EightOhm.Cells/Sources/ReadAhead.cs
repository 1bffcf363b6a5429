namespace EightOhm.Cells.Sources;

/// <summary>Reads the cells of a notebook as they come, against few assemblies for as long as those are enough.</summary>
/// <param name="references">What the cells are compiled against.</param>
internal sealed class ReadAhead(CellReferences references)
{
    private readonly List<(string Code, bool Failed)> read = [];
    private CellReferences used = references;
    private NotebookReader? reader;

    /// <summary>Reads the next cell.</summary>
    /// <param name="code">The cell's code.</param>
    /// <param name="compiledWith">What it compiled against without an error; null where that is not known.</param>
    public CellReading Next(string code, CellReferences? compiledWith = null)
    {
        reader ??= Begin(used);
        read.Add((code, false));
        var reading = reader.Read(code, hasCompiled: ReferenceEquals(compiledWith, used));
        if (reading.Unknown != NotebookReader.NotCompiled || used.WithAll() is var all && all == used)
            return reading;
        // It may name an assembly that cells seldom name: all cells anew, against all there are.
        used = all;
        reader = Begin(all);
        foreach (var (earlier, failed) in read)
        {
            reading = reader.Read(earlier);
            if (failed)
                reader.Failed(reading);
        }

        return reading;
    }

    /// <summary>Says that the cell read last failed while it ran: its variables may hold what they held before.</summary>
    /// <param name="reading">What was read of it.</param>
    public void Failed(CellReading reading)
    {
        reader?.Failed(reading);
        read[^1] = (read[^1].Code, true);
    }

    private static NotebookReader Begin(CellReferences references)
    {
        var reader = new NotebookReader(references);
        reader.Read(CellUsings.Script);
        return reader;
    }
}
