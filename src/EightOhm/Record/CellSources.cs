namespace EightOhm.Record;

/// <summary>Knows of the code at work which entries a value came from: in a notebook, the reader of the cells.</summary>
public interface ICellSources
{
    /// <summary>The entries that a computed value hangs on, through variables and functions; null when that cannot be known.</summary>
    /// <param name="recordPath">The record's file.</param>
    /// <param name="entryOrLabel">The name of the entry computed, or the label of the requirement.</param>
    /// <param name="line">The line of the call in its cell, from 1.</param>
    [System.Diagnostics.CodeAnalysis.SuppressMessage("Naming", "CA1716", Justification = "The house is C#, where the word is free.")]
    IReadOnlyCollection<string>? Of(string recordPath, string entryOrLabel, int line);
}

/// <summary>Who knows of the code at work where its values come from.</summary>
public static class CellSources
{
    private static readonly AsyncLocal<ICellSources?> Here = new();

    /// <summary>The one who knows, or null: then nothing is known, and what is computed hangs on every input.</summary>
    public static ICellSources? Current
    {
        get => Here.Value;
        set => Here.Value = value;
    }
}
