namespace EightOhm.Display.Figures;

/// <summary>A chart, told apart from how it is drawn: the static picture and the interactive one both come from it.</summary>
/// <remarks>Values are plain numbers in the SI units that the axes name. Build one by <see cref="Line"/> or
/// <see cref="Bars"/> and add what else it needs by <c>with { Marks = [...], Note = "..." }</c>.</remarks>
public sealed record Figure
{
    private Figure(string title, Axis x, Axis y, IReadOnlyList<Series> series) => (Title, X, Y, Series) = (title, x, y, series);

    /// <summary>What the figure says, in one line if it can.</summary>
    public string Title { get; init; }

    /// <summary>The conditions, below the title.</summary>
    public string? Subtitle { get; init; }

    /// <summary>What the reader must know to read it right, below the chart.</summary>
    public string? Note { get; init; }

    /// <summary>The words for a reader who cannot see the picture; made from the figure when not given.</summary>
    public string AltText { get => field ?? FigureWords.Describe(this); init; }

    /// <summary>The horizontal axis.</summary>
    public Axis X { get; init; }

    /// <summary>The vertical axis.</summary>
    public Axis Y { get; init; }

    /// <summary>The lines, or the bars; never both.</summary>
    public IReadOnlyList<Series> Series { get; }

    /// <summary>Points with a name (line charts only).</summary>
    public IReadOnlyList<Mark> Marks { get; init => field = IsBars && value.Count > 0 ? throw NoX("mark") : [.. value]; } = [];

    /// <summary>Lines at a value; a bar chart takes horizontal ones only.</summary>
    public IReadOnlyList<Limit> Limits { get; init => field = IsBars && value.Any(l => l.IsVertical) ? throw NoX("vertical limit") : [.. value]; } = [];

    /// <summary>A slider that brings one series at a time to the front of the interactive picture (line charts only).</summary>
    /// <exception cref="ArgumentException">The figure has bars, or fewer series than the slider has steps.</exception>
    public FigureSlider? Slider
    {
        get;
        init => field = value switch
        {
            not null when IsBars => throw new ArgumentException("A slider moves through lines; a bar chart takes none."),
            not null when value.Steps.Count > Series.Count => throw new ArgumentException($"The slider \"{value.Label}\" has {value.Steps.Count} steps for {Series.Count} series. Each step belongs to one series."),
            _ => value,
        };
    }

    internal bool IsBars => Series[0] is BarSeries;

    /// <summary>A line chart.</summary>
    /// <exception cref="ArgumentException">There is no series, or a value is not above zero on a logarithmic axis.</exception>
    public static Figure Line(string title, Axis x, Axis y, params LineSeries[] series)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        return new(title, x, y, AtLeastOne(title, series));
    }

    /// <summary>A bar chart; each series has one bar over each label.</summary>
    /// <exception cref="ArgumentException">There is no series, the labels differ, or an axis is logarithmic (bars stand on zero).</exception>
    public static Figure Bars(string title, Axis x, Axis y, params BarSeries[] series)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        AtLeastOne(title, series);
        if (series.FirstOrDefault(s => !s.Labels.SequenceEqual(series[0].Labels)) is { } odd)
            throw new ArgumentException($"Bar series \"{odd.Name}\" must have the same labels as \"{series[0].Name}\", in the same order.");
        if (x.Scale == AxisScale.Log || y.Scale == AxisScale.Log)
            throw new ArgumentException($"The bars of \"{title}\" stand on zero, which a logarithmic axis does not have. Use a linear axis, or a line chart.");
        return new(title, x, y, [.. series]);
    }

    private static IReadOnlyList<Series> AtLeastOne(string title, IReadOnlyList<Series> series) =>
        series.Count > 0 ? [.. series] : throw new ArgumentException($"Figure \"{title}\" needs at least one series.");

    private static ArgumentException NoX(string what) =>
        new($"A bar chart has labels and no x values, so it takes no {what}. Use Limit.Horizontal, or a line chart.");
}
