using EightOhm.Quantities;
using EightOhm.Record;

namespace EightOhm.Cli.Live.Inputs;

/// <summary>Gives each input a slider that suits it: preferred values for what is bought, round ones for what is asked, the cards at hand for a part, and else a decade about the value.</summary>
/// <param name="cards">The cards beside the record.</param>
internal sealed class Sliders(CardFiles cards)
{
    // A power or a load is spoken of in round numbers.
    private static readonly double[] Round = [1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8];

    private static readonly HashSet<Type> Bought = [typeof(UnitsNet.ElectricResistance), typeof(UnitsNet.ElectricInductance), typeof(UnitsNet.ElectricCapacitance)];

    // Half of a decade either way.
    private static readonly double HalfDecade = Math.Sqrt(10);

    /// <summary>The slider of an input; null where there is nothing to slide between.</summary>
    /// <param name="entry">The input as it stands.</param>
    /// <param name="kept">The inputs as they are saved, from which the ends are: a slider does not run away under the hand.</param>
    public Slider? Of(Entry entry, KeptInputs kept)
    {
        var (saved, asked) = (kept.EntryOf(entry.Name), kept.EndsOf(entry.Name));
        return entry.Value switch
        {
            PartFile part => OfPart(part),
            int count => OfCount(count, saved?.Value is int before ? before : count, asked),
            { } value when entry.Kind is { } kind => OfQuantity(entry.Role, kind, kind.ToSi(value), saved?.Value is { } before && saved.Kind == kind ? kind.ToSi(before) : kind.ToSi(value), asked),
            _ => null,
        };
    }

    private SliderOfValues? OfPart(PartFile part)
    {
        var files = cards.Of(part.Kind).Append(part.File).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();
        return files.Count > 1 ? new(files, files.IndexOf(part.File)) : null;
    }

    private static SliderOfValues OfCount(int count, int saved, SliderEnds asked)
    {
        // A value typed as large as a number can be needs no slider of that length.
        var (low, high) = asked.Within(Math.Min(1, saved), Math.Max(10, 2 * Math.Abs(Math.Clamp(saved, -100, 100))), saved);
        var (first, last) = ((int)Math.Ceiling(low), (int)Math.Clamp(Math.Floor(high), int.MinValue, int.MaxValue - 1));
        var values = Enumerable.Range(first, Math.Clamp(last + 1 - first, 1, 1000)).Append(count).Distinct().Order().ToList();
        return new([.. values.Select(v => v.ToString(System.Globalization.CultureInfo.InvariantCulture))], values.IndexOf(count));
    }

    private static Slider? OfQuantity(EntryRole role, QuantityKind kind, double now, double saved, SliderEnds asked)
    {
        if (!double.IsFinite(now) || !double.IsFinite(saved))
            return null;
        if (Fixed(kind, saved) is { } ends)
            return Straight(ends.Least, ends.Most);
        if (saved == 0)
            return null;
        if (saved < 0)
            return Straight(SliderEnds.Said(saved * HalfDecade), SliderEnds.Said(saved / HalfDecade));
        if (now <= 0)
            return Straight(0, SliderEnds.Said(saved * HalfDecade));
        // Decibels are said by the slider itself.
        Func<double, double> said = InputText.IsInDecibels(kind, saved) ? end => end : SliderEnds.Said;
        var (low, high) = asked.Within(said(saved / HalfDecade), said(saved * HalfDecade), saved);
        return Series(role, kind, saved, low, high) is { Count: > 1 } values
            ? OfSeries(kind, values, now)
            : Range(kind, low, high, low > 0, now);

        Slider Straight(double least, double most)
        {
            var (from, to) = asked.Within(least, most, saved);
            return Range(kind, from, to, false, now);
        }
    }

    // What was typed may lie beyond: the slider shows it all the same.
    private static SliderOfRange Range(QuantityKind kind, double least, double most, bool inRatios, double now) =>
        new(kind, Math.Min(least, now), Math.Max(most, now), inRatios, now);

    // What has no ratios: a temperature, a level, a gain in dB, an angle.
    private static (double Least, double Most)? Fixed(QuantityKind kind, double saved) => kind.Style switch
    {
        FormatStyle.Celsius => (saved - 50, saved + 50),
        FormatStyle.Level => (saved - 20, saved + 20),
        FormatStyle.Angle => saved < 0 ? (-Math.Max(90, -saved), 90) : (0, Math.Max(90, saved)),
        _ => null,
    };

    private static IReadOnlyList<double>? Series(EntryRole role, QuantityKind kind, double saved, double low, double high)
    {
        if (kind.Type == typeof(UnitsNet.Power) || (kind.Type == typeof(UnitsNet.ElectricResistance) && role == EntryRole.Target))
            return [.. Decades(low, high, Round)];
        if (!Bought.Contains(kind.Type) || role == EntryRole.Target || saved is < 1e-15 or > 1e15)
            return null;
        // The coarsest series that has the value.
        var series = kind.Type == typeof(UnitsNet.ElectricResistance) ? new[] { ESeries.E24, ESeries.E96, ESeries.E192 } : [ESeries.E12, ESeries.E24];
        return [.. (series.FirstOrDefault(s => IsIn(s, saved)) ?? series[0]).Between(low, high)];
    }

    private static bool IsIn(ESeries series, double value) => Math.Abs((series.Nearest(value) / value) - 1) < 1e-9;

    private static IEnumerable<double> Decades(double low, double high, double[] steps)
    {
        for (var decade = (int)Math.Floor(Math.Log10(low)); decade <= Math.Log10(high); decade++)
        {
            foreach (var value in steps.Select(s => double.Parse(FormattableString.Invariant($"{s}E{decade}"), System.Globalization.CultureInfo.InvariantCulture)).Where(v => v >= low && v <= high))
                yield return value;
        }
    }

    private static SliderOfValues OfSeries(QuantityKind kind, IReadOnlyList<double> series, double now)
    {
        // The value in force is on it, preferred or not.
        var all = series.Where(v => Math.Abs((v / now) - 1) > 1e-9).Append(now).Order().ToList();
        return new([.. all.Select(v => InputText.Of(kind.FromSi(v), kind))], all.IndexOf(now));
    }
}
