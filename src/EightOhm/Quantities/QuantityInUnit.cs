using System.Globalization;

namespace EightOhm.Quantities;

/// <summary>A quantity with the unit in which it is to be shown: in text, in tables, in a list, in Explain.</summary>
/// <remarks>Made by <see cref="QuantityUnits.In"/>. It is for showing; to go on computing take the quantity itself, <see cref="Value"/>.</remarks>
public sealed class QuantityInUnit : IFormattable
{
    internal QuantityInUnit(object value, UnitChoice unit)
    {
        Value = value;
        Unit = unit.Symbol;
        Number = unit.FromSi(QuantityKinds.Of(value.GetType()).ToSi(value));
    }

    /// <summary>The quantity.</summary>
    public object Value { get; }

    /// <summary>The unit's symbol.</summary>
    public string Unit { get; }

    /// <summary>The number in that unit.</summary>
    public double Number { get; }

    /// <summary>The number with its unit, four significant digits where it is not round.</summary>
    public override string ToString() => Text(Engineering.Digits);

    /// <summary>The number with its unit; the same in every culture.</summary>
    /// <param name="format">Significant digits; nothing for four.</param>
    /// <param name="formatProvider">Not used.</param>
    /// <returns>The text.</returns>
    /// <exception cref="FormatException">The format is not a number of digits.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => string.IsNullOrEmpty(format) ? ToString()
        : int.TryParse(format, NumberStyles.None, CultureInfo.InvariantCulture, out var digits) && digits is >= 1 and <= 15 ? Text(digits)
        : throw new FormatException($"\"{format}\" is no format for {this}: its unit is chosen already; after the colon may stand the significant digits, 1 to 15.");

    private string Text(int digits) => $"{Engineering.Number(Number, Engineering.HonestDigits(Number, digits))}{(Unit == "°" ? "" : " ")}{Unit}";
}

/// <summary>The unit in which a quantity is shown.</summary>
public static class QuantityUnits
{
    /// <summary>The quantity in a unit of your choice: in text, tables, lists and Explain it keeps it.</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="value">The quantity.</param>
    /// <param name="unit">The unit: "mV", "kΩ", "kohm", "uF", "V/µs", "K", "rad", "dB"; for a voltage also "dBu" and "dBV", for a power "dBW" and "dBm" (rms, average).</param>
    /// <returns>The quantity with its unit.</returns>
    /// <exception cref="ArgumentException">The kind has no such unit; the message lists those it has.</exception>
    /// <example><code>28.28427.V.In("mV")   // 28280 mV
    /// $"{0.775.V.In("dBu")}"   // 0.0046 dBu</code></example>
    public static QuantityInUnit In<T>(this T value, string unit)
        where T : struct
    {
        ArgumentNullException.ThrowIfNull(unit);
        return Of(value, unit);
    }

    internal static QuantityInUnit Of(object value, string unit)
    {
        var kind = QuantityKinds.Of(value.GetType());
        if (UnitChoice.Find(kind, unit) is { } choice)
            return new(value, choice);
        var allowed = UnitChoice.Allowed(kind);
        throw new ArgumentException(allowed.Count == 0
            ? $"{QuantityFormat.Short(value)} is a plain number and has no unit to choose (asked for \"{unit}\")."
            : $"\"{unit}\" is not a unit of {kind.Name} (of {QuantityFormat.Short(value)}); choose {string.Join(", ", allowed)}.", nameof(unit));
    }
}
