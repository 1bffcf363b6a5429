using System.Globalization;
using EightOhm.Quantities;
using EightOhm.Record;

namespace EightOhm.Cli.Live.Inputs;

/// <summary>What is asked of an input itself: "slew rate, six times the need" ends its slider at the need.</summary>
/// <param name="Least">The least that is asked, in the kind's unit; null where nothing is.</param>
/// <param name="Most">The most.</param>
internal readonly record struct SliderEnds(double? Least, double? Most)
{
    // An end reads as a person would say it.
    private const int Digits = 3;

    /// <summary>The ends of all inputs of which something is asked, by name.</summary>
    /// <param name="record">The record as it is saved: an end does not run away under the hand.</param>
    public static IReadOnlyDictionary<string, SliderEnds> AllOf(DesignRecord? record) =>
        (record?.Compliance() ?? []).Where(r => r.Entry is not null).GroupBy(r => r.Entry!, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => new SliderEnds(Strictest(g.Select(r => r.Lowest), (a, b) => Math.Max(a, b)), Strictest(g.Select(r => r.Highest), (a, b) => Math.Min(a, b))), StringComparer.Ordinal);

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
        var rounded = double.Parse((round(limit / step) * step).ToString(FormattableString.Invariant($"G{Digits}"), CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return (rounded - limit) * (rounded - saved) > 0 ? limit : rounded;
    }
}
