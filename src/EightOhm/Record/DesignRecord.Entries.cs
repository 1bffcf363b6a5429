using EightOhm.Quantities;
using EightOhm.Explaining;

namespace EightOhm.Record;

public sealed partial class DesignRecord
{
    /// <summary>All entries as they stand now, in order of first appearance.</summary>
    public IReadOnlyList<Entry> Entries
    {
        get
        {
            lock (_gate)
                return [.. _content.Slots.Select(Show)];
        }
    }

    /// <summary>A target or a choice: what the chapter says, unless another value was set (<see cref="Set"/>), which then wins and is shown openly.</summary>
    /// <remarks>A changed value in the chapter is kept beside the one set; only <see cref="ClearSet"/> ends a set value, even if the chapter then says the same.</remarks>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="name">The symbol.</param>
    /// <param name="value">The chapter's value; finite.</param>
    /// <param name="note">What the chapter says about it; kept from before when left out.</param>
    /// <returns>The value in force, in its SI unit.</returns>
    /// <exception cref="RecordException">The name is taken by something else or is not a symbol.</exception>
    /// <exception cref="ArgumentException">The type is not a kind of quantity that EightOhm knows.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The value is below zero where nothing can be (a power, a resistance, a temperature below 0 K).</exception>
    public T Given<T>(string name, T value, string? note = null)
        where T : struct
    {
        name = EntryNames.Check(name);
        var kind = QuantityKinds.Of(typeof(T));
        lock (_gate)
        {
            var old = Same(name, EntryRole.Given, kind);
            var slot = (old ?? new Slot(name, EntryRole.Given, kind)) with { Value = KeptValue.Target(name, kind, value) };
            slot = slot with { Note = note ?? slot.Note };
            // A notebook run again says mostly what it said before: nothing to recompute then.
            if (old is null || old.Note != slot.Note || KeptValue.Fingerprint(kind, old.Value!) != KeptValue.Fingerprint(kind, slot.Value))
                Commit(_content.With(slot));
            return (T)_evaluation.Of(name).Value!;
        }
    }

    /// <summary>A result that only a cell can compute. It becomes stale when an entry it came from moves.</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="name">The symbol.</param>
    /// <param name="value">The result; finite.</param>
    /// <param name="from">The entries that it was computed from.</param>
    /// <returns>The value, in its SI unit.</returns>
    /// <exception cref="RecordException">An entry it comes from is not there or has no value; the name is taken or is not a symbol.</exception>
    public T Found<T>(string name, T value, string[] from)
        where T : struct
    {
        ArgumentNullException.ThrowIfNull(from);
        name = EntryNames.Check(name);
        var kind = QuantityKinds.Of(typeof(T));
        lock (_gate)
        {
            var slot = Same(name, EntryRole.Found, kind) ?? new Slot(name, EntryRole.Found, kind);
            var marks = from.Select(f => Mark(Known(f))).DistinctBy(m => m.Name).ToList();
            Commit(_content.With(slot with { Value = KeptValue.Normal(name, kind, value), Marks = marks }));
            return (T)_evaluation.Of(name).Value!;
        }
    }

    /// <summary>The value in force of any entry, even a stale one (<see cref="Entry.State"/> says so).</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="name">The symbol.</param>
    /// <exception cref="RecordException">There is no such entry, it is of another kind, or it cannot be computed.</exception>
    public T Get<T>(string name)
        where T : struct
    {
        ArgumentNullException.ThrowIfNull(name);
        lock (_gate)
        {
            var slot = Known(name);
            if (slot.Kind.Type != typeof(T))
                throw new RecordException($"{slot.Name} is {slot.Kind.Name}, not {typeof(T).Name}. Write record.Get<{slot.Kind.Name}>(\"{slot.Name}\").");
            var outcome = _evaluation.Of(slot.Name);
            return outcome.Value is T value ? value : throw new RecordException($"{slot.Name} {outcome.State}", outcome.Error);
        }
    }

    /// <summary>One entry as it stands now.</summary>
    /// <param name="name">The symbol.</param>
    /// <exception cref="RecordException">There is no such entry.</exception>
    public Entry EntryOf(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        lock (_gate)
            return Show(Known(name));
    }

    /// <summary>Some entries as they stand now, in the order asked: a chapter shows its own, whatever later chapters add.</summary>
    /// <param name="names">The symbols.</param>
    /// <exception cref="RecordException">There is no such entry.</exception>
    public IReadOnlyList<Entry> EntriesOf(params string[] names)
    {
        ArgumentNullException.ThrowIfNull(names);
        lock (_gate)
            return [.. names.Select(name => Show(Known(name)))];
    }

    /// <summary>The working of a rule with the values in force: its symbols, its numbers, its result.</summary>
    /// <param name="name">The symbol of a Let.</param>
    /// <exception cref="RecordException">There is no such entry, it is not a Let, or it cannot be computed.</exception>
    public Explanation Explain(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        lock (_gate)
        {
            var slot = Known(name);
            var rule = slot.Rule?.Lambda ?? throw new RecordException($"{slot.Name} is {Words(slot.Role)}: no rule of the record makes it, so there is no working to show.");
            var outcome = _evaluation.Of(slot.Name);
            if (outcome.Value is null)
                throw new RecordException($"{slot.Name} {outcome.State}", outcome.Error);
            var shown = Workings.Explain(rule, [.. slot.From.Select(f => _evaluation.Of(f).Value!)]);
            // A rule that is one library formula has that formula's symbol already.
            return shown.Name.Length > 0 ? shown : shown with { Name = slot.Name, Lines = [.. shown.Lines.SkipLast(1), shown.Lines[^1] with { Name = slot.Name }] };
        }
    }

    /// <summary>Sets a Given from outside, as typed: it wins over the chapter's value until <see cref="ClearSet"/>.</summary>
    /// <param name="name">The symbol of a Given.</param>
    /// <param name="text">The value with its unit, such as "120 W".</param>
    /// <exception cref="RecordException">There is no such Given, or the text is not a value of its kind.</exception>
    public void Set(string name, string text)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(text);
        lock (_gate)
        {
            var slot = Settable(name);
            Commit(_content.With(slot with { Override = SetText.Read(slot.Name, text, slot.Kind) }));
        }
    }

    /// <summary>Puts a Given back to what its chapter says.</summary>
    /// <param name="name">The symbol of a Given.</param>
    /// <exception cref="RecordException">There is no such Given.</exception>
    public void ClearSet(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        lock (_gate)
            Commit(_content.With(Settable(name) with { Override = null }));
    }

    /// <summary>Takes an entry and the requirements on it out of the record.</summary>
    /// <param name="name">The symbol.</param>
    /// <exception cref="RecordException">There is no such entry, or another comes from it.</exception>
    public void Remove(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        lock (_gate)
        {
            var slot = Known(name);
            if (_content.Slots.Where(s => s.From.Contains(slot.Name)).Select(s => s.Name).ToList() is { Count: > 0 } users)
                throw new RecordException($"{string.Join(", ", users)} {(users.Count == 1 ? "comes" : "come")} from {slot.Name}; remove {(users.Count == 1 ? "it" : "them")} first.");
            Commit(_content.Without(slot.Name));
        }
    }

    private (string Name, string Fingerprint) Mark(Slot source)
    {
        var outcome = _evaluation.Of(source.Name);
        return outcome.Value is { } value
            ? (source.Name, KeptValue.Fingerprint(source.Kind, value))
            : throw new RecordException($"{source.Name} {outcome.State}, so nothing can come from it.", outcome.Error);
    }

    private Slot Settable(string name)
    {
        var givens = _content.Slots.Where(s => s.Role == EntryRole.Given).ToList();
        var slot = _content.Find(name.Normalize()) ?? throw new RecordException($"The record has no {name} to set. {There(givens, "What can be set:")}");
        if (slot.Role == EntryRole.Given)
            return slot;
        var roots = givens.Where(g => ComesFrom(slot, g.Name)).Select(g => g.Name).ToList();
        throw new RecordException(roots.Count == 0
            ? $"{slot.Name} is computed and cannot be set. {There(givens, "What can be set:")}"
            : $"{slot.Name} is computed from {Lists.And(roots)}; set {(roots.Count == 1 ? "that" : "one of those")}.");
    }

    private bool ComesFrom(Slot slot, string name) => slot.From.Any(f => f == name || ComesFrom(Known(f), name));

    private Entry Show(Slot slot)
    {
        var outcome = _evaluation.Of(slot.Name);
        return new(slot.Name, slot.Role, slot.Kind, outcome.State, outcome.IsCurrent, outcome.Value, slot.Rule?.Text, slot.Rule?.Lambda, slot.From, slot.Note);
    }
}
