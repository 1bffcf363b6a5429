using System.Globalization;
using System.Text.Json;

namespace EightOhm.Json;

/// <summary>A piece of JSON that knows its line and its path, so that a fault can be pointed at. Text and numbers only: nothing in it is run.</summary>
internal sealed class JsonPart
{
    private readonly OrderedDictionary<string, JsonPart> _members = new(StringComparer.Ordinal);
    private readonly List<JsonPart> _items = [];
    private readonly string _text = "";

    internal JsonPart(int line, string place, JsonTokenType type, string text = "") => (Line, Place, Type, _text) = (line, place, type, text);

    /// <summary>The line, counted from 1.</summary>
    public int Line { get; }

    /// <summary>The path inside the file; empty for the whole.</summary>
    public string Place { get; }

    /// <summary>The items of a list.</summary>
    public IReadOnlyList<JsonPart> Items => Type == JsonTokenType.StartArray ? _items : throw Fault("a list [ … ] is expected.");

    /// <summary>The members of an object, in the file's order.</summary>
    public IReadOnlyDictionary<string, JsonPart> Members => Type == JsonTokenType.StartObject ? _members : throw Fault("an object { … } is expected.");

    /// <summary>A text.</summary>
    public string Text => Type == JsonTokenType.String ? _text : throw Fault("a text in quotes is expected.");

    /// <summary>A number as it is written.</summary>
    public string NumberText => Type == JsonTokenType.Number ? _text : throw Fault("a number is expected.");

    /// <summary>A finite number.</summary>
    public double Number => double.Parse(NumberText, CultureInfo.InvariantCulture) is var n && double.IsFinite(n)
        ? n
        : throw Fault($"the number {_text} is out of range.");

    /// <summary>True or false.</summary>
    public bool Flag => Type is JsonTokenType.True or JsonTokenType.False ? Type == JsonTokenType.True : throw Fault("true or false is expected.");

    /// <summary>Whether it is a text.</summary>
    public bool IsText => Type == JsonTokenType.String;

    private JsonTokenType Type { get; }

    /// <summary>A member that must be there.</summary>
    public JsonPart this[string name] => Optional(name) ?? throw Fault($"\"{name}\" is missing.");

    /// <summary>Reads a whole file's bytes.</summary>
    /// <exception cref="JsonFault">It is not JSON, or nested deeper than anything of ours.</exception>
    public static JsonPart Parse(byte[] bytes) => JsonReading.Parse(bytes);

    /// <summary>A member, or null.</summary>
    public JsonPart? Optional(string name) => Members.GetValueOrDefault(name);

    /// <summary>Refuses members that this version does not know: dropping them at the next save would lose them.</summary>
    public void Allow(params string[] names)
    {
        foreach (var (name, part) in Members)
        {
            if (!names.Contains(name))
                throw part.Fault($"\"{name}\" is not known here; allowed are {string.Join(", ", names)}.");
        }
    }

    /// <summary>Refuses a member that is not named here, and a missing one.</summary>
    public void Exactly(params string[] names)
    {
        Allow(names);
        if (names.FirstOrDefault(n => !Members.ContainsKey(n)) is { } missing)
            throw Fault($"\"{missing}\" is missing; here must be {string.Join(", ", names)}.");
    }

    /// <summary>A fault at this place.</summary>
    public JsonFault Fault(string reason, Exception? inner = null) => new(Line, Place, reason, inner);

    /// <summary>An object made at this place, for a migration from an older version: faults in it still point here.</summary>
    public JsonPart NewObject(params IEnumerable<(string Name, JsonPart? Part)> members)
    {
        var made = new JsonPart(Line, Place, JsonTokenType.StartObject);
        foreach (var (name, part) in members)
        {
            if (part is not null)
                made._members[name] = part;
        }

        return made;
    }

    /// <summary>A list made at this place.</summary>
    public JsonPart NewList(IEnumerable<JsonPart> items)
    {
        var made = new JsonPart(Line, Place, JsonTokenType.StartArray);
        made._items.AddRange(items);
        return made;
    }

    /// <summary>A text made at this place.</summary>
    public JsonPart NewText(string text) => new(Line, Place, JsonTokenType.String, text);

    /// <summary>True or false, made at this place.</summary>
    public JsonPart NewFlag(bool flag) => new(Line, Place, flag ? JsonTokenType.True : JsonTokenType.False);

    /// <summary>A number made at this place.</summary>
    public JsonPart NewNumber(string text) => new(Line, Place, JsonTokenType.Number, text);

    internal bool Add(string name, JsonPart part) => _members.TryAdd(name, part);

    internal void Add(JsonPart part) => _items.Add(part);
}
