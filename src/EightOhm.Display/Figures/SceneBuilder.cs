namespace EightOhm.Display.Figures;

/// <summary>Lays a figure out: first the words around the frame, then what is inside it.</summary>
internal sealed class SceneBuilder
{
    private const double Pad = 10, TickGap = 6, EndGap = 10, LegendSample = 30, LegendGap = 18, LegendRow = 19, MostEndShare = 0.34;

    private readonly Figure figure;
    private readonly FigureRulers rulers;
    private readonly double width, height, font;
    private readonly Sides least;

    private SceneBuilder(Figure figure, FigureRulers rulers, double width, double height, double font, Sides least) =>
        (this.figure, this.rulers, this.width, this.height, this.font, this.least) = (figure, rulers, width, height, font, least);

    private double Row => font * TextBlock.LineHeight;

    // Half a row and a little: the first x label must pass below the lowest y label.
    private double BelowAxis => Row / 2 + 1;

    private bool IsNamed => figure.Series.Any(s => s.Name.Length > 0) && (!figure.IsBars || figure.Series.Count > 1);

    private static int StyleOf(Series series, int place) => Palette.Turn(series.Style ?? place);

    /// <summary>The figure at a size; names stand at the line ends when they can, else in a legend.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="rulers">Its axes.</param>
    /// <param name="width">Of the picture.</param>
    /// <param name="height">Of the picture.</param>
    /// <param name="font">Size of the words.</param>
    /// <param name="least">Room beside the frame that must be left at least, so that figures in a stack stand in line.</param>
    public static Scene Build(Figure figure, FigureRulers rulers, double width, double height, double font, Sides least = default)
    {
        var builder = new SceneBuilder(figure, rulers, width, height, font, least);
        return (figure.IsBars ? null : builder.Lay(legend: false)) ?? builder.Lay(legend: true)!;
    }

    private Scene? Lay(bool legend)
    {
        var room = width - 2 * Pad;
        var title = new TextBlock(TextMetrics.Wrap(figure.Title, font + 3, room), Pad, Pad, TextAnchor.Start, font + 3, TextRole.Title);
        var subtitle = new TextBlock(TextMetrics.Wrap(figure.Subtitle, font, room), Pad, Pad + title.Height + 1, TextAnchor.Start, font, TextRole.Soft);
        var entries = legend && IsNamed ? LegendRows(subtitle.Top + subtitle.Height + 6) : [];
        var yLabelTop = (entries.Count > 0 ? entries[^1].Text.Top + Row + 3 : subtitle.Top + subtitle.Height) + 7;
        var yLabel = new TextBlock(TextMetrics.Wrap(figure.Y.Label, font, room), Pad, yLabelTop, TextAnchor.Start, font, TextRole.Soft);
        var top = yLabel.Top + yLabel.Height + 10;

        var names = figure.Series.Select(s => TextMetrics.Wrap(s.Name, font, width * MostEndShare)).ToArray();
        var endWidth = legend || !IsNamed ? 0 : names.Max(n => TextBlock.Extent(n, font).Width) + EndGap;
        var lastTick = rulers.X.Ticks.Count > 0 ? TextMetrics.Width(rulers.X.Ticks[^1].Text, font) / 2 : 0;
        var left = Math.Max(least.Left, Pad + TickGap + rulers.Y.Ticks.Select(t => TextMetrics.Width(t.Text, font)).DefaultIfEmpty(0).Max());
        var right = width - Math.Max(least.Right, Pad + Math.Max(endWidth, figure.IsBars ? 0 : lastTick));

        var xTicks = XTicks(right - left);
        var note = TextMetrics.Wrap(figure.Note, font - 1, room);
        var noteTop = height - Pad + 2 - note.Count * (font - 1) * TextBlock.LineHeight;
        var xLabel = TextMetrics.Wrap(figure.X.Label, font, right - left);
        var xLabelTop = noteTop - (note.Count > 0 ? 5 : 0) - xLabel.Count * Row;
        var bottom = xLabelTop - 2 - xTicks.Max(t => t.Text.Count(c => c == '\n') + 1) * Row - BelowAxis;

        var frame = Proportioned(new(left, top, right - left, Math.Max(20, bottom - top)));
        if (figure.HasEqualScales) xTicks = XTicks(frame.Width);
        var scene = new Scene(width, height, font, frame, rulers);
        var (topLeft, bottomLeft) = (new Point(left, frame.Top), new Point(left, frame.Bottom));
        scene.Labels.AddRange(new[] { title, subtitle, yLabel }.Select(t => new PinnedLabel(t, topLeft)));
        scene.Labels.Add(new(new(xLabel, left + scene.Frame.Width / 2, xLabelTop, TextAnchor.Middle, font, TextRole.Soft), new(left + scene.Frame.Width / 2, scene.Frame.Bottom)));
        scene.Labels.Add(new(new(note, Pad, noteTop, TextAnchor.Start, font - 1, TextRole.Soft), bottomLeft));
        scene.Labels.RemoveAll(label => label.Text.Lines.Count == 0);
        scene.Legend.AddRange(entries);
        AddTicks(scene, xTicks);
        if (figure.IsBars) AddBars(scene);
        else AddCurves(scene);
        if (endWidth > 0 && !AddEndLabels(scene, names)) return null;
        InsideLabels.Add(figure, scene);
        return scene;
    }

    // Smaller in one direction where a unit must be as long on both axes; it stays at the left, on the horizontal axis.
    private Box Proportioned(Box frame)
    {
        if (!figure.HasEqualScales) return frame;
        var (across, up) = (rulers.X.Max - rulers.X.Min, rulers.Y.Max - rulers.Y.Min);
        var unit = Math.Min(frame.Width / across, frame.Height / up);
        return new(frame.Left, frame.Bottom - unit * up, unit * across, unit * up);
    }

    // In columns, as the interactive picture has it, unless all fit into one row.
    private List<(int, TextBlock Text)> LegendRows(double top)
    {
        var entries = figure.Series.Index().Where(s => !string.IsNullOrWhiteSpace(s.Item.Name)).ToArray();
        double[] widths = [.. entries.Select(e => LegendSample + LegendGap + TextMetrics.Width(e.Item.Name, font))];
        var room = width - 2 * Pad;
        var inOneRow = widths.Sum() <= room;
        var columns = inOneRow ? entries.Length : Math.Max(1, (int)(room / widths.Max()));
        return [.. entries.Select((e, i) =>
        {
            var left = Pad + (inOneRow ? widths[..i].Sum() : i % columns * widths.Max());
            var text = TextMetrics.Wrap(e.Item.Name, font, room - LegendSample)[0];
            return (StyleOf(e.Item, e.Index), new TextBlock([text], left + LegendSample + 6, top + i / columns * LegendRow, TextAnchor.Start, font, TextRole.Legend));
        })];
    }

    private IReadOnlyList<Tick> XTicks(double length) => figure.IsBars
        ? [.. rulers.X.Ticks.Select(t => t with { Text = string.Join('\n', TextMetrics.Wrap(t.Text, font, length / rulers.X.Ticks.Count - 4)) })]
        : rulers.X.Readable(length, text => TextMetrics.Width(text, font) + 10);

    private void AddTicks(Scene scene, IReadOnlyList<Tick> xTicks)
    {
        scene.XTicks.AddRange(xTicks);
        scene.YTicks.AddRange(rulers.Y.Readable(scene.Frame.Height, _ => Row));
        scene.TickLabels.AddRange(scene.XTicks.Select(tick =>
            new TextBlock(tick.Text.Split('\n'), scene.At(tick.Value, rulers.Y.Min).X, scene.Frame.Bottom + BelowAxis, TextAnchor.Middle, font, TextRole.Soft)));
        scene.TickLabels.AddRange(scene.YTicks.Select(tick =>
            new TextBlock([tick.Text], scene.Frame.Left - TickGap, scene.At(rulers.X.Min, tick.Value).Y - Row / 2, TextAnchor.End, font, TextRole.Soft)));
    }

    private void AddCurves(Scene scene)
    {
        foreach (var (place, series) in figure.Series.Index())
        {
            var line = (LineSeries)series;
            var style = StyleOf(line, place);
            scene.Curves.Add(new(line, style, [.. line.X.Zip(line.Y, scene.At)])
            {
                Edge = line.FilledTo is { } edge ? new(line, style, [.. line.X.Zip(edge, scene.At)]) : null,
            });
        }
    }

    private void AddBars(Scene scene)
    {
        const double groupShare = 0.66, widest = 64;
        var (slot, count) = (scene.Frame.Width / rulers.X.Ticks.Count, figure.Series.Count);
        var bar = Math.Min(slot * groupShare / count, widest);
        foreach (var (place, series) in figure.Series.Index())
            foreach (var (i, value) in ((BarSeries)series).Values.Index())
            {
                var left = scene.Frame.Left + slot * (i + 0.5) + bar * (place - count / 2.0);
                var (zero, end) = (Inside(0), Inside(value));
                scene.Bars.Add((StyleOf(series, place), new(left + 1, Math.Min(zero, end), bar - 2, Math.Abs(end - zero))));
            }

        double Inside(double value) => Math.Clamp(scene.At(0, value).Y, scene.Frame.Top, scene.Frame.Bottom);
    }

    private bool AddEndLabels(Scene scene, IReadOnlyList<string>[] names)
    {
        const double nearRight = 0.85;
        var ends = scene.Curves.Select(c => c.Points[^1]).ToArray();
        if (ends.Any(e => !scene.Frame.Grow(0.5).Holds(e) || e.X < scene.Frame.Left + nearRight * scene.Frame.Width)) return false;
        var tallest = names.Max(n => n.Count);
        if (EndLabels.Separate([.. ends.Select(e => e.Y)], tallest * Row, scene.Frame.Top - Row / 2, scene.Frame.Bottom + Row / 2) is not { } tops) return false;
        foreach (var (i, curve) in scene.Curves.Index())
        {
            if (names[i].Count == 0) continue;
            var text = new TextBlock(names[i], scene.Frame.Right + EndGap, tops[i] + (tallest - names[i].Count) * Row / 2, TextAnchor.Start, font, TextRole.End) { Style = curve.Style };
            var middle = text.Top + text.Height / 2;
            scene.Labels.Add(new(text, ends[i], curve.Series.X[^1], curve.Series.Y[^1]));
            if (Math.Abs(middle - ends[i].Y) > 3 || ends[i].X < scene.Frame.Right - 3)
                scene.Leaders.Add((curve.Style, ends[i], new(text.X - 2, middle)));
        }
        return true;
    }
}
