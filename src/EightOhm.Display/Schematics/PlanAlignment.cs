using EightOhm.Display.Figures;

namespace EightOhm.Display.Schematics;

/// <summary>Moves symbols a little off their rows and columns, so that wires to their neighbours run straight.</summary>
internal static class PlanAlignment
{
    private const int Grid = PlacedSymbol.Grid;

    // A terminal or a lying part beside a pin that is off its row moves to the pin's height, and hands that on to its own neighbour; so for what stands above or below.
    public static void Align(IReadOnlyList<PlacedSymbol> symbols)
    {
        foreach (var symbol in symbols)
            (symbol.AsideX, symbol.AsideY) = (0, 0);
        var settled = symbols.Where(s => !s.IsPoint && s.Symbol.Pins.Count > 2).ToHashSet();
        var queue = new Queue<PlacedSymbol>(settled);
        while (queue.TryDequeue(out var from))
        {
            foreach (var (pin, net) in from.Symbol.Pins.Zip(from.Nets))
            {
                if (Neighbour(symbols, from, pin.Out) is not { } other || settled.Contains(other)) continue;
                var met = other.Symbol.Pins.Zip(other.Nets).Where(p => p.Second == net && (p.First.Out == default || p.First.Out == new Way(-pin.Out.X, -pin.Out.Y))).ToArray();
                if (met.Length == 0 || (other.Cell.Kind == PlanKind.Rail && !pin.Out.IsAcross)) continue;
                if (pin.Out.IsAcross) other.AsideY = from.AsideY + pin.Y - met[0].First.Y;
                else other.AsideX = from.AsideX + pin.X - met[0].First.X;
                settled.Add(other);
                queue.Enqueue(other);
            }
        }
    }

    // A terminal a little off the one pin that it leads to moves to that pin's height, where nothing stands between.
    public static void Straighten(IReadOnlyList<PlacedSymbol> symbols)
    {
        foreach (var terminal in symbols.Where(s => s.IsPoint && s.Cell.Kind is PlanKind.Node or PlanKind.Part))
        {
            var ends = symbols.Where(s => s != terminal).SelectMany(s => s.PinsAt.Select(p => (p.Pin, p.Net, p.X, p.Y, Of: s))).Where(p => p.Net == terminal.Nets[0]).ToArray();
            if (ends.Length != 1 || !ends[0].Pin.Out.IsAcross || (terminal.X - ends[0].X) * ends[0].Pin.Out.X <= 0 || Math.Abs(ends[0].Y - terminal.Y) > 8 * Grid) continue;
            var y = ends[0].Y;
            double left = Math.Min(terminal.X, ends[0].X), right = Math.Max(terminal.X, ends[0].X);
            var way = new Box(left - 4, y - 8, right - left + 8, 16);
            if (symbols.Any(s => s != terminal && s != ends[0].Of && s.Moved(s.Symbol.Extent).Overlaps(way))) continue;
            terminal.Y = y;
        }

        // A bend a little off the track that leads straight into a pin moves onto it.
        foreach (var bend in symbols.Where(s => s.Cell.Kind == PlanKind.Bend))
        {
            var ends = symbols.Where(s => s.Cell.Kind != PlanKind.Bend).SelectMany(s => s.PinsAt).Where(p => p.Net == bend.Nets[0] && p.Pin.Out != default).ToArray();
            bend.X = Snapped(bend.X, ends.Select(p => p.X + (p.Pin.Out.X * Grid)));
            bend.Y = Snapped(bend.Y, ends.Select(p => p.Y + (p.Pin.Out.Y * Grid)));
        }
    }

    private static int Snapped(int at, IEnumerable<int> tracks)
    {
        var near = tracks.Where(t => Math.Abs(t - at) <= 3 * Grid).OrderBy(t => Math.Abs(t - at)).ToArray();
        return near.Length > 0 ? near[0] : at;
    }

    private static PlacedSymbol? Neighbour(IReadOnlyList<PlacedSymbol> symbols, PlacedSymbol from, Way way)
    {
        if (way.IsAcross)
            return symbols.Where(s => s.Cell.Row == from.Cell.Row && (s.Cell.Column - from.Cell.Column) * way.X > 0).MinBy(s => Math.Abs(s.Cell.Column - from.Cell.Column));
        return symbols.Where(s => s.Cell.Column == from.Cell.Column && (s.Cell.Row - from.Cell.Row) * way.Y > 0).MinBy(s => Math.Abs(s.Cell.Row - from.Cell.Row));
    }
}
