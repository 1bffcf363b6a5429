namespace EightOhm.Quantities;

/// <summary>Sum and mean of quantities; the least and the greatest are <c>Min()</c> and <c>Max()</c> as of any sequence.</summary>
public static class QuantityLists
{
    /// <summary>The sum of quantities.</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="values">The values; none sum to zero.</param>
    /// <returns>Their sum, in the SI unit.</returns>
    /// <exception cref="InvalidOperationException">They are temperatures, gains or levels, which do not add.</exception>
    /// <example><code>new[] { 1.1.W, 0.4.W }.Sum()   // 1.5 W</code></example>
    public static T Sum<T>(this IEnumerable<T> values)
        where T : struct
    {
        ArgumentNullException.ThrowIfNull(values);
        var kind = QuantityKinds.Of(typeof(T));
        if (Alone(kind) is { } why)
            throw new InvalidOperationException(why);
        // Not by Sum: within this namespace that name is this method.
        return (T)kind.FromSi(values.Aggregate(0.0, (sum, value) => sum + kind.ToSi(value)));
    }

    /// <summary>The sum of one quantity of each item.</summary>
    /// <typeparam name="TItem">The items.</typeparam>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="items">The items; none sum to zero.</param>
    /// <param name="of">The quantity of an item.</param>
    /// <returns>The sum, in the SI unit.</returns>
    /// <exception cref="InvalidOperationException">They are temperatures, gains or levels, which do not add.</exception>
    public static T Sum<TItem, T>(this IEnumerable<TItem> items, Func<TItem, T> of)
        where T : struct => items.Select(of).Sum<T>();

    /// <summary>The arithmetic mean of quantities; of temperatures the mean temperature.</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="values">The values; one or more.</param>
    /// <returns>Their mean, in the SI unit.</returns>
    /// <exception cref="InvalidOperationException">There is no value, or they are gains or levels, of which there are several means.</exception>
    /// <example><code>new[] { 20.degC, 30.degC }.Mean()   // 25 °C</code></example>
    public static T Mean<T>(this IEnumerable<T> values)
        where T : struct
    {
        ArgumentNullException.ThrowIfNull(values);
        var kind = QuantityKinds.Of(typeof(T));
        if (kind.Style != FormatStyle.Celsius && Alone(kind) is { } why)
            throw new InvalidOperationException(why);
        var (sum, count) = (0.0, 0);
        foreach (var value in values)
            (sum, count) = (sum + kind.ToSi(value), count + 1);
        return count > 0 ? (T)kind.FromSi(sum / count) : throw new InvalidOperationException($"There is no mean of no values of {kind.Name}: the list is empty.");
    }

    /// <summary>The arithmetic mean of one quantity of each item.</summary>
    /// <typeparam name="TItem">The items.</typeparam>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="items">The items; one or more.</param>
    /// <param name="of">The quantity of an item.</param>
    /// <returns>The mean, in the SI unit.</returns>
    /// <exception cref="InvalidOperationException">There is no item, or they are gains or levels, of which there are several means.</exception>
    public static T Mean<TItem, T>(this IEnumerable<TItem> items, Func<TItem, T> of)
        where T : struct => items.Select(of).Mean<T>();

    private static string? Alone(QuantityKind kind) => kind.Style switch
    {
        FormatStyle.Celsius => "Temperatures do not add: sum their rises (TemperatureDelta), or take the Mean().",
        FormatStyle.Gain => "Gains do not add: in cascade they multiply, a * b. For a sum or mean of ratios sum gain.Ratio.",
        FormatStyle.Level => "Levels do not add: sum or average what is behind them, .Voltage or .Power.",
        _ => null,
    };
}
