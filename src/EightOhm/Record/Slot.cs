using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>What the record keeps of an entry; its value in force and state follow from all of them (<see cref="Evaluation"/>).</summary>
internal sealed record Slot(string Name, EntryRole Role, QuantityKind Kind)
{
    /// <summary>A Given's value by its chapter, a Found's value by its cell.</summary>
    public object? Value { get; init; }

    /// <summary>A value set from outside, which wins over the chapter's.</summary>
    public object? Override { get; init; }

    public string? Note { get; init; }

    public Rule? Rule { get; init; }

    /// <summary>What a Found came from, each with its fingerprint at that time.</summary>
    public IReadOnlyList<(string Name, string Fingerprint)> Marks { get; init; } = [];

    public IReadOnlyList<string> From => Rule?.Names ?? [.. Marks.Select(m => m.Name)];
}

/// <summary>What the record keeps of a requirement.</summary>
internal sealed record Clause(string Entry, EntryLimit Limit, string? Says);

/// <summary>All that a record keeps, in order of first appearance.</summary>
internal sealed record RecordContent(string Name, IReadOnlyList<Slot> Slots, IReadOnlyList<Clause> Clauses)
{
    public Slot? Find(string name) => Slots.FirstOrDefault(s => s.Name == name);

    public RecordContent With(Slot slot) => this with
    {
        Slots = Find(slot.Name) is { } old ? [.. Slots.Select(s => ReferenceEquals(s, old) ? slot : s)] : [.. Slots, slot],
    };

    public RecordContent With(Clause clause)
    {
        var old = Clauses.FirstOrDefault(c => c.Entry == clause.Entry && c.Limit.Sense == clause.Limit.Sense);
        return this with { Clauses = old is null ? [.. Clauses, clause] : [.. Clauses.Select(c => ReferenceEquals(c, old) ? clause : c)] };
    }

    public RecordContent Without(string name) => this with
    {
        Slots = [.. Slots.Where(s => s.Name != name)],
        Clauses = [.. Clauses.Where(c => c.Entry != name)],
    };

    /// <summary>The names along a circle of entries that come from each other, or null.</summary>
    public IReadOnlyList<string>? Cycle()
    {
        var done = new HashSet<string>(StringComparer.Ordinal);
        return Slots.Select(s => Walk(s.Name, [])).FirstOrDefault(c => c is not null);

        IReadOnlyList<string>? Walk(string name, List<string> path)
        {
            if (path.IndexOf(name) is >= 0 and var start)
                return [.. path.Skip(start), name];
            if (done.Contains(name) || Find(name) is not { } slot)
                return null;
            path.Add(name);
            var found = slot.From.Select(f => Walk(f, path)).FirstOrDefault(c => c is not null);
            path.RemoveAt(path.Count - 1);
            done.Add(name);
            return found;
        }
    }
}
