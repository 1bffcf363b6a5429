using System.Linq.Expressions;
using EightOhm.Json;
using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>Reads a record's JSON, or refuses it with line and reason. A rule's stored text and all "reads" are for people; values are recomputed.</summary>
internal static class RecordReader
{
    /// <summary>Reads a whole file, of this version or an older one.</summary>
    /// <param name="bytes">The file's bytes.</param>
    /// <param name="nameless">The design's name where the file has none.</param>
    /// <exception cref="JsonFault">The file is not a record that this version can read.</exception>
    public static RecordContent Read(byte[] bytes, string nameless)
    {
        var root = Migrations.ToPresent(JsonPart.Parse(bytes));
        root.Allow("format", "version", "design", "entries", "requirements", "unanswered", "unasked");
        var content = new RecordContent(Words.Clean(root.Optional("design")?.Text) ?? nameless);
        var entries = root["entries"].Items;
        // First all that stands by itself: a rule may name an entry that comes after it.
        foreach (var part in entries)
        {
            var slot = ReadSlot(part);
            if (content.Find(slot.Name) is not null)
                throw part["name"].Fault($"{slot.Name} stands here twice.");
            content = content.With(slot);
        }

        foreach (var part in entries.Where(p => p["role"].Text == RoleNames.Of(EntryRole.Derived)))
        {
            var slot = content.Find(part["name"].Text)!;
            content = content.With(slot with { Rule = ReadRule(part, content, slot) });
        }

        CheckSources(content, entries);
        content = RequirementReader.Read(content, root["requirements"]);
        foreach (var (name, reason) in root.Optional("unanswered")?.Members ?? new Dictionary<string, JsonPart>())
            content = content.WithoutAnswer([name], [], Words.Clean(reason.Text)!);
        foreach (var part in root.Optional("unasked")?.Items ?? [])
        {
            part.Allow("label", "entry", "reason");
            content = content.WithoutAnswer([], [new(part["label"].Text, part.Optional("entry")?.Text)], Words.Clean(part["reason"].Text)!);
        }

        return content;
    }

    /// <summary>What something was computed from.</summary>
    internal static (IReadOnlyList<Mark> Marks, bool HangsOnAll) ReadMarks(JsonPart part) =>
        ([.. part["from"].Members.Select(m => new Mark(m.Key, m.Value.Text))], part.Optional("hangsOnAll")?.Flag ?? false);

    /// <summary>A value written as its exact number and its SI unit.</summary>
    internal static object ReadValue(JsonPart part, QuantityKind kind)
    {
        var text = part.Text;
        var unit = KeptValue.Unit(kind);
        var end = unit.Length == 0 ? text.Length : text.Length - unit.Length - 1;
        if (end < 1 || text[end..].TrimStart(' ') != unit || (unit.Length > 0 && text[end] != ' '))
            throw part.Fault($"a value of {KindNames.Of(kind)} is kept {(unit.Length == 0 ? "without a unit" : $"in {unit}, such as \"1.5 {unit}\"")} (was \"{text}\").");
        if (!double.TryParse(text.AsSpan(0, end), System.Globalization.NumberStyles.Float, System.Globalization.CultureInfo.InvariantCulture, out var number) || !double.IsFinite(number))
            throw part.Fault($"\"{text[..end]}\" is not a finite number.");
        try
        {
            return KeptValue.Normal("value", kind, KeptValue.Value(kind, number));
        }
        catch (Exception e) when (e is ArgumentException or ArithmeticException)
        {
            throw part.Fault($"{text} cannot be a value of {KindNames.Of(kind)}: {e.Message}", e);
        }
    }

    internal static QuantityKind Kind(JsonPart part) => KindNames.Find(part.Text)
        ?? throw part.Fault($"the kind \"{part.Text}\" is not known; known are {string.Join(", ", QuantityKinds.All.Select(KindNames.Of))}.");

    private static Slot ReadSlot(JsonPart part)
    {
        var name = part["name"];
        if (!EntryNames.IsGood(name.Text))
            throw name.Fault($"\"{name.Text}\" is not a symbol; {EntryNames.Rule}");
        var role = RoleNames.Find(part["role"].Text)
            ?? throw part["role"].Fault($"the role \"{part["role"].Text}\" is not known; known are {string.Join(", ", RoleNames.All)}.");
        var kind = role == EntryRole.Part ? null : Kind(part["kind"]);
        var slot = new Slot(name.Text, role, kind) { Note = Words.Clean(part.Optional("note")?.Text), Considered = Words.Clean(part.Optional("considered")?.Text) };
        switch (role)
        {
            case EntryRole.Part:
                part.Allow("name", "role", "note", "value", "set");
                return slot with { Value = ReadPart(part["value"]), Override = part.Optional("set") is { } other ? ReadPart(other) : null };
            case EntryRole.Derived:
                part.Allow("name", "role", "note", "kind", "rule", "reads", "from", "expression");
                return slot;
            case EntryRole.Computed:
                part.Allow("name", "role", "note", "kind", "value", "worst", "hangsOnAll", "from");
                var (marks, hangsOnAll) = ReadMarks(part);
                return slot with { Value = ReadValue(part["value"], kind!), Worst = part.Optional("worst") is { } worst ? WorstJson.Read(worst, kind!) : null, Marks = marks, HangsOnAll = hangsOnAll };
            default:
                part.Allow("name", "role", "note", "considered", "kind", "value", "set");
                return slot with { Value = ReadInput(slot, part["value"]), Override = part.Optional("set") is { } set ? ReadInput(slot, set) : null };
        }
    }

    // What Set refuses is refused here too: a hand in the file is no way round.
    private static object ReadInput(Slot slot, JsonPart part) => part.Checked(() => KeptValue.Input(slot.Name, slot.Kind!, ReadValue(part, slot.Kind!)));

    private static PartFile ReadPart(JsonPart part)
    {
        part.Allow("card", "file", "hash", "device");
        return new(part["file"].Written(), part["hash"].Written(), Words.Clean(part["device"].Text)!)
        {
            Kind = part.Optional("card") is { } card ? Devices.CardKinds.Named(card).Name : Devices.CardKinds.First.Name,
        };
    }

    private static Rule ReadRule(JsonPart part, RecordContent content, Slot slot)
    {
        _ = (part.Optional("rule")?.Text, part.Optional("reads")?.Text);
        var names = part["from"].Items;
        // Counted twice it would wait for itself.
        if (names.GroupBy(n => n.Text).FirstOrDefault(g => g.Count() > 1) is { } twice)
            throw twice.Last().Fault($"{slot.Name} comes from {twice.Key} twice.");
        var parameters = names.Select(name => Expression.Parameter(Source(content, slot, name, name.Text).Type, name.Text)).ToList();
        return RuleReader.Read(part["expression"], parameters, slot.Kind!.Type);
    }

    private static Slot Source(RecordContent content, Slot slot, JsonPart at, string name) =>
        content.Find(name) ?? throw at.Fault($"{slot.Name} comes from {name}, which is not in the record.");

    private static void CheckSources(RecordContent content, IReadOnlyList<JsonPart> entries)
    {
        foreach (var (slot, part) in content.InOrder.Zip(entries).Where(p => p.First.Role == EntryRole.Computed))
        {
            foreach (var (name, at) in part["from"].Members.Where(_ => !slot.HangsOnAll))
                Source(content, slot, at, name);
        }

        if (Circles.Find(content) is { } circle)
            throw entries[content.Find(circle[0])!.Order].Fault($"the entries go round in a circle: {Lists.Way(circle)}.");
    }
}
