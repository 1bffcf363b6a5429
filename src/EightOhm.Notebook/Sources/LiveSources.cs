using EightOhm.Record;
using Microsoft.CodeAnalysis;

namespace EightOhm.Notebook.Sources;

/// <summary>Reads a kernel's cells as they are run, so that the record knows what each value of the cell at work hangs on.</summary>
/// <remarks>One for each kernel. What goes wrong in here must never keep a cell from running: nothing is known then, and what is computed hangs on every input.</remarks>
internal sealed class LiveSources
{
    private readonly Lazy<NotebookReader> reader = new(Begin);

    /// <summary>Reads the cell about to run.</summary>
    /// <param name="code">The cell's code.</param>
    /// <returns>What was read; null where that failed.</returns>
    public CellReading? Read(string code)
    {
        try
        {
            return reader.Value.Read(code);
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            return null;
        }
    }

    /// <summary>Says that the cell read last failed while it ran: its variables may hold what they held before.</summary>
    /// <param name="reading">What was read of it.</param>
    public void Failed(CellReading reading) => reader.Value.Failed(reading);

    private static NotebookReader Begin()
    {
        var reader = new NotebookReader(CellReferences.OfWhatIsLoaded());
        reader.Read(NotebookExtension.Script);
        return reader;
    }

    /// <summary>What one cell's reading tells the record.</summary>
    internal sealed class OfCell(CellReading reading) : ICellSources
    {
        /// <inheritdoc/>
        public IReadOnlyCollection<string>? Of(string recordPath, string entryOrLabel, int line)
        {
            if (reading.Unknown is not null)
                return null;
            var file = Path.GetFileName(recordPath);
            var writes = reading.Writes.Where(w => w.Line == line && Fits(w.Entry.Record, file) && (w.Entry.IsEvery || w.Entry.Name == entryOrLabel)).ToList();
            var sources = writes.SelectMany(w => w.Sources).Where(s => !s.IsRequirement && Fits(s.Record, file)).ToList();
            return writes.Count == 0 || sources.Any(s => s.IsEvery) ? null : [.. sources.Select(s => s.Name).Distinct(StringComparer.Ordinal)];
        }

        // A cell opens a record by a path of its own; an empty one stands for whatever record.
        private static bool Fits(string record, string file) => record.Length == 0 || Path.GetFileName(record) == file;
    }
}
