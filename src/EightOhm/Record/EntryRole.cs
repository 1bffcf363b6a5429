namespace EightOhm.Record;

/// <summary>Where an entry's value comes from.</summary>
public enum EntryRole
{
    /// <summary>A target or a choice: the designer's to change.</summary>
    Given,

    /// <summary>A rule over other entries, recomputed whenever one moves.</summary>
    Let,

    /// <summary>What only a cell can compute; stale when an entry it came from moves.</summary>
    Found,
}
