using System.Globalization;
using EightOhm.Quantities;
using EightOhm.Record;

namespace EightOhm.Cli.Live.Inputs;

/// <summary>What is asked of an input itself: "slew rate, six times the need" ends its slider at the need.</summary>
/// <param name="Least">The least that is asked, in the kind's unit; null where nothing is.</param>
/// <param name="Most">The most.</param>
internal readonly record struct SliderEnds(double? Least, double? Most)
{
    private const int Digits = 3;

    /// <summary>The ends that requirements on one input set.</summary>
    /// <param name="asked">The requirements.</param>
    public static SliderEnds Of(IEnumerable<Requirement> asked) => new(Strictest(asked.Select(r => r.Lowest), Math.Max), Strictest(asked.Select(r => r.Highest), Math.Min));

    /// <summary>An end as a person would say it: in three digits.</summary>
    public static double Said(double end) => double.Parse(end.ToString(FormattableString.Invariant($"G{Digits}"), CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    /// <summary>A range with these ends where they lie within it. A value outside what is asked stays on the slider, and so does the way back.</summary>
    /// <param name="low">The low end otherwise.</param>
    /// <param name="high">The high end otherwise.</param>
    /// <param name="saved">The value as it is saved.</param>
    public (double Low, double High) Within(double low, double high, double saved)
    {
        if (Least is { } least && least > low)
            (low, high) = saved >= least ? (Inside(least, Math.Ceiling, saved), high) : (low, Math.Max(high, least + (high - saved)));
        if (Most is { } most && most < high)
            (low, high) = saved <= most ? (low, Inside(most, Math.Floor, saved)) : (Math.Min(low, most - (saved - low)), high);
        return (low, high);
    }

    private static double? Strictest(IEnumerable<object?> limits, Func<double, double, double> stricter) =>
        limits.OfType<object>().Select(l => l is int count ? count : QuantityKinds.Of(l.GetType()).ToSi(l)).Where(double.IsFinite).Select(v => (double?)v).DefaultIfEmpty(null).Aggregate((a, b) => stricter(a!.Value, b!.Value));

    // Three digits on the allowed side, unless that would pass the value itself.
    private static double Inside(double limit, Func<double, double> round, double saved)
    {
        if (limit == 0)
            return 0;
        var step = Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(limit))) - Digits + 1);
        var rounded = Said(round(limit / step) * step);
        return (rounded - limit) * (rounded - saved) > 0 ? limit : rounded;
    }
}
