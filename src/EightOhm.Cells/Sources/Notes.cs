namespace EightOhm.Cells.Sources;

/// <summary>What a record's verb does to an entry.</summary>
internal enum Written
{
    /// <summary>It makes an entry or moves its value.</summary>
    Entry,

    /// <summary>It asks a requirement.</summary>
    Requirement,
}

/// <summary>A verb at a line of a cell. Several runs of it are one.</summary>
/// <param name="Record">The record.</param>
/// <param name="Kind">What it does.</param>
/// <param name="Name">The entry or the requirement's label; null when the name is computed.</param>
/// <param name="Line">The line, from 1, as the caller's line number says it.</param>
internal readonly record struct Write(RecordAtom Record, Written Kind, string? Name, int Line);

/// <summary>What one cell did, gathered while it is read.</summary>
internal sealed class Notes
{
    /// <summary>The verbs, and what each value hangs on.</summary>
    public Dictionary<Write, Value> Writes { get; } = [];

    /// <summary>Variables of the chain that were assigned, with what they held before the cell.</summary>
    public Dictionary<int, Value> Assigned { get; } = [];

    /// <summary>Variables of the chain that were read.</summary>
    public HashSet<int> Read { get; } = [];

    /// <summary>What those held when they were read.</summary>
    public Value Touched { get; set; }

    /// <summary>Warnings, each once.</summary>
    public SortedSet<string> Warnings { get; } = new(StringComparer.Ordinal);

    /// <summary>Whether it changed the process outside what values show: a setting of a library, a file.</summary>
    public bool ChangesWorld { get; set; }
}
