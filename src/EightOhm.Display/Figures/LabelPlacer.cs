namespace EightOhm.Display.Figures;

/// <summary>Finds room for labels inside the frame: off its edges, off each other, and off the lines where that can be had.</summary>
internal sealed class LabelPlacer(Box frame, IReadOnlyList<Point> ink)
{
    private readonly List<Box> taken = [];

    public void Take(Box box) => taken.Add(box);

    /// <summary>Beside a point: the eight sides of it, near before far.</summary>
    public TextBlock Beside(Point p, IReadOnlyList<string> lines, double size, TextRole role)
    {
        var box = TextBlock.Extent(lines, size);
        var candidates =
            from reach in (double[])[8, 18, 32, 50, 80]
            from side in ((int X, int Y)[])[(1, -1), (-1, -1), (1, 1), (-1, 1), (0, -1), (0, 1), (1, 0), (-1, 0)]
            let x = p.X + side.X * (side.Y == 0 ? reach : reach * 0.7)
            let top = p.Y + side.Y * reach * 0.7 + (side.Y - 1) * box.Height / 2
            select new TextBlock(lines, x, top, (TextAnchor)(1 - side.X), size, role);
        return Best(candidates);
    }

    /// <summary>Along a limit: at either end of it, on either side.</summary>
    public TextBlock Along(Limit limit, double at, IReadOnlyList<string> lines, double size, TextRole role)
    {
        const double gap = 4;
        var height = TextBlock.Extent(lines, size).Height;
        var candidates = limit.IsVertical
            ? from anchor in (TextAnchor[])[TextAnchor.Start, TextAnchor.End]
              from part in (double[])[0, 0.5, 1, 0.25, 0.75]
              select new TextBlock(lines, at + gap * (1 - (int)anchor), frame.Top + gap + part * (frame.Height - height - 2 * gap), anchor, size, role)
            : from top in (double[])[at - height - 1, at + 2]
              from part in (double[])[0, 1, 0.5]
              select new TextBlock(lines, frame.Left + gap + part * (frame.Width - 2 * gap), top, (TextAnchor)(2 * part), size, role);
        return Best(candidates);
    }

    private TextBlock Best(IEnumerable<TextBlock> candidates)
    {
        var best = candidates.Select((text, rank) => (text, cost: Cost(text.Bounds) + rank * 0.1)).MinBy(c => c.cost).text;
        // Too long for every place: inside the frame at least.
        var bounds = best.Bounds;
        var shift = Math.Max(frame.Left - bounds.Left, 0) + Math.Min(frame.Right - bounds.Right, 0);
        var drop = Math.Max(frame.Top - bounds.Top, 0) + Math.Min(frame.Bottom - bounds.Bottom, 0);
        best = best with { X = best.X + shift, Top = best.Top + drop };
        Take(best.Bounds);
        return best;
    }

    private double Cost(Box box) =>
        (frame.Holds(box) ? 0 : 1000)
        + 200 * taken.Count(box.Overlaps)
        + 2 * Math.Min(40, ink.Count(box.Grow(1).Holds));
}
