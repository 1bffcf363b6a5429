namespace EightOhm.Cells.Sources;

/// <summary>Reads the cells of a notebook as they come, against few assemblies for as long as those are enough. None is read before one of them names a record:
/// what is written into no record needs no sources, and what another assembly writes into one hangs on all.</summary>
/// <param name="references">What the cells are compiled against.</param>
internal sealed class ReadAhead(CellReferences references)
{
    // Whatever gives a cell a record has it in its name.
    private const string Record = nameof(Record);

    private readonly List<Cell> cells = [];
    private CellReferences used = references;
    private NotebookReader? reader;
    private CellReading? last;
    private bool namesRecord;
    private int done;

    /// <summary>Takes a cell in, to be read when a later one is.</summary>
    /// <param name="code">The cell's code.</param>
    /// <param name="compiledWith">What it compiled against without an error; null where that is not known.</param>
    public void Follow(string code, CellReferences? compiledWith)
    {
        cells.Add(new Cell(code, compiledWith));
        namesRecord |= code.Contains(Record, StringComparison.Ordinal);
    }

    /// <summary>Reads the next cell.</summary>
    /// <param name="code">The cell's code.</param>
    /// <param name="compiledWith">What it compiled against without an error; null where that is not known.</param>
    /// <returns>What is read; null where no cell has named a record yet.</returns>
    public CellReading? Next(string code, CellReferences? compiledWith = null)
    {
        Follow(code, compiledWith);
        last = null;
        while (namesRecord && done < cells.Count)
            last = Read(cells[done++]);
        return last;
    }

    /// <summary>Says that the last cell failed while it ran: its variables may hold what they held before.</summary>
    public void Failed()
    {
        cells[^1].HasFailed = true;
        if (last is not null)
            reader?.Failed(last);
    }

    /// <summary>What hangs on what among the cells so far; null where not all of them were read.</summary>
    /// <param name="count">How many there are.</param>
    public CellGraph? Graph(int count) =>
        reader is not null && cells.Count == count && cells.All(c => c.Reading is not null) ? CellGraph.Of(reader, [.. cells.Select(c => c.Reading!)]) : null;

    private CellReading Read(Cell cell)
    {
        reader ??= Begin(used);
        var reading = Read(cell, ReferenceEquals(cell.CompiledWith, used));
        if (reading.Unknown != NotebookReader.NotCompiled || used.WithAll() is var all && all == used)
            return reading;
        // It may name an assembly that cells seldom name: all cells anew, against all there are.
        used = all;
        reader = Begin(all);
        foreach (var earlier in cells.Take(done))
            reading = Read(earlier, hasCompiled: false);
        return reading;
    }

    private CellReading Read(Cell cell, bool hasCompiled)
    {
        var reading = reader!.Read(cell.Code, hasCompiled);
        if (cell.HasFailed)
            reader.Failed(reading);
        return cell.Reading = reading;
    }

    private static NotebookReader Begin(CellReferences references)
    {
        var reader = new NotebookReader(references);
        reader.Read(CellUsings.Script);
        return reader;
    }

    private sealed class Cell(string code, CellReferences? compiledWith)
    {
        public string Code => code;

        public CellReferences? CompiledWith => compiledWith;

        public bool HasFailed { get; set; }

        public CellReading? Reading { get; set; }
    }
}
