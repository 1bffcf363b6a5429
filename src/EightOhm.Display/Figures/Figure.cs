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

    /// <summary>Distances that are read off the figure, with their names (line charts only).</summary>
    public IReadOnlyList<Span> Spans { get; init => field = IsBars && value.Count > 0 ? throw NoX("span") : [.. value]; } = [];

    /// <summary>Whether equal lengths on the picture are equal values on both axes, as a locus in a plane needs.</summary>
    /// <exception cref="ArgumentException">It is a bar chart, or an axis is logarithmic, or the units differ.</exception>
    public bool HasEqualScales
    {
        get;
        init => field = value && (IsBars || X.Scale == AxisScale.Log || Y.Scale == AxisScale.Log || X.Unit != Y.Unit)
            ? throw new ArgumentException($"\"{Title}\" cannot have equal scales: that needs a line chart with two linear axes of one unit.")
            : value;
    }

    /// <summary>How the values are spread along the vertical axis: <c>figure with { YScale = AxisScale.Log }</c>.</summary>
    public AxisScale YScale { get => Y.Scale; init => Y = Y with { Scale = value }; }

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

    /// <summary>A line chart of functions over a sweep: unit and label of each axis from the kinds, a logarithmic horizontal axis where the sweep goes in equal ratios.</summary>
    /// <typeparam name="TX">The quantity along the horizontal axis.</typeparam>
    /// <typeparam name="TY">The quantity that is told.</typeparam>
    /// <param name="title">What the figure says.</param>
    /// <param name="xLabel">What the horizontal axis shows.</param>
    /// <param name="x">The places, such as <c>Sweep.Log(20.Hz, 20.kHz)</c>.</param>
    /// <param name="yLabel">What the vertical axis shows.</param>
    /// <param name="lines">Each line's name, and its value at a place.</param>
    /// <exception cref="ArgumentException">There is no line, or a value is not finite on its axis.</exception>
    /// <example><code>Figure.Over("Slew rate of 40 V peak", "frequency", Sweep.Log(20.Hz, 20.kHz), "slew rate", ("needed", f => SlewRate.Needed(f, 40.V)))</code></example>
    public static Figure Over<TX, TY>(string title, string xLabel, IReadOnlyList<TX> x, string yLabel, params (string Name, Func<TX, TY> Value)[] lines)
        where TX : struct
        where TY : struct
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(lines);
        var across = Axis.Of<TX>(xLabel);
        if (Plotted.InEqualRatios([.. x.Select(Plotted.Number<TX>())])) across = across with { Scale = AxisScale.Log };
        return Line(title, across, Axis.Of<TY>(yLabel), [.. lines.Select(line => LineSeries.Of(line.Name, x, x.Select(line.Value)))]);
    }

    /// <summary>Lines that add up, each filled from the one below it: what a whole is made of over the horizontal axis.</summary>
    /// <param name="title">What the figure says.</param>
    /// <param name="x">The horizontal axis.</param>
    /// <param name="y">The vertical axis; linear, for areas are compared.</param>
    /// <param name="parts">The parts from below upwards, all at the same places and none below zero.</param>
    /// <exception cref="ArgumentException">There is no part, the places differ, a value is negative, or the vertical axis is logarithmic.</exception>
    public static Figure Stacked(string title, Axis x, Axis y, params LineSeries[] parts) => StackedAreas.Of(title, x, y, parts);

    /// <summary>How often values fall into each of a row of equal steps, as a share of all of them.</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="title">What the figure says.</param>
    /// <param name="label">What the values are.</param>
    /// <param name="values">Two values or more, not all the same.</param>
    /// <exception cref="ArgumentException">There are fewer than two different values, or one is not finite on its axis.</exception>
    public static Figure Histogram<T>(string title, string label, IEnumerable<T> values)
        where T : struct
    {
        ArgumentNullException.ThrowIfNull(values);
        return Figures.Histogram.Of(title, Axis.Of<T>(label), Finite.Copy(values.Select(Plotted.Number<T>()), label, "value"));
    }

    private static IReadOnlyList<Series> AtLeastOne(string title, IReadOnlyList<Series> series) =>
        series.Count > 0 ? [.. series] : throw new ArgumentException($"Figure \"{title}\" needs at least one series.");

    private static ArgumentException NoX(string what) =>
        new($"A bar chart has labels and no x values, so it takes no {what}. Use Limit.Horizontal, or a line chart.");
}
