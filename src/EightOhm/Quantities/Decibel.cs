namespace EightOhm.Quantities;

/// <summary>Decibels of a ratio and back, for the levels.</summary>
internal static class Decibel
{
    /// <summary>The volts of 0 dBu: 1 mW in 600 Ω.</summary>
    public static readonly double RootPointSix = Math.Sqrt(0.6);

    /// <summary>Decibels of a positive ratio; 20 of voltages, 10 of powers. The last digits of a logarithm are no level: 0 dB of the reference is 0.</summary>
    public static double Of(double ratio, int times) => Math.Round(times * Math.Log10(ratio), 12);

    /// <summary>The ratio of decibels, within what the quantity holds.</summary>
    public static double Ratio(double decibels, int times, double most) => Math.Pow(10, Guard.Between(decibels, -most, most, "the level, in decibels,") / times);
}
