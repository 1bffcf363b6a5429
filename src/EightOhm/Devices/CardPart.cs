using EightOhm.Quantities;
using EightOhm.Record;

namespace EightOhm.Devices;

/// <summary>A place in a card's JSON that knows its file and its path, so that a fault can be pointed at.</summary>
/// <remarks>Text and numbers only: nothing in a card is ever run.</remarks>
internal sealed class CardPart
{
    private readonly JsonPart _json;
    private readonly string _file;
    private readonly string _path;

    private CardPart(JsonPart json, string file, string path) => (_json, _file, _path) = (json, file, path);

    public static CardPart Parse(byte[] bytes, string file)
    {
        try
        {
            return new(JsonPart.Parse(bytes), file, "");
        }
        catch (RecordFault fault)
        {
            throw new CardException(file, fault.Line, "", fault.Message, fault.InnerException);
        }
    }

    public string Text => Read(j => j.Text);

    public string NumberText => Read(j => j.NumberText);

    public bool Flag => Read(j => j.Flag);

    public IReadOnlyList<CardPart> Items => Read(j => j.Items) is var items
        ? [.. items.Select((item, i) => new CardPart(item, _file, $"{_path}[{i}]"))]
        : [];

    /// <summary>A member that must be there.</summary>
    public CardPart this[string name] => new(Read(j => j.Member(name)), _file, Below(name));

    /// <summary>Refuses a member that is not named here, and a missing one.</summary>
    public void Exactly(params string[] names)
    {
        foreach (var (name, part) in Read(j => j.Members))
        {
            if (!names.Contains(name))
                throw new CardException(_file, part.Line, Below(name), $"\"{name}\" is not known here; allowed are {string.Join(", ", names)}.");
        }

        if (names.FirstOrDefault(n => !_json.Members.ContainsKey(n)) is { } missing)
            throw Fault($"\"{missing}\" is missing; a card has {string.Join(", ", names)} here.");
    }

    /// <summary>A value with its unit, as text.</summary>
    public T Value<T>()
        where T : struct
    {
        var text = Text;
        try
        {
            return QuantityText.Parse<T>(text);
        }
        catch (FormatException e)
        {
            throw Fault(e.Message, e);
        }
    }

    /// <summary>A value with its unit that must be greater than zero.</summary>
    public T Positive<T>()
        where T : struct, System.Numerics.IComparisonOperators<T, T, bool>
    {
        var value = Value<T>();
        return value > default(T) ? value : throw Fault($"must be greater than {QuantityFormat.Short(default(T))} (was {QuantityFormat.Short(value)}).");
    }

    /// <summary>Lets a check of the house speak with the file and the path in front.</summary>
    public T Checked<T>(Func<T> make)
    {
        try
        {
            return make();
        }
        catch (RefusedValueException e)
        {
            throw Fault(e.Message, e);
        }
    }

    public CardException Fault(string reason, Exception? inner = null) => new(_file, _json.Line, _path, reason, inner);

    private string Below(string name) => _path.Length == 0 ? name : $"{_path}.{name}";

    private T Read<T>(Func<JsonPart, T> read)
    {
        try
        {
            return read(_json);
        }
        catch (RecordFault fault)
        {
            throw new CardException(_file, fault.Line, _path, fault.Message, fault);
        }
    }
}
