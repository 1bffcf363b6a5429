namespace EightOhm.Display.Figures;

/// <summary>Both axes of a figure, settled from its data: everything that has a value is in sight unless an axis says otherwise.</summary>
internal sealed record FigureRulers(Ruler X, Ruler Y)
{
    // Data that come this near to zero are shown from zero, so that heights can be compared.
    private const double NearZero = 0.5;

    // Above the tallest bar, for its value.
    private const double BarHeadroom = 1.1;

    public static FigureRulers Of(Figure figure) => figure.IsBars ? OfBars(figure) : OfLines(figure);

    private static FigureRulers OfLines(Figure figure)
    {
        var lines = figure.Series.Cast<LineSeries>().ToArray();
        foreach (var line in lines)
        {
            AboveZero(figure.X, line.X, "series", line.Name, "x");
            AboveZero(figure.Y, line.Y, "series", line.Name, "y");
        }
        foreach (var line in lines.Where(l => l.FilledTo is not null))
            AboveZero(figure.Y, line.FilledTo!, "series", line.Name, "lower edge");
        foreach (var span in figure.Spans)
        {
            AboveZero(figure.X, [span.FromX, span.ToX], "span", span.Label, "x");
            AboveZero(figure.Y, [span.FromY, span.ToY], "span", span.Label, "y");
        }
        foreach (var mark in figure.Marks)
        {
            AboveZero(figure.X, [mark.X], "mark", mark.Label, "x");
            AboveZero(figure.Y, [mark.Y], "mark", mark.Label, "y");
        }
        foreach (var limit in figure.Limits)
            AboveZero(limit.IsVertical ? figure.X : figure.Y, [limit.Value], "limit", limit.Label, "value");
        double[] xs = [.. lines.SelectMany(l => l.X), .. figure.Marks.Select(m => m.X), .. figure.Spans.SelectMany(s => (double[])[s.FromX, s.ToX]), .. figure.Limits.Where(l => l.IsVertical).Select(l => l.Value)];
        double[] ys = [.. lines.SelectMany(l => l.Y), .. lines.SelectMany(l => l.FilledTo ?? []), .. figure.Marks.Select(m => m.Y), .. figure.Spans.SelectMany(s => (double[])[s.FromY, s.ToY]), .. figure.Limits.Where(l => !l.IsVertical).Select(l => l.Value)];
        var (low, high) = (ys.Min(), ys.Max());
        if (figure.Y.Scale == AxisScale.Linear && low < high)
            (low, high) = low > 0 && low < NearZero * high ? (0, high) : high < 0 && high > NearZero * low ? (low, 0) : (low, high);
        return new(RulerMaker.Make(figure.X, xs.Min(), xs.Max(), roundOut: false), RulerMaker.Make(figure.Y, low, high, roundOut: true));
    }

    private static FigureRulers OfBars(Figure figure)
    {
        var bars = figure.Series.Cast<BarSeries>().ToArray();
        double[] values = [.. bars.SelectMany(b => b.Values), .. figure.Limits.Select(l => l.Value)];
        var (low, high) = (Math.Min(0, values.Min()), Math.Max(0, values.Max()));
        if (low == 0 && high == 0) high = 1;
        return new(RulerMaker.Names(bars[0].Labels), RulerMaker.Make(figure.Y, low * BarHeadroom, high * BarHeadroom, roundOut: true));
    }

    private static void AboveZero(Axis axis, IReadOnlyList<double> values, string kind, string name, string what)
    {
        if (axis.Scale != AxisScale.Log) return;
        for (var i = 0; i < values.Count; i++)
            if (values[i] <= 0)
                throw new ArgumentException($"The {kind} \"{name}\" has {EngineeringTick.Reading(values[i], axis.Unit)} as {what} at index {i}, "
                    + $"but the axis \"{axis.Label}\" is logarithmic and takes only values above zero. Leave the point out, or use a linear axis.");
    }
}
