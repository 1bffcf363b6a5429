namespace EightOhm.Quantities;

/// <summary>How a value reads: the one way from a quantity, ours or UnitsNet's, to text.</summary>
public static class QuantityFormat
{
    /// <summary>The value in few words, as it stands in a formula: 28.28 V, 23.62, 10 ppm, 25 °C.</summary>
    /// <param name="value">A quantity or a number.</param>
    /// <param name="digits">Significant digits of a value that is not a round number.</param>
    /// <exception cref="ArgumentException">The value is not a kind that EightOhm knows.</exception>
    public static string Short(object value, int digits = Engineering.Digits)
    {
        ArgumentNullException.ThrowIfNull(value);
        var kind = QuantityKinds.Of(value.GetType());
        var si = kind.ToSi(value);
        return kind.Style switch
        {
            FormatStyle.Celsius => Celsius(si, digits),
            FormatStyle.Fraction => Fraction(si, digits),
            FormatStyle.Level => $"{Digits(si, digits)} {kind.Symbol}",
            FormatStyle.Angle => $"{Digits(si, digits)}°",
            FormatStyle.Gain or FormatStyle.Number => Engineering.Number(si, Engineering.HonestDigits(si, digits)),
            _ when kind.Spoken is var (factor, symbol) => Engineering.Text(si / factor, symbol, 0, 0, digits),
            _ when kind.Type == typeof(UnitsNet.Duration) && Math.Abs(si) >= ManyHours => Engineering.Text(si / Hour, "h", 0, 0, digits),
            _ when PowerOfTen(kind, si) => $"{Engineering.Number(si, Engineering.HonestDigits(si, Math.Max(digits, 4)))} {kind.Symbol}",
            _ => Engineering.Text(si, kind.Symbol, kind.Least, kind.Most, digits),
        };
    }

    /// <summary>The value as a result of its own: a gain with its decibels, a fraction below 1 % in percent, ppm and decibels.</summary>
    /// <remarks>The decibels are those of a ratio of voltages, as distortion and ripple are. A larger fraction may as well be a
    /// ratio of powers (an efficiency), so it is read in percent alone.</remarks>
    /// <param name="value">A quantity or a number.</param>
    /// <param name="digits">Significant digits of a value that is not a round number.</param>
    /// <exception cref="ArgumentException">The value is not a kind that EightOhm knows.</exception>
    public static string Long(object value, int digits = Engineering.Digits)
    {
        ArgumentNullException.ThrowIfNull(value);
        var kind = QuantityKinds.Of(value.GetType());
        var si = kind.ToSi(value);
        if (si == 0)
            return Short(value, digits);
        return kind.Style switch
        {
            FormatStyle.Gain => $"{Short(value, digits)} ({Decibels(si, digits)})",
            FormatStyle.Fraction when Math.Abs(si) < 0.01 => $"{Digits(si * 100, digits)} % ({Digits(si * 1e6, digits)} ppm, {Decibels(si, digits)})",
            FormatStyle.Fraction => $"{Digits(si * 100, digits)} %",
            _ => Short(value, digits),
        };
    }

    // Ten hours and more are the lives of parts; a charging time of minutes is still read in seconds.
    private const double Hour = 3600, ManyHours = 10 * Hour;

    private static string Celsius(double celsius, int digits)
    {
        // The difference of two kelvin figures keeps the rounding of the larger: a nanokelvin is none.
        var clean = Math.Round(celsius, 9);
        var honest = Engineering.HonestDigits(clean, digits);
        var whole = clean == 0 ? 1 : (int)Math.Floor(Math.Log10(Math.Abs(clean))) + 1;
        var shown = clean == Math.Round(clean, 2) ? honest : Math.Min(honest, Math.Max(whole, 0) + 1);
        return $"{Engineering.Number(clean, Math.Clamp(shown, 1, 15))} °C";
    }

    private static string Fraction(double fraction, int digits) => Math.Abs(fraction) is > 0 and < 0.001
        ? $"{Digits(fraction * 1e6, digits)} ppm"
        : $"{Digits(fraction * 100, digits)} %";

    private static string Decibels(double ratio, int digits)
    {
        var decibels = 20 * Math.Log10(Math.Abs(ratio));
        return $"{Digits(Math.Round(decibels, 10), digits)} dB";
    }

    private static string Digits(double number, int digits) => Engineering.Number(number, Engineering.HonestDigits(number, digits));

    // Units without prefixes (J/K, V²) and values below the smallest prefix in use read as a power of ten.
    private static bool PowerOfTen(QuantityKind kind, double si) =>
        si != 0 && (Math.Abs(si) < Math.Pow(10, kind.Least - 3) || (kind.Least == 0 && kind.Most == 0 && Math.Abs(si) is < 1e-3 or >= 1e6));
}
