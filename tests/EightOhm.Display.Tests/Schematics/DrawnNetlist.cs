using System.Xml.Linq;
using EightOhm.Circuits;
using EightOhm.Display.Figures;

namespace EightOhm.Display.Tests.Schematics;

/// <summary>Reads the netlist back from a picture alone: from its wires, dots and pins.</summary>
/// <remarks>Wires join where two ends meet or where a dot is; wires that cross without a dot do not.</remarks>
internal sealed class DrawnNetlist
{
    private readonly Dictionary<Point, Point> joined = [];
    private readonly List<(Point From, Point To)> pieces = [];
    private readonly HashSet<Point> dots;
    private readonly List<string> faults = [];

    public DrawnNetlist(string svg)
    {
        var root = XDocument.Parse(svg).Root!;
        Parts = [.. root.Elements().Where(e => e.Attribute("data-is") is not null).Select(DrawnPart.Read)];
        foreach (var path in Group(root, "wires").Elements())
            foreach (var line in DrawnPart.Lines(path.Attribute("d")!.Value))
                pieces.AddRange(line.Zip(line.Skip(1)));
        dots = [.. Group(root, "dots").Elements().Select(e => new Point(DrawnPart.Number(e.Attribute("cx")!.Value), DrawnPart.Number(e.Attribute("cy")!.Value)))];
        Join();
    }

    public IReadOnlyList<DrawnPart> Parts { get; }

    public IReadOnlyList<(Point From, Point To)> Wires => pieces;

    public IReadOnlyCollection<Point> Dots => dots;

    /// <summary>What the picture gets wrong of the circuit; nothing when they agree.</summary>
    public IEnumerable<string> Faults(Circuit circuit)
    {
        foreach (var fault in faults) yield return fault;
        var drawn = new Dictionary<(string, string), Point>();
        foreach (var part in Parts.Where(p => p.Is is not ("Ground" or "Rail" or "Node")))
            foreach (var (pin, at) in part.Pins)
                drawn[(part.Name, pin)] = Root(at);
        var nodes = new Dictionary<Point, string>();
        foreach (var element in circuit.Elements.Where(e => e.Kind is not (ElementKind.Rail or ElementKind.Coupling)))
            foreach (var terminal in element.Terminals)
            {
                if (!drawn.TryGetValue((element.Name, terminal.Name), out var net))
                    yield return $"{element.Name}.{terminal.Name} is not drawn";
                else if (nodes.TryGetValue(net, out var node) && node != terminal.Node)
                    yield return $"{element.Name}.{terminal.Name} is drawn on {node} and belongs on {terminal.Node}";
                else
                    nodes[net] = terminal.Node;
            }

        foreach (var node in nodes.GroupBy(n => n.Value).Where(g => g.Count() > 1))
            yield return $"node {node.Key} is drawn in {node.Count()} parts that nothing joins";
        foreach (var mark in Parts.Where(p => p.Is is "Ground" or "Rail" or "Node"))
            if (!nodes.TryGetValue(Root(mark.Pins[0].At), out var node) || node != (mark.Is == "Ground" ? Circuit.Ground : mark.Name))
                yield return $"the mark {mark.Name} hangs on {node}";
    }

    private static XElement Group(XElement root, string name) => root.Elements().Single(e => e.Attribute("class")?.Value == name);

    private void Join()
    {
        var ends = pieces.SelectMany(p => new[] { p.From, p.To }).ToHashSet();
        var leads = Parts.SelectMany(p => p.Pins.Select(q => (q.At, Leads: p.Is is "Node" or "Rail" or "Terminal" ? 0 : 1, p))).ToArray();
        foreach (var (from, to) in pieces) Union(from, to);
        foreach (var at in ends.Concat(dots).Concat(leads.Select(l => l.At)).Distinct())
        {
            var ending = pieces.Count(p => p.From == at || p.To == at);
            var passing = pieces.Where(p => IsInside(p, at)).ToArray();
            var pins = leads.Where(l => l.At == at).ToArray();
            var arms = ending + (2 * passing.Length) + pins.Sum(p => p.Leads);
            var dotted = dots.Contains(at);
            if (arms >= 3 && !dotted) faults.Add($"{arms} lines meet at {at} without a dot");
            if (arms < 3 && dotted) faults.Add($"a dot at {at} where {arms} lines meet");
            if (arms + pins.Length < 2 && !(ending == 1 && pins.Length == 1)) faults.Add($"a line ends in nothing at {at}");
            if (dotted)
                foreach (var piece in passing) Union(piece.From, at);
            // A pin on a wire that passes is joined by the dot alone.
            Root(at);
        }

        // All grounds are one node, and all marks of one name: a rail, a wire cut between stages.
        foreach (var marks in Parts.Where(p => p.Is is "Ground" or "Rail" or "Node").GroupBy(p => p.Is == "Ground" ? "0" : p.Name))
            foreach (var mark in marks) Union(marks.First().Pins[0].At, mark.Pins[0].At);
    }

    private static bool IsInside((Point From, Point To) piece, Point p) =>
        piece.From.X == piece.To.X
            ? p.X == piece.From.X && p.Y > Math.Min(piece.From.Y, piece.To.Y) && p.Y < Math.Max(piece.From.Y, piece.To.Y)
            : p.Y == piece.From.Y && p.X > Math.Min(piece.From.X, piece.To.X) && p.X < Math.Max(piece.From.X, piece.To.X);

    private Point Root(Point p)
    {
        while (joined.TryGetValue(p, out var up) && up != p) p = up;
        joined.TryAdd(p, p);
        return p;
    }

    private void Union(Point a, Point b) => joined[Root(a)] = Root(b);
}
