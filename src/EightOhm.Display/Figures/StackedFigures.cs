namespace EightOhm.Display.Figures;

/// <summary>Line charts one under another over the same horizontal axis, such as a voltage and a current over time.</summary>
/// <remarks>Each keeps its own vertical axis and unit: two units on one frame would invite comparing what cannot be compared.</remarks>
public sealed record StackedFigures
{
    /// <summary>Stacks figures; all are given the horizontal span that holds the data of every one.</summary>
    /// <param name="figures">Two line charts or more with the same horizontal axis: label, unit and scale.</param>
    /// <exception cref="ArgumentException">There are fewer than two, one is a bar chart, or the horizontal axes differ.</exception>
    public StackedFigures(params IReadOnlyList<Figure> figures)
    {
        ArgumentNullException.ThrowIfNull(figures);
        if (figures.Count < 2)
            throw new ArgumentException($"A stack needs two figures or more (had {figures.Count}).", nameof(figures));
        var first = figures[0];
        foreach (var figure in figures)
        {
            if (figure.IsBars)
                throw new ArgumentException($"\"{figure.Title}\" is a bar chart; only line charts share a horizontal axis.", nameof(figures));
            if (figure.X.Label != first.X.Label || figure.X.Unit != first.X.Unit || figure.X.Scale != first.X.Scale)
                throw new ArgumentException($"\"{figure.Title}\" has the horizontal axis \"{figure.X.Label}\" and \"{first.Title}\" has \"{first.X.Label}\"; a stack has one.", nameof(figures));
        }

        double[] xs = [.. figures.SelectMany(f => f.Series.Cast<LineSeries>().SelectMany(s => s.X).Concat(f.Marks.Select(m => m.X)))];
        double min = figures.Min(f => f.X.Min) ?? xs.Min(), max = figures.Max(f => f.X.Max) ?? xs.Max();
        Figures = [.. figures.Select(f => f with { X = f.X with { Min = min, Max = max } })];
    }

    /// <summary>The figures from top to bottom, with one span.</summary>
    public IReadOnlyList<Figure> Figures { get; }

    /// <summary>The words for a reader who cannot see the pictures.</summary>
    public string AltText => string.Join("\n", Figures.Select(f => f.AltText));
}
