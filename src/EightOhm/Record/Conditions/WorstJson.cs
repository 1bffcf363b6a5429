using System.Globalization;
using System.Text.Json;
using EightOhm.Json;
using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>The worst over conditions in a file: the figure, where, and how it was found, so that a reader can judge the search.</summary>
internal static class WorstJson
{
    private static readonly Dictionary<WorstMethod, string> Methods = new() { [WorstMethod.EveryCombination] = "every combination", [WorstMethod.Search] = "search" };

    public static void Write(Utf8JsonWriter json, WorstValue worst)
    {
        json.WriteStartObject("worst");
        json.WriteString("kind", KindNames.Of(worst.Kind));
        if (worst.Highest is { } highest)
            Write(json, "highest", worst.Kind, highest);
        if (worst.Lowest is { } lowest)
            Write(json, "lowest", worst.Kind, lowest);
        RecordWriter.WriteMarks(json, worst.Marks, worst.HangsOnAll);
        json.WriteEndObject();
    }

    /// <exception cref="JsonFault">It is not such a result.</exception>
    public static WorstValue Read(JsonPart part)
    {
        part.Allow("kind", "highest", "lowest", "hangsOnAll", "from");
        var kind = RecordReader.Kind(part["kind"]);
        var (highest, lowest) = (part.Optional("highest"), part.Optional("lowest"));
        if (highest is null && lowest is null)
            throw part.Fault("a worst case has a \"highest\", a \"lowest\", or both.");
        var (marks, hangsOnAll) = RecordReader.ReadMarks(part);
        return new()
        {
            Kind = kind,
            Highest = highest is null ? null : Read(highest, kind),
            Lowest = lowest is null ? null : Read(lowest, kind),
            Marks = marks,
            HangsOnAll = hangsOnAll,
        };
    }

    /// <summary>One worst case, as a member of an object.</summary>
    public static void Write(Utf8JsonWriter json, string name, QuantityKind kind, WorstCase worst)
    {
        json.WriteStartObject(name);
        if (worst.Value is { } value)
            json.WriteString("value", KeptValue.Text(value));
        else
            json.WriteString("cannotTell", worst.Reason);
        json.WriteString("at", worst.At);
        json.WriteStartArray("where");
        foreach (var at in worst.Where)
            Write(json, at);
        json.WriteEndArray();
        json.WriteString("over", worst.Over);
        json.WriteString("method", Methods[worst.Method]);
        json.WriteNumber("evaluations", worst.Evaluations);
        json.WriteNumber("seed", worst.Seed);
        json.WriteStartArray("relief");
        foreach (var relief in worst.Relief)
        {
            json.WriteStartObject();
            json.WriteString("change", relief.Change);
            json.WriteString("value", KeptValue.Text(relief.Value));
            json.WritePropertyName("kindest");
            Write(json, relief.Kindest);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>One worst case.</summary>
    /// <exception cref="JsonFault">It is none.</exception>
    public static WorstCase Read(JsonPart part, QuantityKind kind)
    {
        part.Allow("value", "cannotTell", "at", "where", "over", "method", "evaluations", "seed", "relief");
        if (part.Optional("value") is null == (part.Optional("cannotTell") is null))
            throw part.Fault("a worst case has a \"value\", or a reason why it \"cannotTell\", one of the two.");
        var method = part["method"];
        return new()
        {
            Value = part.Optional("value") is { } value ? RecordReader.ReadValue(value, kind) : null,
            Reason = Words.Clean(part.Optional("cannotTell")?.Text),
            At = Words.Clean(part["at"].Text) ?? "",
            Where = [.. part["where"].Items.Select(ReadAt)],
            Over = Words.Clean(part["over"].Text) ?? "",
            Method = Methods.FirstOrDefault(m => m.Value == method.Text) is { Value: not null } known ? known.Key : throw method.Fault($"the method \"{method.Text}\" is not known; known are {string.Join(", ", Methods.Values)}."),
            Evaluations = (int)Whole(part["evaluations"], int.MaxValue),
            Seed = Whole(part["seed"], ulong.MaxValue),
            Relief = [.. part["relief"].Items.Select(r => ReadRelief(r, kind))],
        };
    }

    private static ConditionRelief ReadRelief(JsonPart part, QuantityKind kind)
    {
        part.Exactly("change", "value", "kindest");
        return new(ReadAt(part["kindest"]), Words.Clean(part["change"].Text)!, RecordReader.ReadValue(part["value"], kind));
    }

    private static void Write(Utf8JsonWriter json, ConditionAt at)
    {
        json.WriteStartObject();
        json.WriteString("name", at.Name);
        json.WriteString("text", at.Text);
        if (QuantityKinds.Find(at.Value?.GetType()) is { } kind)
        {
            json.WriteString("kind", KindNames.Of(kind));
            json.WriteString("value", KeptValue.Text(at.Value!));
        }

        json.WriteEndObject();
    }

    private static ConditionAt ReadAt(JsonPart part)
    {
        part.Allow("name", "text", "kind", "value");
        var value = part.Optional("value") is { } number ? RecordReader.ReadValue(number, RecordReader.Kind(part["kind"])) : null;
        return new(part["name"].Text, value, Words.Clean(part["text"].Text)!);
    }

    private static ulong Whole(JsonPart part, ulong most) => ulong.TryParse(part.NumberText, CultureInfo.InvariantCulture, out var whole) && whole <= most
        ? whole
        : throw part.Fault($"a whole number from 0 to {most} is expected (was {part.NumberText}).");
}
