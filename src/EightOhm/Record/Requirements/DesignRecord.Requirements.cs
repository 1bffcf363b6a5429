using EightOhm.Quantities;

namespace EightOhm.Record;

/// <content>Requirements, and what a run could not answer.</content>
public sealed partial class DesignRecord
{
    /// <summary>Asks a limit of an entry: <c>record.Require("junction", "T_j").AtMost("T_jmax")</c>. One requirement for a label: a repeated one replaces it.</summary>
    /// <param name="label">The requirement in words; a name in braces is filled with the value in force: "clip power into {R_L}".</param>
    /// <param name="entry">The entry's symbol; it need not be there yet.</param>
    /// <returns>What takes the limit; without one nothing is required.</returns>
    /// <exception cref="RecordException">The label is empty, or the name is not a symbol.</exception>
    public RequirementDraft Require(string label, string entry)
    {
        label = CheckedLabel(label);
        entry = EntryNames.Check(entry);
        return new((low, high) =>
        {
            lock (_gate)
                return Ask(new(label, entry, null, Limits(label, _content.Find(entry)?.Kind, low, high)));
        });
    }

    /// <summary>All requirements against the present values, in the order they were made; last those that a run did not come to (<see cref="NoAnswer"/>).</summary>
    public IReadOnlyList<Requirement> Compliance()
    {
        lock (_gate)
        {
            var now = Snapshot();
            var judgement = new Judgement(_content, _evaluation);
            return
            [
                .. now.Requirements,
                .. _content.Unasked.Where(u => !_content.Clauses.Any(c => c.Label == u.Key)).Select(u => judgement.Lost(u.Value.Requirement, u.Value.Reason)),
            ];
        }
    }

    /// <summary>Some requirements against the present values, in the order they were made; last those of which a run could not even say what is asked (<see cref="NoAnswer"/>).</summary>
    /// <param name="names">Labels as they were written, or symbols of entries with a requirement on them.</param>
    /// <exception cref="RecordException">A name is neither.</exception>
    public IReadOnlyList<Requirement> Compliance(params string[] names)
    {
        ArgumentNullException.ThrowIfNull(names);
        lock (_gate)
        {
            var lost = names.Where(name => !_content.Clauses.Any(c => c.Entry == name || c.Label == name)).Select(Lost).DistinctBy(l => l.Requirement.Label).ToList();
            Look();
            var judgement = new Judgement(_content, _evaluation);
            return
            [
                .. _content.Clauses.Where(c => names.Contains(c.Entry, StringComparer.Ordinal) || names.Contains(c.Label, StringComparer.Ordinal)).Select(judgement.Of),
                .. lost.Select(l => judgement.Lost(l.Requirement, l.Reason)),
            ];
        }
    }

    /// <summary>Says of entries and requirements that a run could not answer them: what hangs on them has no answer either, until they are written again.</summary>
    /// <param name="entries">Symbols; they need not be there yet. An input that was set keeps its value.</param>
    /// <param name="requirements">Requirements that were not asked; they need not be there yet.</param>
    /// <param name="reason">Why, a sentence: "short by 3.2 V: …".</param>
    public void NoAnswer(IEnumerable<string> entries, IEnumerable<LostRequirement> requirements, string reason)
    {
        ArgumentNullException.ThrowIfNull(entries);
        ArgumentNullException.ThrowIfNull(requirements);
        ArgumentException.ThrowIfNullOrWhiteSpace(reason);
        lock (_gate)
        {
            // A value that was set wins over the chapter's: it is there whatever becomes of the cell that says the other.
            string[] lost = [.. entries.Select(Cleaned).Distinct(StringComparer.Ordinal).Where(n => _content.Find(n) is not { Override: not null })];
            LostRequirement[] unasked = [.. requirements.Select(r => new LostRequirement(Cleaned(r.Label), r.Entry)).DistinctBy(r => r.Label)];
            if (lost.Length + unasked.Length > 0)
                Commit(_content.WithoutAnswer(lost, unasked, Words.Clean(reason)!), lost);
        }

        static string Cleaned(string name) => Words.Clean(name.Normalize())!;
    }

    /// <summary>Takes an entry and the requirements on it, or one requirement, out of the record.</summary>
    /// <param name="name">The entry's symbol, or the requirement's label as it was written.</param>
    /// <exception cref="RecordException">There is no such thing, or another entry comes from it.</exception>
    public void Remove(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        lock (_gate)
        {
            if (_content.Find(name.Normalize()) is null && _content.Clauses.Any(c => c.Label == name))
            {
                Commit(_content.WithoutClause(name));
                return;
            }

            var slot = Known(name);
            var users = _content.UsersOf(slot.Name).Select(u => _content.Find(u)!).OrderBy(s => s.Order).Select(s => s.Name).ToList();
            if (users.Count > 0)
                throw new RecordException($"{string.Join(", ", users)} {(users.Count == 1 ? "comes" : "come")} from {slot.Name}; remove {(users.Count == 1 ? "it" : "them")} first.");
            Commit(_content.Without(slot.Name), [slot.Name, .. _content.OnAll]);
        }
    }

    // Keeps a requirement, whatever made its value, and says how it stands.
    internal Requirement Ask(Clause clause)
    {
        lock (_gate)
        {
            if (!_content.Clauses.Contains(clause) || _content.Unasked.ContainsKey(clause.Label))
                Commit(_content.With(clause));
            Look();
            return new Judgement(_content, _evaluation).Of(clause);
        }
    }

    // A requirement that a run did not come to, named by its label or by the entry that it is about.
    private (LostRequirement Requirement, string Reason) Lost(string name)
    {
        if (_content.Unasked.TryGetValue(name, out var asked))
            return asked;
        var about = _content.Unasked.Values.FirstOrDefault(u => u.Requirement.Entry == name);
        if (about.Requirement is not null)
            return about;
        return _content.Unanswered.TryGetValue(name, out var reason)
            ? (new(name, name), reason)
            : throw new RecordException($"Nothing is required of {name}. Write record.Require(\"in words\", \"{name}\").AtMost(…) first.");
    }

    private static string CheckedLabel(string label)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(label);
        return Words.Clean(label.Trim())!;
    }

    // The limits of a requirement on a value of some kind; null while nobody knows of what kind.
    private LimitPair Limits(string label, QuantityKind? kind, RequirementLimit? low, RequirementLimit? high)
    {
        var pair = new LimitPair(Node(low), Node(high));
        foreach (var node in new[] { pair.Low, pair.High }.OfType<LimitNode>())
        {
            if ((node.Entry is { } name ? _content.Find(name)?.Kind : node.Kind) is { } limit && kind is not null && limit.Type != kind.Type)
                throw new RecordException($"{label}: the value is {KindNames.Of(kind)}, but its limit{(node.Origin is null ? "" : $", {node.Origin},")} is {KindNames.Of(limit)}. Give the limit in the value's own kind.");
        }

        return pair;

        LimitNode? Node(RequirementLimit? limit)
        {
            if (limit is null)
                return null;
            if (limit.Lambda is not { } lambda)
                return new() { Entry = limit.EntryName, Kind = limit.Constant?.Kind, Constant = limit.Constant?.Value };
            var rule = Built($"the limit of \"{label}\"", lambda);
            return new() { Kind = QuantityKinds.Of(lambda.ReturnType), Rule = rule };
        }
    }
}
