namespace EightOhm.Record;

/// <summary>A record at one moment, for looking at.</summary>
internal sealed record RecordSnapshot(RecordContent Content, Evaluation Evaluation)
{
    public IReadOnlyList<Requirement> Requirements => _requirements ??= [.. Content.Clauses.Select(new Judgement(Content, Evaluation).Of)];

    private IReadOnlyList<Requirement>? _requirements;
}

/// <summary>Compares two moments of a design.</summary>
internal sealed class Comparison(RecordSnapshot before, RecordSnapshot after)
{
    public RecordChanges Changes()
    {
        var names = after.Content.InOrder.Concat(before.Content.InOrder).Select(s => s.Name).Distinct(StringComparer.Ordinal)
            .Where(n => !Same(before, after, n)).ToList();
        var moved = names.Where(IsInput).ToList();
        var ways = new Ways(after.Content, moved);
        return new(
            [.. moved.Select(n => Change(n, ways))],
            [.. Requirements(ways).OrderBy(Rank)],
            [.. names.Except(moved, StringComparer.Ordinal).Select(n => Change(n, ways))]);
    }

    private static bool Same(RecordSnapshot one, RecordSnapshot other, string name) =>
        one.Content.Find(name) is { } a && other.Content.Find(name) is { } b && a.Role.IsInput() == b.Role.IsInput() && a.Kind == b.Kind
        && one.Evaluation.Of(name) is var x && other.Evaluation.Of(name) is var y
        // That an input was set, and what it was before, is how it came to its value, not the value.
        && Equals(x.Value, y.Value) && (a.Role.IsInput() || (x.State == y.State && x.Reason == y.Reason));

    private bool IsInput(string name) => (after.Content.Find(name) ?? before.Content.Find(name))!.Role.IsInput();

    private EntryChange Change(string name, Ways ways) => new(name, Entry(before, name), Entry(after, name), ways.To(name));

    private static Entry? Entry(RecordSnapshot snapshot, string name) => snapshot.Content.Find(name) is { } slot ? new(slot, snapshot.Evaluation.Of(name)) : null;

    private IEnumerable<RequirementChange> Requirements(Ways ways)
    {
        var old = before.Requirements.ToDictionary(r => r.Key, StringComparer.Ordinal);
        foreach (var (now, clause) in after.Requirements.Zip(after.Content.Clauses))
        {
            old.Remove(now.Key, out var was);
            if (was is not null && Standing(was) == Standing(now))
                continue;
            yield return new(was, now, ways.Into(clause.From), now.State == RequirementState.NotMet ? new Sensitivities(after, clause).Cures() : []);
        }

        foreach (var gone in before.Requirements.Where(r => old.ContainsKey(r.Key)))
            yield return new(gone, null, [], []);
    }

    // The margin as well as what is shown: two values that read the same may stand differently to their limit.
    private static (string, string?, string, double?, RequirementState, string?) Standing(Requirement r) => (r.Value, r.Where, r.Limit, r.Margin?.Amount, r.State, r.Reason);

    private static int Rank(RequirementChange change) => change switch
    {
        { Broke: true, After.State: RequirementState.NotMet } => 0,
        { After.State: RequirementState.NotMet } => 1,
        { Broke: true } => 2,
        { After.Met: null } => 3,
        _ => 4,
    };
}
