using System.Diagnostics.CodeAnalysis;

namespace EightOhm.Record;

/// <summary>What a host that can read cells knows of the cell now running.</summary>
public interface ICellSources
{
    /// <summary>The entries that a value hangs on which the running cell hands to the record.</summary>
    /// <param name="recordPath">The record's <see cref="DesignRecord.Path"/>.</param>
    /// <param name="entryOrLabel">The entry's symbol, or the requirement's label.</param>
    /// <param name="line">The line of the call in its cell, from 1, as the compiler gives it for a caller's line number.</param>
    /// <returns>The entries' symbols, too many rather than too few, some perhaps not in the record yet; null when nothing is known, and the value then hangs on all.</returns>
    [SuppressMessage("Naming", "CA1716", Justification = "A keyword of another language only.")]
    IReadOnlyCollection<string>? Of(string recordPath, string entryOrLabel, int line);
}

/// <summary>Where a host says what it knows of the cell now running.</summary>
public static class CellSources
{
    private static readonly AsyncLocal<ICellSources?> Running = new();

    /// <summary>What is known of the running cell; null in a plain program. It reaches the cell's own tasks and threads.</summary>
    public static ICellSources? Current
    {
        get => Running.Value;
        set => Running.Value = value;
    }
}
