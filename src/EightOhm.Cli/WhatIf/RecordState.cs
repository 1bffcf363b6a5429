using EightOhm.Cells;
using EightOhm.Cells.Sources;
using EightOhm.Quantities;
using EightOhm.Record;

namespace EightOhm.Cli.WhatIf;

/// <summary>What a cell found in the records, so that it can be told from anything else that it could find.</summary>
/// <param name="All">All of it.</param>
/// <param name="Settled">What of it no calculation moves: inputs, and what rules make of those.</param>
internal sealed record FoundWords(string All, string Settled);

/// <summary>What the records of a folder say at one moment, for telling whether a cell would find anything else than before.</summary>
/// <param name="records">The records as they stand; they must not be changed while this is asked.</param>
internal sealed class RecordState(IReadOnlyList<DesignRecord> records)
{
    private const int Digits = 32;

    private readonly List<Lazy<Said>> all = [.. records.Select(r => new Lazy<Said>(() => new Said(r)))];

    /// <summary>Tells what some entries and requirements say from anything else that they could say: values to the last bit, how they stand and why, and what a rule took.</summary>
    /// <param name="reads">The entries and requirements.</param>
    /// <returns>Null where one of them is not found here: then nobody can tell.</returns>
    public FoundWords? Of(IReadOnlyCollection<EntryName> reads) => Words(reads) is { } all ? new(all, SettledOf(reads)) : null;

    /// <summary>The same of what no calculation moves.</summary>
    /// <param name="reads">The entries and requirements.</param>
    public string SettledOf(IEnumerable<EntryName> reads) =>
        Words(reads.Where(read => !read.IsEvery && !read.IsRequirement && all.Index().Any(one => IsOf(read, records[one.Index]) && one.Item.Value.IsSettled(read.Name))))!;

    private string? Words(IEnumerable<EntryName> reads)
    {
        var words = new List<string>();
        foreach (var read in reads.OrderBy(r => r.Record, StringComparer.Ordinal).ThenBy(r => r.Name, StringComparer.Ordinal).ThenBy(r => r.IsRequirement))
        {
            var found = all.Where((_, i) => IsOf(read, records[i])).Select(said => said.Value.Of(read)).OfType<string>().ToList();
            if (found.Count == 0)
                return null;
            words.Add(FormattableString.Invariant($"{read}"));
            words.AddRange(found);
        }

        return Fingerprint.Of(words, Digits);
    }

    /// <summary>Whether two records, as cells name them or by their paths, may be one: a name that is not known may be any's.</summary>
    public static bool MayBeOne(string record, string other) => record.Length == 0 || other.Length == 0 || Path.GetFileName(record) == Path.GetFileName(other);

    private static bool IsOf(EntryName name, DesignRecord record) => MayBeOne(name.Record, record.Path);

    private sealed class Said
    {
        private readonly Dictionary<string, Entry> entries;
        private readonly ILookup<string, Requirement> requirements;
        private readonly Dictionary<string, bool> settled = new(StringComparer.Ordinal);
        private readonly Dictionary<string, string> words = new(StringComparer.Ordinal);
        private readonly Lazy<string> whole;

        public Said(DesignRecord record)
        {
            entries = record.Entries.ToDictionary(e => e.Name, StringComparer.Ordinal);
            var asked = record.Compliance();
            // What it says is put into words when it is asked for: a state is made after every cell.
            requirements = asked.SelectMany(r => RerunPlanner.NamesOf(r).Select(name => (Name: name, Requirement: r)))
                .ToLookup(r => r.Name, r => r.Requirement, StringComparer.Ordinal);
            whole = new(() => Fingerprint.Of([record.Name, .. entries.Keys.Select(Of), .. asked.Select(Of)], Digits));
        }

        public bool IsSettled(string name)
        {
            if (settled.TryGetValue(name, out var known))
                return known;
            // A circle, which is refused, would not be.
            settled[name] = false;
            return settled[name] = entries.TryGetValue(name, out var e) && e.Role switch
            {
                EntryRole.Target or EntryRole.Choice or EntryRole.Assumption or EntryRole.Part => true,
                EntryRole.Derived => e.From.All(IsSettled),
                _ => false,
            };
        }

        public string? Of(EntryName name) =>
            name.IsEvery ? whole.Value
            : name.IsRequirement ? requirements.Contains(name.Name) ? string.Join('\n', requirements[name.Name].Select(Of)) : null
            : entries.ContainsKey(name.Name) ? Of(name.Name) : null;

        private string Of(string name)
        {
            if (words.TryGetValue(name, out var known))
                return known;
            if (!entries.TryGetValue(name, out var e))
                return "–";
            // A rule's working shows what it took, which may have moved although the result has not.
            var took = e.Role == EntryRole.Derived ? string.Join(' ', e.From.Select(f => entries.TryGetValue(f, out var source) ? Exact(source.Value) : "–")) : "";
            return words[name] = string.Join('|', name, e.Role, e.State, e.Reason, e.Note, e.Considered, e.Rule, Exact(e.Value), took, Of(e.Worst));
        }

        private string Of(Requirement r) => string.Join(
            '|',
            [r.Label, r.Key, r.State, r.Reason, r.Value, r.Where, r.Limit, r.Asked, Exact(r.Margin?.Amount), r.Margin?.Unit, r.Margin?.Side, Of(r.Worst), .. r.Limits.Append(r.Entry).OfType<string>().Select(Of)]);

        private static string Of(WorstCase? worst) => worst is null ? "" : string.Join(
            '|',
            [Exact(worst.Value), worst.Reason, worst.At, worst.Over, worst.How, .. worst.Where.Select(Of), .. worst.Relief.Select(r => $"{Of(r.Kindest)} {r.Change} {Exact(r.Value)}")]);

        private static string Of(ConditionAt at) => $"{at.Name} {at.Text} {Exact(at.Value)}";

        private static string Exact(object? value) => value switch
        {
            null => "",
            PartFile part => $"{part.File} {part.Hash} {part.Device}",
            _ when QuantityKinds.Find(value.GetType()) is not null => QuantityText.Exact(value),
            _ => FormattableString.Invariant($"{value}"),
        };
    }
}
