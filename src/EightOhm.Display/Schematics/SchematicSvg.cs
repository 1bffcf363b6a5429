using System.Globalization;
using System.Xml.Linq;
using EightOhm.Display.Figures;

namespace EightOhm.Display.Schematics;

/// <summary>Writes a drawing as one complete SVG picture: no script, nothing fetched, light and dark.</summary>
internal static class SchematicSvg
{
    private const double Stroke = 1.6, HeavyStroke = 2.6, DotRadius = 3.2;

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>The picture.</summary>
    /// <param name="sheet">The drawing.</param>
    /// <param name="words">What it shows, in words.</param>
    public static string Write(SchematicSheet sheet, string words)
    {
        var frame = sheet.Frame;
        var svg = new XElement(Svg + "svg",
            new XAttribute("viewBox", $"{N(frame.Left)} {N(frame.Top)} {N(frame.Width)} {N(frame.Height)}"), Number("width", frame.Width), Number("height", frame.Height),
            new XAttribute("role", "img"), new XAttribute("aria-label", words),
            new XElement(Svg + "style", Style()),
            new XElement(Svg + "rect", Class("paper"), Number("x", frame.Left), Number("y", frame.Top), Number("width", frame.Width), Number("height", frame.Height)),
            new XElement(Svg + "g", Class("wires"), sheet.Wires.Nets.Select(Wire)),
            sheet.Symbols.Where(s => s.Symbol.Ink.Count > 0).Select(Symbol),
            new XElement(Svg + "g", Class("dots"), sheet.Wires.Dots.Select(d => new XElement(Svg + "circle", Class("f"), Number("cx", d.X), Number("cy", d.Y), Number("r", DotRadius)))),
            sheet.Labels.Select(Label));
        return svg.ToString(SaveOptions.DisableFormatting);
    }

    private static XElement Wire(Wires.Net net) => new(Svg + "path", Class("w"), new XAttribute("d", string.Concat(net.Lines.Select(Line))));

    private static string Line(IReadOnlyList<Point> points) =>
        $"M{N(points[0].X)} {N(points[0].Y)}" + string.Concat(points.Zip(points.Skip(1), (a, b) => a.Y == b.Y ? $"H{N(b.X)}" : $"V{N(b.Y)}"));

    // The group says which element it is and where its pins are, so that a drawing can be read back and checked.
    private static XElement Symbol(PlacedSymbol symbol) => new(Svg + "g",
        new XAttribute("data-is", symbol.IsPart ? symbol.Element!.Kind.ToString() : symbol.Cell.Kind.ToString()),
        new XAttribute("data-name", symbol.Cell.Name),
        new XAttribute("data-pins", string.Join(';', symbol.PinsAt.Select(p => $"{p.Pin.Name},{p.X},{p.Y}"))),
        symbol.Symbol.Ink.Select(i => Draw(i.Moved(symbol.X, symbol.Y))));

    private static XElement Draw(Ink ink) => ink switch
    {
        Strokes strokes => new(Svg + "path", Class(Look(strokes.Look)), new XAttribute("d", "M" + string.Join('L', strokes.Points.Select(p => $"{N(p.X)} {N(p.Y)}")) + (strokes.Closed ? "z" : ""))),
        HalfCircle half => new(Svg + "path", Class("w"), new XAttribute("d", $"M{N(half.From.X)} {N(half.From.Y)}A{N(Radius(half))} {N(Radius(half))} 0 0 {(half.Clockwise ? 1 : 0)} {N(half.To.X)} {N(half.To.Y)}")),
        Ring ring => new(Svg + "circle", Class(Look(ring.Look)), Number("cx", ring.Centre.X), Number("cy", ring.Centre.Y), Number("r", ring.Radius)),
        Sign sign => new(Svg + "text", Class("sign"), Number("x", sign.Centre.X), Number("y", sign.Centre.Y + (sign.Size * 0.36)), Number("font-size", sign.Size), new XAttribute("text-anchor", "middle"), sign.Text),
        _ => throw new ArgumentException($"Ink of the kind {ink.GetType().Name} is not drawn.", nameof(ink)),
    };

    private static double Radius(HalfCircle half) => Math.Max(Math.Abs(half.From.X - half.To.X), Math.Abs(half.From.Y - half.To.Y)) / 2;

    private static string Look(InkLook look) => look switch
    {
        InkLook.Heavy => "h",
        InkLook.Dashed => "d",
        InkLook.Hollow => "b",
        InkLook.Solid => "f",
        _ => "w",
    };

    private static IEnumerable<XElement> Label(SetLabel label)
    {
        var x = label.Box.Left + (label.Box.Width * (int)label.Anchor / 2);
        var top = label.Box.Top;
        foreach (var line in label.Block.Lines)
        {
            yield return Line(line, x, top, label);
            top += DrawnText.Row;
        }

        if (label.Block.Share is { } share)
        {
            var left = label.Box.Left + ((label.Box.Width - LabelBlock.BarWidth) * (int)label.Anchor / 2);
            yield return new(Svg + "rect", Class("bar"), Number("x", left), Number("y", top + 2), Number("width", LabelBlock.BarWidth), Number("height", LabelBlock.BarHeight));
            yield return new(Svg + "rect", Class("f"), Number("x", left), Number("y", top + 2), Number("width", LabelBlock.BarWidth * share), Number("height", LabelBlock.BarHeight));
        }
    }

    private static XElement Line(LabelLine line, double x, double top, SetLabel label)
    {
        var text = new XElement(Svg + "text", Class(line.Role.ToString().ToLowerInvariant()),
            Number("x", x), Number("y", top + (DrawnText.Row * 0.78)), Number("font-size", line.Size),
            label.Anchor == TextAnchor.Start ? null : new XAttribute("text-anchor", label.Anchor == TextAnchor.End ? "end" : "middle"),
            label.Of is { } of ? new XAttribute("data-of", of.Cell.Name) : null, label.Node is { } node ? new XAttribute("data-node", node) : null);
        if (line.Role != LabelRole.Name)
        {
            text.Add(line.Text);
            return text;
        }

        var (stem, subscript) = DrawnText.Split(line.Text);
        text.Add(stem);
        if (subscript.Length > 0)
            text.Add(new XElement(Svg + "tspan", Number("dy", 3.5), Number("font-size", line.Size * DrawnText.Small), subscript));
        return text;
    }

    private static string Style() =>
        $"text{{font-family:{Palette.Font}}}.title{{font-weight:600}}.note{{font-style:italic}}"
        + $".w,.h,.d,.b,.bar{{stroke-width:{Width(Stroke)};stroke-linejoin:miter}}.h{{stroke-width:{Width(HeavyStroke)}}}.d{{stroke-dasharray:4 3}}.w,.h,.d{{fill:none}}.bar{{stroke-width:1;fill:none}}"
        + Colours(c => c.Light) + "@media (prefers-color-scheme:dark){" + Colours(c => c.Dark) + "}";

    private static string Colours(Func<(string Light, string Dark), string> at) =>
        $".paper,.b{{fill:{at(Palette.Paper)}}}text,.f{{fill:{at(Palette.Ink)}}}.value{{fill:{at(Palette.Soft)}}}.w,.h,.d,.b,.bar{{stroke:{at(Palette.Ink)}}}.note{{fill:{at(Palette.Line(0))}}}";

    private static string Width(double width) => width.ToString(CultureInfo.InvariantCulture);

    private static string N(double value) => SvgWriter.N(value);

    private static XAttribute Class(string name) => new("class", name);

    private static XAttribute Number(string name, double value) => new(name, N(value));
}
