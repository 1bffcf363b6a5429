using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;

namespace EightOhm.Quantities;

/// <summary>Reads quantities as people type them: "4.7 kΩ", "47k", "4k7", "1 uF", "100 W", "3.3 nV/√Hz", "27 dB", "25 °C".</summary>
public static partial class QuantityText
{
    private const string PrefixLetters = "yzafpnuµmkKMGT";
    private const string Superscripts = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    /// <summary>Reads a quantity of a type known beforehand; the unit may then be shortened to its prefix ("47k", "4k7"), and left out of a gain or a number.</summary>
    /// <typeparam name="T">The quantity type.</typeparam>
    /// <param name="text">The text.</param>
    /// <exception cref="FormatException">The text is not such a quantity; the message says what is allowed.</exception>
    public static T Parse<T>(string text)
        where T : struct => (T)Parse(text, QuantityKinds.Of(typeof(T)));

    /// <summary>Reads a quantity of a type known beforehand, or says that it cannot.</summary>
    /// <typeparam name="T">The quantity type.</typeparam>
    /// <param name="text">The text.</param>
    /// <param name="value">The value read.</param>
    public static bool TryParse<T>([NotNullWhen(true)] string? text, out T value)
        where T : struct
    {
        var read = text is null ? null : Read(text, QuantityKinds.Of(typeof(T)));
        value = read is T found ? found : default;
        return read is T;
    }

    /// <summary>Reads a quantity of a kind known beforehand.</summary>
    /// <param name="text">The text.</param>
    /// <param name="kind">The kind wanted.</param>
    /// <exception cref="FormatException">The text is not such a quantity; the message says what is allowed.</exception>
    public static object Parse(string text, QuantityKind kind)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(kind);
        return Read(text, kind) ?? throw new FormatException(Complaint(text, kind));
    }

    /// <summary>Reads a number with its unit when the kind is not known: the unit decides; K is a difference, as in the literals.</summary>
    /// <param name="text">The text, with its unit.</param>
    /// <exception cref="FormatException">No kind has such a unit.</exception>
    public static object ParseAny(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Split(text) is (_, { Length: > 0 } unit)
            && QuantityKinds.All.Where(kind => !(unit == "K" && kind.Style == FormatStyle.Celsius)).Select(kind => ReadWithUnit(text, kind)).FirstOrDefault(v => v is not null) is { } found
            ? found
            : throw new FormatException($"\"{text}\" is not a number with a unit that EightOhm knows. Write for example 100 W, 4.7 kΩ, 220 uF, 3.3 nV/√Hz, 27 dB, 25 °C.");
    }

    /// <summary>A quantity as text that is read back bit for bit: the exact number in the SI unit, a temperature in kelvin.</summary>
    /// <param name="value">A quantity or a number.</param>
    /// <returns>The number with its unit; of a gain or a fraction the number alone.</returns>
    /// <exception cref="ArgumentException">The value is not a kind that EightOhm knows.</exception>
    public static string Exact(object value)
    {
        ArgumentNullException.ThrowIfNull(value);
        var kind = QuantityKinds.Of(value.GetType());
        // The Celsius figure would lose bits.
        var (number, unit) = value is UnitsNet.Temperature t ? (t.Kelvins, "K") : (kind.ToSi(value), kind.Symbol);
        return $"{number.ToString("R", CultureInfo.InvariantCulture)} {unit}".TrimEnd();
    }

    private static object? Read(string text, QuantityKind kind) => ReadWithUnit(text, kind) ?? ReadShort(text, kind);

    private static object? ReadWithUnit(string text, QuantityKind kind)
    {
        if (Split(text) is not (var number, { Length: > 0 } unit))
            return null;
        if (kind.Style == FormatStyle.Gain)
            return unit == "dB" && Math.Abs(number) <= 400 ? Gain.FromDecibels(number) : unit == "V/V" ? Make(kind, number, 1) : null;
        if (kind.Style == FormatStyle.Celsius && unit == "K")
            return double.IsFinite(number) ? UnitsNet.Temperature.FromKelvins(number) : null;
        foreach (var (spelling, factor) in kind.Spellings.Append((kind.Symbol, 1.0)).Where(s => s.Item1.Length > 0))
        {
            if (!unit.EndsWith(spelling, StringComparison.Ordinal))
                continue;
            var prefix = unit[..^spelling.Length];
            if (prefix.Length == 0)
                return Make(kind, number, factor);
            // Only units that the trade prefixes take one: no m%, no k°C, and no mV², which is (mV)².
            if (kind.Style == FormatStyle.Engineering && kind.Spoken is null && kind.Most > kind.Least && prefix.Length == 1 && PrefixLetters.Contains(prefix[0], StringComparison.Ordinal))
                return Make(kind, number, factor, Power(prefix[0]));
        }

        return null;
    }

    // "47k", "4.7k", "4k7", "4R7", "R47", "100n" and bare numbers, where the kind says the unit.
    private static object? ReadShort(string text, QuantityKind kind)
    {
        if (kind.Style is not (FormatStyle.Engineering or FormatStyle.Gain or FormatStyle.Number))
            return null;
        if (Split(text) is (var bare, "") && kind.Style is FormatStyle.Gain or FormatStyle.Number)
            return Make(kind, bare, 1);
        if (kind.Style != FormatStyle.Engineering || kind.Spoken is not null || kind.Most == kind.Least)
            return null;
        if (InfixForm().Match(Clean(text)) is not { Success: true } match)
            return null;
        var letter = match.Groups["letter"].Value[0];
        var isOhm = letter is 'R' or 'r';
        if (isOhm && kind.Symbol != "Ω")
            return null;
        var number = double.Parse($"{match.Groups["whole"].Value}.{match.Groups["rest"].Value}0", CultureInfo.InvariantCulture);
        return Make(kind, number, 1, isOhm ? 0 : Power(letter));
    }

    // Null where the number does not fit the kind: too large for it, or broken where whole ones count.
    private static object? Make(QuantityKind kind, double number, double factor, int power = 0)
    {
        // Division by a power of ten rounds once; multiplication by its inverse would round twice.
        var si = power < 0 ? number * factor / Math.Pow(10, -power) : number * factor * Math.Pow(10, power);
        if (factor < 1)
            si = number / Math.Round(1 / factor);
        var fits = kind.Type == typeof(int) ? si == Math.Round(si) && Math.Abs(si) <= int.MaxValue
            : kind.Type == typeof(UnitsNet.Power) ? Math.Abs(si) < (double)decimal.MaxValue
            : double.IsFinite(si);
        return fits ? kind.FromSi(si) : null;
    }

    private static int Power(char prefix) => prefix switch
    {
        'y' => -24,
        'z' => -21,
        'a' => -18,
        'f' => -15,
        'p' => -12,
        'n' => -9,
        'u' or 'µ' => -6,
        'm' => -3,
        'k' or 'K' => 3,
        'M' => 6,
        'G' => 9,
        _ => 12,
    };

    private static (double Number, string Unit)? Split(string text)
    {
        var match = NumberForm().Match(Clean(text));
        return match.Success && double.TryParse(match.Groups["number"].Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? (number, match.Groups["unit"].Value.Trim())
            : null;
    }

    private static string Clean(string text) =>
        // The Greek letter is often typed for the micro sign, and looks the same.
        PowerOfTen().Replace(text.Trim().Replace('−', '-').Replace('μ', 'µ').Replace('\u00a0', ' ').Replace('\u202f', ' '), m => "e" + string.Concat(m.Groups["exponent"].Value.Select(Plain)));

    private static char Plain(char raised) => raised == '⁻' ? '-' : (char)('0' + Superscripts.IndexOf(raised, StringComparison.Ordinal));

    private static string Complaint(string text, QuantityKind kind)
    {
        var comma = text.Contains(',', StringComparison.Ordinal) ? " Numbers are written with a point, not a comma." : "";
        var example = kind.Style switch
        {
            FormatStyle.Gain => "27.4 dB or 23.6",
            FormatStyle.Fraction => "10 ppm or 0.1 %",
            FormatStyle.Celsius => "25 °C or 298.15 K",
            FormatStyle.Number => "300",
            _ when kind.Spoken is { } spoken => $"40 {spoken.Symbol}",
            _ when kind.Most > kind.Least => $"{Engineering.Text(4.7e-3, kind.Symbol, kind.Least, kind.Most)} or {Engineering.Text(100, kind.Symbol, 0, 0)}",
            _ => $"0.5 {kind.Symbol}",
        };
        return $"\"{text}\" is not a value of {kind.Name}. Write for example {example}.{comma}";
    }

    // Latin digits alone: others are read by no parser of numbers.
    [GeneratedRegex(@"^(?<number>[+-]?([0-9]+(\.[0-9]*)?|\.[0-9]+)([eE][+-]?[0-9]+)?)\s*(?<unit>[^\d\s,].*)?$")]
    private static partial Regex NumberForm();

    // As the house writes it: 1.381×10⁻²³.
    [GeneratedRegex("×10(?<exponent>⁻?[⁰¹²³⁴⁵⁶⁷⁸⁹]+)")]
    private static partial Regex PowerOfTen();

    [GeneratedRegex(@"^(?<whole>[+-]?[0-9]+)(?<letter>[fpnuµmkKMGTRr])(?<rest>[0-9]*)$|^(?<whole>[+-]?[0-9]+)\.(?<rest>[0-9]+)(?<letter>[fpnuµmkKMGTRr])$|^(?<whole>[+-]?)(?<letter>[Rr])(?<rest>[0-9]+)$")]
    private static partial Regex InfixForm();
}
