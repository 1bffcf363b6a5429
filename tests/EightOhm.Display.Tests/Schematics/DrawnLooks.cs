using System.Xml.Linq;
using EightOhm.Display.Figures;
using EightOhm.Display.Schematics;

namespace EightOhm.Display.Tests.Schematics;

/// <summary>What a reader would stumble over in a picture: words on words or ink, labels nearer to another part, symbols whose ink contradicts their pins.</summary>
internal static class DrawnLooks
{
    /// <summary>All of it; nothing in a good drawing.</summary>
    public static IEnumerable<string> Faults(string svg)
    {
        var netlist = new DrawnNetlist(svg);
        var texts = XDocument.Parse(svg).Root!.Elements().Where(e => e.Name.LocalName == "text").Select(e => (e.Value, Box: BoxOf(e), Of: e.Attribute("data-of")?.Value)).ToArray();
        return TextOnText(texts).Concat(TextOnInk(texts, netlist)).Concat(NearestPart(texts, netlist)).Concat(netlist.Parts.SelectMany(Ink)).Concat(WireOnInk(netlist));
    }

    /// <summary>Where a text stands, by the widths that the layout reckons with.</summary>
    internal static Box BoxOf(XElement text)
    {
        var size = DrawnPart.Number(text.Attribute("font-size")!.Value);
        var width = text.Nodes().Sum(n => n is XElement tspan
            ? DrawnText.Plain(tspan.Value, DrawnPart.Number(tspan.Attribute("font-size")!.Value))
            : DrawnText.Plain(((XText)n).Value, size));
        double x = DrawnPart.Number(text.Attribute("x")!.Value), y = DrawnPart.Number(text.Attribute("y")!.Value);
        var left = (text.Attribute("text-anchor")?.Value) switch { "end" => x - width, "middle" => x - (width / 2), _ => x };
        return new(left, y - (size * 0.75), width, size * 0.95);
    }

    private static IEnumerable<string> TextOnText((string Value, Box Box, string? Of)[] texts) =>
        from i in Enumerable.Range(0, texts.Length)
        from j in Enumerable.Range(0, i)
        where texts[i].Box.Overlaps(texts[j].Box.Grow(-0.5))
        select $"\"{texts[i].Value}\" stands on \"{texts[j].Value}\"";

    private static IEnumerable<string> TextOnInk((string Value, Box Box, string? Of)[] texts, DrawnNetlist netlist)
    {
        foreach (var (value, box, of) in texts)
        {
            foreach (var (from, to) in netlist.Wires)
                if (Touches(box, from, to)) yield return $"\"{value}\" stands on the wire from {from} to {to}";
            foreach (var dot in netlist.Dots)
                if (box.Grow(3).Holds(dot)) yield return $"\"{value}\" stands on the dot at {dot}";
            foreach (var part in netlist.Parts.Where(p => !(p.Name == of && p.Is is "Block" or "OpAmp" or "Amplifier" or "Delay")))
                foreach (var (_, points) in part.Ink)
                    foreach (var (a, b) in points.Zip(points.Skip(1)))
                        if (Touches(box, a, b)) yield return $"\"{value}\" stands on the ink of {part.Name} at {a}";
        }
    }

    private static IEnumerable<string> NearestPart((string Value, Box Box, string? Of)[] texts, DrawnNetlist netlist)
    {
        var parts = netlist.Parts.Where(p => !p.IsMark).ToArray();
        foreach (var label in texts.Where(t => parts.Any(p => p.Name == t.Of)).GroupBy(t => t.Of))
        {
            // The lines of a label are one thing to the eye.
            double left = label.Min(t => t.Box.Left), top = label.Min(t => t.Box.Top), right = label.Max(t => t.Box.Right), bottom = label.Max(t => t.Box.Bottom);
            var box = new Box(left, top, right - left, bottom - top);
            var nearest = parts.MinBy(p => Far(box, p.Body))!;
            if (nearest.Name != label.Key) yield return $"the label of {label.Key} stands nearer to {nearest.Name}";
        }
    }

    private static IEnumerable<string> WireOnInk(DrawnNetlist netlist)
    {
        foreach (var part in netlist.Parts)
            foreach (var (from, to) in netlist.Wires)
            {
                var body = part.Body.Grow(-1);
                if (part.Pins.Count > 0 && !part.IsMark && Touches(body, from, to) && !part.Pins.Any(p => p.At == from || p.At == to))
                    yield return $"a wire runs over {part.Name} at {from}";
            }
    }

    // What the ink itself says of the pins: an arrow is at the emitter and points out of an npn, + is at plus, a diode's triangle stands on its anode.
    private static IEnumerable<string> Ink(DrawnPart part)
    {
        foreach (var (pin, at) in part.Pins)
            if (!part.Ink.Any(i => i.Points.Zip(i.Points.Skip(1)).Any(l => Touches(new Box(at.X, at.Y, 0, 0).Grow(0.3), l.First, l.Second))) && !part.IsMark)
                yield return $"no ink of {part.Name} reaches its pin {pin} at {at}";
        Point Pin(string name) => part.Pins.Single(p => p.Name == name).At;
        string Nearest(Point p) => part.Pins.MinBy(q => Far(q.At, p)).Name;
        Point[] Solid() => part.Ink.Single(i => i.Look == "f").Points;
        switch (part.Is)
        {
            case "Npn" or "Pnp":
                var (tip, tail) = (Solid()[0], Middle(Solid()[1..3]));
                if (Nearest(tip) == "c" || Far(tip, Pin("e")) > Far(tip, Pin("c"))) yield return $"the arrow of {part.Name} is not at its emitter";
                var outwards = Far(tip, Pin("b")) > Far(tail, Pin("b"));
                if (outwards != (part.Is == "Npn")) yield return $"the arrow of {part.Name} points the wrong way for {part.Is}";
                break;
            case "CurrentSource":
                if (Nearest(Solid()[0]) != "b") yield return $"the arrow of {part.Name} does not leave at b";
                break;
            case "Diode" or "Zener":
                if (Nearest(Middle(part.Ink.Single(i => i.Look == "b").Points[..3])) != "anode") yield return $"{part.Name} is drawn the wrong way round";
                break;
            case "OpAmp" or "VoltageSource" or "BridgeRectifier" or "SummingPoint":
                foreach (var (text, at) in part.Signs.Where(s => s.Text is "+" or "−"))
                    if (Nearest(at) != (text == "+" ? "plus" : "minus")) yield return $"{text} of {part.Name} stands at {Nearest(at)}";
                break;
        }
    }

    private static Point Middle(IReadOnlyCollection<Point> points) => new(points.Average(p => p.X), points.Average(p => p.Y));

    private static double Far(Point a, Point b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));

    private static double Far(Box a, Box b)
    {
        var dx = Math.Max(0, Math.Max(a.Left - b.Right, b.Left - a.Right));
        var dy = Math.Max(0, Math.Max(a.Top - b.Bottom, b.Top - a.Bottom));
        return Math.Sqrt((dx * dx) + (dy * dy));
    }

    // A straight piece and a box: by steps of half a pixel, as exact as the eye.
    private static bool Touches(Box box, Point a, Point b)
    {
        var steps = (int)Math.Ceiling(Far(a, b) * 2) + 1;
        for (var i = 0; i <= steps; i++)
            if (box.Holds(new Point(a.X + ((b.X - a.X) * i / steps), a.Y + ((b.Y - a.Y) * i / steps)))) return true;
        return false;
    }
}
