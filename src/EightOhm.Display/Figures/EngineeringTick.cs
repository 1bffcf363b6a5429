using System.Globalization;
using EightOhm.Quantities;

namespace EightOhm.Display.Figures;

/// <summary>Numbers as they stand at ticks and bars: engineering notation, the same under every culture.</summary>
public static class EngineeringTick
{
    private const string Prefixes = "fpnµm kMGT";
    private const int Least = -15;

    // A prefix before these would mean nothing, or (before a square) something else.
    private static readonly HashSet<string> Unprefixed = ["", "%", "‰", "ppm", "°", "°C", "min", "h"];

    /// <summary>A tick: as many decimals as <paramref name="step"/> needs, the prefix that suits <paramref name="largest"/>.</summary>
    /// <param name="value">The value, in <paramref name="unit"/>.</param>
    /// <param name="unit">The unit's symbol.</param>
    /// <param name="step">The distance to the next tick.</param>
    /// <param name="largest">The largest value on the axis, so that all ticks of a linear axis share one prefix.</param>
    public static string Text(double value, string unit, double step, double largest)
    {
        if (value == 0) return "0";
        var exponent = Exponent(Math.Abs(largest), unit);
        var scale = Math.Pow(10, exponent);
        var decimals = Math.Clamp((int)Math.Ceiling(-Math.Log10(step / scale * (1 + 1e-9))), 0, 12);
        // A step such as 2.5 needs one decimal more than its size says.
        if (Math.Abs(Math.Round(step / scale, decimals) * scale / step - 1) > 1e-6) decimals++;
        return Join((value / scale).ToString("F" + decimals, CultureInfo.InvariantCulture), exponent, unit);
    }

    /// <summary>A tick on its own, with no more digits than it needs, e.g. "20 kHz".</summary>
    /// <param name="value">The value, in <paramref name="unit"/>.</param>
    /// <param name="unit">The unit's symbol.</param>
    public static string Text(double value, string unit) => value == 0 ? "0" : Plain(value, unit, 6, keepZeros: false);

    /// <summary>A reading rounded to so many significant digits, e.g. "28.3 V".</summary>
    /// <param name="value">The value, in <paramref name="unit"/>.</param>
    /// <param name="unit">The unit's symbol.</param>
    /// <param name="digits">Significant digits.</param>
    public static string Reading(double value, string unit, int digits = 3) => Plain(value, unit, digits, keepZeros: true);

    private static string Plain(double value, string unit, int digits, bool keepZeros) => TakesPrefix(unit)
        ? Engineering.Text(value, unit, Least, Most(unit), digits, keepZeros)
        : Join(Engineering.Number(value, digits, keepZeros), 0, unit);

    /// <summary>The value rounded to so many significant digits.</summary>
    internal static double Round(double value, int digits) =>
        double.Parse(value.ToString("E" + (digits - 1), CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    internal static bool TakesPrefix(string unit) =>
        !Unprefixed.Contains(unit) && !unit.StartsWith("dB", StringComparison.Ordinal) && unit.IndexOfAny(['²', '³']) < 0;

    private static int Exponent(double magnitude, string unit)
    {
        var power = (int)Math.Floor(Math.Log10(magnitude) + 1e-9);
        if (!TakesPrefix(unit)) return power is < -4 or > 5 ? power : 0;
        var engineering = (int)Math.Floor(power / 3.0) * 3;
        return Math.Clamp(engineering, Least, Most(unit));
    }

    private static int Most(string unit) => unit == "s" ? 0 : 12;

    private static string Join(string number, int exponent, string unit)
    {
        number = number.Replace('-', '−');
        if (!TakesPrefix(unit) && exponent != 0) number += Engineering.TimesTen(exponent);
        var symbol = TakesPrefix(unit) && exponent != 0 ? Prefixes[exponent / 3 + 5] + unit : unit;
        return symbol.Length == 0 ? number : unit == "°" ? number + symbol : number + " " + symbol;
    }
}
