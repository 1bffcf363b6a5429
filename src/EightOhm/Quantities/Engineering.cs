using System.Globalization;

namespace EightOhm.Quantities;

/// <summary>Engineering notation, the same under every culture: a mantissa from 1 to 999 and a prefix.</summary>
public static class Engineering
{
    /// <summary>The significant digits of a computed value when nothing else is said.</summary>
    public const int Digits = 4;

    private const string Prefixes = "yzafpnµm kMGT"; // steps of 1000; the space is the unit itself
    private const int UnitIndex = 8;

    /// <summary>A value with its unit: few digits when it is a round number, otherwise <paramref name="digits"/> of them.</summary>
    /// <param name="si">The value in the unit that <paramref name="symbol"/> names.</param>
    /// <param name="symbol">The unit's symbol; empty for a plain number.</param>
    /// <param name="least">The smallest prefix in use for the unit, a power of ten divisible by 3.</param>
    /// <param name="most">The largest prefix in use for the unit, a power of ten divisible by 3.</param>
    /// <param name="digits">Significant digits, 1 to 15.</param>
    /// <param name="fixedDigits">Whether round numbers keep their zeros too, as in a table column.</param>
    public static string Text(double si, string symbol, int least = -15, int most = 12, int digits = Digits, bool fixedDigits = false)
    {
        if (!double.IsFinite(si))
            throw new ArgumentOutOfRangeException(nameof(si), "Only finite values can be shown; find the division by zero or the root of a negative number that led here.");
        var shown = fixedDigits ? digits : HonestDigits(si, digits);
        var step = Step(si, shown, least, most);
        var scale = Math.Pow(10, 3 * Math.Abs(step));
        var number = Number(step >= 0 ? si / scale : si * scale, shown, keepZeros: fixedDigits);
        var prefix = step == 0 ? "" : Prefixes[UnitIndex + step].ToString();
        return symbol.Length == 0 && prefix.Length == 0 ? number : $"{number} {prefix}{symbol}";
    }

    /// <summary>A plain number with so many significant digits; very large and small ones as a power of ten.</summary>
    /// <param name="value">The number; finite.</param>
    /// <param name="digits">Significant digits, 1 to 15.</param>
    /// <param name="keepZeros">Whether trailing zeros stay.</param>
    public static string Number(double value, int digits = Digits, bool keepZeros = false)
    {
        if (value == 0)
            return "0";
        var exponent = Exponent(value, digits);
        if (exponent is < -5 or > 9)
        {
            var mantissa = exponent < -300
                ? value * 1e300 / Math.Pow(10, exponent + 300)
                : value / Math.Pow(10, exponent);
            return Fixed(mantissa, digits - 1, keepZeros) + TimesTen(exponent);
        }

        return Fixed(value, digits - 1 - exponent, keepZeros);
    }

    /// <summary>The fewest digits that give the value back, of six or <paramref name="digits"/>; if none do, <paramref name="digits"/>.</summary>
    internal static int HonestDigits(double value, int digits)
    {
        if (value == 0)
            return 1;
        for (var n = 1; n <= Math.Max(6, digits); n++)
        {
            var rounded = double.Parse(value.ToString("E" + (n - 1), CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
            // Beyond six digits nothing is taken for round that differs within the digits asked for.
            if (Math.Abs(rounded - value) <= (n > 6 ? Math.Min(1e-12, 0.5 * Math.Pow(10, -digits)) : 1e-12) * Math.Abs(value))
                return n;
        }

        return digits;
    }

    private static int Step(double si, int digits, int least, int most) =>
        si == 0 ? 0 : Math.Clamp((int)Math.Floor(Exponent(si, digits) / 3.0), Math.Max(least / 3, -UnitIndex), most / 3);

    // The power of ten of the leading digit, after rounding: 999.96 to four digits is 1000.
    private static int Exponent(double value, int digits)
    {
        var text = value.ToString("E" + (digits - 1), CultureInfo.InvariantCulture);
        return int.Parse(text.AsSpan(text.IndexOf('E', StringComparison.Ordinal) + 1), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
    }

    private static string Fixed(double value, int decimals, bool keepZeros)
    {
        // Digits before the point are honest too: 123456 to four digits is 123500.
        if (decimals < 0)
        {
            var unit = Math.Pow(10, -decimals);
            value = Math.Round(value / unit) * unit;
            decimals = 0;
        }

        var text = value.ToString("F" + decimals, CultureInfo.InvariantCulture);
        if (!keepZeros && text.Contains('.', StringComparison.Ordinal))
            text = text.TrimEnd('0').TrimEnd('.');
        return text.StartsWith('-') ? "−" + text[1..] : text;
    }

    /// <summary>A power of ten as a factor: ×10⁻²³.</summary>
    /// <param name="exponent">The exponent.</param>
    public static string TimesTen(int exponent)
    {
        const string Small = "⁰¹²³⁴⁵⁶⁷⁸⁹";
        var digits = string.Concat(Math.Abs(exponent).ToString(CultureInfo.InvariantCulture).Select(c => Small[c - '0']));
        return exponent < 0 ? $"×10⁻{digits}" : $"×10{digits}";
    }
}
