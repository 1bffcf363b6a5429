namespace EightOhm.Display.Figures;

/// <summary>The labels inside the frame: values of bars, marks and limits.</summary>
internal static class InsideLabels
{
    public static void Add(Figure figure, Scene scene)
    {
        var ink = scene.Curves.SelectMany(c => c.Trail())
            .Concat(figure.Limits.SelectMany(l => Trail(scene, l)))
            .Concat(figure.Spans.SelectMany(s => Between(scene.At(s.FromX, s.FromY), scene.At(s.ToX, s.ToY))))
            .Where(scene.Frame.Grow(10).Holds).ToArray();
        var placer = new LabelPlacer(scene.Frame, ink);
        foreach (var (_, box) in scene.Bars) placer.Take(box);
        AddBarValues(figure, scene, placer);
        var marks = figure.Marks.Where(m => scene.Rulers.X.Holds(m.X) && scene.Rulers.Y.Holds(m.Y)).ToArray();
        scene.Dots.AddRange(marks.Select(m => scene.At(m.X, m.Y)));
        foreach (var dot in scene.Dots) placer.Take(new Box(dot.X, dot.Y, 0, 0).Grow(4));
        foreach (var limit in figure.Limits.Where(l => (l.IsVertical ? scene.Rulers.X : scene.Rulers.Y).Holds(l.Value)))
        {
            var at = At(scene, limit);
            var text = placer.Along(limit, limit.IsVertical ? at.X : at.Y, Lines(scene, limit.Label, 0.7), scene.Font, TextRole.Limit);
            var middle = text.Top + text.Height / 2;
            scene.Labels.Add(limit.IsVertical ? new(text, new(at.X, middle), X: limit.Value) : new(text, new(text.X, at.Y), Y: limit.Value));
        }
        foreach (var span in figure.Spans)
        {
            var (from, to) = (scene.At(span.FromX, span.FromY), scene.At(span.ToX, span.ToY));
            var middle = new Point((from.X + to.X) / 2, (from.Y + to.Y) / 2);
            scene.Spans.Add((from, to));
            scene.Labels.Add(new(placer.Beside(middle, Lines(scene, span.Label, 0.55), scene.Font, TextRole.Mark), middle,
                scene.Rulers.X.Value(middle.X, scene.Frame.Left, scene.Frame.Width), scene.Rulers.Y.Value(scene.Frame.Bottom - middle.Y, 0, scene.Frame.Height)));
        }
        // Last: a mark's label has more places to go than a limit's.
        foreach (var (mark, dot) in marks.Zip(scene.Dots))
        {
            var text = placer.Beside(dot, Lines(scene, mark.Label, 0.55), scene.Font, TextRole.Mark);
            var end = Leader(dot, text.Bounds);
            scene.Labels.Add(new(text, dot, mark.X, mark.Y) { HasLeader = end is not null });
            if (end is { } reached) scene.Leaders.Add((null, dot, reached));
        }
    }

    // The bars are in the order of the series and, within each, of its labels.
    private static void AddBarValues(Figure figure, Scene scene, LabelPlacer placer)
    {
        var values = figure.Series.OfType<BarSeries>().SelectMany(s => s.Values.Select((value, i) => (value, i)));
        var labels = values.Zip(scene.Bars, (v, bar) =>
        {
            var size = scene.Font;
            var lines = new[] { EngineeringTick.Reading(v.value, figure.Y.Unit) };
            var top = v.value < 0
                ? Math.Min(bar.Box.Bottom + 2, scene.Frame.Bottom - size * TextBlock.LineHeight)
                : Math.Max(bar.Box.Top - size * TextBlock.LineHeight - 2, scene.Frame.Top);
            var text = new TextBlock(lines, bar.Box.Left + bar.Box.Width / 2, top, TextAnchor.Middle, size, TextRole.Value);
            var x = v.i + (text.X - scene.At(v.i, 0).X) / (scene.At(1, 0).X - scene.At(0, 0).X);
            return new PinnedLabel(text, new(text.X, v.value < 0 ? bar.Box.Bottom : bar.Box.Top), x, v.value);
        }).ToArray();
        var boxes = labels.Select(l => l.Text.Bounds.Grow(1)).ToArray();
        // Values that would touch help nobody: the axis has them.
        if (boxes.Where((box, i) => boxes.Skip(i + 1).Any(box.Overlaps)).Any()) return;
        scene.Labels.AddRange(labels);
        foreach (var box in boxes) placer.Take(box);
    }

    private static IReadOnlyList<string> Lines(Scene scene, string label, double share) =>
        TextMetrics.Wrap(label, scene.Font, scene.Frame.Width * share);

    // A name that had to go away from its dot says by a line whose it is.
    private static Point? Leader(Point dot, Box text)
    {
        const double near = 14, standOff = 2;
        var nearest = new Point(Math.Clamp(dot.X, text.Left - standOff, text.Right + standOff), Math.Clamp(dot.Y, text.Top - standOff, text.Bottom + standOff));
        return double.Hypot(nearest.X - dot.X, nearest.Y - dot.Y) > near ? nearest : null;
    }

    private static IEnumerable<Point> Between(Point a, Point b)
    {
        for (var t = 0.0; t <= 1; t += 0.02)
            yield return new(a.X + t * (b.X - a.X), a.Y + t * (b.Y - a.Y));
    }

    private static Point At(Scene scene, Limit limit) => limit.IsVertical
        ? scene.At(limit.Value, scene.Rulers.Y.Min)
        : scene.At(scene.Rulers.X.Min, limit.Value);

    private static IEnumerable<Point> Trail(Scene scene, Limit limit)
    {
        var (at, frame) = (At(scene, limit), scene.Frame);
        for (var t = 0.0; t <= 1; t += 0.01)
            yield return limit.IsVertical ? new(at.X, frame.Top + t * frame.Height) : new(frame.Left + t * frame.Width, at.Y);
    }
}
