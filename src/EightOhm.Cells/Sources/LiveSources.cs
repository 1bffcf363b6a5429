using EightOhm.Record;

namespace EightOhm.Cells.Sources;

/// <summary>Reads a kernel's cells while they run, so that the record knows what each value of the cell at work hangs on.</summary>
/// <remarks>
/// One for each kernel. Cells are read one after the other beside the kernel's own work; only a cell that computes something for the record before
/// it has been read waits. What goes wrong in here must never keep a cell from running: nothing is known then, and what is computed hangs on every input.
/// </remarks>
internal sealed class LiveSources
{
    private readonly List<(string Code, bool Failed)> _read = [];
    private NotebookReader? _reader;
    private CellReferences? _references;
    private Task _last = Task.CompletedTask;

    /// <summary>Begins to read the cell about to run.</summary>
    /// <param name="code">The cell's code.</param>
    /// <returns>What is read; null where that fails.</returns>
    public Task<CellReading?> Read(string code)
    {
        var next = After(_last, () => Next(code));
        _last = next;
        return next;
    }

    /// <summary>Says that the cell read last failed while it ran: its variables may hold what they held before.</summary>
    /// <param name="reading">What is read of it.</param>
    public void Failed(Task<CellReading?> reading) => _last = After(_last, () =>
    {
        if (reading.Result is { } read)
            Failed(read);
        return null;
    });

    private static async Task<CellReading?> After(Task before, Func<CellReading?> read)
    {
        await before.ConfigureAwait(false);
        await Task.Yield();
        try
        {
            return read();
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            return null;
        }
    }

    private void Failed(CellReading read)
    {
        _reader?.Failed(read);
        _read[^1] = (_read[^1].Code, true);
    }

    private CellReading Next(string code)
    {
        _reader ??= Begin(_references ??= CellReferences.OfWhatIsLoaded());
        _read.Add((code, false));
        var reading = _reader.Read(code);
        if (reading.Unknown != NotebookReader.NotCompiled || _references!.WithAll() is var all && all == _references)
            return reading;
        // It may name an assembly that cells seldom name: all cells anew, against all there are.
        _references = all;
        _reader = Begin(all);
        foreach (var (earlier, failed) in _read)
        {
            reading = _reader.Read(earlier);
            if (failed)
                _reader.Failed(reading);
        }

        return reading;
    }

    private static NotebookReader Begin(CellReferences references)
    {
        var reader = new NotebookReader(references);
        reader.Read(CellUsings.Script);
        return reader;
    }

    /// <summary>What one cell's reading tells the record.</summary>
    internal sealed class OfCell(Task<CellReading?> reading) : ICellSources
    {
        /// <summary>What a reading that is done tells.</summary>
        public OfCell(CellReading reading)
            : this(Task.FromResult<CellReading?>(reading))
        {
        }

        /// <inheritdoc/>
        public IReadOnlyCollection<string>? Of(string recordPath, string entryOrLabel, int line)
        {
            if (reading.GetAwaiter().GetResult() is not { Unknown: null } read)
                return null;
            var file = Path.GetFileName(recordPath);
            var writes = read.Writes.Where(w => w.Line == line && Fits(w.Entry.Record, file) && (w.Entry.IsEvery || w.Entry.Name == entryOrLabel)).ToList();
            var sources = writes.SelectMany(w => w.Sources).Where(s => !s.IsRequirement && Fits(s.Record, file)).ToList();
            return writes.Count == 0 || sources.Any(s => s.IsEvery) ? null : [.. sources.Select(s => s.Name).Distinct(StringComparer.Ordinal)];
        }

        // A cell opens a record by a path of its own; an empty one stands for whatever record.
        private static bool Fits(string record, string file) => record.Length == 0 || Path.GetFileName(record) == file;
    }
}
