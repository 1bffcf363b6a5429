namespace EightOhm.Sizing;

/// <summary>Values rounded as they are bought: to so many digits, one way.</summary>
internal static class PreferredValues
{
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

    // 2.2·10⁻¹ is 0.22000000000000003 in binary.
    private static double Clean(double value) => double.Parse(value.ToString("G6", System.Globalization.CultureInfo.InvariantCulture), System.Globalization.CultureInfo.InvariantCulture);
}
