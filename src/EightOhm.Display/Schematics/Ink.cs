using EightOhm.Display.Figures;

namespace EightOhm.Display.Schematics;

/// <summary>How a piece of a symbol is inked.</summary>
internal enum InkLook { Line, Heavy, Dashed, Hollow, Solid }

/// <summary>A piece of a symbol, about the symbol's own origin.</summary>
internal abstract record Ink
{
    public abstract Ink Turned(Turn turn);

    public abstract Ink Moved(double x, double y);

    /// <summary>Points close enough along the ink to ask whether anything else touches it.</summary>
    public abstract IEnumerable<Point> Trail();

    protected static Point Moved(Point p, double x, double y) => new(p.X + x, p.Y + y);
}

/// <summary>A run of straight lines.</summary>
internal sealed record Strokes(InkLook Look, bool Closed, IReadOnlyList<Point> Points) : Ink
{
    public override Ink Turned(Turn turn) => this with { Points = [.. Points.Select(turn.Of)] };

    public override Ink Moved(double x, double y) => this with { Points = [.. Points.Select(p => Moved(p, x, y))] };

    public override IEnumerable<Point> Trail()
    {
        var ends = Closed ? Points.Append(Points[0]) : Points;
        return ends.Zip(ends.Skip(1)).SelectMany(s => Along(s.First, s.Second));
    }

    private static IEnumerable<Point> Along(Point a, Point b)
    {
        var steps = Math.Max(1, (int)Math.Ceiling(Math.Max(Math.Abs(a.X - b.X), Math.Abs(a.Y - b.Y)) / 3));
        for (var i = 0; i <= steps; i++)
            yield return new(a.X + ((b.X - a.X) * i / steps), a.Y + ((b.Y - a.Y) * i / steps));
    }
}

/// <summary>A half circle from one point to another; <paramref name="Clockwise"/> as seen on the page.</summary>
internal sealed record HalfCircle(Point From, Point To, bool Clockwise) : Ink
{
    public override Ink Turned(Turn turn) => new HalfCircle(turn.Of(From), turn.Of(To), Clockwise ^ turn.Mirrors);

    public override Ink Moved(double x, double y) => this with { From = Moved(From, x, y), To = Moved(To, x, y) };

    public override IEnumerable<Point> Trail()
    {
        var (side, dx, dy) = (Clockwise ? 1 : -1, (To.X - From.X) / 2, (To.Y - From.Y) / 2);
        return [From, new(From.X + dx + (side * dy), From.Y + dy - (side * dx)), To];
    }
}

/// <summary>A circle.</summary>
internal sealed record Ring(InkLook Look, Point Centre, double Radius) : Ink
{
    public override Ink Turned(Turn turn) => this with { Centre = turn.Of(Centre) };

    public override Ink Moved(double x, double y) => this with { Centre = Moved(Centre, x, y) };

    public override IEnumerable<Point> Trail() => Enumerable.Range(0, 16).Select(i =>
        new Point(Centre.X + (Radius * Math.Cos(i * Math.PI / 8)), Centre.Y + (Radius * Math.Sin(i * Math.PI / 8))));
}

/// <summary>A sign inside a symbol, such as + and −; it stays upright.</summary>
internal sealed record Sign(string Text, Point Centre, double Size) : Ink
{
    public override Ink Turned(Turn turn) => this with { Centre = turn.Of(Centre) };

    public override Ink Moved(double x, double y) => this with { Centre = Moved(Centre, x, y) };

    public override IEnumerable<Point> Trail() => [Centre];
}
