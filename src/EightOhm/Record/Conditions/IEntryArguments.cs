namespace EightOhm.Record;

/// <summary>The entries that a lambda's parameters may name beside conditions; where there is no record, none.</summary>
internal interface IEntryArguments
{
    /// <summary>The entries' names.</summary>
    IReadOnlyList<string> Names { get; }

    /// <summary>The value of an entry as a lambda takes it, of a part its device, and its type.</summary>
    /// <param name="name">A name.</param>
    /// <returns>Null when there is no such entry; no value, and why, when it has no answer.</returns>
    (Type Type, object? Value, string? Reason)? Find(string name);

    /// <summary>Told of the name of a condition: where cells are read, it may stand among the names that a value comes from, and is no entry.</summary>
    /// <param name="name">The condition's name.</param>
    void Take(string name);
}
