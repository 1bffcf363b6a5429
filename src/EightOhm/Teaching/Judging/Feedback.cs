using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Teaching;

/// <summary>What a wrong figure says of the way to it, for any exercise: sign, decade, rms and peak, decibels, a factor of two.</summary>
internal static class Feedback
{
    /// <summary>The sentence on a wrong answer; both numbers in the unit of the kind.</summary>
    public static string Of(QuantityKind kind, Tolerance tolerance, double given, double right)
    {
        bool Near(double g, double r) => tolerance.Holds(kind, g, r);
        if (kind.Style == FormatStyle.Celsius)
            return Celsius(kind, tolerance, given, right);
        if (right != 0 && Near(-given, right))
            return "The size is right, the sign is not: think which way it goes.";
        return Ratios(kind.Style, Near, given, right)
            ?? Decade(kind.Style, tolerance.SpeaksDecibels, Near, given, right)
            ?? Factor(kind, Near, given, right)
            ?? Size(given, right);
    }

    private static string Celsius(QuantityKind kind, Tolerance tolerance, double given, double right)
    {
        if (tolerance.Holds(kind, given - Constants.ZeroCelsius, right) || tolerance.Holds(kind, given + Constants.ZeroCelsius, right))
            return "Kelvins and degrees Celsius are mixed up: they are 273.15 apart.";
        return given > right ? "Not yet: that is too hot." : "Not yet: that is too cold.";
    }

    private static string? Ratios(FormatStyle style, Func<double, double, bool> near, double given, double right)
    {
        if (style is not (FormatStyle.Gain or FormatStyle.Fraction or FormatStyle.Number) || given <= 0 || right <= 0)
            return null;
        if (style == FormatStyle.Gain)
        {
            if (near(20 * Math.Log10(given), right))
                return "That reads the ratio itself as decibels: a plain ratio is written with .ratio.";
            if (near(given, 20 * Math.Log10(right)) || near(Math.Pow(10, given / 20), right))
                return "That is the number of decibels given as a plain ratio: write .dB after it.";
        }

        if (near(given * given, right) || near(Math.Sqrt(given), right))
        {
            return style == FormatStyle.Gain
                ? "Ratios of voltages and of powers are mixed up: 20·log₁₀ for voltages, 10·log₁₀ for powers."
                : "A square too many or too few: power goes with the square of the voltage.";
        }

        return null;
    }

    private static string? Decade(FormatStyle style, bool decibels, Func<double, double, bool> near, double given, double right)
    {
        for (var power = 1; power <= 12; power++)
        {
            var factor = Math.Pow(10, power);
            if (!near(given / factor, right) && !near(given * factor, right))
                continue;
            var way = near(given / factor, right) ? "large" : "small";
            return power switch
            {
                _ when decibels => FormattableString.Invariant($"That is {20 * power} dB too {way}: a factor of ten in voltage is 20 dB, in power 10 dB."),
                2 when style is FormatStyle.Fraction or FormatStyle.Number => $"The digits are right; it is a hundred times too {way}: percent and a plain fraction are mixed up.",
                _ when power % 3 == 0 => $"The digits are right; it is {Times(power)} times too {way}: look at the prefixes (µ, m, k).",
                _ => $"The digits are right; it is {Times(power)} times too {way}: look at the powers of ten.",
            };
        }

        return null;
    }

    private static string Times(int power) => power switch
    {
        1 => "ten",
        2 => "a hundred",
        3 => "a thousand",
        6 => "a million",
        _ => $"10 to the power of {power}",
    };

    private static string? Factor(QuantityKind kind, Func<double, double, bool> near, double given, double right)
    {
        var swings = kind.Type == typeof(ElectricPotential) || kind.Type == typeof(ElectricCurrent);
        foreach (var (factor, about, _) in Factors.Where(f => swings || !f.Swings))
        {
            if (near(given / factor, right))
                return $"That is too large by {about}";
            if (near(given * factor, right))
                return $"That is too small by {about}";
        }

        return null;
    }

    private static readonly (double Factor, string About, bool Swings)[] Factors =
    [
        (Math.Sqrt(2), "√2: rms and peak are mixed up.", true),
        (2 * Math.Sqrt(2), "2√2: rms and peak to peak are mixed up.", true),
        (2, "a factor of two: one or both, there and back, peak or peak to peak?", false),
        (2 * Math.PI, "2π: a frequency and its angular frequency are mixed up.", false),
        (Math.PI, "π: look for a mean or a bandwidth of which π is part.", false),
    ];

    private static string Size(double given, double right)
    {
        if (right != 0 && given * right < 0)
            return "Not yet: the sign is the other one, and the size is another too.";
        return Math.Abs(given) > Math.Abs(right) ? "Not yet: that is too large." : "Not yet: that is too small.";
    }
}
