using EightOhm.Circuits;
using EightOhm.Display.Figures;

namespace EightOhm.Display.Schematics;

/// <content>What keeps rows and columns apart.</content>
internal sealed partial class PlanLayout
{
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
        s.Label is { } label && s.Symbol.NameRoom is null && !s.Lies ? SymbolRoom.Up(s.Symbol.Body.Top + ((s.Symbol.Body.Height + label.Height) / 2)) : 0;

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

    // What stands in neighbouring rows leaves a track between, so that wires pass from one row to the other; a terminal stands beside the pin that it leads to.
    private IEnumerable<(int From, int To, int Least)> Diagonals() =>
        from a in symbols
        from b in symbols
        let joined = a.Nets.Intersect(b.Nets).Any()
        let bend = a.Cell.Kind == PlanKind.Bend || b.Cell.Kind == PlanKind.Bend
        let terminal = (a.IsPoint && a.Cell.Kind != PlanKind.Bend) || (b.IsPoint && b.Cell.Kind != PlanKind.Bend)
        where a.Cell.Column < b.Cell.Column && a.Cell.Row != b.Cell.Row && !a.IsLine && !b.IsLine
            && ((bend && joined) || (Math.Abs(a.Cell.Row - b.Cell.Row) == 1 && (!terminal || (joined && a.Cell.Kind != PlanKind.Ground && b.Cell.Kind != PlanKind.Ground))))
        select (a.Cell.Column, b.Cell.Column, SymbolRoom.Up(a.Symbol.Extent.Right + a.AsideX - b.AsideX - b.Symbol.Extent.Left) + (bend && joined ? Grid : 2 * Grid));

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
                var room = SymbolRoom.Of(s);
                yield return way > 0
                    ? (s.Cell.Column, column, SymbolRoom.Up(room.Right + SymbolRoom.LabelGap))
                    : (column, s.Cell.Column, SymbolRoom.Up(-room.Left + SymbolRoom.LabelGap));
            }
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

    private bool IsBend(int column) => symbols.Where(s => s.Cell.Column == column).All(s => s.IsPoint);

    // A bend leads its wire to all that hang on it.
    private int[] RowsOf(int column) =>
    [
        .. symbols.Where(s => s.Cell.Column == column).Select(s => s.Cell.Row),
        .. symbols.Where(s => s.Cell.Column == column && s.Cell.Kind == PlanKind.Bend).SelectMany(b => symbols.Where(s => s.Nets.Contains(b.Nets[0])).Select(s => s.Cell.Row)),
    ];

    private bool IsFull(int column) => symbols.Any(s => s.Cell.Column == column && (!s.IsPoint || s.Cell.Kind == PlanKind.Bend));
}
