namespace EightOhm.Display.Figures;

/// <summary>Finds the ends of an axis and its ticks.</summary>
internal static class RulerMaker
{
    /// <summary>A ruler for an axis whose data reach from <paramref name="low"/> to <paramref name="high"/>.</summary>
    /// <param name="axis">The axis.</param>
    /// <param name="low">The least value that must be seen.</param>
    /// <param name="high">The largest value that must be seen.</param>
    /// <param name="roundOut">Whether free ends move out to a round number.</param>
    public static Ruler Make(Axis axis, double low, double high, bool roundOut)
    {
        if (axis.Scale == AxisScale.Log && (axis.Min ?? 1) <= 0)
            throw new ArgumentException($"The logarithmic axis \"{axis.Label}\" must begin above 0 {axis.Unit} (was {EngineeringTick.Reading(axis.Min!.Value, axis.Unit)}).");
        if (axis is { Min: { } from, Max: { } to } && from >= to)
            throw new ArgumentException($"The axis \"{axis.Label}\" must end above its beginning ({EngineeringTick.Reading(from, axis.Unit)}), but ends at {EngineeringTick.Reading(to, axis.Unit)}.");
        (low, high) = (axis.Min ?? low, axis.Max ?? high);
        return axis.Scale == AxisScale.Log ? MakeLog(axis, low, high, roundOut) : MakeLinear(axis, low, high, roundOut);
    }

    /// <summary>A ruler whose ticks are names: the bars' labels, at 0, 1, 2 …</summary>
    public static Ruler Names(IReadOnlyList<string> names) =>
        new(AxisScale.Linear, -0.5, names.Count - 0.5, [.. names.Select((name, i) => new Tick(i, name))], []);

    private static Ruler MakeLinear(Axis axis, double low, double high, bool roundOut)
    {
        if (high - low <= 1e-12 * Math.Max(Math.Abs(low), Math.Abs(high)) || high == low)
        {
            var room = low == 0 ? 1 : Math.Abs(low) / 2;
            low = axis.Min ?? Math.Min(low, high) - room;
            high = axis.Max ?? Math.Max(low, high) + room;
        }
        var step = NiceStep((high - low) / 6);
        if (roundOut)
        {
            low = axis.Min ?? Math.Floor(low / step + 1e-9) * step;
            high = axis.Max ?? Math.Ceiling(high / step - 1e-9) * step;
        }
        var largest = Math.Max(Math.Abs(low), Math.Abs(high));
        return new(AxisScale.Linear, low, high, [.. Steps(low, high, step).Select(v => new Tick(v, EngineeringTick.Text(v, axis.Unit, step, largest)))], []);
    }

    private static Ruler MakeLog(Axis axis, double low, double high, bool roundOut)
    {
        if (Math.Log10(high / low) < 1e-9)
        {
            low = axis.Min ?? low / Math.Sqrt(10);
            high = axis.Max ?? Math.Max(low, high) * Math.Sqrt(10);
        }
        if (roundOut)
        {
            low = axis.Min ?? Multiples(low / 10, low, 1, 2, 5).Last();
            high = axis.Max ?? Multiples(high, high * 10, 1, 2, 5).First();
        }
        var decades = Math.Log10(high / low);
        double[] ticks = decades <= 2.5 ? [.. Multiples(low, high, 1, 2, 5)] : [.. Multiples(low, high, 1)];
        if (ticks.Length < 3) ticks = [.. Steps(low, high, NiceStep((high - low) / 4))];
        var every = 1 + (int)(decades / 8);
        double[] minor = decades <= 3 ? [.. Multiples(low, high, 2, 3, 4, 5, 6, 7, 8, 9)] : decades <= 6 ? [.. Multiples(low, high, 2, 5)] : [];
        return new(AxisScale.Log, low, high,
            [.. ticks.Where((_, i) => i % every == 0).Select(v => new Tick(v, EngineeringTick.Text(v, axis.Unit)))],
            [.. minor.Except(ticks)]);
    }

    /// <summary>1, 2 or 5 times a power of ten, at least <paramref name="rough"/>.</summary>
    public static double NiceStep(double rough)
    {
        var decade = Power(Math.Floor(Math.Log10(rough)));
        var factor = rough / decade;
        return decade * (factor <= 1 + 1e-9 ? 1 : factor <= 2 + 1e-9 ? 2 : factor <= 5 + 1e-9 ? 5 : 10);
    }

    private static IEnumerable<double> Steps(double low, double high, double step)
    {
        for (var k = Math.Ceiling(low / step - 1e-9); k <= high / step + 1e-9; k++)
            yield return k == 0 ? 0 : k * step;
    }

    private static IEnumerable<double> Multiples(double low, double high, params int[] factors)
    {
        for (var power = Math.Floor(Math.Log10(low) - 1e-9); power <= Math.Log10(high) + 1e-9; power++)
            foreach (var factor in factors)
                if (factor * Power(power) is var value && value >= low * (1 - 1e-9) && value <= high * (1 + 1e-9))
                    yield return value;
    }

    // 10^-3 by division is the double nearest to 0.001; Math.Pow's is not always.
    private static double Power(double exponent) => exponent < 0 ? 1 / Math.Pow(10, -exponent) : Math.Pow(10, exponent);
}
