namespace EightOhm.Display.Figures;

/// <summary>A figure laid out at one size: where everything stands, in pixels.</summary>
internal sealed record Scene(double Width, double Height, double Font, Box Frame, FigureRulers Rulers)
{
    /// <summary>Below this width of the page the narrow layout is shown.</summary>
    public const int Breakpoint = 479;

    private const double WideWidth = 640, NarrowWidth = 360, Shape = 0.7, LeastFrame = 150;

    public List<Tick> XTicks { get; } = [];
    public List<Tick> YTicks { get; } = [];
    public List<TextBlock> TickLabels { get; } = [];
    public List<Curve> Curves { get; } = [];
    public List<(int Style, Box Box)> Bars { get; } = [];
    public List<Point> Dots { get; } = [];
    public List<(Point From, Point To)> Spans { get; } = [];
    public List<PinnedLabel> Labels { get; } = [];
    public List<(int? Style, Point From, Point To)> Leaders { get; } = [];
    public List<(int Style, TextBlock Text)> Legend { get; } = [];

    public Point At(double x, double y) => new(
        Frame.Left + Rulers.X.Fraction(x) * Frame.Width,
        Frame.Bottom - Rulers.Y.Fraction(y) * Frame.Height);

    /// <summary>The layouts for a page and for a telephone, of one shape so that one picture can hold both.</summary>
    public static (Scene Wide, Scene Narrow) Both(Figure figure, Sides wideSides = default, Sides narrowSides = default)
    {
        var rulers = FigureRulers.Of(figure);
        var narrow = SceneBuilder.Build(figure, rulers, NarrowWidth, NarrowWidth * Shape, 12, narrowSides);
        if (LeastFrame - narrow.Frame.Height is var lack and > 0)
            narrow = SceneBuilder.Build(figure, rulers, NarrowWidth, narrow.Height + Math.Ceiling(lack), 12, narrowSides);
        var wide = SceneBuilder.Build(figure, rulers, WideWidth, Math.Round(WideWidth * narrow.Height / NarrowWidth), 13, wideSides);
        return (wide, narrow);
    }

    /// <summary>The layouts of figures that stand one under another: their frames begin and end at the same places.</summary>
    public static IReadOnlyList<(Scene Wide, Scene Narrow)> InLine(IReadOnlyList<Figure> figures)
    {
        var free = figures.Select(f => Both(f)).ToArray();
        Sides wide = Sides.Of(free.Select(s => s.Wide)), narrow = Sides.Of(free.Select(s => s.Narrow));
        return [.. figures.Select(f => Both(f, wide, narrow))];
    }
}

/// <summary>Room to the left and right of a frame, in pixels.</summary>
internal readonly record struct Sides(double Left, double Right)
{
    public static Sides Of(IEnumerable<Scene> scenes) =>
        scenes.Aggregate(default(Sides), (most, s) => new(Math.Max(most.Left, s.Frame.Left), Math.Max(most.Right, s.Width - s.Frame.Right)));
}
