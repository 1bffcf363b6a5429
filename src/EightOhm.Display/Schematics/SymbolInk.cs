using EightOhm.Display.Figures;

namespace EightOhm.Display.Schematics;

/// <summary>Short words for the ink of symbols.</summary>
internal static class SymbolInk
{
    /// <summary>Straight lines through points given as x, y, x, y.</summary>
    public static Strokes Line(params ReadOnlySpan<double> xy) => new(InkLook.Line, false, Points(xy));

    public static Strokes Heavy(params ReadOnlySpan<double> xy) => new(InkLook.Heavy, false, Points(xy));

    public static Strokes Dashed(params ReadOnlySpan<double> xy) => new(InkLook.Dashed, false, Points(xy));

    public static Strokes Hollow(params ReadOnlySpan<double> xy) => new(InkLook.Hollow, true, Points(xy));

    public static Strokes Solid(params ReadOnlySpan<double> xy) => new(InkLook.Solid, true, Points(xy));

    /// <summary>A hollow rectangle about the origin.</summary>
    public static Strokes Rectangle(double width, double height) =>
        Hollow(-width / 2, -height / 2, width / 2, -height / 2, width / 2, height / 2, -width / 2, height / 2);

    /// <summary>What a controlled source stands in.</summary>
    public static Strokes Diamond() => Hollow(0, -14, 14, 0, 0, 14, -14, 0);

    public static Ring Circle(double x, double y, double radius) => new(InkLook.Hollow, new(x, y), radius);

    /// <summary>A solid arrow head with its tip at a point.</summary>
    /// <param name="x">The tip.</param>
    /// <param name="y">The tip.</param>
    /// <param name="fromX">A point from which the arrow comes.</param>
    /// <param name="fromY">A point from which the arrow comes.</param>
    /// <param name="length">From tip to base; its width is as much.</param>
    public static Strokes Arrow(double x, double y, double fromX, double fromY, double length = 7)
    {
        var far = Math.Sqrt(((x - fromX) * (x - fromX)) + ((y - fromY) * (y - fromY)));
        double ux = (x - fromX) / far, uy = (y - fromY) / far, half = length * 0.45;
        return Solid(x, y, x - (ux * length) - (uy * half), y - (uy * length) + (ux * half), x - (ux * length) + (uy * half), y - (uy * length) - (ux * half));
    }

    /// <summary>Half circles down a line, as a coil has them.</summary>
    /// <param name="x">The line.</param>
    /// <param name="top">Where the coil begins.</param>
    /// <param name="turns">How many half circles.</param>
    /// <param name="toRight">The side to which they bulge.</param>
    /// <param name="radius">Of each.</param>
    public static IEnumerable<Ink> Coil(double x, double top, int turns, bool toRight, double radius = 4) =>
        Enumerable.Range(0, turns).Select(i => new HalfCircle(new(x, top + (2 * radius * i)), new(x, top + (2 * radius * (i + 1))), toRight));

    private static Point[] Points(ReadOnlySpan<double> xy)
    {
        var points = new Point[xy.Length / 2];
        for (var i = 0; i < points.Length; i++)
            points[i] = new(xy[2 * i], xy[(2 * i) + 1]);
        return points;
    }
}
