using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>Writes a record as JSON: one object an entry, in order of first appearance, the same text on every machine.</summary>
internal static class RecordWriter
{
    public const string Format = "eightohm-record";
    public const int Version = 1;

    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",
        MaxDepth = 256,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, // Ω, √ and ° as themselves; the file is never put into a page.
    };

    public static string Write(RecordContent content, Evaluation evaluation) => Text(json =>
    {
        json.WriteStartObject();
        json.WriteString("format", Format);
        json.WriteNumber("version", Version);
        json.WriteString("design", content.Name);
        json.WriteStartArray("entries");
        foreach (var slot in content.Slots)
            WriteSlot(json, slot, evaluation.Of(slot.Name));
        json.WriteEndArray();
        json.WriteStartArray("requirements");
        foreach (var clause in content.Clauses)
            WriteClause(json, clause);
        json.WriteEndArray();
        json.WriteEndObject();
    }) + "\n";

    /// <summary>What a writing action writes.</summary>
    public static string Text(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Options))
            write(json);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void WriteSlot(Utf8JsonWriter json, Slot slot, Outcome outcome)
    {
        json.WriteStartObject();
        json.WriteString("name", slot.Name);
        json.WriteString("role", slot.Role.ToString());
        if (slot.Note is not null)
            json.WriteString("note", slot.Note);
        if (slot.Rule is { } rule)
        {
            json.WriteString("rule", rule.Text);
            json.WriteStartObject("from");
            foreach (var parameter in rule.Lambda.Parameters)
                json.WriteString(parameter.Name!, TypeNames.Of(parameter.Type));
            json.WriteEndObject();
            json.WriteString("gives", slot.Kind.Name);
            if (outcome.Value is { } computed)
                WriteValue(json, "value", slot.Kind, computed);
            json.WritePropertyName("expression");
            RuleWriter.Write(json, rule.Lambda.Body);
        }
        else
        {
            WriteValue(json, "value", slot.Kind, slot.Value!);
        }

        if (slot.Override is { } set)
            WriteValue(json, "set", slot.Kind, set);
        if (slot.Role == EntryRole.Found)
        {
            json.WriteStartObject("from");
            foreach (var (name, fingerprint) in slot.Marks)
                json.WriteString(name, fingerprint);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void WriteClause(Utf8JsonWriter json, Clause clause)
    {
        json.WriteStartObject();
        json.WriteString("entry", clause.Entry);
        if (clause.Says is not null)
            json.WriteString("says", clause.Says);
        json.WriteString("sense", clause.Limit.Sense.ToString());
        if (clause.Limit.Low is { } low)
            WriteValue(json, "low", clause.Limit.Kind, low);
        if (clause.Limit.High is { } high)
            WriteValue(json, "high", clause.Limit.Kind, high);
        json.WriteEndObject();
    }

    private static void WriteValue(Utf8JsonWriter json, string name, QuantityKind kind, object value)
    {
        json.WriteStartObject(name);
        json.WriteNumber("value", KeptValue.Number(kind, value));
        json.WriteString("unit", KeptValue.Unit(kind));
        json.WriteString("kind", kind.Name);
        json.WriteString("reads", QuantityFormat.Long(value));
        json.WriteEndObject();
    }
}
