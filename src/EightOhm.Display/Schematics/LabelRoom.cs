using EightOhm.Display.Figures;

namespace EightOhm.Display.Schematics;

/// <summary>Finds the places of the words: beside their symbol, on no ink and no other words, and nearer to it than to any other.</summary>
internal sealed class LabelRoom
{
    private const double Gap = 5;

    private readonly IReadOnlyList<PlacedSymbol> symbols;
    private readonly List<Box> taken = [];
    private readonly List<(PlacedSymbol Of, Box Body)> bodies;

    public LabelRoom(IReadOnlyList<PlacedSymbol> symbols, Wires wires)
    {
        this.symbols = symbols;
        bodies = [.. symbols.Where(s => s.IsPart).Select(s => (s, s.Body))];
        taken.AddRange(symbols.Where(s => s.Symbol.Ink.Count > 0).Select(s => s.Body.Grow(1)));
        foreach (var (_, _, x, y, body) in symbols.SelectMany(s => s.PinsAt.Select(p => (p.Pin, p.Net, p.X, p.Y, s.Body))))
            taken.Add(Between(new(x, y), new(Math.Clamp(x, body.Left, body.Right), Math.Clamp(y, body.Top, body.Bottom))).Grow(1.5));
        taken.AddRange(wires.Runs.Select(r => Between(r.From, r.To).Grow(2)));
        taken.AddRange(wires.Dots.Select(d => new Box(d.X, d.Y, 0, 0).Grow(4)));
    }

    /// <summary>The labels in their places, and the symbols whose words found none.</summary>
    public (IReadOnlyList<SetLabel> Set, IReadOnlyList<PlacedSymbol> Lost) Place()
    {
        var (set, lost) = (new List<SetLabel>(), new List<PlacedSymbol>());
        var waiting = symbols.Where(s => s.Label is not null).ToList();
        foreach (var symbol in waiting.Where(s => s.Symbol.NameRoom is not null))
            set.Add(Inside(symbol));
        // Those with the fewest places to go first.
        foreach (var symbol in waiting.Where(s => s.Symbol.NameRoom is null).OrderBy(s => Places(s).Count(p => Free(s, p.Box))).ToArray())
        {
            var places = Places(symbol).ToArray();
            var best = places.Where(p => Free(symbol, p.Box)).Cast<SetLabel?>().FirstOrDefault();
            if (best is null) lost.Add(symbol);
            best ??= places[0];
            taken.Add(best.Box.Grow(1.5));
            set.Add(best);
        }

        return (set, lost);
    }

    /// <summary>The words of nodes beside their wires: over a level piece or right of an upright one, the longest first; those that find no room are left out.</summary>
    /// <param name="nodes">The nodes with their words.</param>
    /// <param name="wires">The wires.</param>
    public IEnumerable<SetLabel> BesideWires(IEnumerable<(string Node, string Words)> nodes, Wires wires)
    {
        foreach (var (node, words) in nodes)
        {
            var block = new LabelBlock([new(words, LabelRole.Note)]);
            var pieces = wires.Nets.Where(n => n.Name == node).SelectMany(n => n.Lines).SelectMany(l => l.Zip(l.Skip(1))).OrderByDescending(p => Math.Abs(p.First.X - p.Second.X) + Math.Abs(p.First.Y - p.Second.Y));
            foreach (var place in pieces.SelectMany(p => Along(block, Between(p.First, p.Second))))
            {
                if (taken.Any(place.Box.Overlaps)) continue;
                taken.Add(place.Box.Grow(1.5));
                yield return place with { Node = node };
                break;
            }
        }
    }

    private static IEnumerable<SetLabel> Along(LabelBlock block, Box piece)
    {
        foreach (var part in new[] { 0.5, 0.25, 0.75, 0.1, 0.9 })
        {
            double x = piece.Left + (part * piece.Width), y = piece.Top + (part * piece.Height);
            if (piece.Height == 0)
            {
                yield return new(null, block, new(x - (block.Width / 2), y - 3 - block.Height, block.Width, block.Height), TextAnchor.Middle);
                yield return new(null, block, new(x - (block.Width / 2), y + 3, block.Width, block.Height), TextAnchor.Middle);
            }
            else
            {
                yield return new(null, block, new(x + Gap, y - (block.Height / 2), block.Width, block.Height), TextAnchor.Start);
                yield return new(null, block, new(x - Gap - block.Width, y - (block.Height / 2), block.Width, block.Height), TextAnchor.End);
            }
        }
    }

    /// <summary>Where the words of a symbol would usually stand; null where they stand in it, there are none, or wires leave there.</summary>
    /// <param name="symbol">In its place.</param>
    public static Box? Usual(PlacedSymbol symbol)
    {
        if (symbol.Label is null || symbol.Symbol.NameRoom is not null) return null;
        var box = Places(symbol).First().Box;
        return symbol.PinsAt.Any(p => box.Grow(PlacedSymbol.Grid).Holds(new Point(p.X, p.Y))) ? null : box;
    }

    private static SetLabel Inside(PlacedSymbol symbol)
    {
        var room = symbol.Moved(symbol.Symbol.NameRoom!.Value);
        var block = symbol.Label!;
        return new(symbol, block, new(room.Left + ((room.Width - block.Width) / 2), room.Top + ((room.Height - block.Height) / 2), block.Width, block.Height), TextAnchor.Middle);
    }

    // From the usual place to the unusual ones.
    private static IEnumerable<SetLabel> Places(PlacedSymbol s)
    {
        var (block, body) = (s.Label!, s.Body);
        double width = block.Width, height = block.Height, middle = body.Top + (body.Height / 2), centre = body.Left + (body.Width / 2);
        SetLabel Right(double dy, double dx = 0) => new(s, block, new(body.Right + Gap + dx, middle - (height / 2) + dy, width, height), TextAnchor.Start);
        SetLabel Left(double dy, double dx = 0) => new(s, block, new(body.Left - Gap - dx - width, middle - (height / 2) + dy, width, height), TextAnchor.End);
        SetLabel Above(double dx, double dy = 0) => new(s, block, new(centre - (width / 2) + dx, body.Top - 3 - dy - height, width, height), TextAnchor.Middle);
        SetLabel Below(double dx, double dy = 0) => new(s, block, new(centre - (width / 2) + dx, body.Bottom + 3 + dy, width, height), TextAnchor.Middle);
        SetLabel Corner(bool right, bool above) => new(s, block,
            new(right ? body.Right + 2 : body.Left - 2 - width, above ? body.Top - height - 1 : body.Bottom + 1, width, height), right ? TextAnchor.Start : TextAnchor.End);

        if (s.IsPoint)
            return [Left(0), Right(0), Above(0), Below(0), Corner(true, true), Corner(false, true), Corner(true, false), Corner(false, false)];
        var (wiresRight, wiresLeft) = (s.Symbol.Pins.Any(p => p.Out == Way.ToRight), s.Symbol.Pins.Any(p => p.Out == Way.ToLeft));
        IEnumerable<SetLabel> beside = wiresRight && !wiresLeft
            ? [Left(0), Left(-8), Left(8), Left(-16), Left(16), Right(-16), Right(16)]
            : [Right(0), Right(-8), Right(8), Right(-16), Right(16), Left(0), Left(-8), Left(8), Left(-16), Left(16)];
        IEnumerable<SetLabel> over =
            [Above(0), Below(0), Above(8), Above(-8), Above(16), Above(-16), Below(8), Below(-8), Below(16), Below(-16), Above(24), Above(-24), Below(24), Below(-24)];
        return s.Lies ? over : wiresLeft && wiresRight ? [.. over, .. beside] : [.. beside, .. over];
    }

    private bool Free(PlacedSymbol of, Box box)
    {
        if (taken.Any(box.Overlaps)) return false;
        if (of.Element is null || of.IsPoint) return true;
        var own = Far(box, of.Body);
        return bodies.All(b => b.Of == of || Far(box, b.Body) > own + 1.5);
    }

    private static double Far(Box a, Box b)
    {
        var dx = Math.Max(0, Math.Max(a.Left - b.Right, b.Left - a.Right));
        var dy = Math.Max(0, Math.Max(a.Top - b.Bottom, b.Top - a.Bottom));
        return Math.Sqrt((dx * dx) + (dy * dy));
    }

    private static Box Between(Point a, Point b) => new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Abs(a.X - b.X), Math.Abs(a.Y - b.Y));
}
