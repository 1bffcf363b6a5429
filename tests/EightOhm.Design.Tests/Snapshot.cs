using EightOhm.Quantities;
using EightOhm.Record;

namespace EightOhm.Design.Tests;

/// <summary>What a record says at one moment: values bit for bit, and what it calls them.</summary>
internal sealed record Snapshot(IReadOnlyDictionary<string, Said> Entries, IReadOnlyDictionary<string, Said> Requirements)
{
    public static Snapshot Of(DesignRecord record) => new(
        record.Entries.ToDictionary(e => e.Name, e => new Said(Bits(e), Trusted(e.State))),
        record.Compliance().ToDictionary(r => r.Label, r => new Said($"{r.Value} {r.Where} {r.State}", r.State is RequirementState.Met or RequirementState.NotMet)));

    /// <summary>What a full run found that this record, before the run, gave out as sure and otherwise.</summary>
    public IReadOnlyList<string> ToldWrongly(Snapshot after) =>
    [
        .. Wrong(Entries, after.Entries),
        .. Wrong(Requirements, after.Requirements).Select(r => $"requirement \"{r}\""),
    ];

    /// <summary>How many values are other values there.</summary>
    public int ChangedIn(Snapshot after) =>
        Entries.Count(e => after.Entries.TryGetValue(e.Key, out var now) && now.Value != e.Value.Value)
        + Requirements.Count(r => after.Requirements.TryGetValue(r.Key, out var now) && now.Value != r.Value.Value);

    private static IEnumerable<string> Wrong(IReadOnlyDictionary<string, Said> before, IReadOnlyDictionary<string, Said> after) =>
        from said in before
        where said.Value.IsSure && after.TryGetValue(said.Key, out var now) && now.IsSure && now.Value != said.Value.Value
        select $"{said.Key}: {said.Value.Value}, after a full run {after[said.Key].Value}";

    private static bool Trusted(EntryState state) => state is not (EntryState.Stale or EntryState.NoAnswer);

    private static string Bits(Entry entry) => entry.Value is { } value && QuantityKinds.Find(value.GetType()) is { } kind
        ? kind.ToSi(value).ToString("R", System.Globalization.CultureInfo.InvariantCulture)
        : entry.Value?.ToString() ?? "";
}

/// <summary>A value as text that tells any two apart, and whether the record vouches for it.</summary>
internal sealed record Said(string Value, bool IsSure);
