using System.Linq.Expressions;
using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>Reads a record's JSON, or refuses it with line and reason. A rule's stored value and all "reads" are for people; values are recomputed.</summary>
internal static class RecordReader
{
    /// <summary>Reads a whole file.</summary>
    /// <exception cref="RecordFault">The file is not a record that this version can read.</exception>
    public static RecordContent Read(byte[] bytes)
    {
        var root = JsonPart.Parse(bytes);
        var format = root.Member("format");
        if (format.Text != RecordWriter.Format)
            throw format.Fault($"this is not a design record (its format is \"{format.Text}\", not \"{RecordWriter.Format}\").");
        var version = root.Member("version");
        if (version.Number != RecordWriter.Version)
        {
            throw version.Fault(version.Number > RecordWriter.Version
                ? $"the record is of version {version.NumberText}; this EightOhm reads version {RecordWriter.Version}. Use a newer EightOhm."
                : $"there is no version {version.NumberText} of a record.");
        }

        root.Allow("format", "version", "design", "entries", "requirements");
        var entries = root.Member("entries");
        var content = new RecordContent(root.Member("design").Text, [], []);
        foreach (var part in entries.Items)
        {
            var slot = ReadSlot(part);
            if (content.Find(slot.Name) is not null)
                throw part.Member("name").Fault($"{slot.Name} stands here twice.");
            content = content.With(slot);
        }

        foreach (var (slot, part) in content.Slots.Zip(entries.Items))
            CheckSources(content, slot, part);
        if (content.Cycle() is { } circle)
            throw entries.Items[content.Slots.ToList().FindIndex(s => s.Name == circle[0])].Fault($"the entries go round in a circle: {string.Join(" ← ", circle)}.");
        foreach (var part in root.Member("requirements").Items)
        {
            var clause = ReadClause(part);
            if (content.Clauses.Any(c => c.Entry == clause.Entry && c.Limit.Sense == clause.Limit.Sense))
                throw part.Fault($"{clause.Entry} has two limits of the sense {clause.Limit.Sense}.");
            content = content.With(clause);
        }

        return content;
    }

    private static Slot ReadSlot(JsonPart part)
    {
        var name = part.Member("name");
        if (!EntryNames.IsGood(name.Text))
            throw name.Fault($"\"{name.Text}\" is not a symbol; {EntryNames.Rule}");
        var role = part.Member("role");
        var note = part.Optional("note")?.Text;
        switch (role.Text)
        {
            case nameof(EntryRole.Given):
                part.Allow("name", "role", "note", "value", "set");
                var (kind, value) = ReadValue(part.Member("value"));
                var set = part.Optional("set");
                return new(name.Text, EntryRole.Given, kind) { Note = note, Value = value, Override = set is null ? null : ReadValue(set, kind) };
            case nameof(EntryRole.Let):
                part.Allow("name", "role", "note", "rule", "from", "gives", "value", "expression");
                var result = Kind(part.Member("gives"));
                return new(name.Text, EntryRole.Let, result) { Note = note, Rule = ReadRule(part, result) };
            case nameof(EntryRole.Found):
                part.Allow("name", "role", "note", "value", "from");
                var (foundKind, found) = ReadValue(part.Member("value"));
                return new(name.Text, EntryRole.Found, foundKind) { Note = note, Value = found, Marks = [.. part.Member("from").Members.Select(m => (m.Key, m.Value.Text))] };
            default:
                throw role.Fault($"the role \"{role.Text}\" is not known; known are Given, Let, Found.");
        }
    }

    private static Rule ReadRule(JsonPart part, QuantityKind result)
    {
        var parameters = part.Member("from").Members.Select(m => Expression.Parameter(Kind(m.Value).Type, m.Key)).ToList();
        if (part.Optional("value") is { } shown)
            ReadValue(shown, result);
        _ = part.Optional("rule")?.Text;
        return RuleReader.Read(part.Member("expression"), parameters, result.Type);
    }

    private static void CheckSources(RecordContent content, Slot slot, JsonPart part)
    {
        var from = part.Optional("from");
        foreach (var name in slot.From)
        {
            var source = content.Find(name) ?? throw from!.Member(name).Fault($"{slot.Name} comes from {name}, which is not in the record.");
            if (slot.Rule?.Lambda.Parameters.First(p => p.Name == name) is { } parameter && parameter.Type != source.Kind.Type)
                throw from!.Member(name).Fault($"{slot.Name} takes {name} for {parameter.Type.Name}, but it is {source.Kind.Name}.");
        }
    }

    private static Clause ReadClause(JsonPart part)
    {
        part.Allow("entry", "says", "sense", "low", "high");
        var sense = part.Member("sense");
        if (!Enum.GetNames<LimitSense>().Contains(sense.Text))
            throw sense.Fault($"\"{sense.Text}\" is not a limit; known are {string.Join(", ", Enum.GetNames<LimitSense>())}.");
        var which = Enum.Parse<LimitSense>(sense.Text);
        var low = which == LimitSense.AtMost ? null : part.Member("low");
        var high = which == LimitSense.AtLeast ? null : part.Member("high");
        var kind = Kind((low ?? high)!.Member("kind"));
        try
        {
            var limit = new EntryLimit(which, kind, low is null ? null : ReadValue(low, kind), high is null ? null : ReadValue(high, kind));
            return new(part.Member("entry").Text, limit, part.Optional("says")?.Text);
        }
        catch (ArgumentException e)
        {
            throw part.Fault(e.Message, e);
        }
    }

    private static (QuantityKind Kind, object Value) ReadValue(JsonPart part)
    {
        var kind = Kind(part.Member("kind"));
        return (kind, ReadValue(part, kind));
    }

    private static object ReadValue(JsonPart part, QuantityKind kind)
    {
        part.Allow("value", "unit", "kind", "reads");
        if (part.Member("kind") is var named && named.Text != kind.Name)
            throw named.Fault($"{kind.Name} is expected here (was {named.Text}).");
        if (part.Member("unit") is var unit && unit.Text != KeptValue.Unit(kind))
            throw unit.Fault($"a value of {kind.Name} is kept in \"{KeptValue.Unit(kind)}\" (was \"{unit.Text}\").");
        var number = part.Member("value");
        try
        {
            return KeptValue.Value(kind, number.Number);
        }
        catch (Exception e) when (e is ArgumentException or ArithmeticException)
        {
            throw number.Fault($"{number.NumberText} cannot be a value of {kind.Name}: {e.Message}", e);
        }
    }

    private static QuantityKind Kind(JsonPart part) => QuantityKinds.Find(part.Text)
        ?? throw part.Fault($"the kind \"{part.Text}\" is not known; known are {string.Join(", ", QuantityKinds.All.Select(k => k.Name))}.");
}
