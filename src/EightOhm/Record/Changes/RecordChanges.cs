namespace EightOhm.Record;

/// <summary>What differs between two states of a design, each change with the way back to what was moved.</summary>
/// <param name="Moved">The inputs that were moved, in the record's order.</param>
/// <param name="Requirements">The requirements that differ, failures first: those that stopped being met, then those that still are not, then the rest.</param>
/// <param name="Entries">The results that differ, in the record's order.</param>
public sealed record RecordChanges(IReadOnlyList<EntryChange> Moved, IReadOnlyList<RequirementChange> Requirements, IReadOnlyList<EntryChange> Entries)
{
    /// <summary>Whether nothing differs.</summary>
    public bool None => Moved.Count == 0 && Requirements.Count == 0 && Entries.Count == 0;

    /// <summary>Compares two states of one design.</summary>
    /// <remarks>Two copies of one record's file, one of them moved by <see cref="DesignRecord.Set"/>, are such a pair. Neither is changed.</remarks>
    /// <param name="before">The design before.</param>
    /// <param name="after">The design after.</param>
    public static RecordChanges Compare(DesignRecord before, DesignRecord after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        return new Comparison(before.Snapshot(), after.Snapshot()).Changes();
    }
}

/// <summary>An entry that differs.</summary>
/// <param name="Name">The symbol.</param>
/// <param name="Before">The entry before; null when it is new.</param>
/// <param name="After">The entry after; null when it is gone.</param>
/// <param name="Chain">The names from a moved input to this entry, both included; of a moved input itself alone, and empty where nothing that moved leads here.</param>
public sealed record EntryChange(string Name, Entry? Before, Entry? After, IReadOnlyList<string> Chain);

/// <summary>A requirement that differs.</summary>
/// <param name="Before">How it stood; null when it is new.</param>
/// <param name="After">How it stands; null when it is gone.</param>
/// <param name="Chains">For each moved input that reaches it, the names from that input to the value or the limit that is judged.</param>
/// <param name="Cures">For one that is not met, the inputs that could cure it, the strongest first; empty where a cell would have to compute again to tell.</param>
public sealed record RequirementChange(Requirement? Before, Requirement? After, IReadOnlyList<IReadOnlyList<string>> Chains, IReadOnlyList<Cure> Cures)
{
    /// <summary>The label with the values in force.</summary>
    public string Label => (After ?? Before)!.Label;

    /// <summary>Whether it was met and is no longer.</summary>
    public bool Broke => Before?.Met == true && After is { Met: not true };
}

/// <summary>An input on which a missed requirement hangs by rules alone, and what moving it would do.</summary>
/// <param name="Name">The input.</param>
/// <param name="Value">Its value in force as it reads.</param>
/// <param name="Sensitivity">By how much of the limit, in per cent, the margin grows when the input grows by one per cent, away from zero; negative where the input must fall. For a temperature per kelvin instead, for a margin in dB or K in that unit: see <paramref name="Unit"/>.</param>
/// <param name="Unit">What <paramref name="Sensitivity"/> is in: "% per %", "K per %", "dB per %", "% per K", ….</param>
public sealed record Cure(string Name, string Value, double Sensitivity, string Unit)
{
    /// <summary>Whether the input must grow to cure it.</summary>
    public bool MustGrow => Sensitivity > 0;
}
