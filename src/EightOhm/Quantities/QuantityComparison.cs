using UnitsNet;

namespace EightOhm.Quantities;

/// <summary>Whether two values are the same within a tolerance, whatever units they were made in.</summary>
public static class QuantityComparison
{
    /// <summary>Whether a value is within a share of another.</summary>
    /// <remarks>Of two fractions the tolerance is a share as well: 1 % of 10 ppm. Around zero nothing is within a share but zero.</remarks>
    /// <typeparam name="T">The quantity, or a number.</typeparam>
    /// <param name="value">The value.</param>
    /// <param name="tolerance">The greatest difference as a share of <paramref name="of"/>, the bound included; 0 or more.</param>
    /// <param name="of">The value to be met.</param>
    /// <returns>Whether it is.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is negative, or the values are temperatures or levels, which have no share: give kelvins or decibels.</exception>
    /// <example><code>28.1.V.IsWithin(1.percent, of: 28.28.V)   // true</code></example>
    public static bool IsWithin<T>(this T value, Ratio tolerance, T of)
        where T : struct
    {
        Guard.NotNegative(tolerance);
        var kind = QuantityKinds.Of(typeof(T));
        if (kind.Style is FormatStyle.Celsius or FormatStyle.Level)
            throw new ArgumentOutOfRangeException(nameof(tolerance), $"A share of {QuantityFormat.Short(of)} means nothing: give the tolerance in {(kind.Style == FormatStyle.Celsius ? "kelvins, x.IsWithin(1.K, of: y)" : "decibels, x.IsWithin(0.5.dB, of: y)")}.");
        return Near(kind.ToSi(value), kind.ToSi(of), tolerance.DecimalFractions * Math.Abs(kind.ToSi(of)));
    }

    /// <summary>Whether a value is within a difference of another.</summary>
    /// <typeparam name="T">The quantity, or a number.</typeparam>
    /// <param name="value">The value.</param>
    /// <param name="tolerance">The greatest difference, the bound included; 0 or more.</param>
    /// <param name="of">The value to be met.</param>
    /// <returns>Whether it is.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is negative, or an absolute temperature or a level: give kelvins or decibels.</exception>
    /// <example><code>650.mV.IsWithin(20.mV, of: 640.mV)   // true</code></example>
    public static bool IsWithin<T>(this T value, T tolerance, T of)
        where T : struct
    {
        var kind = QuantityKinds.Of(typeof(T));
        if (kind.Style is FormatStyle.Celsius or FormatStyle.Level)
            throw new ArgumentOutOfRangeException(nameof(tolerance), $"{QuantityFormat.Short(tolerance)} is no difference: give the tolerance in {(kind.Style == FormatStyle.Celsius ? "kelvins, 1.K" : "decibels, 0.5.dB")}.");
        if (!(kind.ToSi(tolerance) >= 0))
            Guard.Refuse(nameof(tolerance), tolerance, $"{QuantityFormat.Short(kind.FromSi(0))} or more");
        return Near(kind.ToSi(value), kind.ToSi(of), kind.ToSi(tolerance));
    }

    /// <summary>Whether a temperature is within so many kelvins of another.</summary>
    /// <param name="value">The temperature.</param>
    /// <param name="tolerance">The greatest difference, the bound included; 0 K or more.</param>
    /// <param name="of">The temperature to be met.</param>
    /// <returns>Whether it is.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is negative.</exception>
    public static bool IsWithin(this Temperature value, TemperatureDelta tolerance, Temperature of) =>
        Near(value.Kelvins, of.Kelvins, Guard.NotNegative(tolerance).Kelvins);

    /// <summary>Whether a level is within so many decibels of another of the same reference.</summary>
    /// <typeparam name="T">The level.</typeparam>
    /// <param name="value">The level.</param>
    /// <param name="tolerance">The greatest difference, the bound included; 0 dB or more.</param>
    /// <param name="of">The level to be met.</param>
    /// <returns>Whether it is.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is below 0 dB.</exception>
    public static bool IsWithin<T>(this T value, Gain tolerance, T of)
        where T : struct, ILevel<T> =>
        Near(value.Decibels, of.Decibels, Guard.AtLeast(tolerance, Gain.FromRatio(1)).Decibels);

    // The bound itself is within, though 1.1 − 1 is a hair more than 0.1 in binary.
    private static bool Near(double a, double b, double by) => Math.Abs(a - b) <= by + (4 * double.Epsilon) + (4e-16 * Math.Max(Math.Abs(a), Math.Abs(b)));
}
