namespace EightOhm.Display.Figures;

/// <summary>Parts drawn on top of each other, so that the uppermost edge is their sum.</summary>
internal static class StackedAreas
{
    public static Figure Of(string title, Axis x, Axis y, IReadOnlyList<LineSeries> parts)
    {
        ArgumentNullException.ThrowIfNull(y);
        ArgumentNullException.ThrowIfNull(parts);
        if (y.Scale == AxisScale.Log)
            throw new ArgumentException($"The areas of \"{title}\" stand on zero, which a logarithmic axis does not have. Use a linear axis, or lines.");
        var sum = new double[parts.Count == 0 ? 0 : parts[0].X.Count];
        var areas = new LineSeries[parts.Count];
        foreach (var (place, part) in parts.Index())
        {
            if (!part.X.SequenceEqual(parts[0].X))
                throw new ArgumentException($"\"{part.Name}\" must have the same x values as \"{parts[0].Name}\", for the two are added there.");
            if (part.Y.Any(value => value < 0))
                throw new ArgumentException($"\"{part.Name}\" has a value below zero, which an area on top of another cannot show. Use lines.");
            double[] below = [.. sum];
            for (var i = 0; i < sum.Length; i++) sum[i] += part.Y[i];
            areas[place] = new LineSeries(part.Name, part.X, sum) { FilledTo = below, Style = part.Style };
        }
        return Figure.Line(title, x, y, areas);
    }
}
