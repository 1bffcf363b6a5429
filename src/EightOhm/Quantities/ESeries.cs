using System.Globalization;

namespace EightOhm.Quantities;

/// <summary>A series of preferred values, from which resistors and capacitors are bought (IEC 60063:2015, E3 to E192).</summary>
/// <example><code>ESeries.E96.Nearest(4.83.kOhm)             // 4.87 kΩ
/// ESeries.E12.AtLeast(430.uF)                // 470 µF
/// ESeries.E6.Between(1.kOhm, 10.kOhm)        // 1 kΩ, 1.5 kΩ, 2.2 kΩ, 3.3 kΩ, 4.7 kΩ, 6.8 kΩ, 10 kΩ</code></example>
public sealed class ESeries
{
    // E24 and below keep their historical values; E192 is the rounded geometric series, with 9.20 for 9.19.
    private static readonly double[] Of24 = [1.0, 1.1, 1.2, 1.3, 1.5, 1.6, 1.8, 2.0, 2.2, 2.4, 2.7, 3.0, 3.3, 3.6, 3.9, 4.3, 4.7, 5.1, 5.6, 6.2, 6.8, 7.5, 8.2, 9.1];
    private static readonly double[] Of192 = [.. Enumerable.Range(0, 192).Select(i => i == 185 ? 9.20 : Math.Round(Math.Pow(10, i / 192.0), 2))];

    internal ESeries(int perDecade)
    {
        var fine = perDecade > 24 ? Of192 : Of24;
        Values = [.. fine.Where((_, i) => i % (fine.Length / perDecade) == 0)];
    }

    /// <summary>3 values a decade (over ±20 %).</summary>
    public static ESeries E3 { get; } = new(3);

    /// <summary>6 values a decade (±20 %).</summary>
    public static ESeries E6 { get; } = new(6);

    /// <summary>12 values a decade (±10 %).</summary>
    public static ESeries E12 { get; } = new(12);

    /// <summary>24 values a decade (±5 %).</summary>
    public static ESeries E24 { get; } = new(24);

    /// <summary>48 values a decade (±2 %).</summary>
    public static ESeries E48 { get; } = new(48);

    /// <summary>96 values a decade (±1 %).</summary>
    public static ESeries E96 { get; } = new(96);

    /// <summary>192 values a decade (±0.5 %).</summary>
    public static ESeries E192 { get; } = new(192);

    /// <summary>The values of the decade from 1 to 10.</summary>
    public IReadOnlyList<double> Values { get; }

    /// <summary>The value of the series that is nearest by ratio.</summary>
    /// <typeparam name="T">The quantity, or a number.</typeparam>
    /// <param name="value">Greater than 0.</param>
    /// <returns>The preferred value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not positive, or beyond what a part can be.</exception>
    public T Nearest<T>(T value)
        where T : struct => Around(value, (near, number) => near.MinBy(v => Math.Abs(Math.Log(v / number))));

    /// <summary>The least value of the series that is not below.</summary>
    /// <typeparam name="T">The quantity, or a number.</typeparam>
    /// <param name="value">Greater than 0.</param>
    /// <returns>The preferred value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not positive, or beyond what a part can be.</exception>
    public T AtLeast<T>(T value)
        where T : struct => Around(value, (near, number) => near.First(v => v >= number * (1 - 1e-9)));

    /// <summary>The greatest value of the series that is not above.</summary>
    /// <typeparam name="T">The quantity, or a number.</typeparam>
    /// <param name="value">Greater than 0.</param>
    /// <returns>The preferred value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not positive, or beyond what a part can be.</exception>
    public T AtMost<T>(T value)
        where T : struct => Around(value, (near, number) => near.Last(v => v <= number * (1 + 1e-9)));

    /// <summary>The values of the series within a range, the ends included where they are of it.</summary>
    /// <typeparam name="T">The quantity, or a number.</typeparam>
    /// <param name="from">Greater than 0.</param>
    /// <param name="to">Not below the first.</param>
    /// <returns>The values, rising.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An end is not positive or beyond what a part can be, or they are not in order.</exception>
    public T[] Between<T>(T from, T to)
        where T : struct
    {
        var kind = QuantityKinds.Of(typeof(T));
        double low = Number(kind, from, nameof(from)), high = Number(kind, to, nameof(to));
        if (high < low)
            throw new ArgumentOutOfRangeException(nameof(to), $"The last value must not be below the first (were {QuantityFormat.Short(from)} and {QuantityFormat.Short(to)}).");
        int first = (int)Math.Floor(Math.Log10(low)) - 1, last = (int)Math.Floor(Math.Log10(high)) + 1;
        return [.. Decades(first, last - first + 1).Where(v => v >= low * (1 - 1e-9) && v <= high * (1 + 1e-9)).Select(v => (T)kind.FromSi(v))];
    }

    // The decade of a value, and its neighbours for the edges.
    private T Around<T>(T value, Func<IEnumerable<double>, double, double> pick)
        where T : struct
    {
        var kind = QuantityKinds.Of(typeof(T));
        var number = Number(kind, value, nameof(value));
        return (T)kind.FromSi(pick(Decades((int)Math.Floor(Math.Log10(number)) - 1, 3), number));
    }

    private IEnumerable<double> Decades(int first, int count) =>
        Enumerable.Range(first, count).SelectMany(d => Values.Select(s => double.Parse($"{s.ToString("R", CultureInfo.InvariantCulture)}E{d}", CultureInfo.InvariantCulture)));

    private static double Number<T>(QuantityKind kind, T value, string name)
        where T : struct
    {
        if (kind.Style is FormatStyle.Celsius or FormatStyle.Level or FormatStyle.Angle || kind.Type == typeof(int))
            throw new ArgumentOutOfRangeException(name, $"A value of {kind.Name} has no preferred values: they are for resistors, capacitors and inductors.");
        if (!(kind.ToSi(value) is >= 1e-18 and <= 1e18))
            Guard.Refuse(name, value, $"from 10⁻¹⁸ to 10¹⁸ {kind.Symbol}".TrimEnd());
        return kind.ToSi(value);
    }
}
