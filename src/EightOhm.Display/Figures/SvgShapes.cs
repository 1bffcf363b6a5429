using System.Xml.Linq;

namespace EightOhm.Display.Figures;

/// <summary>The marker shapes and hatches of the palette as SVG.</summary>
internal static class SvgShapes
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>One path with the style's marker at each point.</summary>
    public static XElement Markers(int style, IEnumerable<Point> points)
    {
        // Each shape starts at the point and comes back to a closed outline of about equal weight.
        var outline = Palette.Shape(style) switch
        {
            "square" => "m-3.5-3.5h7v7h-7z",
            "diamond" => "m0-5l5 5l-5 5l-5-5z",
            "triangle-up" => "m0-4.6l4.6 8h-9.2z",
            "triangle-down" => "m0 4.6l4.6-8h-9.2z",
            "x" => "m-4-2.4l1.6-1.6l2.4 2.4l2.4-2.4l1.6 1.6l-2.4 2.4l2.4 2.4l-1.6 1.6l-2.4-2.4l-2.4 2.4l-1.6-1.6l2.4-2.4z",
            _ => "m-4 0a4 4 0 1 0 8 0a4 4 0 1 0-8 0z",
        };
        return new(Svg + "path", new XAttribute("class", $"f{style}"),
            new XAttribute("d", string.Concat(points.Select(p => $"M{SvgWriter.N(p.X)} {SvgWriter.N(p.Y)}{outline}"))));
    }

    /// <summary>What repeats over a bar of this style, in a square of eight pixels; null for a plain bar.</summary>
    public static XElement? Hatch(int style)
    {
        var d = Palette.Hatch(style) switch
        {
            "/" => "M-2 2L2-2M0 8L8 0M6 10L10 6",
            "\\" => "M-2 6L2 10M0 0L8 8M6-2L10 2",
            "x" => "M0 0L8 8M0 8L8 0",
            "-" => "M0 4H8",
            "." => "M3 4h2",
            _ => null,
        };
        return d is null ? null : new(Svg + "path", new XAttribute("class", "hatch"), new XAttribute("d", d));
    }
}
