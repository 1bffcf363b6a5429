using System.Globalization;
using EightOhm.Quantities;

namespace EightOhm.Display;

/// <summary>How a value reads within a sentence: in few words, whatever the culture, where UnitsNet's own formatting has kelvins for 25 °C and a comma for a point.</summary>
internal sealed class SentenceFormat : IFormatProvider, ICustomFormatter
{
    public static SentenceFormat Instance { get; } = new();

    public object? GetFormat(Type? formatType) =>
        formatType == typeof(ICustomFormatter) ? this : CultureInfo.InvariantCulture.GetFormat(formatType);

    public string Format(string? format, object? arg, IFormatProvider? formatProvider)
    {
        if (arg is null)
            return "";
        if (InText.Text(arg, format) is { } quantity)
            return quantity;
        var digits = 0;
        if (string.IsNullOrEmpty(format) || int.TryParse(format, NumberStyles.None, CultureInfo.InvariantCulture, out digits))
            return Read(arg, digits);
        return arg is IFormattable formattable ? formattable.ToString(format, CultureInfo.InvariantCulture) : arg.ToString() ?? "";
    }

    // What is no quantity: numbers read as the house writes them.
    private static string Read(object value, int digits) => value switch
    {
        double number when !double.IsFinite(number) => ValueText.Number(number),
        double or int => digits > 0 ? QuantityFormat.Short(value, digits) : QuantityFormat.Short(value),
        IFormattable other => other.ToString(null, CultureInfo.InvariantCulture),
        _ => Show.Text(value),
    };
}
