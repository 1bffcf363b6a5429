using EightOhm.Display.Figures;

namespace EightOhm.Display.Schematics;

/// <summary>One of the eight ways in which a symbol lies on the page: quarter turns, and their mirror images.</summary>
internal readonly record struct Turn(int XX, int XY, int YX, int YY)
{
    public static readonly Turn None = new(1, 0, 0, 1);
    public static readonly Turn Right = new(0, -1, 1, 0);
    public static readonly Turn Half = new(-1, 0, 0, -1);
    public static readonly Turn Left = new(0, 1, -1, 0);
    public static readonly Turn LeftRight = new(-1, 0, 0, 1);
    public static readonly Turn UpsideDown = new(1, 0, 0, -1);
    public static readonly Turn RightMirrored = new(0, 1, 1, 0);
    public static readonly Turn LeftMirrored = new(0, -1, -1, 0);

    /// <summary>Whether what stood lies.</summary>
    public bool Lies => XX == 0;

    /// <summary>Whether an arc bends the other way round.</summary>
    public bool Mirrors => (XX * YY) - (XY * YX) < 0;

    public Point Of(Point p) => new((XX * p.X) + (XY * p.Y) + 0.0, (YX * p.X) + (YY * p.Y) + 0.0);

    public Way Of(Way way) => new((XX * way.X) + (XY * way.Y), (YX * way.X) + (YY * way.Y));

    public Box Of(Box box)
    {
        var (a, b) = (Of(new Point(box.Left, box.Top)), Of(new Point(box.Right, box.Bottom)));
        return new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Abs(a.X - b.X), Math.Abs(a.Y - b.Y));
    }
}

/// <summary>One of the four directions of a wire; y grows downwards, as on the page.</summary>
internal readonly record struct Way(int X, int Y)
{
    public static readonly Way Up = new(0, -1), Down = new(0, 1), ToLeft = new(-1, 0), ToRight = new(1, 0);

    public bool IsAcross => X != 0;
}
