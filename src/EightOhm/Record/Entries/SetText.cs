using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>Reads a value set from outside, with a complaint that helps.</summary>
internal static class SetText
{
    /// <exception cref="RecordException">The text is not a value of the kind.</exception>
    public static object Read(string name, string text, QuantityKind kind)
    {
        try
        {
            return KeptValue.Input(name, kind, QuantityText.Parse(text, kind));
        }
        catch (RefusedValueException e)
        {
            throw new RecordException(e.Message, e);
        }
        catch (Exception e) when (e is FormatException or ArgumentException or OverflowException)
        {
            var other = Other(text);
            throw new RecordException(other is null ? $"{name}: {e.Message}" : $"{name} is {kind.Name}, but {text.Trim()} is {other.Name}. {e.Message}", e);
        }
    }

    // What the text would be if its unit decided.
    private static QuantityKind? Other(string text)
    {
        try
        {
            return QuantityKinds.Of(QuantityText.ParseAny(text).GetType());
        }
        catch (Exception e) when (e is FormatException or ArgumentException or OverflowException)
        {
            return null;
        }
    }
}
