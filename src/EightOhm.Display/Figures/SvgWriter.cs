using System.Globalization;
using System.Xml.Linq;

namespace EightOhm.Display.Figures;

/// <summary>Writes a figure as one complete SVG picture: no script, nothing fetched, light and dark, wide and narrow.</summary>
public static class SvgWriter
{
    // Stands for the id while the id is not known: it is a hash of everything else.
    private const string IdHole = "\uE000";

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>The figure as SVG text.</summary>
    /// <exception cref="ArgumentException">A value cannot be shown on its axis.</exception>
    public static string Write(Figure figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        return Write(figure, Scene.Both(figure));
    }

    internal static string Write(Figure figure, (Scene Wide, Scene Narrow) scenes)
    {
        var (wide, narrow) = scenes;
        var styles = wide.Curves.Select(c => c.Style).Concat(wide.Bars.Select(b => b.Style)).Distinct().ToArray();
        var svg = new XElement(Svg + "svg",
            new XAttribute("viewBox", $"0 0 {N(wide.Width)} {N(wide.Height)}"), Number("width", wide.Width), Number("height", wide.Height),
            new XAttribute("role", "img"), new XAttribute("aria-label", figure.AltText),
            new XElement(Svg + "style", Palette.StyleSheet(styles, Scene.Breakpoint)),
            new XElement(Svg + "defs", wide.Bars.Select(b => b.Style).Distinct().Select(s => Hatch(s))),
            new XElement(Svg + "rect", Class("paper"), Number("width", wide.Width), Number("height", wide.Height)),
            Layout(figure, wide, "wide"),
            Layout(figure, narrow, "narrow", new XAttribute("transform", $"scale({(wide.Width / narrow.Width).ToString("0.#####", CultureInfo.InvariantCulture)})")));
        var text = svg.ToString(SaveOptions.DisableFormatting);
        return text.Replace(IdHole, ContentId.Of(text), StringComparison.Ordinal);
    }

    private static XElement Layout(Figure figure, Scene scene, string name, params object[] more)
    {
        var (frame, clip) = (scene.Frame, $"{IdHole}{name[0]}");
        return new(Svg + "g", Class(name), more,
            new XElement(Svg + "clipPath", new XAttribute("id", clip), Rect(frame.Grow(1.5))),
            Grid(scene),
            scene.Bars.Select(b => Bar(b.Style, b.Box)),
            new XElement(Svg + "g", new XAttribute("clip-path", $"url(#{clip})"), new XAttribute("fill", "none"), new XAttribute("stroke-width", "2"), new XAttribute("stroke-linejoin", "round"),
                scene.Curves.Where(c => c.Edge is not null).Select(Area),
                scene.Curves.Select(c => Stroke(c.Style, Path(c.Thinned(0.1)))),
                Limits(figure, scene)),
            scene.Curves.Where(c => c.HasMarkers).Select(c => SvgShapes.Markers(c.Style, c.Points.Where(frame.Grow(1.5).Holds))),
            scene.Spans.Select(s => new XElement(Svg + "path", Class("span"), new XAttribute("stroke-width", "1.5"), new XAttribute("d", Bracket(s.From, s.To)))),
            scene.Leaders.Select(l => new XElement(Svg + "path", Class(l.Style is { } style ? $"l{style}" : "axis"), new XAttribute("d", Path([l.From, l.To])))),
            scene.Dots.Select(d => new XElement(Svg + "circle", Class("dot"), Number("cx", d.X), Number("cy", d.Y), Number("r", 4), new XAttribute("stroke-width", "2"))),
            scene.TickLabels.Select(Text),
            scene.Legend.SelectMany(l => Legend(scene, l.Style, l.Text)),
            scene.Labels.Select(l => Text(l.Text)));
    }

    private static IEnumerable<XElement> Grid(Scene scene)
    {
        var (frame, rulers) = (scene.Frame, scene.Rulers);
        var names = scene.Bars.Count > 0;
        yield return Lines("minor", rulers.X.Minor, rulers.Y.Minor);
        yield return Lines("grid", names ? [] : rulers.X.Ticks.Select(t => t.Value), rulers.Y.Ticks.Select(t => t.Value));
        var zero = rulers.Y.Scale == AxisScale.Linear && rulers.Y.Holds(0) ? scene.At(rulers.X.Min, 0).Y : frame.Bottom;
        yield return new(Svg + "path", Class("axis"), new XAttribute("d", $"M{N(frame.Left)} {N(zero)}H{N(frame.Right)}"));

        XElement Lines(string role, IEnumerable<double> xs, IEnumerable<double> ys) => new(Svg + "path", Class(role), new XAttribute("d", string.Concat(
            xs.Select(x => $"M{N(scene.At(x, rulers.Y.Min).X)} {N(frame.Top)}V{N(frame.Bottom)}").Concat(
            ys.Select(y => $"M{N(frame.Left)} {N(scene.At(rulers.X.Min, y).Y)}H{N(frame.Right)}")))));
    }

    private static IEnumerable<XElement> Limits(Figure figure, Scene scene) =>
        from numbered in figure.Limits.Index()
        let limit = numbered.Item
        let at = limit.IsVertical ? scene.At(limit.Value, scene.Rulers.Y.Min) : scene.At(scene.Rulers.X.Min, limit.Value)
        let d = limit.IsVertical ? $"M{N(at.X)} {N(scene.Frame.Top)}V{N(scene.Frame.Bottom)}" : $"M{N(scene.Frame.Left)} {N(at.Y)}H{N(scene.Frame.Right)}"
        select new XElement(Svg + "path", Class("rule"), new XAttribute("stroke-width", "1.5"), new XAttribute("stroke-dasharray", Palette.LimitDash(numbered.Index)), new XAttribute("d", d));

    private static XElement Area(Curve curve) => new(Svg + "path", Class($"f{curve.Style}"), new XAttribute("fill-opacity", Palette.AreaOpacity), new XAttribute("stroke", "none"),
        new XAttribute("d", Path([.. curve.Thinned(0.1), .. curve.Edge!.Thinned(0.1).Reverse()]) + "Z"));

    // A line with a short bar across each end.
    private static string Bracket(Point from, Point to)
    {
        var upright = from.X == to.X;
        return $"{End(from)}M{N(from.X)} {N(from.Y)}L{N(to.X)} {N(to.Y)}{End(to)}";

        string End(Point p) => upright ? $"M{N(p.X - 4)} {N(p.Y)}h8" : $"M{N(p.X)} {N(p.Y - 4)}v8";
    }

    private static IEnumerable<XElement> Legend(Scene scene, int style, TextBlock text)
    {
        var (left, middle) = (text.X - 36, text.Top + text.Height / 2);
        if (scene.Bars.Count > 0)
            foreach (var part in Bar(style, new(left + 8, middle - 6, 22, 12)))
                yield return part;
        else
            yield return Stroke(style, $"M{N(left)} {N(middle)}h30", new XAttribute("fill", "none"), new XAttribute("stroke-width", "2"));
        if (scene.Curves.Any(c => c.Style == style && c.HasMarkers))
            yield return SvgShapes.Markers(style, [new(left + 15, middle)]);
        yield return Text(text);
    }

    private static XElement Stroke(int style, string path, params object[] more) =>
        new(Svg + "path", Class($"l{style}"), Palette.Dash(style) is { Length: > 0 } dash ? new XAttribute("stroke-dasharray", dash) : null, more, new XAttribute("d", path));

    // The hatch lies over the colour, in the colour of the paper.
    private static XElement[] Bar(int style, Box box) => Palette.Hatch(style).Length == 0
        ? [Rect(box, Class($"f{style}"))]
        : [Rect(box, Class($"f{style}")), Rect(box, new XAttribute("fill", $"url(#{IdHole}h{style})"))];

    private static XElement? Hatch(int style) => SvgShapes.Hatch(style) is { } marks
        ? new(Svg + "pattern", new XAttribute("id", $"{IdHole}h{style}"), Number("width", 8), Number("height", 8), new XAttribute("patternUnits", "userSpaceOnUse"), marks)
        : null;

    private static XElement Rect(Box box, params object[] more) =>
        new(Svg + "rect", more, Number("x", box.Left), Number("y", box.Top), Number("width", box.Width), Number("height", box.Height));

    private static XElement Text(TextBlock block)
    {
        // The baseline of a line lies about 0.95 em below its upper edge here.
        var text = new XElement(Svg + "text", Class(block.Role.ToString().ToLowerInvariant() + (block.Style is { } style ? $" f{style}" : "")),
            Number("x", block.X), Number("y", block.Top + block.Size * 0.95), Number("font-size", block.Size),
            block.Anchor == TextAnchor.Start ? null : new XAttribute("text-anchor", block.Anchor == TextAnchor.End ? "end" : "middle"));
        if (block.Lines.Count == 1) text.Add(block.Lines[0]);
        else
            text.Add(block.Lines.Select((line, i) => new XElement(Svg + "tspan", Number("x", block.X), i == 0 ? null : Number("dy", block.Size * TextBlock.LineHeight), line)));
        return text;
    }

    private static string Path(IReadOnlyList<Point> points) =>
        points.Count == 1 ? $"M{N(points[0].X)} {N(points[0].Y)}h0" : "M" + string.Join("L", points.Select(p => $"{N(p.X)} {N(p.Y)}"));

    private static XAttribute Class(string name) => new("class", name);

    private static XAttribute Number(string name, double value) => new(name, N(value));

    internal static string N(double value) => (Math.Round(value, 1) + 0.0).ToString("0.#", CultureInfo.InvariantCulture);
}
