namespace EightOhm.Quantities;

/// <summary>Values along a range, quantities or numbers: for the lines of a figure, for a table, for a loop.</summary>
public static class Sweep
{
    private const int Most = 1_000_000;

    /// <summary>Values in equal ratios, both ends included.</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="from">The first; greater than 0.</param>
    /// <param name="to">The last; greater than the first.</param>
    /// <param name="perDecade">About how many values a factor of ten has; from 1 to 10 000.</param>
    /// <returns>The values, rising.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An end is not finite or not positive, the ends are not in order, or there are too few or too many values.</exception>
    /// <exception cref="ArgumentException">The quantity is a temperature, a level or an angle, which is not swept in ratios.</exception>
    /// <example><code>Sweep.Log(20.Hz, 20.kHz)            // 61 frequencies
    /// Sweep.Log(10.mA, 1.A, perDecade: 5) // 11 currents</code></example>
    public static T[] Log<T>(T from, T to, int perDecade = 20)
        where T : struct
    {
        var kind = QuantityKinds.Of(typeof(T));
        if (kind.Style is FormatStyle.Celsius or FormatStyle.Level or FormatStyle.Angle)
            throw new ArgumentException($"A {kind.Name} is not swept in ratios: use Sweep.Linear.", nameof(from));
        return Ends(Log(kind.ToSi(from), kind.ToSi(to), perDecade), kind, from, to);
    }

    /// <summary>Numbers in equal ratios, both ends included.</summary>
    /// <param name="from">The first; greater than 0.</param>
    /// <param name="to">The last; greater than the first.</param>
    /// <param name="perDecade">About how many numbers a factor of ten has; from 1 to 10 000.</param>
    /// <returns>The numbers, rising.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An end is not finite or not positive, the ends are not in order, or there are too few or too many numbers.</exception>
    public static double[] Log(double from, double to, int perDecade = 20)
    {
        if (!(from > 0) || !double.IsFinite(from))
            throw new ArgumentOutOfRangeException(nameof(from), "A logarithmic axis begins above 0: give the first point, for example 20 for 20 Hz.");
        if (!(to > from) || !double.IsFinite(to))
            throw new ArgumentOutOfRangeException(nameof(to), "The last point must lie above the first.");
        if (perDecade is < 1 or > 10_000)
            throw new ArgumentOutOfRangeException(nameof(perDecade), "Give from 1 to 10 000 points a decade; 20 draw a smooth line.");
        var decades = Math.Log10(to / from);
        var steps = Math.Max(1, (int)Math.Round(decades * perDecade));
        var points = new double[steps + 1];
        for (var i = 0; i <= steps; i++)
            points[i] = from * Math.Pow(10, decades * i / steps);
        points[^1] = to;
        return points;
    }

    /// <summary>Numbers in equal ratios, both ends included.</summary>
    /// <param name="from">The first; greater than 0.</param>
    /// <param name="to">The last; greater than the first.</param>
    /// <param name="perDecade">About how many numbers a factor of ten has; from 1 to 10 000.</param>
    /// <returns>The numbers, rising.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The first is not positive, the ends are not in order, or there are too few or too many numbers.</exception>
    public static double[] Log(int from, int to, int perDecade = 20) => Log((double)from, to, perDecade);

    /// <summary>Values in equal steps, both ends included.</summary>
    /// <typeparam name="T">The quantity, or a number.</typeparam>
    /// <param name="from">The first.</param>
    /// <param name="to">The last; not the first. It may be less: the values then fall.</param>
    /// <param name="points">How many, from 2 to a million.</param>
    /// <returns>The values in order.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ends are the same, or there are too few or too many values.</exception>
    /// <example><code>Sweep.Linear(0.V, 40.V, 5)   // 0 V, 10 V, 20 V, 30 V, 40 V</code></example>
    public static T[] Linear<T>(T from, T to, int points = 101)
        where T : struct
    {
        var kind = QuantityKinds.Of(typeof(T));
        Guard.Between(points, 2, Most);
        double a = kind.ToSi(from), b = kind.ToSi(to);
        if (a == b || !double.IsFinite(b - a))
            throw new ArgumentOutOfRangeException(nameof(to), $"The last value must be another than the first, {QuantityFormat.Short(from)}, and both finite.");
        return Ends([.. Enumerable.Range(0, points).Select(i => a + ((b - a) * i / (points - 1)))], kind, from, to);
    }

    /// <summary>Values a step apart, from the first up to the last or as near as the step comes.</summary>
    /// <typeparam name="T">The quantity, or a number; not a temperature.</typeparam>
    /// <param name="from">The first.</param>
    /// <param name="to">Not passed; not below the first.</param>
    /// <param name="by">The step; greater than 0.</param>
    /// <returns>The values, rising.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The step is not positive, the ends are not in order, or there are more than a million values.</exception>
    /// <example><code>Sweep.Step(5.W, 20.W, by: 5.W)   // 5 W, 10 W, 15 W, 20 W</code></example>
    public static T[] Step<T>(T from, T to, T by)
        where T : struct
    {
        var kind = QuantityKinds.Of(typeof(T));
        if (kind.Style == FormatStyle.Celsius)
            throw new ArgumentOutOfRangeException(nameof(by), $"{QuantityFormat.Short(by)} is no step: use Sweep.Linear with a number of points.");
        double a = kind.ToSi(from), b = kind.ToSi(to), step = kind.ToSi(by);
        if (!(step > 0) || !(b >= a) || !((b - a) / step < Most))
            throw new ArgumentOutOfRangeException(nameof(by), $"From {QuantityFormat.Short(from)} to {QuantityFormat.Short(to)} needs a step above {QuantityFormat.Short(kind.FromSi(0))} with at most a million values, and a last value not below the first (the step was {QuantityFormat.Short(by)}).");
        // The last step counts though 0.1 three times is a hair less than 0.3.
        return [.. Enumerable.Range(0, (int)(((b - a) / step) + 1e-9) + 1).Select(i => (T)kind.FromSi(Math.Min(b, a + (i * step))))];
    }

    /// <summary>The powers of ten within a range: 10 Hz, 100 Hz, 1 kHz.</summary>
    /// <typeparam name="T">The quantity, or a number.</typeparam>
    /// <param name="from">Greater than 0.</param>
    /// <param name="to">Not below the first.</param>
    /// <returns>The values, rising; none where no power of ten lies between.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An end is not positive, or they are not in order.</exception>
    /// <example><code>Sweep.Decades(20.Hz, 20.kHz)   // 100 Hz, 1 kHz, 10 kHz</code></example>
    public static T[] Decades<T>(T from, T to)
        where T : struct => new ESeries(1).Between(from, to);

    // The ends themselves, not what a logarithm and back makes of them.
    private static T[] Ends<T>(double[] numbers, QuantityKind kind, T from, T to)
        where T : struct
    {
        T[] values = [.. numbers.Select(n => (T)kind.FromSi(n))];
        (values[0], values[^1]) = (from, to);
        return values;
    }
}
