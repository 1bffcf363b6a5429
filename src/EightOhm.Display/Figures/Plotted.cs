using EightOhm.Quantities;

namespace EightOhm.Display.Figures;

/// <summary>How a kind of quantity stands on an axis: in which unit, and as which number.</summary>
/// <remarks>A gain stands in decibels and a ratio in percent, as the trade reads them; everything else in the unit in which its kind is spoken.</remarks>
internal static class Plotted
{
    /// <summary>The unit at the ticks.</summary>
    public static string Unit<T>()
        where T : struct
    {
        var kind = QuantityKinds.Of(typeof(T));
        return kind.Style switch
        {
            FormatStyle.Gain => "dB",
            FormatStyle.Fraction => "%",
            _ => kind.Spoken?.Symbol ?? kind.Symbol,
        };
    }

    /// <summary>From a value to its number on the axis.</summary>
    public static Func<T, double> Number<T>()
        where T : struct
    {
        var kind = QuantityKinds.Of(typeof(T));
        var per = kind.Spoken?.Factor ?? 1;
        return kind.Style switch
        {
            FormatStyle.Gain => value => 20 * Math.Log10(Math.Abs(kind.ToSi(value))),
            FormatStyle.Fraction => value => 100 * kind.ToSi(value),
            _ => value => kind.ToSi(value) / per,
        };
    }

    /// <summary>The value as the axis would say it.</summary>
    public static string Text<T>(T value)
        where T : struct => EngineeringTick.Reading(Number<T>()(value), Unit<T>());

    /// <summary>Whether the values follow each other in equal ratios, so that a logarithmic axis shows them evenly.</summary>
    public static bool InEqualRatios(IReadOnlyList<double> values)
    {
        const double slack = 1e-6, leastSpan = 2;
        if (values.Count < 3 || values[0] <= 0 || values[^1] < leastSpan * values[0]) return false;
        var ratio = values[1] / values[0];
        return values.Zip(values.Skip(1)).All(pair => Math.Abs(pair.Second / pair.First / ratio - 1) < slack);
    }
}
