using System.Text;
using System.Text.Json;
using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>Writes a record as JSON: one object an entry, in order of first appearance, the same text on every machine.</summary>
internal static class RecordWriter
{
    public static byte[] Write(RecordContent content, Evaluation evaluation)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, RecordJson.Lines))
        {
            json.WriteStartObject();
            json.WriteString("format", RecordJson.Format);
            json.WriteNumber("version", RecordJson.Version);
            json.WriteString("design", content.Name);
            json.WriteStartArray("entries");
            foreach (var slot in content.InOrder)
                WriteSlot(json, slot, evaluation.Of(slot.Name));
            json.WriteEndArray();
            json.WriteStartArray("requirements");
            foreach (var clause in content.Clauses)
                WriteClause(json, clause);
            json.WriteEndArray();
            WriteUnanswered(json, content);
            WriteUnasked(json, content);
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    private static void WriteSlot(Utf8JsonWriter json, Slot slot, Outcome outcome)
    {
        json.WriteStartObject();
        json.WriteString("name", slot.Name);
        json.WriteString("role", RoleNames.Of(slot.Role));
        WriteText(json, "note", slot.Note);
        WriteText(json, "considered", slot.Considered);
        if (slot.Kind is { } kind)
            json.WriteString("kind", KindNames.Of(kind));
        if (slot.Rule is { } rule)
        {
            // For the people who read the file; what counts is the expression.
            json.WriteString("rule", rule.Text);
            if (outcome.Value is { } computed)
                json.WriteString("reads", QuantityFormat.Long(computed));
            WriteNames(json, "from", rule.Names);
            WriteRule(json, "expression", rule);
        }
        else
        {
            WriteValue(json, "value", slot, slot.Value!);
            if (slot.Override is { } set)
                WriteValue(json, "set", slot, set);
        }

        if (slot.Worst is { } worst)
            WorstJson.Write(json, "worst", slot.Kind!, worst);
        if (slot.Role == EntryRole.Computed)
            WriteMarks(json, slot.Marks, slot.HangsOnAll);
        json.WriteEndObject();
    }

    private static void WriteClause(Utf8JsonWriter json, Clause clause)
    {
        json.WriteStartObject();
        json.WriteString("label", clause.Label);
        WriteText(json, "entry", clause.Entry);
        if (clause.Worst is { } worst)
            WorstJson.Write(json, worst);
        WriteLimit(json, "atLeast", clause.Limit.Low);
        WriteLimit(json, "atMost", clause.Limit.High);
        json.WriteEndObject();
    }

    private static void WriteLimit(Utf8JsonWriter json, string name, LimitNode? limit)
    {
        if (limit is null)
            return;
        json.WriteStartObject(name);
        WriteText(json, "entry", limit.Entry);
        if (limit.Kind is { } kind)
            json.WriteString("kind", KindNames.Of(kind));
        if (limit.Constant is { } constant)
            json.WriteString("value", KeptValue.Text(constant));
        if (limit.Rule is { } rule)
        {
            json.WriteString("rule", rule.Text);
            json.WriteStartObject("from");
            foreach (var parameter in rule.Lambda.Parameters)
                json.WriteString(parameter.Name!, RuleSources.NameOf(parameter.Type));
            json.WriteEndObject();
            WriteRule(json, "expression", rule);
        }

        json.WriteEndObject();
    }

    /// <summary>What something was computed from, one source a line.</summary>
    internal static void WriteMarks(Utf8JsonWriter json, IReadOnlyList<Mark> marks, bool hangsOnAll)
    {
        if (hangsOnAll)
            json.WriteBoolean("hangsOnAll", true);
        json.WriteStartObject("from");
        foreach (var (name, fingerprint) in marks)
            json.WriteString(name, fingerprint);
        json.WriteEndObject();
    }

    private static void WriteUnanswered(Utf8JsonWriter json, RecordContent content)
    {
        if (content.Unanswered.IsEmpty)
            return;
        json.WriteStartObject("unanswered");
        foreach (var (name, reason) in content.Unanswered)
            json.WriteString(name, reason);
        json.WriteEndObject();
    }

    private static void WriteUnasked(Utf8JsonWriter json, RecordContent content)
    {
        if (content.Unasked.IsEmpty)
            return;
        json.WriteStartArray("unasked");
        foreach (var (requirement, reason) in content.Unasked.Values)
        {
            json.WriteStartObject();
            json.WriteString("label", requirement.Label);
            if (requirement.Entry is { } entry)
                json.WriteString("entry", entry);
            json.WriteString("reason", reason);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteValue(Utf8JsonWriter json, string name, Slot slot, object value)
    {
        if (value is not PartFile part)
        {
            json.WriteString(name, KeptValue.Text(value));
            return;
        }

        json.WriteStartObject(name);
        if (part.CardType != Devices.CardKinds.First.Type)
            json.WriteString("card", part.Kind);
        json.WriteString("file", part.File);
        json.WriteString("hash", part.Hash);
        json.WriteString("device", part.Device);
        json.WriteEndObject();
    }

    private static void WriteRule(Utf8JsonWriter json, string name, Rule rule)
    {
        json.WritePropertyName(name);
        json.WriteRawValue(rule.Json, skipInputValidation: true);
    }

    private static void WriteNames(Utf8JsonWriter json, string name, IEnumerable<string> names)
    {
        json.WriteStartArray(name);
        foreach (var item in names)
            json.WriteStringValue(item);
        json.WriteEndArray();
    }

    private static void WriteText(Utf8JsonWriter json, string name, string? text)
    {
        if (text is not null)
            json.WriteString(name, text);
    }
}
