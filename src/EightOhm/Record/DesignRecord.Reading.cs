using EightOhm.Explaining;

namespace EightOhm.Record;

/// <content>Reading the record.</content>
public sealed partial class DesignRecord
{
    /// <summary>All entries as they stand now, in order of first appearance.</summary>
    public IReadOnlyList<Entry> Entries
    {
        get
        {
            lock (_gate)
            {
                Look();
                return [.. _content.InOrder.Select(Show)];
            }
        }
    }

    /// <summary>The choices with their reasons, in order of first appearance.</summary>
    public IReadOnlyList<Decision> Decisions =>
        [.. Entries.Where(e => e.Role == EntryRole.Choice).Select(e => new Decision(e.Name, e.Reads, e.Note, e.Considered, e.State, e.Reason))];

    /// <summary>The guesses that nothing has confirmed yet, each with the requirements that hang on it.</summary>
    public IReadOnlyList<Assumption> Assumptions
    {
        get
        {
            lock (_gate)
            {
                Look();
                var judgement = new Judgement(_content, _evaluation);
                var carried = _content.Clauses.Select(c => (judgement.Of(c).Label, On: Ancestry.Of(_content, c.From).Select(s => s.Name).Concat(c.From).ToHashSet(StringComparer.Ordinal))).ToList();
                return [.. _content.InOrder.Where(s => s.Role == EntryRole.Assumption).Select(Show)
                    .Select(e => new Assumption(e.Name, e.Reads, e.Note, [.. carried.Where(c => c.On.Contains(e.Name)).Select(c => c.Label)], e.State, e.Reason))];
            }
        }
    }

    /// <summary>The value in force of any entry, even a stale one (<see cref="Entry.State"/> says so).</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="name">The symbol.</param>
    /// <exception cref="RecordException">There is no such entry, it is of another kind, or it has no answer.</exception>
    public T Get<T>(string name)
        where T : struct
    {
        ArgumentNullException.ThrowIfNull(name);
        lock (_gate)
        {
            var slot = Known(name);
            if (slot.Kind is null)
                throw new RecordException($"{slot.Name} is a part. Write record.Part(\"{slot.Name}\").");
            if (slot.Kind.Type != typeof(T))
                throw new RecordException($"{slot.Name} is {slot.KindName}, not {typeof(T).Name}. Write record.Get<{slot.Kind.Name}>(\"{slot.Name}\").");
            var outcome = _evaluation.Of(slot.Name);
            return outcome.Value is T value ? value : throw NoValue(slot.Name, outcome);
        }
    }

    /// <summary>One entry as it stands now.</summary>
    /// <param name="name">The symbol.</param>
    /// <exception cref="RecordException">There is no such entry.</exception>
    public Entry EntryOf(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return EntriesOf(name)[0];
    }

    /// <summary>Some entries as they stand now, in the order asked: a chapter shows its own, whatever later chapters add.</summary>
    /// <param name="names">The symbols.</param>
    /// <exception cref="RecordException">There is no such entry.</exception>
    public IReadOnlyList<Entry> EntriesOf(params string[] names)
    {
        ArgumentNullException.ThrowIfNull(names);
        lock (_gate)
        {
            Look();
            return [.. names.Select(name => Show(Known(name)))];
        }
    }

    /// <summary>The working of a rule with the values in force: its symbols, its numbers, its result.</summary>
    /// <param name="name">The symbol of a derived entry.</param>
    /// <exception cref="RecordException">There is no such entry, no rule makes it, or it has no answer.</exception>
    public Explanation Explain(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        lock (_gate)
        {
            var slot = Known(name);
            var rule = slot.Rule?.Lambda ?? throw new RecordException($"{slot.Name} is {slot.Role.InWords()}: no rule of the record makes it, so there is no working to show.");
            var outcome = _evaluation.Of(slot.Name);
            if (outcome.Value is null)
                throw NoValue(slot.Name, outcome);
            var shown = Workings.Explain(rule, [.. slot.From.Select(f => _evaluation.ArgumentOf(f)!)]);
            // A rule that is one library formula has that formula's symbol already.
            return shown.Name.Length > 0 ? shown : shown with { Name = slot.Name, Lines = [.. shown.Lines.SkipLast(1), shown.Lines[^1] with { Name = slot.Name }] };
        }
    }

    /// <summary>The record as it stands now, for looking at; it does not change with the record.</summary>
    internal RecordSnapshot Snapshot()
    {
        lock (_gate)
        {
            Look();
            // What is judged of one state is judged once, however often it is compared.
            return _snapshot is { } known && ReferenceEquals(known.Content, _content) && ReferenceEquals(known.Evaluation, _evaluation)
                ? known
                : _snapshot = new(_content, _evaluation);
        }
    }

    private static RecordException NoValue(string name, Outcome outcome) => new($"{name} has no answer: {outcome.Reason}", outcome.Error) { IsWithoutAnswer = true };

    private Entry Show(Slot slot) => new(slot, _evaluation.Of(slot.Name));
}
