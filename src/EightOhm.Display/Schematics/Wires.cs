using EightOhm.Display.Figures;

namespace EightOhm.Display.Schematics;

/// <summary>The wires of a drawing from where they begin, end or meet to the next such place, and the dots where three meet.</summary>
internal sealed record Wires(IReadOnlyList<Wires.Net> Nets, IReadOnlyList<Point> Dots)
{
    /// <summary>The lines of one node.</summary>
    internal sealed record Net(string Name, IReadOnlyList<IReadOnlyList<Point>> Lines);

    /// <summary>All straight pieces.</summary>
    public IEnumerable<(Point From, Point To)> Runs => Nets.SelectMany(n => n.Lines).SelectMany(l => l.Zip(l.Skip(1)));

    /// <summary>Reads them off the grid.</summary>
    /// <param name="grid">The grid.</param>
    /// <param name="names">The nets by their numbers.</param>
    /// <param name="symbols">All symbols.</param>
    public static Wires Of(WireGrid grid, IReadOnlyList<string> names, IReadOnlyList<PlacedSymbol> symbols)
    {
        var nets = new List<Net>();
        var dots = new List<Point>();
        var leads = symbols.SelectMany(s => s.PinsAt).Where(p => p.Pin.Out != default).GroupBy(p => grid.Cell(p.X, p.Y)).ToDictionary(g => g.Key, g => g.Count());
        for (var net = 0; net < names.Count; net++)
        {
            var cells = grid.CellsOf(net);
            dots.AddRange(cells.Where(c => grid.Arms(c, net) + (grid.PinNet[c] == net ? leads.GetValueOrDefault(c) : 0) >= 3).Select(grid.At));
            if (cells.Count > 0) nets.Add(new(names[net], [.. Lines(grid, net, cells)]));
        }

        return new(nets, dots);
    }

    private static IEnumerable<IReadOnlyList<Point>> Lines(WireGrid grid, int net, IReadOnlyCollection<int> cells)
    {
        var walked = new HashSet<(int, int)>();
        bool Ends(int cell) => grid.PinNet[cell] == net || grid.Arms(cell, net) != 2;
        foreach (var start in cells.Where(Ends))
            for (var first = 0; first < 4; first++)
            {
                if (grid.WireFrom(start, first) != net || walked.Contains((start, first))) continue;
                var points = new List<Point> { grid.At(start) };
                var (cell, way) = (grid.Beside(start, first), first);
                while (!Ends(cell))
                {
                    var next = Enumerable.Range(0, 4).First(w => w != (way + 2) % 4 && grid.WireFrom(cell, w) == net);
                    if (next != way) points.Add(grid.At(cell));
                    (cell, way) = (grid.Beside(cell, next), next);
                }

                walked.Add((cell, (way + 2) % 4));
                points.Add(grid.At(cell));
                yield return points;
            }
    }
}
