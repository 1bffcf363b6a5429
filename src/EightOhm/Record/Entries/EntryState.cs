namespace EightOhm.Record;

/// <summary>How an entry's value stands; the reason stands beside it.</summary>
public enum EntryState
{
    /// <summary>An input as its chapter says.</summary>
    InForce,

    /// <summary>An input set from outside, which wins over the chapter's value.</summary>
    Set,

    /// <summary>A result that belongs to the inputs in force.</summary>
    Current,

    /// <summary>A result of other inputs than those in force, or a part whose file changed since it was read.</summary>
    Stale,

    /// <summary>There is no value: it could not be computed, or what it comes from has none.</summary>
    NoAnswer,
}
