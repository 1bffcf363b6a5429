namespace EightOhm.Display.Figures;

/// <summary>Names written at the right ends of the lines, moved apart where they would touch.</summary>
internal static class EndLabels
{
    // Beyond this many lines of text from its end, a name no longer belongs to it by eye.
    private const double FarthestLines = 2.2;

    /// <summary>The tops of the labels, or null when a legend would serve better.</summary>
    public static IReadOnlyList<double>? Separate(IReadOnlyList<double> ends, double height, double top, double bottom)
    {
        if (ends.Count * height > bottom - top) return null;
        var order = Enumerable.Range(0, ends.Count).OrderBy(i => ends[i]).ToArray();
        var tops = new double[ends.Count];
        var next = top;
        foreach (var i in order)
        {
            tops[i] = Math.Max(ends[i] - height / 2, next);
            next = tops[i] + height;
        }
        next = bottom;
        foreach (var i in order.Reverse())
        {
            tops[i] = Math.Min(tops[i], next - height);
            next = tops[i];
        }
        return tops.Zip(ends).Any(p => Math.Abs(p.First + height / 2 - p.Second) > FarthestLines * height) ? null : tops;
    }
}
