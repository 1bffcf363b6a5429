namespace EightOhm.Display.Figures;

/// <summary>A polyline in the picture.</summary>
internal sealed record Curve(LineSeries Series, int Style, IReadOnlyList<Point> Points)
{
    /// <summary>The lower edge of what is filled below the line; null for a line alone.</summary>
    public Curve? Edge { get; init; }

    // More points than this and the marker shapes would hide the line.
    private const int MostMarkers = 24;

    public static bool WearsMarkers(LineSeries series) => series.X.Count <= MostMarkers && series.FilledTo is null;

    public bool HasMarkers => WearsMarkers(Series);

    /// <summary>Only the points that the eye needs: the rest lie within <paramref name="tolerance"/> pixels of the line through these (Ramer, Douglas and Peucker).</summary>
    public IReadOnlyList<Point> Thinned(double tolerance)
    {
        var keep = new bool[Points.Count];
        keep[0] = keep[^1] = true;
        var spans = new Stack<(int First, int Last)>([(0, Points.Count - 1)]);
        while (spans.TryPop(out var span))
        {
            var (farthest, distance) = (0, tolerance);
            for (var i = span.First + 1; i < span.Last; i++)
                if (Distance(Points[i], Points[span.First], Points[span.Last]) is var d && d > distance)
                    (farthest, distance) = (i, d);
            if (farthest == 0) continue;
            keep[farthest] = true;
            spans.Push((span.First, farthest));
            spans.Push((farthest, span.Last));
        }
        return [.. Points.Where((_, i) => keep[i])];
    }

    /// <summary>Points along the line no more than a few pixels apart, to see what it runs through.</summary>
    public IEnumerable<Point> Trail()
    {
        yield return Points[0];
        foreach (var (a, b) in Points.Zip(Points.Skip(1)))
        {
            // A span far outside the frame must not cost a million points.
            var steps = Math.Clamp((int)(Math.Max(Math.Abs(b.X - a.X), Math.Abs(b.Y - a.Y)) / 3), 1, 400);
            for (var i = 1; i <= steps; i++)
                yield return new(a.X + (b.X - a.X) * i / steps, a.Y + (b.Y - a.Y) * i / steps);
        }
    }

    private static double Distance(Point p, Point a, Point b)
    {
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        var length2 = dx * dx + dy * dy;
        var t = length2 == 0 ? 0 : Math.Clamp(((p.X - a.X) * dx + (p.Y - a.Y) * dy) / length2, 0, 1);
        return Math.Sqrt(Math.Pow(p.X - a.X - t * dx, 2) + Math.Pow(p.Y - a.Y - t * dy, 2));
    }
}
