using DynamicObj;
using Plotly.NET;

namespace EightOhm.Display.Figures;

/// <summary>The interactive picture of a figure, by Plotly.NET. Nothing else here touches that package: in a notebook's
/// kernel it can be loaded only after the extension has answered for its FSharp.Core.</summary>
internal static class PlotlyFigure
{
    private static readonly string[] Anchors = ["left", "center", "right"];

    /// <summary>JSON with <c>data</c>, <c>layout</c> and <c>config</c>; what is different on a narrow page is the layout's <c>meta</c>.</summary>
    public static string Json(Figure figure, (Scene Wide, Scene Narrow) scenes)
    {
        var traces = Areas(scenes.Wide).Concat(Limits(figure, scenes.Wide)).Concat(scenes.Wide.Curves.Select((c, i) => Line(figure, c, i)))
            .Concat(Bars(figure, scenes.Wide)).Concat(Spans(figure)).Concat(Dots(figure, scenes.Wide));
        var chart = GenericChart.combine(traces.Select(trace => GenericChart.ofTraceObject(false, trace)));
        chart = GenericChart.setLayout(With(Layout(figure, scenes.Wide),
            ("meta", Sized(figure, scenes.Narrow))), chart);
        chart = GenericChart.setConfig(With(new Config(), ("displaylogo", false), ("displayModeBar", false)), chart);
        return GenericChart.toJson(chart);
    }

    private static Trace2D Line(Figure figure, Curve curve, int place) => With(With(new Trace2D("scatter"),
            figure.Slider is { } slider ? [("opacity", PlotlySlider.Opacities(figure, slider, slider.Start)[place])] : []),
        ("name", Escape(curve.Series.Name)),
        ("mode", curve.HasMarkers ? "lines+markers" : "lines"),
        ("x", Short(curve.Series.X)),
        ("y", Short(curve.Series.Y)),
        ("line", new { color = Palette.Line(curve.Style).Light, width = 2, dash = PlotlyDash(Palette.Dash(curve.Style)), simplify = false }),
        ("cliponaxis", !curve.HasMarkers),
        ("marker", new { symbol = Palette.Shape(curve.Style), size = 8 }),
        ("meta", new { x = Unit(figure.X), y = Unit(figure.Y) }),
        ("hovertemplate", Hover(curve.Series.Name)));

    // The script writes the readings under the pointer itself: a text for each point would double a saved figure.
    private static object Unit(Axis axis) => new { label = axis.Label, unit = axis.Unit, prefixed = EngineeringTick.TakesPrefix(axis.Unit) };

    private static IEnumerable<Trace2D> Bars(Figure figure, Scene scene) => figure.Series.OfType<BarSeries>().Select((bars, place) =>
    {
        var style = scene.Bars[place * bars.Values.Count].Style;
        return With(new Trace2D("bar"),
            ("name", Escape(bars.Name)),
            ("x", Enumerable.Range(0, bars.Values.Count).ToArray()),
            ("y", Short(bars.Values)),
            ("marker", new { color = Palette.Line(style).Light, pattern = new { shape = Palette.Hatch(style), fgcolor = Palette.Paper.Light, fillmode = "overlay", size = 6 } }),
            ("meta", new { y = Unit(figure.Y), x = new { label = figure.X.Label, unit = "", prefixed = false } }),
            ("hovertext", bars.Labels.Zip(bars.Values, (l, v) => $"{Escape(l)}: {EngineeringTick.Reading(v, figure.Y.Unit)}").ToArray()),
            ("hovertemplate", "%{hovertext}" + Extra(bars.Name)));
    });

    private static IEnumerable<Trace2D> Dots(Figure figure, Scene scene) => scene.Dots.Count == 0 ? [] :
    [
        With(new Trace2D("scatter"),
            ("mode", "markers"),
            ("cliponaxis", false),
            ("x", Short(figure.Marks.Select(m => m.X))),
            ("y", Short(figure.Marks.Select(m => m.Y))),
            ("marker", new { size = 9, color = Palette.Paper.Light, line = new { color = Palette.Ink.Light, width = 2 } }),
            ("text", figure.Marks.Select(m => Escape(m.Label)).ToArray()),
            ("hovertemplate", Hover("")),
            ("showlegend", false)),
    ];

    // Before all others, so that no line lies below a fill.
    private static IEnumerable<Trace2D> Areas(Scene scene) => scene.Curves.Where(c => c.Series.FilledTo is not null).Select(c => With(new Trace2D("scatter"),
        ("mode", "lines"),
        ("x", Short(c.Series.X.Concat(c.Series.X.Reverse()))),
        ("y", Short(c.Series.Y.Concat(c.Series.FilledTo!.Reverse()))),
        ("line", new { width = 0 }),
        ("fill", "toself"),
        ("fillcolor", Palette.Line(c.Style).Light),
        ("opacity", Palette.AreaOpacity),
        ("hoverinfo", "skip"),
        ("showlegend", false)));

    private static IEnumerable<Trace2D> Spans(Figure figure) => figure.Spans.Select(span => With(new Trace2D("scatter"),
        ("mode", "lines+markers"),
        ("x", Short([span.FromX, span.ToX])),
        ("y", Short([span.FromY, span.ToY])),
        ("line", new { color = Palette.Ink.Light, width = 1.5 }),
        ("marker", new { symbol = span.IsVertical ? "line-ew" : "line-ns", size = 8, line = new { color = Palette.Ink.Light, width = 1.5 } }),
        ("text", Escape(span.Label)),
        ("hovertemplate", Hover("")),
        ("showlegend", false)));

    // Traces and not shapes: these take plain values on a logarithmic axis.
    private static IEnumerable<Trace2D> Limits(Figure figure, Scene scene) => figure.Limits.Index().Select(numbered =>
    {
        var (place, limit) = numbered;
        var ((x, y), value) = (scene.Rulers, limit.Value);
        return With(new Trace2D("scatter"),
            ("mode", "lines"),
            ("x", Short(limit.IsVertical ? [value, value] : [x.Min, x.Max])),
            ("y", Short(limit.IsVertical ? [y.Min, y.Max] : [value, value])),
            ("line", new { color = Palette.Limit.Light, width = 1.5, dash = PlotlyDash(Palette.LimitDash(place)) }),
            ("text", Escape(limit.Label)),
            ("hovertemplate", Hover("")),
            ("showlegend", false));
    });

    private static Layout Layout(Figure figure, Scene scene) => With(Sized(figure, scene),
        ("template", Template(figure, scene.Rulers)),
        ("paper_bgcolor", Palette.Paper.Light),
        ("plot_bgcolor", Palette.Paper.Light),
        ("barmode", "group"),
        ("hovermode", "closest"),
        ("hoverlabel", new { bgcolor = Palette.Paper.Light, bordercolor = Palette.Soft.Light, font = new { color = Palette.Ink.Light } }),
        ("showlegend", scene.Legend.Count > 0));

    // What is the same for both axes and all labels; the default template would be 8 kB.
    private static object Template(Figure figure, FigureRulers rulers)
    {
        var hasZero = rulers.Y.Scale == AxisScale.Linear && rulers.Y.Holds(0);
        return new
        {
            layout = new
            {
                annotationdefaults = new { yanchor = "middle", borderpad = 0, arrowhead = 0, arrowwidth = 1, arrowcolor = Palette.Soft.Light, standoff = 5 },
                xaxis = Look(grid: !figure.IsBars, line: !hasZero, zeroLine: false),
                yaxis = Look(grid: true, line: false, zeroLine: hasZero),
            },
        };

        static object Look(bool grid, bool line, bool zeroLine) => new
        {
            tickmode = "array",
            tickangle = 0,
            ticks = "outside",
            ticklen = 4,
            tickcolor = Palette.Paper.Light,
            tickfont = new { color = Palette.Soft.Light },
            showgrid = grid,
            gridcolor = Palette.Grid.Light,
            showline = line,
            linecolor = Palette.Soft.Light,
            zeroline = zeroLine,
            zerolinecolor = Palette.Soft.Light,
            minor = new { tickmode = "array", showgrid = grid, gridcolor = Palette.Faint.Light },
        };
    }

    /// <summary>The part of the layout that depends on the size of the picture.</summary>
    private static Layout Sized(Figure figure, Scene scene)
    {
        var (frame, rulers) = (scene.Frame, scene.Rulers);
        var below = figure.Slider is null ? 0 : PlotlySlider.Height;
        var layout = With(new Layout(),
            ("height", Tidy(scene.Height + below)),
            ("margin", new { l = Tidy(frame.Left), r = Tidy(scene.Width - frame.Right), t = Tidy(frame.Top), b = Tidy(scene.Height - frame.Bottom + below), autoexpand = false }),
            ("font", new { family = Palette.Font, size = scene.Font, color = Palette.Ink.Light }),
            ("xaxis", Axis(rulers.X, scene.XTicks, figure.HasEqualScales ? "y" : null)),
            ("yaxis", Axis(rulers.Y, scene.YTicks)),
            ("annotations", scene.Labels.Select(l => Annotation(scene, l)).ToArray()));
        if (figure.Slider is { } slider)
            With(layout, ("sliders", PlotlySlider.Of(figure, slider, scene, first: Behind(figure), Escape)));
        if (scene.Bars.Count > 0)
            With(layout, ("bargap", Tidy(1 - figure.Series.Count * (scene.Bars[0].Box.Width + 2) / (frame.Width / rulers.X.Ticks.Count), 3)));
        if (scene.Legend.Count > 0)
            With(layout, ("legend", new { orientation = "h", x = Tidy(5 / scene.Width, 4), xref = "container", y = Tidy(1 - (scene.Legend[0].Text.Top - 4) / (scene.Height + below), 4), yref = "container", xanchor = "left", yanchor = "top", bgcolor = Palette.Paper.Light }));
        return layout;
    }

    // How many traces are drawn before the series' own.
    private static int Behind(Figure figure) => figure.Limits.Count + figure.Series.Count(s => s is LineSeries { FilledTo: not null });

    private static object Axis(Ruler ruler, IEnumerable<Tick> ticks, string? asLongAs = null) => new
    {
        type = ruler.Scale == AxisScale.Log ? "log" : "linear",
        // A hair wider where the page takes logarithms of its own: a mark on the frame's edge would round to outside and vanish.
        range = ruler.Scale == AxisScale.Log
            ? new[] { Tidy(ruler.Along(ruler.Min) - EdgeHair, 7), Tidy(ruler.Along(ruler.Max) + EdgeHair, 7) }
            : [Tidy(ruler.Along(ruler.Min), 6), Tidy(ruler.Along(ruler.Max), 6)],
        tickvals = Short(ticks.Select(t => t.Value)),
        ticktext = ticks.Select(t => Escape(t.Text).Replace("\n", "<br>", StringComparison.Ordinal)).ToArray(),
        minor = new { tickvals = Short(ruler.Minor) },
        scaleanchor = asLongAs,
    };

    private static object Annotation(Scene scene, PinnedLabel label)
    {
        var (text, frame, rulers) = (label.Text, scene.Frame, scene.Rulers);
        var lines = string.Join("<br>", text.Lines.Select(Escape));
        return new
        {
            text = text.Role == TextRole.Title ? $"<b>{lines}</b>" : lines,
            xref = label.X is null ? "paper" : "x",
            yref = label.Y is null ? "paper" : "y",
            x = label.X is { } x ? Tidy(rulers.X.Along(x), 6) : Tidy((label.Pin.X - frame.Left) / frame.Width, 4),
            y = label.Y is { } y ? Tidy(rulers.Y.Along(y), 6) : Tidy((frame.Bottom - label.Pin.Y) / frame.Height, 4),
            xshift = label.HasLeader ? 0 : Tidy(text.X - label.Pin.X),
            yshift = label.HasLeader ? 0 : Tidy(label.Pin.Y - text.Top - text.Height / 2),
            xanchor = label.HasLeader ? "center" : Anchors[(int)text.Anchor],
            showarrow = label.HasLeader,
            ax = label.HasLeader ? Tidy(text.Bounds.Left + text.Bounds.Width / 2 - label.Pin.X) : 0,
            ay = label.HasLeader ? Tidy(text.Top + text.Height / 2 - label.Pin.Y) : 0,
            align = Anchors[(int)text.Anchor],
            font = new { size = text.Size, color = Palette.Of(text).Light },
        };
    }

    private static string Hover(string name) => "%{text}" + Extra(name);

    // The box beside the hover text names the series; without a name it is left away.
    private static string Extra(string name) => $"<extra>{Escape(name)}</extra>";

    private static string PlotlyDash(string dash) => dash.Length == 0 ? "solid" : string.Join(",", dash.Split(' ').Select(length => length + "px"));

    // Plotly reads a small HTML in its texts.
    private static string Escape(string text) => text.Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal);

    // Six digits are more than a screen has, and keep a saved notebook small.
    private const double EdgeHair = 4e-7;

    private static double[] Short(IEnumerable<double> values) => [.. values.Select(v => v == 0 ? 0 : EngineeringTick.Round(v, 6))];

    private static double Tidy(double value, int decimals = 1) => Math.Round(value, decimals) + 0.0;

    private static T With<T>(T target, params (string Name, object Value)[] properties) where T : DynamicObj.DynamicObj
    {
        foreach (var (name, value) in properties) target.SetProperty(name, value);
        return target;
    }
}
