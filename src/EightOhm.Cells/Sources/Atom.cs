namespace EightOhm.Cells.Sources;

/// <summary>One thing that a value in a cell can hang on or hold.</summary>
internal abstract record Atom;

/// <summary>The value in force of an entry.</summary>
internal sealed record EntryAtom(RecordAtom Record, string Name) : Atom;

/// <summary>Every entry of a record, because a name is computed or a whole record is shown.</summary>
internal sealed record EveryEntryAtom(RecordAtom Record) : Atom;

/// <summary>How a requirement stands.</summary>
internal sealed record RequirementAtom(RecordAtom Record, string Label) : Atom;

/// <summary>A record as an identity: holding it is not reading it. A scratch record is told from another by the place that made it.</summary>
/// <param name="Path">As the cell says it; of a scratch record its name; empty when it is not known which record it is.</param>
/// <param name="Site">The object that a scratch record is; 0 for a file.</param>
internal sealed record RecordAtom(string Path, int Site) : Atom
{
    /// <summary>Some record, not known which: reads of it are reads of all.</summary>
    public static RecordAtom Unknown { get; } = new("", 0);
}

/// <summary>A string that a cell spells out: a possible name of an entry.</summary>
internal sealed record TextAtom(string Text) : Atom;

/// <summary>A string that is computed: as a name of an entry it can be any.</summary>
internal sealed record ComputedTextAtom : Atom;

/// <summary>A mutable object, by the place that makes it.</summary>
internal sealed record ObjectAtom(int Id) : Atom;

/// <summary>A function as a value: asked for what it reads when it is used.</summary>
internal sealed record ClosureAtom(int Id) : Atom;
