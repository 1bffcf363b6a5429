using EightOhm.Quantities;

namespace EightOhm.Json;

/// <summary>Quantities out of JSON: a value with its unit, as text.</summary>
internal static class JsonValues
{
    /// <summary>A value with its unit, of a size that a part can have.</summary>
    /// <exception cref="JsonFault">The text is not such a quantity, or the value is beyond anything that is built.</exception>
    public static T Value<T>(this JsonPart part)
        where T : struct
    {
        var text = part.Text;
        try
        {
            var value = QuantityText.Parse<T>(text);
            return Size<T>() is var (least, most) && Math.Abs(QuantityKinds.Of(typeof(T)).ToSi(value)) is var size && size != 0 && !(size >= least && size <= most)
                ? throw part.Fault($"must be no {(size > most ? $"larger than {Text<T>(most)}" : $"smaller than {Text<T>(least)}")} (was {QuantityFormat.Short(value)}): no part is. Look for a misread prefix or power of ten.")
                : value;
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

    // So that heat, the square of a current times a resistance or a rise over a thermal resistance, stays a power: that is kept as a decimal number, which ends at 8e28 W.
    private static (double Least, double Most)? Size<T>() => typeof(T) switch
    {
        var t when t == typeof(double) || t == typeof(int) || t == typeof(UnitsNet.Temperature) => null,
        var t when t == typeof(UnitsNet.ElectricPotential) || t == typeof(UnitsNet.ElectricCurrent) => (1e-24, 1e6),
        var t when t == typeof(ThermalResistance) => (1e-9, 1e12),
        _ => (1e-24, 1e12),
    };

    private static string Text<T>(double si) => QuantityFormat.Short(QuantityKinds.Of(typeof(T)).FromSi(si));

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
