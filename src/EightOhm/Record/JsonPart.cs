using System.Text;
using System.Text.Json;

namespace EightOhm.Record;

/// <summary>A piece of JSON that knows its line, so that a fault can be pointed at.</summary>
internal sealed class JsonPart
{
    private const int Depth = 256;
    private readonly OrderedDictionary<string, JsonPart> _members = new(StringComparer.Ordinal);
    private readonly List<JsonPart> _items = [];

    private JsonPart(int line, JsonTokenType type) => (Line, Type) = (line, type);

    public int Line { get; }

    public IReadOnlyList<JsonPart> Items => Type == JsonTokenType.StartArray ? _items : throw Fault("a list [ … ] is expected.");

    public IReadOnlyDictionary<string, JsonPart> Members => Type == JsonTokenType.StartObject ? _members : throw Fault("an object { … } is expected.");

    public string Text => Type == JsonTokenType.String ? _text : throw Fault("a text in quotes is expected.");

    public string NumberText => Type == JsonTokenType.Number ? _text : throw Fault("a number is expected.");

    public double Number => double.Parse(NumberText, System.Globalization.CultureInfo.InvariantCulture) is var n && double.IsFinite(n)
        ? n
        : throw Fault($"the number {_text} is out of range.");

    public bool Flag => Type is JsonTokenType.True or JsonTokenType.False ? Type == JsonTokenType.True : throw Fault("true or false is expected.");

    private JsonTokenType Type { get; }

    private string _text = "";

    public static JsonPart Parse(byte[] bytes)
    {
        var start = bytes.AsSpan().StartsWith(Encoding.UTF8.Preamble) ? Encoding.UTF8.Preamble.Length : 0;
        var text = bytes.AsSpan(start);
        if (text.Trim(" \t\r\n"u8).IsEmpty)
            throw new RecordFault(1, "the file is empty.");
        var reader = new Utf8JsonReader(text, new JsonReaderOptions { MaxDepth = Depth });
        var lines = new LineCounter(bytes[start..]);
        try
        {
            reader.Read();
            var part = Read(ref reader, lines);
            reader.Read();
            return part;
        }
        catch (JsonException e)
        {
            throw new RecordFault((int)(e.LineNumber ?? 0) + 1, "this is not JSON any more (cut off, or a slip of the pen when it was edited).", e);
        }
        catch (InvalidOperationException e)
        {
            throw new RecordFault(lines.At(reader.TokenStartIndex), "the text is not UTF-8.", e);
        }
    }

    public JsonPart Member(string name) => Optional(name) ?? throw Fault($"\"{name}\" is missing.");

    public JsonPart? Optional(string name) => Members.GetValueOrDefault(name);

    /// <summary>Refuses members that this version does not know: dropping them at the next save would lose them.</summary>
    public void Allow(params string[] names)
    {
        foreach (var (name, part) in Members)
        {
            if (!names.Contains(name))
                throw part.Fault($"\"{name}\" is not known here; known are {string.Join(", ", names)}.");
        }
    }

    public RecordFault Fault(string reason, Exception? inner = null) => new(Line, reason, inner);

    private static JsonPart Read(ref Utf8JsonReader reader, LineCounter lines)
    {
        var part = new JsonPart(lines.At(reader.TokenStartIndex), reader.TokenType);
        switch (reader.TokenType)
        {
            case JsonTokenType.StartObject:
                while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
                {
                    var name = reader.GetString()!;
                    var line = lines.At(reader.TokenStartIndex);
                    reader.Read();
                    if (!part._members.TryAdd(name, Read(ref reader, lines)))
                        throw new RecordFault(line, $"\"{name}\" stands here twice.");
                }

                break;
            case JsonTokenType.StartArray:
                while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
                    part._items.Add(Read(ref reader, lines));
                break;
            case JsonTokenType.String:
                part._text = reader.GetString()!;
                break;
            case JsonTokenType.Number:
                part._text = Encoding.UTF8.GetString(reader.ValueSpan);
                break;
            default:
                break;
        }

        return part;
    }

    private sealed class LineCounter(byte[] bytes)
    {
        private int _line = 1;
        private int _done;

        public int At(long offset)
        {
            for (var end = (int)offset; _done < end; _done++)
                _line += bytes[_done] == (byte)'\n' ? 1 : 0;
            return _line;
        }
    }
}
