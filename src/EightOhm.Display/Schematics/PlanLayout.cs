using EightOhm.Circuits;
using EightOhm.Display.Figures;

namespace EightOhm.Display.Schematics;

/// <summary>Gives each symbol its place: rows by their tallest, columns as close as what stands beside each other allows.</summary>
internal sealed class PlanLayout
{
    private const int Grid = PlacedSymbol.Grid, LabelGap = 6;

    private readonly List<PlacedSymbol> symbols;
    private readonly int columns, rows;
    private readonly int looser;

    private PlanLayout(List<PlacedSymbol> symbols, int looser) =>
        (this.symbols, this.looser, columns, rows) = (symbols, looser, symbols.Max(s => s.Cell.Column) + 1, symbols.Max(s => s.Cell.Row) + 1);

    /// <summary>Places the symbols of a plan.</summary>
    /// <param name="symbols">As they lie.</param>
    /// <param name="looser">Tracks more between all of them, where the wires found no way.</param>
    public static void Place(List<PlacedSymbol> symbols, int looser)
    {
        var layout = new PlanLayout(symbols, looser);
        layout.Align();
        layout.PlaceColumns();
        layout.PlaceRows();
        layout.Straighten();
    }

    // A terminal a little off the one pin that it leads to moves to that pin's height, where nothing stands between.
    private void Straighten()
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

    // A terminal or a lying part beside a pin that is off its row moves to the pin's height, and hands that on to its own neighbour; so for what stands above or below.
    private void Align()
    {
        foreach (var symbol in symbols)
            (symbol.AsideX, symbol.AsideY) = (0, 0);
        var settled = symbols.Where(s => !s.IsPoint && s.Symbol.Pins.Count > 2).ToHashSet();
        var queue = new Queue<PlacedSymbol>(settled);
        while (queue.TryDequeue(out var from))
        {
            foreach (var (pin, net) in from.Symbol.Pins.Zip(from.Nets))
            {
                if (Neighbour(from, pin.Out) is not { } other || settled.Contains(other)) continue;
                var met = other.Symbol.Pins.Zip(other.Nets).Where(p => p.Second == net && (p.First.Out == default || p.First.Out == new Way(-pin.Out.X, -pin.Out.Y))).ToArray();
                if (met.Length == 0 || (other.Cell.Kind == PlanKind.Rail && !pin.Out.IsAcross)) continue;
                if (pin.Out.IsAcross) other.AsideY = from.AsideY + pin.Y - met[0].First.Y;
                else other.AsideX = from.AsideX + pin.X - met[0].First.X;
                settled.Add(other);
                queue.Enqueue(other);
            }
        }
    }

    private PlacedSymbol? Neighbour(PlacedSymbol from, Way way)
    {
        if (way.IsAcross)
            return symbols.Where(s => s.Cell.Row == from.Cell.Row && (s.Cell.Column - from.Cell.Column) * way.X > 0).MinBy(s => Math.Abs(s.Cell.Column - from.Cell.Column));
        return symbols.Where(s => s.Cell.Column == from.Cell.Column && (s.Cell.Row - from.Cell.Row) * way.Y > 0).MinBy(s => Math.Abs(s.Cell.Row - from.Cell.Row));
    }

    // Rows as close as what stands above each other allows: stages in steps overlap in height.
    private void PlaceRows()
    {
        var limits = new List<(int From, int To, int Least)>();
        for (var row = 1; row < rows; row++)
            limits.Add((row - 1, row, 2 * Grid));
        var rooms = symbols.Select(s => (Of: s, Room: Room(s))).ToArray();
        var tracks = Enumerable.Range(0, rows).Select(r => Tracks(r, across: true)).ToArray();
        foreach (var (a, above) in rooms)
            foreach (var (b, below) in rooms)
            {
                if (b.Cell.Row <= a.Cell.Row) continue;
                // A rail is a line from end to end.
                var spans = a.IsLine || b.IsLine;
                if (!spans && (a.X + above.Left >= b.X + below.Right + Grid || b.X + below.Left >= a.X + above.Right + Grid)) continue;
                limits.Add((a.Cell.Row, b.Cell.Row, Up(above.Bottom + a.AsideY - b.AsideY - below.Top) + (Grid * (1 + looser + tracks[b.Cell.Row]))));
            }

        limits.AddRange(Descents());
        // A wire that runs level between neighbours is in the way of what hangs down from above or reaches up from below.
        foreach (var (row, wire) in LevelWires())
            foreach (var (s, room) in rooms)
            {
                if (s.Cell.Row == row || s.X + room.Left >= wire.Right || s.X + room.Right <= wire.Left) continue;
                limits.Add(s.Cell.Row < row
                    ? (s.Cell.Row, row, Up(room.Bottom + s.AsideY - wire.Top) + Grid)
                    : (row, s.Cell.Row, Up(wire.Top - s.AsideY - room.Top) + Grid));
            }

        foreach (var (s, y) in symbols.Zip(Between(limits, rows, s => s.Cell.Row)))
            s.Y = y + s.AsideY;
    }

    // What hangs on a wire from above begins below it.
    private IEnumerable<(int From, int To, int Least)> Descents() =>
        from a in symbols
        from b in symbols
        where a.Cell.Row < b.Cell.Row
        from p in a.Symbol.Pins.Zip(a.Nets)
        from q in b.Symbol.Pins.Zip(b.Nets)
        where p.Second == q.Second && p.First.Out != Way.Up && q.First.Out != Way.Down && (p.First.Out == Way.Down || q.First.Out == Way.Up)
        let end = p.First.Out == Way.Down ? Math.Max(p.First.Y, WordsBelow(a)) : p.First.Y
        select (a.Cell.Row, b.Cell.Row, end + a.AsideY - b.AsideY - q.First.Y + Grid);

    // How far down the words beside a part reach: the wire at its foot turns beneath them.
    private static int WordsBelow(PlacedSymbol s) =>
        s.Label is { } label && s.Symbol.NameRoom is null && !s.Lies ? Up(s.Symbol.Body.Top + ((s.Symbol.Body.Height + label.Height) / 2)) : 0;

    // With its height off the row.
    private IEnumerable<(int Row, Box Wire)> LevelWires()
    {
        foreach (var row in symbols.GroupBy(s => s.Cell.Row))
        {
            var inOrder = row.OrderBy(s => s.X).ToArray();
            foreach (var (a, b) in inOrder.Zip(inOrder.Skip(1)))
                foreach (var (pin, net) in a.Symbol.Pins.Zip(a.Nets))
                    foreach (var (other, otherNet) in b.Symbol.Pins.Zip(b.Nets))
                        if (net == otherNet && (pin.Out == Way.ToRight || pin.Out == default) && (other.Out == Way.ToLeft || other.Out == default)
                            && pin.Y + a.AsideY == other.Y + b.AsideY && !a.IsLine && !b.IsLine)
                            yield return (row.Key, new(a.X + pin.X + 1, pin.Y + a.AsideY, b.X + other.X - a.X - pin.X - 2, 0));
        }
    }

    private void PlaceColumns()
    {
        var limits = new List<(int From, int To, int Least)>();
        for (var column = 1; column < columns; column++)
            limits.Add((column - 1, column, IsFull(column) && IsFull(column - 1) && !IsBend(column) && !IsBend(column - 1) ? 5 * Grid : 2 * Grid));
        foreach (var row in symbols.GroupBy(s => s.Cell.Row))
        {
            var inOrder = row.OrderBy(s => s.Cell.Column).ToArray();
            foreach (var (a, b) in inOrder.Zip(inOrder.Skip(1)))
            {
                var gap = a.Cell.Kind == PlanKind.Rail || b.Cell.Kind == PlanKind.Rail ? 0 : Grid * (1 + looser + Tracks(b.Cell.Column, across: false, row.Key));
                limits.Add((a.Cell.Column, b.Cell.Column, Up(Room(a).Right + a.AsideX - b.AsideX - Room(b).Left) + gap));
            }
        }

        limits.AddRange(Axes());
        limits.AddRange(Diagonals());
        foreach (var (s, x) in symbols.Zip(Between(limits, columns, s => s.Cell.Column)))
            s.X = x + s.AsideX;
    }

    // Between the first and the last place that the others leave: a part with room to both sides stands in the middle.
    private IEnumerable<int> Between(List<(int From, int To, int Least)> limits, int count, Func<PlacedSymbol, int> place)
    {
        var earliest = Longest(limits, count);
        var latest = Longest([.. limits.Select(l => (count - 1 - l.To, count - 1 - l.From, l.Least))], count);
        return symbols.Select(s => (int)Math.Floor((earliest[place(s)] + earliest[^1] - latest[count - 1 - place(s)]) / (2.0 * Grid)) * Grid);
    }

    private static int[] Longest(List<(int From, int To, int Least)> limits, int count)
    {
        var at = new int[count];
        foreach (var column in Enumerable.Range(0, count))
            foreach (var (from, _, least) in limits.Where(l => l.To == column))
                at[column] = Math.Max(at[column], at[from] + least);
        return at;
    }

    // What stands in neighbouring rows leaves a track between, so that wires pass from one row to the other; a terminal stands beside the pin that it leads to.
    private IEnumerable<(int From, int To, int Least)> Diagonals() =>
        from a in symbols
        from b in symbols
        let joined = a.Nets.Intersect(b.Nets).Any()
        let bend = a.Cell.Kind == PlanKind.Bend || b.Cell.Kind == PlanKind.Bend
        let terminal = (a.IsPoint && a.Cell.Kind != PlanKind.Bend) || (b.IsPoint && b.Cell.Kind != PlanKind.Bend)
        where a.Cell.Column < b.Cell.Column && a.Cell.Row != b.Cell.Row && !a.IsLine && !b.IsLine
            && ((bend && joined) || (Math.Abs(a.Cell.Row - b.Cell.Row) == 1 && (!terminal || (joined && a.Cell.Kind != PlanKind.Ground && b.Cell.Kind != PlanKind.Ground))))
        select (a.Cell.Column, b.Cell.Column, Up(a.Symbol.Extent.Right + a.AsideX - b.AsideX - b.Symbol.Extent.Left) + (bend && joined ? Grid : 2 * Grid));

    // Words beside a part must end before the axis of the next column where that column's wires pass.
    private IEnumerable<(int From, int To, int Least)> Axes()
    {
        foreach (var s in symbols.Where(s => s.IsPart && !s.IsPoint && !s.Lies))
            foreach (var way in new[] { -1, 1 })
            {
                var column = s.Cell.Column + way;
                while (column >= 0 && column < columns && !(s.Spare > 0 ? symbols.Any(o => o.Cell.Column == column) : IsFull(column))) column += way;
                if (column < 0 || column >= columns) continue;
                var rowsThere = RowsOf(column);
                // Where the words found no place, the next column keeps off whatever is in it.
                if (s.Spare == 0 && (s.Cell.Row <= rowsThere.Min() || s.Cell.Row >= rowsThere.Max())) continue;
                var room = Room(s);
                yield return way > 0
                    ? (s.Cell.Column, column, Up(room.Right + LabelGap))
                    : (column, s.Cell.Column, Up(-room.Left + LabelGap));
            }
    }

    private bool IsBend(int column) => symbols.Where(s => s.Cell.Column == column).All(s => s.IsPoint);

    // A bend leads its wire to all that hang on it.
    private int[] RowsOf(int column) =>
    [
        .. symbols.Where(s => s.Cell.Column == column).Select(s => s.Cell.Row),
        .. symbols.Where(s => s.Cell.Column == column && s.Cell.Kind == PlanKind.Bend).SelectMany(b => symbols.Where(s => s.Nets.Contains(b.Nets[0])).Select(s => s.Cell.Row)),
    ];

    private bool IsFull(int column) => symbols.Any(s => s.Cell.Column == column && (!s.IsPoint || s.Cell.Kind == PlanKind.Bend));

    private static int Up(double length) => (int)Math.Ceiling(length / Grid) * Grid;

    /// <summary>The box about its origin that a symbol takes with its words and its ground.</summary>
    private static Box Room(PlacedSymbol s)
    {
        var box = s.Symbol.Extent;
        double left = box.Left, right = box.Right, top = box.Top, bottom = box.Bottom;
        foreach (var (pin, net) in s.Symbol.Pins.Zip(s.Nets))
        {
            if (net != Circuit.Ground || s.Cell.Kind == PlanKind.Ground || pin.Out == default) continue;
            if (pin.Out == Way.Down) bottom = Math.Max(bottom, pin.Y + 24);
            else if (pin.Out == Way.ToRight) (right, bottom) = (Math.Max(right, pin.X + 30), Math.Max(bottom, pin.Y + 24));
            else if (pin.Out == Way.ToLeft) (left, bottom) = (Math.Min(left, pin.X - 30), Math.Max(bottom, pin.Y + 24));
        }

        if (s.Label is { } label && s.Symbol.NameRoom is null)
        {
            if (!s.Lies)
            {
                // Many lines are taller than the part.
                var middle = s.Symbol.Body.Top + (s.Symbol.Body.Height / 2);
                (top, bottom) = (Math.Min(top, middle - (label.Height / 2)), Math.Max(bottom, middle + (label.Height / 2)));
            }

            if (s.Cell.Kind is PlanKind.Node or PlanKind.Rail)
            {
                if (s.Cell.Column == 0) left -= label.Width + LabelGap + s.Spare;
                else right += label.Width + LabelGap + s.Spare;
            }
            else if (s.Lies || !s.IsPart || (s.Symbol.Pins.Any(p => p.Out == Way.ToLeft) && s.Symbol.Pins.Any(p => p.Out == Way.ToRight)))
            {
                var half = (label.Width / 2) + s.Spare;
                (left, right) = (Math.Min(left, -half), Math.Max(right, half));
                top = Math.Min(top, s.Symbol.Body.Top - 3 - label.Height - s.Spare);
            }
            else if (s.Symbol.Pins.Any(p => p.Out == Way.ToRight)) left -= label.Width + LabelGap + s.Spare;
            else right = Math.Max(right, Math.Max(s.Symbol.Body.Right, 4) + LabelGap + label.Width + s.Spare);
        }

        return new(left, top, right - left, bottom - top);
    }

    // How many wires must run along the gap before a row or a column.
    private int Tracks(int place, bool across, int? row = null)
    {
        var spans = new Dictionary<string, (int From, int To)>();
        foreach (var s in symbols)
        {
            var (at, along) = across ? (s.Cell.Row, s.Cell.Column) : (s.Cell.Column, s.Cell.Row);
            if (at != place && at != place - 1) continue;
            foreach (var (pin, net) in s.Symbol.Pins.Zip(s.Nets))
            {
                var towards = across ? pin.Out.Y : pin.Out.X;
                if (towards != (at == place ? -1 : 1) || net == Circuit.Ground) continue;
                spans[net] = spans.TryGetValue(net, out var span) ? (Math.Min(span.From, along), Math.Max(span.To, along)) : (along, along);
            }
        }

        var running = spans.Values.Where(s => s.To > s.From).ToArray();
        if (row is { } only) running = [.. running.Where(s => s.From <= only && only <= s.To)];
        return Math.Max(1, running.Length == 0 ? 1 : running.Max(s => running.Count(o => o.From <= s.From && s.From <= o.To)));
    }
}
