using EightOhm.Explaining;
using EightOhm.Quantities;
using EightOhm.Record;

namespace EightOhm.Display.Tables;

/// <summary>What differs between two states of a design, as tables: the inputs moved, the requirements with failures first, the results.</summary>
public static class ChangeTables
{
    private const string Dash = "–";

    // The strongest few: a designer tries one, and a sheet of all inputs helps nobody.
    private const int CuresShown = 3;

    /// <summary>All that differs, in the order in which one reads it; a table without rows is left out.</summary>
    /// <param name="changes">The differences.</param>
    public static IReadOnlyList<Table> All(RecordChanges changes)
    {
        ArgumentNullException.ThrowIfNull(changes);
        return [.. new[] { Inputs(changes.Moved), Requirements(changes.Requirements), Results(changes.Entries) }.Where(t => t.Rows.Count > 0)];
    }

    /// <summary>The inputs that were moved: old and new.</summary>
    /// <param name="moved">The inputs.</param>
    public static Table Inputs(IEnumerable<EntryChange> moved) => new(
        ["input", "was", "is"],
        [.. moved.Select(IReadOnlyList<string> (c) => [MathText.Name(c.Name), Reads(c.Before), Reads(c.After)])],
        [1, 2],
        "What was moved");

    /// <summary>The requirements that differ: old and new, how they stand, the way back to what was moved, and for one not met the inputs that could cure it.</summary>
    /// <param name="requirements">The requirements, in the order in which they are to stand.</param>
    public static Table Requirements(IEnumerable<RequirementChange> requirements)
    {
        var all = requirements.ToList();
        var hasCures = all.Any(r => r.Cures.Count > 0);
        return new(
            ["requirement", "was", "is", "asked", "state", "moved by", .. hasCures ? ["could be cured by"] : Array.Empty<string>()],
            [.. all.Select(IReadOnlyList<string> (r) => [r.Label, Reads(r.Before), Reads(r.After), Asked(r), State(r), Chains(r), .. hasCures ? [Cures(r)] : Array.Empty<string>()])],
            [1, 2],
            "Requirements that differ");
    }

    /// <summary>The results that differ: old and new, and the way back to what was moved.</summary>
    /// <param name="results">The results.</param>
    public static Table Results(IEnumerable<EntryChange> results) => new(
        ["result", "was", "is", "moved by"],
        [.. results.Select(IReadOnlyList<string> (c) => [MathText.Name(c.Name), Reads(c.Before), Reads(c.After), Chain(c.Chain)])],
        [1, 2],
        "Results that differ");

    /// <summary>How a requirement stood and stands: "met → not met: short by 3.2 V".</summary>
    /// <param name="change">The requirement.</param>
    public static string State(RequirementChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        var (before, after) = (Word(change.Before), Word(change.After));
        var now = change.After is { Reason: { } reason } ? $"{after}: {reason}" : after;
        return before == after ? now : $"{before} → {now}";
    }

    /// <summary>The ways from what was moved to a requirement's value or limit: "P → V_pk; R_L → V_pk".</summary>
    /// <param name="change">The requirement.</param>
    public static string Chains(RequirementChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        return change.Chains.Count == 0 ? Dash : string.Join("; ", change.Chains.Select(Chain));
    }

    /// <summary>The inputs that could cure a requirement, the strongest first: "more V_rail (1.2 % per %)".</summary>
    /// <param name="change">The requirement.</param>
    public static string Cures(RequirementChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        return change.Cures.Count == 0
            ? Dash
            : string.Join("; ", change.Cures.Take(CuresShown).Select(c => $"{(c.MustGrow ? "more" : "less")} {MathText.Name(c.Name)} ({Engineering.Number(Math.Abs(c.Sensitivity), 2)} {c.Unit})"));
    }

    /// <summary>The way from a moved input to a result; a dash where none leads to it.</summary>
    /// <param name="chain">The names.</param>
    public static string Chain(IReadOnlyList<string> chain)
    {
        ArgumentNullException.ThrowIfNull(chain);
        return chain.Count == 0 ? Dash : string.Join(" → ", chain.Select(MathText.Name));
    }

    /// <summary>What is asked, and what was asked where that differs.</summary>
    /// <param name="change">The requirement.</param>
    public static string Asked(RequirementChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        return (change.Before?.Limit, change.After?.Limit) switch
        {
            ({ } was, { } now) when was != now => $"{now}; was {was}",
            var (was, now) => now ?? was ?? Dash,
        };
    }

    /// <summary>An entry's value, with its state where that is not the value's own.</summary>
    /// <param name="entry">The entry; null for none.</param>
    public static string Reads(Entry? entry) => entry switch
    {
        null => Dash,
        { State: EntryState.Stale } => $"{entry.Reads} (stale)",
        { State: EntryState.NoAnswer } => "no answer",
        _ => entry.Reads,
    };

    private static string Reads(Requirement? requirement) =>
        requirement is null ? Dash : requirement.Where is { } where ? $"{requirement.Value} at {where}" : requirement.Value;

    private static string Word(Requirement? requirement) => requirement is null ? "not asked" : RecordTables.Words(requirement.State);
}
