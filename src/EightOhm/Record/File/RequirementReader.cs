using System.Linq.Expressions;
using EightOhm.Json;

namespace EightOhm.Record;

/// <summary>Reads a record's requirements. One on an entry that is not there is kept and cannot be told; it is no damage.</summary>
internal static class RequirementReader
{
    /// <exception cref="JsonFault">A requirement is not one that this version can read.</exception>
    public static RecordContent Read(RecordContent content, JsonPart requirements)
    {
        var labels = new HashSet<string>(StringComparer.Ordinal);
        foreach (var part in requirements.Items)
        {
            var clause = ReadClause(part);
            if (!labels.Add(clause.Label))
                throw part["label"].Fault($"\"{clause.Label}\" stands here twice; a requirement has a label of its own.");
            content = content.With(clause);
        }

        return content;
    }

    private static Clause ReadClause(JsonPart part)
    {
        part.Allow("label", "entry", "worst", "atLeast", "atMost");
        var limit = new LimitPair(part.Optional("atLeast") is { } low ? ReadLimit(low) : null, part.Optional("atMost") is { } high ? ReadLimit(high) : null);
        if (limit is (null, null))
            throw part.Fault("a requirement must have \"atLeast\", \"atMost\", or both.");
        var worst = part.Optional("worst") is { } found ? WorstJson.Read(found) : null;
        if (worst is null == (part.Optional("entry") is null))
            throw part.Fault("a requirement judges an \"entry\" or a \"worst\", one of the two.");
        return new(Words.Clean(part["label"].Written())!, part.Optional("entry")?.Written(), worst, limit);
    }

    private static LimitNode ReadLimit(JsonPart part)
    {
        if (part.Optional("entry") is { } entry)
        {
            part.Allow("entry");
            return new() { Entry = entry.Written() };
        }

        var kind = RecordReader.Kind(part["kind"]);
        if (part.Optional("value") is { } constant)
        {
            part.Allow("kind", "value");
            var value = RecordReader.ReadValue(constant, kind);
            return RequirementLimit.IsNatural(kind, value)
                ? new() { Kind = kind, Constant = value }
                : throw constant.Fault($"a limit without a name may be 0, or 1 of what has no unit (was {constant.Text}); make it an entry, and name that.");
        }

        part.Allow("kind", "rule", "from", "expression");
        var parameters = part["from"].Members.Select(m => Expression.Parameter(RuleSources.Find(m.Value.Text) ?? throw m.Value.Fault($"the kind \"{m.Value.Text}\" is not known."), m.Key)).ToList();
        return new() { Kind = kind, Rule = RuleReader.Read(part["expression"], parameters, kind.Type) };
    }
}
