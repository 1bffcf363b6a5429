using System.Globalization;
using System.Xml.Linq;
using EightOhm.Display.Figures;

namespace EightOhm.Display.Tests.Schematics;

/// <summary>A symbol as the picture has it: what it says it is, its pins, and its ink.</summary>
internal sealed record DrawnPart(string Is, string Name, IReadOnlyList<(string Name, Point At)> Pins, XElement Group)
{
    public bool IsMark => Is is "Ground" or "Rail" or "Node" or "Terminal";

    public static DrawnPart Read(XElement group) => new(
        group.Attribute("data-is")!.Value, group.Attribute("data-name")!.Value,
        [.. group.Attribute("data-pins")!.Value.Split(';').Select(p => p.Split(',')).Select(p => (p[0], new Point(Number(p[1]), Number(p[2]))))],
        group);

    /// <summary>The corners of each path, circles as four points.</summary>
    public IEnumerable<(string Look, Point[] Points)> Ink => Group.Elements().SelectMany(Shape);

    public IEnumerable<(string Text, Point At)> Signs => Group.Elements().Where(e => e.Name.LocalName == "text")
        .Select(e => (e.Value, new Point(Number(e.Attribute("x")!.Value), Number(e.Attribute("y")!.Value) - (0.36 * Number(e.Attribute("font-size")!.Value)))));

    public Box Bounds
    {
        get
        {
            var points = Ink.SelectMany(i => i.Points).ToArray();
            double left = points.Min(p => p.X), top = points.Min(p => p.Y);
            return new(left, top, points.Max(p => p.X) - left, points.Max(p => p.Y) - top);
        }
    }

    /// <summary>What of it is not a thin lead to a pin.</summary>
    public Box Body
    {
        get
        {
            var points = Ink.Where(i => i.Look != "w" || i.Points.Length > 2 || !i.Points.Any(p => Pins.Any(q => q.At == p))).SelectMany(i => i.Points).ToArray();
            if (points.Length == 0) return Bounds;
            double left = points.Min(p => p.X), top = points.Min(p => p.Y);
            return new(left, top, points.Max(p => p.X) - left, points.Max(p => p.Y) - top);
        }
    }

    internal static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    /// <summary>The corners of a path of the letters M, L, H, V, A and z.</summary>
    internal static IEnumerable<Point[]> Lines(string d)
    {
        var points = new List<Point>();
        var at = 0;
        double Next()
        {
            while (d[at] is ' ' or ',') at++;
            var from = at;
            while (at < d.Length && (char.IsDigit(d[at]) || d[at] is '-' or '.')) at++;
            return Number(d[from..at]);
        }

        while (at < d.Length)
        {
            switch (d[at++])
            {
                case 'M':
                    if (points.Count > 0) yield return [.. points];
                    points = [new(Next(), Next())];
                    break;
                case 'L': points.Add(new(Next(), Next())); break;
                case 'H': points.Add(new(Next(), points[^1].Y)); break;
                case 'V': points.Add(new(points[^1].X, Next())); break;
                case 'A':
                    var radius = Next();
                    for (var i = 0; i < 3; i++) Next();
                    var clockwise = Next() > 0 ? 1 : -1;
                    var (from, to) = (points[^1], new Point(Next(), Next()));
                    var length = 2 * radius;
                    points.Add(new(((from.X + to.X) / 2) + (clockwise * (to.Y - from.Y) * radius / length), ((from.Y + to.Y) / 2) - (clockwise * (to.X - from.X) * radius / length)));
                    points.Add(to);
                    break;
                case 'z': points.Add(points[0]); break;
            }
        }

        if (points.Count > 0) yield return [.. points];
    }

    private static IEnumerable<(string, Point[])> Shape(XElement e)
    {
        var look = e.Attribute("class")?.Value ?? "";
        switch (e.Name.LocalName)
        {
            case "path":
                return Lines(e.Attribute("d")!.Value).Select(l => (look, l));
            case "circle":
                double x = Number(e.Attribute("cx")!.Value), y = Number(e.Attribute("cy")!.Value), r = Number(e.Attribute("r")!.Value);
                return [(look, [.. Enumerable.Range(0, 17).Select(i => new Point(x + (r * Math.Cos(i * Math.PI / 8)), y + (r * Math.Sin(i * Math.PI / 8))))])];
            default:
                return [];
        }
    }
}
