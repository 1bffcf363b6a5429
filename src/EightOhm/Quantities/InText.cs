using System.Globalization;
using System.Runtime.CompilerServices;
using UnitsNet;

namespace EightOhm.Quantities;

/// <summary>A quantity within a text, <c>$"{x}"</c>: in engineering notation, in any culture. What is no quantity stays as C# has it.</summary>
/// <remarks>UnitsNet's types write themselves by the culture and in their own unit (298.15 K, 4,700 Ω), and that cannot be changed in them. A cell gets this
/// from the extension; a program from the handler that comes with the package, see <see cref="QuantityStringHandler"/>.</remarks>
public static class InText
{
    /// <summary>The value as it goes into a text: a quantity in our words, anything else untouched.</summary>
    /// <param name="value">Any value.</param>
    /// <returns>What an interpolated string takes.</returns>
    [OverloadResolutionPriority(1)]
    public static object? Of(object? value) => value is not null && IsOurs(value) ? new Worded(value) : value;

    /// <summary>Characters as they are.</summary>
    /// <param name="value">The characters.</param>
    /// <returns>The same as a string.</returns>
    public static string Of(ReadOnlySpan<char> value) => value.ToString();

    /// <summary>A quantity as text, or null when it is none (a plain number is none: C# formats it).</summary>
    /// <param name="value">Any value.</param>
    /// <param name="format">Nothing; significant digits ("3"); a unit ("mV"); a unit after digits ("3 mV"); or a format of UnitsNet's ("F2"), in the invariant culture.</param>
    /// <returns>The text.</returns>
    /// <exception cref="FormatException">The format is none of these.</exception>
    public static string? Text(object value, string? format = null) => value switch
    {
        Worded worded => Text(worded.Value, format),
        QuantityInUnit chosen => chosen.ToString(format, null),
        _ when !IsOurs(value) => null,
        _ when QuantityKinds.Find(value.GetType()) is { } kind => Known(value, kind, format),
        _ => ((IQuantity)value).ToString(format, CultureInfo.InvariantCulture),
    };

    private static bool IsOurs(object value) => value is IQuantity or QuantityInUnit || QuantityKinds.Find(value.GetType()) is { Style: not FormatStyle.Number };

    private static string Known(object value, QuantityKind kind, string? format)
    {
        if (string.IsNullOrWhiteSpace(format))
            return QuantityFormat.Short(value);
        var parts = format.Split(' ', 2);
        var hasDigits = int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var digits) && digits is >= 1 and <= 15;
        if (hasDigits && parts.Length == 1)
            return QuantityFormat.Short(value, digits);
        var unit = hasDigits ? parts[1] : format;
        if (UnitChoice.Find(kind, unit) is { } choice)
            return new QuantityInUnit(value, choice).ToString(hasDigits ? parts[0] : null, null);
        if (value is IFormattable own && unit.Length <= 3 && char.IsAsciiLetter(unit[0]) && unit[1..].All(char.IsAsciiDigit))
            return own.ToString(unit, CultureInfo.InvariantCulture);
        var example = UnitChoice.Allowed(kind) is [var first, ..] ? first : kind.Symbol;
        throw new FormatException($"\"{format}\" says nothing of {QuantityFormat.Short(value)}: after the colon may stand the significant digits ({{x:3}}), a unit ({{x:{example}}}) or both ({{x:3 {example}}}).");
    }

    // What stands in an interpolated string for a quantity.
    internal sealed class Worded(object value) : IFormattable
    {
        public object Value { get; } = value;

        public override string ToString() => Text(Value)!;

        public string ToString(string? format, IFormatProvider? formatProvider) => Text(Value, format)!;
    }
}
