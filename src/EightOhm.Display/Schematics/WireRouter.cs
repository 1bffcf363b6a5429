using EightOhm.Circuits;

namespace EightOhm.Display.Schematics;

/// <summary>Leads the wires: for each net the cheapest tree from pin to pin, few bends before short ways, no crossing without need.</summary>
internal sealed partial class WireRouter
{
    // Twice the prices, so that all are whole: a step, a bend, a crossing, a meeting of four, a step through the room of words, a step close beside another wire, a branch from a pin.
    private const int Step = 2, Bend = 7, Crossing = 18, MeetingOfFour = 9, ThroughWords = 5, Beside = 2, AtPin = 4, Rounds = 3;

    private readonly WireGrid grid;
    private readonly List<string> nets;
    private readonly List<List<int>> pins;
    private readonly Dictionary<string, List<(int From, int To)>> lines = [];
    private readonly int[] price, from, stamp;
    private readonly HashSet<int> marks, bends;
    private readonly Dictionary<int, int> leads;
    private readonly PriorityQueue<int, int> open = new();
    private readonly List<(int X, int Y)> aims = [];
    private int turn;

    private WireRouter(WireGrid grid, IReadOnlyList<PlacedSymbol> symbols)
    {
        this.grid = grid;
        var ends = symbols.SelectMany(s => s.PinsAt.Select(p => (p.Net, p.Pin, Cell: grid.Cell(p.X, p.Y), Of: s))).ToArray();
        nets = [.. ends.Select(e => e.Net).Distinct(StringComparer.Ordinal)];
        pins = [.. nets.Select(n => ends.Where(e => e.Net == n).Select(e => e.Cell).Distinct().ToList())];
        foreach (var end in ends)
            grid.PinNet[end.Cell] = nets.IndexOf(end.Net);
        marks = [.. symbols.Where(s => s.Cell.Kind is PlanKind.Ground or PlanKind.Rail).Select(s => grid.Cell(s.X, s.Y))];
        // Where two leads meet in one place, a wire may come from either.
        leads = ends.Where(e => e.Pin.Out != default).GroupBy(e => e.Cell).Where(g => g.Count() == 1).ToDictionary(g => g.Key, g => Numbered(g.First().Pin.Out));
        bends = [.. symbols.Where(s => s.Cell.Kind == PlanKind.Bend).Select(s => grid.Cell(s.X, s.Y))];
        (price, from, stamp) = (new int[grid.Width * grid.Height * 4], new int[grid.Width * grid.Height * 4], new int[grid.Width * grid.Height * 4]);
    }

    // As the grid counts directions.
    private static int Numbered(Way way) => way == Way.Up ? 0 : way == Way.ToRight ? 1 : way == Way.Down ? 2 : 3;

    /// <summary>Lays all wires; the names of the nets that found no way.</summary>
    /// <param name="grid">The grid.</param>
    /// <param name="symbols">In their places, grounds among them.</param>
    /// <param name="names">Takes the nets' names, in the order of their numbers on the grid.</param>
    public static IReadOnlyList<string> Route(WireGrid grid, IReadOnlyList<PlacedSymbol> symbols, List<string> names)
    {
        var router = new WireRouter(grid, symbols);
        names.AddRange(router.nets);
        foreach (var rail in symbols.Where(s => s.IsLine))
            router.Line(rail, symbols);
        return router.All();
    }

    // A rail is a straight line over all that look to it with nothing between; the rest finds its own way.
    private void Line(PlacedSymbol rail, IReadOnlyList<PlacedSymbol> symbols)
    {
        var net = nets.IndexOf(rail.Nets[0]);
        var hanging = symbols.Where(s => s != rail).SelectMany(s => s.PinsAt)
            .Where(p => p.Net == rail.Nets[0] && !p.Pin.Out.IsAcross && p.Pin.Out != default && (rail.Y == p.Y || (rail.Y - p.Y) * p.Pin.Out.Y > 0))
            .OrderBy(p => Math.Abs(p.X - rail.X));
        foreach (var (_, _, x, y) in hanging)
        {
            var (up, along) = (rail.Y < y ? 0 : 2, x < rail.X ? 3 : 1);
            if (Straight(grid.Cell(x, y), up, Math.Abs(rail.Y - y) / PlacedSymbol.Grid, net) is not { } path
                || Straight(grid.Cell(rail.X, rail.Y), along, Math.Abs(rail.X - x) / PlacedSymbol.Grid, net) is not { } line) continue;
            Lay(path, up, net);
            Lay(line, along, net);
        }
    }

    // The cells from one to where a straight wire would end; null where something stands in its way.
    private List<int>? Straight(int cell, int way, int steps, int net)
    {
        var path = new List<int>();
        for (var i = 0; i < steps; i++)
        {
            path.Add(cell);
            cell = grid.Beside(cell, way);
            if (grid.PinNet[cell] != net && (grid.Blocked[cell] || grid.PinNet[cell] != WireGrid.Free)) return null;
        }

        return path;
    }

    private void Lay(List<int> path, int way, int net)
    {
        lines.TryAdd(nets[net], []);
        foreach (var cell in path)
        {
            grid.Lay(cell, way, net);
            lines[nets[net]].Add((cell, way));
        }
    }

    private string[] All()
    {
        // Short nets first: they have the fewest ways. Then each once more, now that it sees all others.
        var order = Enumerable.Range(0, nets.Count).Where(n => pins[n].Count > 1).OrderBy(Reach).ToArray();
        var lost = new HashSet<string>();
        var moved = true;
        for (var round = 0; round < Rounds && moved; round++)
        {
            moved = false;
            foreach (var net in order)
            {
                var before = grid.CellsOf(net);
                grid.Clear(net);
                foreach (var (cell, way) in lines.GetValueOrDefault(nets[net], []))
                    grid.Lay(cell, way, net);
                if (Tree(net)) lost.Remove(nets[net]);
                else lost.Add(nets[net]);
                moved |= !grid.CellsOf(net).SequenceEqual(before);
            }
        }

        return [.. lost];
    }

    private int Reach(int net)
    {
        var at = pins[net].Select(grid.At).ToArray();
        return (int)(at.Max(p => p.X) - at.Min(p => p.X) + at.Max(p => p.Y) - at.Min(p => p.Y));
    }

    private bool Tree(int net)
    {
        var waiting = pins[net].ToHashSet();
        var tree = grid.CellsOf(net).ToList();
        // The marks of a ground or a rail stand apart and are one node without a wire: a pin goes to the nearest.
        tree.AddRange(pins[net].Where(marks.Contains));
        if (tree.Count == 0) tree.Add(pins[net].Where(bends.Contains).Append(pins[net][0]).First());
        waiting.ExceptWith(tree);
        var whole = true;
        while (waiting.Count > 0)
        {
            if (Reach(net, tree, waiting) is not { } end)
            {
                whole = false;
                waiting.Remove(waiting.First());
                continue;
            }

            waiting.ExceptWith(Walk(net, end, tree));
        }

        foreach (var bend in pins[net].Where(bends.Contains))
            Trim(bend, net);
        if (whole && pins[net].Count > 2)
            foreach (var pin in pins[net].Where(p => !marks.Contains(p) && !bends.Contains(p)))
                Again(net, pin);
        return whole;
    }

    // What was led first did not know where the others would run: each end once more, to the tree of the others.
    private void Again(int net, int pin)
    {
        if (grid.Arms(pin, net) != 1 || lines.ContainsKey(nets[net])) return;
        var (cell, branch) = (pin, new List<(int Cell, int Way)>());
        var came = -1;
        do
        {
            var way = Enumerable.Range(0, 4).First(w => grid.WireFrom(cell, w) == net && w != came);
            branch.Add((cell, way));
            (cell, came) = (grid.Beside(cell, way), (way + 2) % 4);
        }
        while (grid.Arms(cell, net) == 2 && grid.PinNet[cell] != net);
        // A branch that ends at a single other end is the whole wire.
        if (grid.Arms(cell, net) < 2) return;
        foreach (var (at, way) in branch) grid.Lift(at, way);
        var tree = grid.CellsOf(net).ToList();
        if (Reach(net, tree, [pin]) is { } end) Walk(net, end, tree);
        else foreach (var (at, way) in branch) grid.Lay(at, way, net);
    }

    // A bend that the wire did not need would be left as a dead end.
    private void Trim(int cell, int net)
    {
        while (grid.Arms(cell, net) == 1 && (grid.PinNet[cell] == WireGrid.Free || bends.Contains(cell)))
        {
            var way = Enumerable.Range(0, 4).First(w => grid.WireFrom(cell, w) == net);
            grid.Lift(cell, way);
            cell = grid.Beside(cell, way);
        }
    }

    private List<int> Walk(int net, int end, List<int> tree)
    {
        var walked = new List<int>();
        for (var state = end; state >= 0; state = from[state])
        {
            var (cell, way) = (state / 4, state % 4);
            grid.Lay(cell, (way + 2) % 4, net);
            walked.Add(cell);
        }

        tree.AddRange(walked);
        return walked;
    }
}
