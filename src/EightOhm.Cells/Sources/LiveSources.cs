using EightOhm.Record;

namespace EightOhm.Cells.Sources;

/// <summary>Reads a kernel's cells while they run, so that the record knows what each value of the cell at work hangs on.</summary>
/// <remarks>
/// One for each kernel. Cells are read one after the other beside the kernel's own work; only a cell that computes something for the record before
/// it has been read waits. What goes wrong in here must never keep a cell from running: nothing is known then, and what is computed hangs on every input.
/// </remarks>
internal sealed class LiveSources
{
    private readonly Lazy<ReadAhead> _read = new(() => new(CellReferences.OfWhatIsLoaded()));
    private Task _last = Task.CompletedTask;

    /// <summary>Begins to read the cell about to run.</summary>
    /// <param name="code">The cell's code.</param>
    /// <returns>What is read; null where that fails, or where no cell has named a record.</returns>
    public Task<CellReading?> Read(string code)
    {
        var next = After(_last, () => _read.Value.Next(code));
        _last = next;
        return next;
    }

    /// <summary>Says that the cell read last failed while it ran: its variables may hold what they held before.</summary>
    public void Failed() => _last = After(_last, () =>
    {
        _read.Value.Failed();
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
}
