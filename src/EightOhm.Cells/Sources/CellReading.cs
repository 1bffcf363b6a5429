using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace EightOhm.Cells.Sources;

/// <summary>An entry of a record, or a requirement.</summary>
/// <param name="Record">The record as the cell opens it, such as "record.json"; of a scratch record its name; empty for whatever record.</param>
/// <param name="Name">The entry's symbol or the requirement's label; empty for every entry.</param>
/// <param name="IsRequirement">Whether it is a requirement.</param>
public readonly record struct EntryName(string Record, string Name, bool IsRequirement = false)
{
    /// <summary>Whether it stands for every entry of its record.</summary>
    public bool IsEvery => Name.Length == 0;
}

/// <summary>An entry that a cell makes or moves, or a requirement that it asks.</summary>
/// <param name="Entry">The entry; every one when its name is computed.</param>
/// <param name="Line">The line of the call, from 1.</param>
/// <param name="Sources">The entries that its value hangs on, of whatever record.</param>
public sealed record EntryWrite(EntryName Entry, int Line, IReadOnlyCollection<EntryName> Sources);

/// <summary>What was read of one cell.</summary>
public sealed class CellReading
{
    internal CellReading(int position, string? reason) => (Position, Unknown) = (position, reason);

    /// <summary>Why the cell could not be followed; it then hangs on all and may change all. Null when it was followed.</summary>
    public string? Unknown { get; }

    /// <summary>The entries and requirements that the cell hangs on: whose move would change a value, a condition or an output of it.</summary>
    public IReadOnlyCollection<EntryName> Reads { get; internal init; } = [];

    /// <summary>The entries that it makes or moves, and the requirements that it asks.</summary>
    public IReadOnlyList<EntryWrite> Writes { get; internal init; } = [];

    /// <summary>The variables, functions and types that it declares.</summary>
    public IReadOnlyCollection<string> Defines { get; internal init; } = [];

    /// <summary>What the writer may want to know: computed names, by line.</summary>
    public IReadOnlyCollection<string> Warnings { get; internal init; } = [];

    /// <summary>The same without the compiler's part: what a graph keeps of it for as long as a page is open.</summary>
    internal CellReading WithoutCode() => new(Position, Unknown) { Reads = Reads, Writes = Writes, Defines = Defines, Warnings = Warnings, ChangesWorld = ChangesWorld };

    internal int Position { get; }

    /// <summary>Whether it changed the process outside what values show: a setting of a library, a file.</summary>
    internal bool ChangesWorld { get; init; }

    /// <summary>Its text; null in a graph, which needs none.</summary>
    internal CompilationUnitSyntax? Root { get; init; }

    internal IReadOnlyDictionary<Write, Value> Written { get; init; } = new Dictionary<Write, Value>();

    internal Notes? Notes { get; init; }

    internal Value Seen { get; init; }

    /// <summary>The objects that its variables held when it had ended.</summary>
    internal IReadOnlySet<int> Holds { get; init; } = new HashSet<int>();

    /// <summary>The objects of other cells that it had in hand.</summary>
    internal IReadOnlySet<int> Touches { get; init; } = new HashSet<int>();

    /// <summary>The functions that its variables held when it had ended.</summary>
    internal IReadOnlyCollection<Closure> Functions { get; init; } = [];
}
