namespace EightOhm.Display.Figures;

/// <summary>What a figure says, in words, for those who cannot see it.</summary>
internal static class FigureWords
{
    public static string Describe(Figure figure)
    {
        var kind = figure.IsBars ? "Bar chart" : "Line chart";
        var over = figure.X.Label.Length > 0 ? $" over {figure.X.Label}" : "";
        var parts = figure.Series.Select(series => series switch
        {
            BarSeries bars => Join(bars.Name, string.Join(", ", bars.Labels.Zip(bars.Values, (l, v) => $"{l} {EngineeringTick.Reading(v, figure.Y.Unit)}"))),
            LineSeries line => Join(line.Name, $"{(line.FilledTo is null ? "" : "filled, ")}from {Point(figure, line, 0)} to {Point(figure, line, line.X.Count - 1)}"),
            _ => series.Name,
        }).Concat(figure.Limits.Select(l => l.Label)).Concat(figure.Spans.Select(s => s.Label)).Concat(figure.Marks.Select(m => m.Label));
        var slider = figure.Slider is { } s ? $" The interactive picture has a slider over {s.Label}." : "";
        return $"{figure.Title}. {kind} of {figure.Y.Label}{over}: {string.Join("; ", parts)}.{slider}";
    }

    private static string Point(Figure figure, LineSeries line, int index) =>
        $"{Reading(line.X, index, figure.X.Unit)}, {Reading(line.Y, index, figure.Y.Unit)}";

    // What rounding left of a zero is said as zero.
    private static string Reading(IReadOnlyList<double> values, int index, string unit) =>
        EngineeringTick.Reading(Math.Abs(values[index]) < 1e-12 * values.Max(Math.Abs) ? 0 : values[index], unit);

    private static string Join(string name, string what) => name.Length > 0 ? $"{name}: {what}" : what;
}
