using EightOhm.Quantities;

namespace EightOhm.Record;

public sealed partial class DesignRecord
{
    /// <summary>Asks a limit of an entry, which need not be there yet. One limit of each sense for an entry: a repeated one replaces it.</summary>
    /// <param name="entry">The entry's symbol.</param>
    /// <param name="limit">The limit, made by <see cref="Limits"/>.</param>
    /// <param name="says">The requirement in the designer's words.</param>
    /// <returns>How it stands now.</returns>
    /// <exception cref="RecordException">The limit is of another kind than the entry.</exception>
    public Requirement Require(string entry, EntryLimit limit, string? says = null)
    {
        ArgumentNullException.ThrowIfNull(limit);
        entry = EntryNames.Check(entry);
        lock (_gate)
        {
            if (_content.Find(entry) is { } slot && slot.Kind.Type != limit.Kind.Type)
                throw new RecordException($"{entry} is {slot.Kind.Name}, but its limit is {limit.Kind.Name} ({limit}). Give the limit in the entry's own kind.");
            var clause = new Clause(entry, limit, says);
            Commit(_content.With(clause));
            return Judge(clause);
        }
    }

    /// <summary>All requirements against the present values, in the order they were made.</summary>
    public IReadOnlyList<Requirement> Compliance()
    {
        lock (_gate)
            return [.. _content.Clauses.Select(Judge)];
    }

    /// <summary>The requirements on some entries against the present values, in the order they were made.</summary>
    /// <param name="entries">The entries' symbols, each with a requirement on it.</param>
    /// <exception cref="RecordException">Nothing is required of an entry named.</exception>
    public IReadOnlyList<Requirement> Compliance(params string[] entries)
    {
        ArgumentNullException.ThrowIfNull(entries);
        lock (_gate)
        {
            foreach (var name in entries)
            {
                if (_content.Clauses.All(c => c.Entry != name))
                    throw new RecordException($"Nothing is required of {name}. Write record.Require(\"{name}\", …) first.");
            }

            return [.. _content.Clauses.Where(c => entries.Contains(c.Entry, StringComparer.Ordinal)).Select(Judge)];
        }
    }

    private Requirement Judge(Clause clause)
    {
        if (_content.Find(clause.Entry) is not { } slot)
            return Untold("–", $"{clause.Entry} is not there yet");
        var outcome = _evaluation.Of(slot.Name);
        if (outcome.Value is null)
            return Untold("–", $"{slot.Name} {outcome.State}");
        var reads = QuantityFormat.Long(outcome.Value);
        if (slot.Kind.Type != clause.Limit.Kind.Type)
            return Untold(reads, $"{slot.Name} is {slot.Kind.Name}, its limit {clause.Limit.Kind.Name}");
        if (!outcome.IsCurrent)
            return Untold(reads, $"{slot.Name} is stale");
        var margin = Margin.Of(clause.Limit, outcome.Value);
        return new(clause.Entry, clause.Limit, clause.Says, reads, margin, margin.Met ? "met" : "not met");

        Requirement Untold(string value, string why) => new(clause.Entry, clause.Limit, clause.Says, value, null, $"cannot tell: {why}");
    }
}
