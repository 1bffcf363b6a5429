namespace EightOhm.Record;

/// <summary>A straight line through the conditions, from border to border.</summary>
internal sealed class Line
{
    private readonly double[] from, to, at;

    private Line(double[] from, double[] to) => (this.from, this.to, at) = (from, to, [.. from]);

    /// <summary>Along one condition, the others as in a point. A place on it is the condition's own.</summary>
    public static Line Along(double[] point, int condition)
    {
        double[] from = [.. point], to = [.. point];
        (from[condition], to[condition]) = (0, 1);
        return new(from, to);
    }

    /// <summary>Through two points that differ in two ranges or more, as far as the ranges go; null where they do not, or where an end is reached.</summary>
    public static Line? Through(double[] a, double[] b, IReadOnlyList<Condition> conditions)
    {
        var (least, most, moved) = (double.NegativeInfinity, double.PositiveInfinity, 0);
        for (var i = 0; i < a.Length; i++)
        {
            var step = b[i] - a[i];
            if (!conditions[i].IsContinuous || step == 0)
                continue;
            var (toZero, toOne) = (-b[i] / step, (1 - b[i]) / step);
            (least, most, moved) = (Math.Max(least, Math.Min(toZero, toOne)), Math.Min(most, Math.Max(toZero, toOne)), moved + 1);
        }

        return moved < 2 || !(most > 0) ? null : new(Step(least), Step(most));

        double[] Step(double by) => [.. b.Select((x, i) => conditions[i].IsContinuous ? Math.Clamp(x + (by * (x - a[i])), 0, 1) : x)];
    }

    /// <summary>The point at a place of the line; the array is used again for the next.</summary>
    public double[] At(double place)
    {
        To(place, at);
        return at;
    }

    /// <summary>Sets a point to a place of the line.</summary>
    public void To(double place, double[] point)
    {
        for (var i = 0; i < point.Length; i++)
            point[i] = place == 1 ? to[i] : from[i] + ((to[i] - from[i]) * place);
    }
}
