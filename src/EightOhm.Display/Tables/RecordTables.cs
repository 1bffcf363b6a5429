using EightOhm.Explaining;
using EightOhm.Record;

namespace EightOhm.Display.Tables;

/// <summary>The record as tables: its entries, its decisions and assumptions, how its requirements stand, and what moved.</summary>
public static class RecordTables
{
    private const string Dash = "–";

    /// <summary>The entries: symbol, value, where it comes from, state.</summary>
    /// <param name="entries">The entries.</param>
    /// <param name="design">The design's name, for the caption; may be empty.</param>
    [Shows]
    public static Table Entries(IEnumerable<Entry> entries, string design = "") => new(
        ["entry", "value", "comes from", "state"],
        [.. entries.Select(IReadOnlyList<string> (e) => [MathText.Name(e.Name), e.Reads, Origin(e), With(Words(e.State, e.Role), e.Reason)])],
        [1],
        design);

    /// <summary>The choices, each with its reason and what else was considered.</summary>
    /// <param name="decisions">The decisions.</param>
    public static Table Decisions(IEnumerable<Decision> decisions) => new(
        ["decision", "value", "because", "considered", "state"],
        [.. decisions.Select(IReadOnlyList<string> (d) => [MathText.Name(d.Name), d.Value, d.Because ?? Dash, d.Considered ?? Dash, With(Words(d.State, EntryRole.Choice), d.Reason)])],
        [1],
        "What was decided, and why");

    /// <summary>The guesses that nothing has confirmed yet, each with what falls if it is wrong.</summary>
    /// <param name="assumptions">The assumptions.</param>
    public static Table Assumptions(IEnumerable<Assumption> assumptions) => new(
        ["assumption", "value", "rests on", "carries", "state"],
        [.. assumptions.Select(IReadOnlyList<string> (a) => [MathText.Name(a.Name), a.Value, a.Basis ?? Dash, a.Carries.Count == 0 ? Dash : string.Join("; ", a.Carries), With(Words(a.State, EntryRole.Assumption), a.Reason)])],
        [1],
        "What is assumed, and not yet confirmed");

    /// <summary>The compliance sheet: each requirement with value, where it was found, limit, margin and state in words.</summary>
    /// <param name="requirements">The requirements.</param>
    [Shows]
    public static Table Compliance(IEnumerable<Requirement> requirements) => new(
        ["requirement", "value", "where", "asked", "margin", "state"],
        [.. requirements.Select(IReadOnlyList<string> (r) => [r.Label, r.Value, r.Where ?? "", r.Limit, r.Margin?.ToString() ?? Dash, With(Words(r.State), r.Reason)])],
        [1],
        "How the requirements stand");

    /// <summary>A state in words.</summary>
    /// <param name="state">The state.</param>
    public static string Words(RequirementState state) => state switch
    {
        RequirementState.Met => "met",
        RequirementState.NotMet => "not met",
        RequirementState.Stale => "stale",
        _ => "cannot tell",
    };

    private static string Words(EntryState state, EntryRole role) => (state, role) switch
    {
        (EntryState.InForce, EntryRole.Target) => "target",
        (EntryState.InForce, EntryRole.Choice) => "chosen",
        (EntryState.InForce, EntryRole.Assumption) => "assumed",
        (EntryState.InForce, _) => "part",
        (EntryState.Set, _) => "set",
        (EntryState.Current, EntryRole.Derived) => "derived",
        (EntryState.Current, _) => "computed",
        (EntryState.Stale, _) => "stale",
        _ => "no answer",
    };

    private static string With(string state, string? reason) => reason is null ? state : $"{state}: {reason}";

    private static string Origin(Entry entry) => entry.Role switch
    {
        EntryRole.Derived => entry.Expression is { } rule ? MathText.Write(Workings.InSymbols(rule)) : entry.Rule ?? "",
        EntryRole.Computed when entry.HangsOnAll => "computed; hangs on every input",
        EntryRole.Computed => $"computed from {string.Join(", ", entry.From.Select(MathText.Name))}",
        _ => entry.Note ?? "",
    };

    /// <summary>A whole record: its entries under its name.</summary>
    /// <param name="record">The record.</param>
    [Shows]
    public static Table Whole(DesignRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return Entries(record.Entries, record.Name);
    }

    /// <summary>One requirement.</summary>
    /// <param name="requirement">The requirement.</param>
    [Shows]
    public static Table One(Requirement requirement) => Compliance([requirement]);

}
