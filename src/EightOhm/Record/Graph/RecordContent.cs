using System.Collections.Immutable;

namespace EightOhm.Record;

/// <summary>All that a record keeps, and who hangs on whom. Never changed: a change makes another that shares what stayed.</summary>
internal sealed record RecordContent(string Name)
{
    private static readonly ImmutableDictionary<string, Slot> None = ImmutableDictionary.Create<string, Slot>(StringComparer.Ordinal);
    private static readonly ImmutableHashSet<string> Nobody = ImmutableHashSet.Create<string>(StringComparer.Ordinal);
    private int _next;
    private ImmutableDictionary<string, ImmutableHashSet<string>> _users = ImmutableDictionary.Create<string, ImmutableHashSet<string>>(StringComparer.Ordinal);

    /// <summary>The entries by name.</summary>
    public ImmutableDictionary<string, Slot> Slots { get; private init; } = None;

    /// <summary>The requirements, in the order they were made.</summary>
    public ImmutableList<Clause> Clauses { get; private init; } = [];

    /// <summary>The entries that a cell would have written but could not, each with the reason.</summary>
    public ImmutableSortedDictionary<string, string> Unanswered { get; private init; } = ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal);

    /// <summary>The requirements, by label, that a cell would have asked but did not come to, each with the reason.</summary>
    public ImmutableSortedDictionary<string, (LostRequirement Requirement, string Reason)> Unasked { get; private init; } = ImmutableSortedDictionary.Create<string, (LostRequirement, string)>(StringComparer.Ordinal);

    /// <summary>The computed entries of which nothing is known, so that they hang on all.</summary>
    public ImmutableHashSet<string> OnAll { get; private init; } = Nobody;

    /// <summary>The parts, whose files may change by themselves.</summary>
    public ImmutableHashSet<string> PartNames { get; private init; } = Nobody;

    /// <summary>The entries in order of first appearance.</summary>
    public IEnumerable<Slot> InOrder => Slots.Values.OrderBy(s => s.Order);

    public Slot? Find(string name) => Slots.GetValueOrDefault(name);

    /// <summary>The entries that name this one as their source.</summary>
    public ImmutableHashSet<string> UsersOf(string name) => _users.GetValueOrDefault(name, Nobody);

    /// <summary>Puts an entry in, in its old place if it has one; what its cell could not say before, it has said now.</summary>
    public RecordContent With(Slot slot)
    {
        var old = Find(slot.Name);
        var users = old is null ? _users : Linked(_users, old, (set, name) => set.Remove(name));
        return this with
        {
            _next = old is null ? _next + 1 : _next,
            Slots = Slots.SetItem(slot.Name, slot with { Order = old?.Order ?? _next }),
            _users = Linked(users, slot, (set, name) => set.Add(name)),
            OnAll = slot.HangsOnAll ? OnAll.Add(slot.Name) : OnAll.Remove(slot.Name),
            PartNames = slot.Role == EntryRole.Part ? PartNames.Add(slot.Name) : PartNames,
            Unanswered = Unanswered.Remove(slot.Name),
        };
    }

    /// <summary>Puts a requirement in, in the place of the one with the same label.</summary>
    public RecordContent With(Clause clause)
    {
        var at = Clauses.FindIndex(c => c.Label == clause.Label);
        return this with { Clauses = at < 0 ? Clauses.Add(clause) : Clauses.SetItem(at, clause), Unasked = Unasked.Remove(clause.Label) };
    }

    public RecordContent Without(string name) => Find(name) is not { } slot ? this : this with
    {
        Slots = Slots.Remove(name),
        Clauses = Clauses.RemoveAll(c => c.Entry == name),
        OnAll = OnAll.Remove(name),
        PartNames = PartNames.Remove(name),
        Unanswered = Unanswered.Remove(name),
        _users = Linked(_users, slot, (set, user) => set.Remove(user)).Remove(name),
    };

    public RecordContent WithoutClause(string label) => this with { Clauses = Clauses.RemoveAll(c => c.Label == label), Unasked = Unasked.Remove(label) };

    public RecordContent WithoutAnswer(IEnumerable<string> entries, IEnumerable<LostRequirement> requirements, string reason) => this with
    {
        Unanswered = Unanswered.SetItems(entries.Select(n => KeyValuePair.Create(n, reason))),
        Unasked = Unasked.SetItems(requirements.Select(r => KeyValuePair.Create(r.Label, (r, reason)))),
    };

    /// <summary>The names along a circle that an entry of the content closes, or null.</summary>
    public IReadOnlyList<string>? CircleThrough(string name)
    {
        // Breadth first from its sources; the way back gives the names.
        var cameFrom = new Dictionary<string, string>(StringComparer.Ordinal);
        var waiting = new Queue<string>([name]);
        while (waiting.TryDequeue(out var at))
        {
            foreach (var source in Find(at)?.Before ?? [])
            {
                if (source == name)
                    return Way(at);
                if (cameFrom.TryAdd(source, at))
                    waiting.Enqueue(source);
            }
        }

        return null;

        List<string> Way(string last)
        {
            var way = new List<string> { name };
            for (var at = last; at != name; at = cameFrom[at])
                way.Add(at);
            way.Add(name);
            way.Reverse();
            return way;
        }
    }

    private static ImmutableDictionary<string, ImmutableHashSet<string>> Linked(
        ImmutableDictionary<string, ImmutableHashSet<string>> users, Slot slot, Func<ImmutableHashSet<string>, string, ImmutableHashSet<string>> change)
    {
        foreach (var source in slot.Before)
            users = users.SetItem(source, change(users.GetValueOrDefault(source, Nobody), slot.Name));
        return users;
    }
}
