using System.Text.Json;
using EightOhm.Json;

namespace EightOhm.Record;

/// <summary>The worst over conditions in a file: the figure, where, and how it was found, so that a reader can judge the search.</summary>
internal static class WorstJson
{
    public static void Write(Utf8JsonWriter json, WorstValue worst)
    {
        json.WriteStartObject("worst");
        json.WriteString("kind", KindNames.Of(worst.Kind));
        json.WriteString("value", KeptValue.Text(worst.Kind, worst.Value));
        json.WriteString("reads", worst.WhereText);
        json.WriteStartArray("where");
        foreach (var at in worst.Where)
            WriteAt(json, at);
        json.WriteEndArray();
        json.WriteString("method", worst.Method);
        json.WriteNumber("evaluations", worst.Evaluations);
        if (worst.Seed is { } seed)
            json.WriteNumber("seed", seed);
        json.WriteStartArray("leastAlong");
        foreach (var least in worst.LeastAlong)
        {
            json.WriteStartObject();
            json.WriteString("name", least.Name);
            json.WritePropertyName("at");
            WriteAt(json, least.At);
            json.WriteNumber("value", least.Value);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        RecordWriter.WriteMarks(json, worst.Marks, worst.HangsOnAll);
        json.WriteEndObject();
    }

    /// <exception cref="JsonFault">It is not such a result.</exception>
    public static WorstValue Read(JsonPart part)
    {
        part.Allow("kind", "value", "reads", "where", "method", "evaluations", "seed", "leastAlong", "hangsOnAll", "from");
        var kind = RecordReader.Kind(part["kind"]);
        var (marks, hangsOnAll) = RecordReader.ReadMarks(part);
        return new()
        {
            Kind = kind,
            Value = RecordReader.ReadValue(part["value"], kind),
            WhereText = Words.Clean(part["reads"].Text)!,
            Where = [.. part["where"].Items.Select(ReadAt)],
            Method = Words.Clean(part["method"].Text)!,
            Evaluations = Whole(part["evaluations"]),
            Seed = part.Optional("seed") is { } seed ? Whole(seed) : null,
            LeastAlong = [.. part["leastAlong"].Items.Select(l => new LeastAlong(l["name"].Text, ReadAt(l["at"]), l["value"].Number))],
            Marks = marks,
            HangsOnAll = hangsOnAll,
        };
    }

    private static void WriteAt(Utf8JsonWriter json, ConditionAt at)
    {
        json.WriteStartObject();
        json.WriteString("name", at.Name);
        json.WriteString("text", at.Text);
        json.WriteNumber("number", at.Number);
        json.WriteEndObject();
    }

    private static ConditionAt ReadAt(JsonPart part)
    {
        part.Exactly("name", "text", "number");
        return new(part["name"].Text, Words.Clean(part["text"].Text)!, part["number"].Number);
    }

    private static int Whole(JsonPart part) => int.TryParse(part.NumberText, System.Globalization.CultureInfo.InvariantCulture, out var whole) && whole >= 0
        ? whole
        : throw part.Fault($"a whole number of 0 or more is expected (was {part.NumberText}).");
}
