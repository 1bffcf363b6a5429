namespace EightOhm.Record;

/// <summary>Where an entry's value comes from.</summary>
public enum EntryRole
{
    /// <summary>What the amplifier must do: an input.</summary>
    Target,

    /// <summary>A decision of the designer: an input.</summary>
    Choice,

    /// <summary>A guess, listed until something confirms it: an input.</summary>
    Assumption,

    /// <summary>A device's card in a role: an input.</summary>
    Part,

    /// <summary>A rule over other entries, recomputed whenever one moves.</summary>
    Derived,

    /// <summary>What only a cell can compute; stale when anything it came from moves.</summary>
    Computed,
}

internal static class EntryRoles
{
    /// <summary>Whether the designer may move it: --set and Set move these and nothing else.</summary>
    public static bool IsInput(this EntryRole role) => role <= EntryRole.Part;

    /// <summary>Whether a repeated verb may turn the one into the other: an assumption that was decided is a choice, a rule written out is no longer a cell's result.</summary>
    public static bool MayBecome(this EntryRole role, EntryRole other) => Group(role) == Group(other);

    public static string InWords(this EntryRole role) => role switch
    {
        EntryRole.Target => "a target",
        EntryRole.Choice => "a choice",
        EntryRole.Assumption => "an assumption",
        EntryRole.Part => "a part",
        EntryRole.Derived => "derived",
        _ => "computed",
    };

    private static int Group(EntryRole role) => role switch
    {
        EntryRole.Part => 1,
        EntryRole.Derived or EntryRole.Computed => 2,
        _ => 0,
    };
}
