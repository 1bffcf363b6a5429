using EightOhm.Circuits;
using EightOhm.Display.Figures;

namespace EightOhm.Display.Schematics;

/// <summary>A drawing laid out: where everything stands, in pixels.</summary>
internal sealed record SchematicSheet(IReadOnlyList<PlacedSymbol> Symbols, Wires Wires, IReadOnlyList<SetLabel> Labels, Box Frame)
{
    private const int Rounds = 7;
    private const double Pad = 10;

    /// <summary>Lays a circuit out by its plan.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="notes">What stands beside an element besides its name and value.</param>
    /// <exception cref="ArgumentException">The plan does not fit the circuit, or leaves the wires no way.</exception>
    public static SchematicSheet Of(Circuit circuit, Annotations notes) => Of(circuit, PlanText.Read(circuit), notes);

    /// <summary>Lays a part of a plan out.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="cells">What stands where.</param>
    /// <param name="notes">What stands beside an element besides its name and value.</param>
    /// <exception cref="ArgumentException">The plan leaves the wires no way.</exception>
    public static SchematicSheet Of(Circuit circuit, IReadOnlyList<PlanCell> cells, Annotations notes)
    {
        SchematicSheet? best = null;
        var (fewest, looser) = (int.MaxValue, 0);
        var spare = new Dictionary<string, int>();
        IReadOnlyList<string> lost = [];
        for (var round = 0; round < Rounds && fewest > 0; round++)
        {
            var symbols = PlanSymbols.Of(circuit, cells);
            foreach (var symbol in symbols)
            {
                symbol.Label = SymbolWords.Of(circuit, symbol, notes);
                symbol.Spare = spare.GetValueOrDefault(symbol.Cell.Name);
            }

            PlanLayout.Place(symbols, looser);
            symbols.AddRange(LocalMarks.For(circuit, symbols));
            foreach (var mark in symbols.Where(s => s.Label is null && s.Cell.Kind == PlanKind.Rail))
                mark.Label = SymbolWords.Of(circuit, mark, notes);
            var grid = new WireGrid(symbols);
            foreach (var symbol in symbols.Where(s => s.IsPart && !s.IsPoint))
                if (LabelRoom.Usual(symbol) is { } words) grid.WishWords(words);
            var names = new List<string>();
            lost = WireRouter.Route(grid, symbols, names);
            var wires = Wires.Of(grid, names, symbols);
            var room = new LabelRoom(symbols, wires);
            var (labels, without) = room.Place();
            // Wires that find no way need more tracks everywhere; words that find no place need room where they are.
            if (lost.Count > 0) looser++;
            foreach (var name in without.Select(s => s.Cell.Name))
                spare[name] = spare.GetValueOrDefault(name) + PlacedSymbol.Grid;
            var faults = (100 * lost.Count) + without.Count;
            if (faults >= fewest) continue;
            var named = symbols.Where(s => s.Label is not null && s.IsPoint).SelectMany(s => s.Nets).ToHashSet();
            labels = [.. labels, .. room.BesideWires(circuit.Nodes.Where(n => !named.Contains(n) && notes.At(n) is not null).Select(n => (n, notes.At(n)!)), wires)];
            (fewest, best) = (faults, new(symbols, wires, labels, FrameOf(symbols, wires, labels)));
        }

        return fewest >= 100
            ? throw new ArgumentException($"The plan leaves the wire of {string.Join(", ", lost)} no way. Put what hangs on it nearer together, or an empty column or row (\".\") between.", nameof(circuit))
            : best!;
    }

    /// <summary>The drawing elsewhere.</summary>
    public SchematicSheet Moved(int dx, int dy)
    {
        foreach (var symbol in Symbols)
            (symbol.X, symbol.Y) = (symbol.X + dx, symbol.Y + dy);
        Point Move(Point p) => new(p.X + dx, p.Y + dy);
        Box MoveBox(Box b) => b with { Left = b.Left + dx, Top = b.Top + dy };
        return new(Symbols,
            new([.. Wires.Nets.Select(n => n with { Lines = [.. n.Lines.Select(IReadOnlyList<Point> (l) => [.. l.Select(Move)])] })], [.. Wires.Dots.Select(Move)]),
            [.. Labels.Select(l => l with { Box = MoveBox(l.Box) })], MoveBox(Frame));
    }

    private static Box FrameOf(IReadOnlyList<PlacedSymbol> symbols, Wires wires, IReadOnlyList<SetLabel> labels)
    {
        var boxes = symbols.Where(s => s.Symbol.Ink.Count > 0).Select(s => s.Moved(s.Symbol.Extent)).Concat(labels.Select(l => l.Box))
            .Concat(wires.Runs.Select(r => new Box(Math.Min(r.From.X, r.To.X), Math.Min(r.From.Y, r.To.Y), Math.Abs(r.From.X - r.To.X), Math.Abs(r.From.Y - r.To.Y)))).ToArray();
        double left = boxes.Min(b => b.Left) - Pad, top = boxes.Min(b => b.Top) - Pad;
        return new(left, top, Math.Ceiling(boxes.Max(b => b.Right) + Pad - left), Math.Ceiling(boxes.Max(b => b.Bottom) + Pad - top));
    }
}
