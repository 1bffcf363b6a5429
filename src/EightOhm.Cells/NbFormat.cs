using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace EightOhm.Cells;

/// <summary>The open notebook format (nbformat 4): multi-line text and the file's layout on disk.</summary>
internal static class NbFormat
{
    // Notebook programs indent by one space and write text as it is, so that a saved notebook differs only where its outputs do.
    private static readonly JsonWriterOptions Layout = new()
    {
        Indented = true,
        IndentSize = 1,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>A text that the format allows to be one string or a list of lines.</summary>
    public static string Text(JsonNode? node) => node switch
    {
        JsonArray lines => string.Concat(lines.Select(line => Text(line))),
        JsonValue value when value.TryGetValue<string>(out var text) => text,
        _ => "",
    };

    /// <summary>A text as the format's list of lines, each with its line end.</summary>
    public static JsonArray Lines(string text)
    {
        var lines = new JsonArray();
        for (var start = 0; start < text.Length;)
        {
            var end = text.IndexOf('\n', start);
            var next = end < 0 ? text.Length : end + 1;
            lines.Add((JsonNode)text[start..next]);
            start = next;
        }

        return lines;
    }

    /// <summary>A bundle of one value in several MIME types; JSON types stay objects, all else becomes lines.</summary>
    public static JsonObject Bundle(IEnumerable<KeyValuePair<string, string>> values)
    {
        var bundle = new JsonObject();
        foreach (var (mimeType, value) in values.OrderBy(v => v.Key, StringComparer.Ordinal))
            bundle[mimeType] = IsJson(mimeType) && Json(value) is { } json ? json : Lines(value);

        return bundle;
    }

    public static byte[] ToBytes(JsonNode notebook)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(buffer, Layout))
            notebook.WriteTo(writer);

        buffer.Write("\n"u8);
        return buffer.WrittenSpan.ToArray();
    }

    private static JsonNode? Json(string value)
    {
        try
        {
            return JsonNode.Parse(value);
        }
        catch (JsonException)
        {
            // A cell may call anything JSON; its text is kept as it is.
            return null;
        }
    }

    private static bool IsJson(string mimeType) =>
        mimeType == "application/json" || mimeType.EndsWith("+json", StringComparison.Ordinal);
}
