using System.Globalization;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Record;

/// <summary>How a value is kept: one number in the SI unit, so that it comes back bit for bit.</summary>
internal static class KeptValue
{
    /// <summary>The unit of the number kept. A temperature is kept in kelvin: its Celsius figure would lose bits.</summary>
    public static string Unit(QuantityKind kind) => kind.Style == FormatStyle.Celsius ? "K" : kind.Symbol;

    public static double Number(QuantityKind kind, object value) => value is Temperature t ? t.Kelvins : kind.ToSi(value);

    public static object Value(QuantityKind kind, double number) => kind.Style == FormatStyle.Celsius ? Temperature.FromKelvins(number) : kind.FromSi(number);

    /// <summary>The value as it will be read back: in the SI unit, whatever unit it was made with.</summary>
    /// <exception cref="RefusedValueException">The value is not finite.</exception>
    public static object Normal(string name, QuantityKind kind, object value)
    {
        var number = Number(kind, value);
        if (!double.IsFinite(number))
            throw new RefusedValueException(name, $"{name} must be a finite {kind.Name}; the value given is not a number or without bound. Look for a division by zero before it.");
        return Value(kind, number);
    }

    /// <summary>An input as it will be read back: what cannot be built cannot be asked for.</summary>
    /// <exception cref="RefusedValueException">The value is not finite, or below zero where the kind has nothing below zero.</exception>
    public static object Input(string name, QuantityKind kind, object value)
    {
        if (kind.NeverNegative && Number(kind, value) < 0)
            throw new RefusedValueException(name, $"{name} must be {QuantityFormat.Short(Value(kind, 0))} or more (was {QuantityFormat.Short(value)}).");
        return Normal(name, kind, value);
    }

    /// <summary>The number as text that tells any two values apart.</summary>
    public static string Fingerprint(QuantityKind kind, object value) => Number(kind, value).ToString("R", CultureInfo.InvariantCulture);

    /// <summary>The same of an entry's value: of a part what its file holds.</summary>
    public static string Fingerprint(Slot slot, object value) => value is PartFile part ? part.Hash : Fingerprint(slot.Kind!, value);

    /// <summary>The value as the file has it: the exact number with its unit.</summary>
    public static string Text(object value) => QuantityText.Exact(value);
}
