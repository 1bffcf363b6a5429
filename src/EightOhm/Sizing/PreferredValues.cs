namespace EightOhm.Sizing;

/// <summary>The series of preferred numbers of IEC 60063, from which resistors are bought.</summary>
internal static class PreferredValues
{
    // E24 and below keep their historical values; E192 is the rounded geometric series, with 9.20 for 9.19.
    private static readonly double[] E24 = [1.0, 1.1, 1.2, 1.3, 1.5, 1.6, 1.8, 2.0, 2.2, 2.4, 2.7, 3.0, 3.3, 3.6, 3.9, 4.3, 4.7, 5.1, 5.6, 6.2, 6.8, 7.5, 8.2, 9.1];
    private static readonly double[] E12 = [.. E24.Where((_, i) => i % 2 == 0)];
    private static readonly double[] E192 = [.. Enumerable.Range(0, 192).Select(i => i == 185 ? 9.20 : Math.Round(Math.Pow(10, i / 192.0), 2))];

    /// <summary>The nearest of 12 a decade, by ratio.</summary>
    public static double NearestOf12(double value) => Nearest(E12, value);

    /// <summary>The nearest of 24 a decade, by ratio.</summary>
    public static double NearestOf24(double value) => Nearest(E24, value);

    /// <summary>The nearest of 192 a decade, by ratio.</summary>
    public static double NearestOf192(double value) => Nearest(E192, value);

    /// <summary>The greatest of 12 a decade that is not above.</summary>
    public static double AtMostOf12(double value) => Around(E12, value).Last(v => v <= value * (1 + 1e-9));

    /// <summary>The least of 12 a decade that is not below.</summary>
    public static double AtLeastOf12(double value) => Around(E12, value).First(v => v >= value * (1 - 1e-9));

    /// <summary>Rounded to so many digits, not up.</summary>
    public static double Down(double value, int digits)
    {
        var step = Math.Pow(10, Math.Floor(Math.Log10(value)) - digits + 1);
        return Clean(Math.Floor((value / step) + 1e-9) * step);
    }

    /// <summary>Rounded to so many digits, not down.</summary>
    public static double Up(double value, int digits)
    {
        var step = Math.Pow(10, Math.Floor(Math.Log10(value)) - digits + 1);
        return Clean(Math.Ceiling((value / step) - 1e-9) * step);
    }

    private static double Nearest(double[] series, double value) => Around(series, value).MinBy(v => Math.Abs(Math.Log(v / value)));

    // The decade of a value, and its neighbours for the edges.
    private static IEnumerable<double> Around(double[] series, double value)
    {
        var decade = (int)Math.Floor(Math.Log10(value));
        return Enumerable.Range(decade - 1, 3).SelectMany(d => series.Select(s => Clean(s * Math.Pow(10, d))));
    }

    // 2.2·10⁻¹ is 0.22000000000000003 in binary.
    private static double Clean(double value) => double.Parse(value.ToString("G6", System.Globalization.CultureInfo.InvariantCulture), System.Globalization.CultureInfo.InvariantCulture);
}
