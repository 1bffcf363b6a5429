using System.Text;
using System.Text.Json;

namespace EightOhm.Json;

/// <summary>From bytes to <see cref="JsonPart"/>, in one pass that counts lines.</summary>
internal static class JsonReading
{
    /// <summary>How deep objects and lists may stand in each other. Nothing of ours comes near it; more would end the process by its stack.</summary>
    public const int Depth = 256;

    /// <exception cref="JsonFault">It is not JSON, or nested too deep.</exception>
    public static JsonPart Parse(byte[] bytes)
    {
        var start = bytes.AsSpan().StartsWith(Encoding.UTF8.Preamble) ? Encoding.UTF8.Preamble.Length : 0;
        var text = bytes.AsSpan(start);
        if (text.Trim(" \t\r\n"u8).IsEmpty)
            throw new JsonFault(1, "", "the file is empty.");
        var reader = new Utf8JsonReader(text, new JsonReaderOptions { MaxDepth = Depth });
        var lines = new LineCounter(bytes[start..]);
        try
        {
            reader.Read();
            var part = Read(ref reader, lines, "");
            reader.Read();
            return part;
        }
        catch (JsonException e)
        {
            var line = (int)(e.LineNumber ?? 0) + 1;
            throw reader.CurrentDepth >= Depth - 1
                ? new JsonFault(line, "", $"objects and lists stand more than {Depth} deep in each other.", e)
                : new JsonFault(line, "", "this is not JSON any more (cut off, or a slip of the pen when it was edited).", e);
        }
        catch (InvalidOperationException e)
        {
            throw new JsonFault(lines.At(reader.TokenStartIndex), "", "the text is not UTF-8.", e);
        }
    }

    private static JsonPart Read(ref Utf8JsonReader reader, LineCounter lines, string place)
    {
        var line = lines.At(reader.TokenStartIndex);
        switch (reader.TokenType)
        {
            case JsonTokenType.StartObject:
                var made = new JsonPart(line, place, JsonTokenType.StartObject);
                while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
                {
                    var name = reader.GetString()!;
                    var at = lines.At(reader.TokenStartIndex);
                    reader.Read();
                    if (!made.Add(name, Read(ref reader, lines, place.Length == 0 ? name : $"{place}.{name}")))
                        throw new JsonFault(at, place, $"\"{name}\" stands here twice.");
                }

                return made;
            case JsonTokenType.StartArray:
                var list = new JsonPart(line, place, JsonTokenType.StartArray);
                for (var i = 0; reader.Read() && reader.TokenType != JsonTokenType.EndArray; i++)
                    list.Add(Read(ref reader, lines, $"{place}[{i}]"));
                return list;
            case JsonTokenType.String:
                return new(line, place, JsonTokenType.String, reader.GetString()!);
            case JsonTokenType.Number:
                return new(line, place, JsonTokenType.Number, Encoding.UTF8.GetString(reader.ValueSpan));
            default:
                return new(line, place, reader.TokenType);
        }
    }

    private sealed class LineCounter(byte[] bytes)
    {
        private int _line = 1;
        private int _done;

        public int At(long offset)
        {
            if (offset > _done)
            {
                _line += bytes.AsSpan(_done..(int)offset).Count((byte)'\n');
                _done = (int)offset;
            }

            return _line;
        }
    }
}
