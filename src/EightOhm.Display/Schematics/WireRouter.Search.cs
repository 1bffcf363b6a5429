namespace EightOhm.Display.Schematics;

/// <content>The search for the cheapest way from a tree of wires to the nearest pin.</content>
internal sealed partial class WireRouter
{
    // From all of the tree at once to the nearest pin that waits; the state in which it was reached.
    private int? Reach(int net, List<int> tree, HashSet<int> waiting)
    {
        open.Clear();
        turn++;
        aims.Clear();
        foreach (var cell in waiting) aims.Add((cell % grid.Width, cell / grid.Width));
        foreach (var cell in tree)
        {
            if (Crosses(cell, net)) continue;
            var arms = grid.Arms(cell, net);
            // A branch from the wire reads better than one from a pin.
            var first = (arms >= 3 ? MeetingOfFour : 0) + (grid.PinNet[cell] == net && arms > 0 && !marks.Contains(cell) && !bends.Contains(cell) ? AtPin : 0);
            for (var way = 0; way < 4; way++)
                if (grid.WireFrom(cell, way) == WireGrid.Free)
                    Try(net, cell, way, first + (leads.TryGetValue(cell, out var lead) && lead != way ? Bend : 0), -1 - cell);
        }

        while (open.TryDequeue(out var state, out var expected))
        {
            var (cell, way) = (state / 4, state % 4);
            var paid = price[state];
            if (expected > paid + Ahead(cell)) continue;
            if (waiting.Contains(cell)) return state;
            if (grid.PinNet[cell] == net) continue;
            var straightOnly = Crosses(cell, net);
            for (var next = 0; next < 4; next++)
            {
                if (next == (way + 2) % 4 || (straightOnly && next != way)) continue;
                Try(net, cell, next, paid + (next == way ? 0 : Bend), state);
            }
        }

        return null;
    }

    private void Try(int net, int cell, int way, int paid, int back)
    {
        if (grid.WireFrom(cell, way) != WireGrid.Free) return;
        var next = grid.Beside(cell, way);
        if (grid.IsEdge(next) || (grid.PinNet[next] != WireGrid.Free && grid.PinNet[next] != net) || (grid.Blocked[next] && grid.PinNet[next] != net)) return;
        // A wire comes into a pin along its lead; from its side it would bend there.
        var cost = Step + (grid.Words[next] ? ThroughWords : 0) + (leads.TryGetValue(next, out var lead) && lead != (way + 2) % 4 ? Bend : 0);
        for (var side = 0; side < 4; side++)
        {
            var wire = grid.WireFrom(next, side);
            if (wire == WireGrid.Free || wire == net) continue;
            // Another net is there: only straight over a straight wire.
            if (side == way || side == (way + 2) % 4 || grid.WireFrom(next, (side + 2) % 4) != wire) return;
            cost += Crossing / 2;
        }

        cost += Near(next, (way + 1) % 4, way, net) + Near(next, (way + 3) % 4, way, net);
        var state = (next * 4) + way;
        if (stamp[state] == turn && price[state] <= paid + cost) return;
        (stamp[state], price[state], from[state]) = (turn, paid + cost, back);
        open.Enqueue(state, paid + cost + Ahead(next));
    }

    // No way to the nearest pin that waits is shorter than the straight steps there.
    private int Ahead(int cell)
    {
        int x = cell % grid.Width, y = cell / grid.Width, least = int.MaxValue;
        foreach (var (aimX, aimY) in aims)
            least = Math.Min(least, Math.Abs(x - aimX) + Math.Abs(y - aimY));
        return Step * least;
    }

    // A wire one track beside another along its way is hard to follow.
    private int Near(int cell, int side, int way, int net)
    {
        var beside = grid.Beside(cell, side);
        if (grid.IsEdge(beside)) return 0;
        var wire = grid.WireFrom(beside, (way + 2) % 4);
        return (wire != WireGrid.Free && wire != net) || grid.Blocked[beside] ? Beside : 0;
    }

    private bool Crosses(int cell, int net)
    {
        for (var way = 0; way < 4; way++)
            if (grid.WireFrom(cell, way) is var wire && wire != WireGrid.Free && wire != net) return true;
        return false;
    }
}
