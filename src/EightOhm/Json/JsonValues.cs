using EightOhm.Quantities;

namespace EightOhm.Json;

/// <summary>Quantities out of JSON: a value with its unit, as text.</summary>
internal static class JsonValues
{
    /// <summary>A value with its unit.</summary>
    /// <exception cref="JsonFault">The text is not such a quantity.</exception>
    public static T Value<T>(this JsonPart part)
        where T : struct
    {
        var text = part.Text;
        try
        {
            return QuantityText.Parse<T>(text);
        }
        catch (FormatException e)
        {
            throw part.Fault(e.Message, e);
        }
    }

    /// <summary>A value with its unit that must be greater than zero.</summary>
    /// <exception cref="JsonFault">The text is not such a quantity, or it is zero or less.</exception>
    public static T Positive<T>(this JsonPart part)
        where T : struct, System.Numerics.IComparisonOperators<T, T, bool>
    {
        var value = part.Value<T>();
        return value > default(T) ? value : throw part.Fault($"must be greater than {QuantityFormat.Short(default(T))} (was {QuantityFormat.Short(value)}).");
    }

    /// <summary>Lets a check of the house speak with the line and the path in front.</summary>
    /// <exception cref="JsonFault">The check refused.</exception>
    public static T Checked<T>(this JsonPart part, Func<T> make)
    {
        try
        {
            return make();
        }
        catch (RefusedValueException e)
        {
            throw part.Fault(e.Message, e);
        }
    }

    /// <summary>A text that is not empty, without the blanks around it.</summary>
    /// <exception cref="JsonFault">The text is empty.</exception>
    public static string Written(this JsonPart part) => part.Text.Trim() is { Length: > 0 } text ? text : throw part.Fault("must not be empty.");
}
