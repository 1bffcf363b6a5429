using System.Collections.Immutable;
using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>The values that follow from what a record keeps: rules recomputed, stale results recognised.</summary>
/// <remarks>Never changed: after a change another one is made, in which only what hangs on what moved is looked at again. No walk calls itself,
/// so that ten thousand rules in a row need no deeper stack than one.</remarks>
internal sealed class Evaluation
{
    private static readonly ImmutableDictionary<string, Outcome> None = ImmutableDictionary.Create<string, Outcome>(StringComparer.Ordinal);
    private readonly RecordContent _content;
    private readonly PartFiles _parts;
    private readonly ImmutableDictionary<string, Outcome> _outcomes;

    /// <summary>Evaluates a whole content without circles and without names that are not there.</summary>
    public Evaluation(RecordContent content, PartFiles parts)
        : this(content, parts, None, [.. content.Slots.Keys])
    {
    }

    private Evaluation(RecordContent content, PartFiles parts, ImmutableDictionary<string, Outcome> before, IReadOnlyCollection<string> moved)
    {
        _content = content;
        _parts = parts;
        var outcomes = before.ToBuilder();
        var changed = moved.ToHashSet(StringComparer.Ordinal);
        var touched = new HashSet<string>(changed, StringComparer.Ordinal);
        foreach (var name in moved.Where(m => content.Find(m) is null))
            outcomes.Remove(name);
        using var patience = new Patience(Patience.Usual);
        foreach (var slot in EvaluationOrder.Of(content, moved))
        {
            if (!touched.Contains(slot.Name))
                continue;
            var old = outcomes.GetValueOrDefault(slot.Name);
            var now = Judge(slot, outcomes, patience);
            if (now.Same(old) && !changed.Contains(slot.Name))
                continue;
            outcomes[slot.Name] = now;
            touched.UnionWith(content.UsersOf(slot.Name));
            if (slot.Role != EntryRole.Derived)
                touched.UnionWith(content.OnAll);
        }

        _outcomes = outcomes.ToImmutable();
    }

    /// <summary>The same after a change of content.</summary>
    /// <param name="content">The content now.</param>
    /// <param name="moved">The entries that the change touched.</param>
    public Evaluation After(RecordContent content, IReadOnlyCollection<string> moved) => new(content, _parts, _outcomes, moved);

    /// <summary>The same after another look at the parts' files; itself when none of them changed.</summary>
    public Evaluation AfterLook()
    {
        var moved = _content.PartNames.Where(name => !_content.Unanswered.ContainsKey(name) && !Part(_content.Find(name)!).Same(Of(name))).ToList();
        return moved.Count == 0 ? this : After(_content, moved);
    }

    /// <summary>How an entry that is there stands.</summary>
    public Outcome Of(string name) => _outcomes[name];

    /// <summary>An entry's value as a rule takes it, of a part its device; null when there is none.</summary>
    public object? ArgumentOf(string name) => _outcomes.TryGetValue(name, out var outcome) ? Argument(outcome) : null;

    /// <summary>What has moved since something was computed: a clause, and whether it leaves no answer at all; null when nothing has.</summary>
    public (EntryState State, string Reason)? Moved(IReadOnlyList<Mark> marks, bool hangsOnAll) => Moved(marks, hangsOnAll, _outcomes);

    private Outcome Judge(Slot slot, IReadOnlyDictionary<string, Outcome> outcomes, Patience patience)
    {
        if (_content.Unanswered.TryGetValue(slot.Name, out var why))
            return new(null, EntryState.NoAnswer, why);
        return slot.Role switch
        {
            EntryRole.Part => Part(slot),
            EntryRole.Derived => Derived(slot, outcomes, patience),
            EntryRole.Computed => Computed(slot, outcomes),
            _ => Input(slot),
        };
    }

    private static Outcome Input(Slot slot) => slot.Override is { } set
        ? new(set, EntryState.Set, $"the chapter says {QuantityFormat.Short(slot.Value!)}")
        : new(slot.Value, EntryState.InForce);

    private Outcome Part(Slot slot)
    {
        var kept = (PartFile)(slot.Override ?? slot.Value)!;
        var seen = _parts.Look(kept.File);
        if (seen.Part is null)
            return new(null, EntryState.NoAnswer, seen.Reason);
        if (seen.Part.Kind != kept.Kind)
            return new(null, EntryState.NoAnswer, $"{kept.File} is {Devices.CardKinds.Find(seen.Part.Kind)!.InWords} now, no longer {Devices.CardKinds.Find(kept.Kind)!.InWords}");
        if (seen.Part.Hash != kept.Hash)
            return new(seen.Part, EntryState.Stale, $"{kept.File} changed since the chapter read it");
        return slot.Override is null
            ? new(seen.Part, EntryState.InForce)
            : new(seen.Part, EntryState.Set, $"the chapter says {((PartFile)slot.Value!).File}");
    }

    private Outcome Derived(Slot slot, IReadOnlyDictionary<string, Outcome> outcomes, Patience patience)
    {
        var names = slot.From;
        var arguments = new object[names.Count];
        Outcome? stale = null;
        string? staleName = null;
        for (var i = 0; i < names.Count; i++)
        {
            var source = outcomes[names[i]];
            if (source.Value is null)
                return new(null, EntryState.NoAnswer, Unanswered(names[i], source), source.Error);
            arguments[i] = Argument(source)!;
            // A part whose file changed is read as it is now: a rule over it is of today.
            if (source.State == EntryState.Stale && source.Value is not PartFile)
                (stale, staleName) = (stale ?? source, staleName ?? names[i]);
        }

        var rule = slot.Rule!;
        try
        {
            var value = patience.Run(() => rule.Evaluate(arguments));
            if (!double.IsFinite(KeptValue.Number(slot.Kind!, value)))
                throw new RefusedValueException(slot.Name, $"{rule.Text} has no finite value; look for a division by zero.");
            return stale is null ? new(value, EntryState.Current) : new(value, EntryState.Stale, Inherited(staleName!, stale));
        }
        catch (Exception e) when (e is not (OutOfMemoryException or OperationCanceledException))
        {
            return new(null, EntryState.NoAnswer, e.Message, e);
        }
    }

    private Outcome Computed(Slot slot, IReadOnlyDictionary<string, Outcome> outcomes) => Moved(slot.Marks, slot.HangsOnAll, outcomes) is var (state, reason)
        ? new(state == EntryState.Stale ? slot.Value : null, state, reason)
        : new(slot.Value, EntryState.Current);

    private (EntryState State, string Reason)? Moved(IReadOnlyList<Mark> marks, bool hangsOnAll, IReadOnlyDictionary<string, Outcome> outcomes)
    {
        (EntryState, string)? stale = hangsOnAll && marks.Count == 0 ? (EntryState.Stale, "what it came from was not kept; compute it again") : null;
        foreach (var (name, fingerprint) in marks)
        {
            if (_content.Find(name) is not { } slot)
            {
                stale ??= (EntryState.Stale, $"{name} is no longer there");
                continue;
            }

            // What hangs on all looks at what other cells left, not at how that stands: the inputs tell that already.
            if (hangsOnAll && !slot.Role.IsInput())
            {
                if (_content.Unanswered.TryGetValue(name, out var why))
                    return (EntryState.NoAnswer, $"{name} has no answer: {why}");
                stale ??= KeptValue.Fingerprint(slot, slot.Value!) != fingerprint ? (EntryState.Stale, $"{name} moved") : null;
                continue;
            }

            var source = outcomes[name];
            if (source.Value is null)
                return (EntryState.NoAnswer, Unanswered(name, source));
            stale ??= KeptValue.Fingerprint(slot, source.Value) != fingerprint
                ? (EntryState.Stale, source.Value is PartFile part ? $"{name} moved: it is {part.File} as it stands now" : $"{name} moved")
                : source.State == EntryState.Stale && source.Value is not PartFile ? (EntryState.Stale, Inherited(name, source)) : null;
        }

        return stale;
    }

    private object? Argument(Outcome outcome) => outcome.Value is PartFile part ? _parts.Device(part) : outcome.Value;

    // The first cause, not the whole way to it: through a hundred entries the reason stays one clause.
    private static string Inherited(string name, Outcome source) => First(name, " is stale: ", source.Reason);

    private static string Unanswered(string name, Outcome source) => First(name, " has no answer: ", source.Reason);

    private static string First(string name, string words, string? reason) =>
        reason is not null && reason.Contains(words, StringComparison.Ordinal) ? reason : $"{name}{words}{reason}";
}
