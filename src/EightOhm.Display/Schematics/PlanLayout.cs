using EightOhm.Circuits;
using EightOhm.Display.Figures;

namespace EightOhm.Display.Schematics;

/// <summary>Gives each symbol its place: rows by their tallest, columns as close as what stands beside each other allows.</summary>
internal sealed partial class PlanLayout
{
    private const int Grid = PlacedSymbol.Grid;

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
        PlanAlignment.Align(symbols);
        layout.PlaceColumns();
        layout.PlaceRows();
        PlanAlignment.Straighten(symbols);
    }

    // Rows as close as what stands above each other allows: stages in steps overlap in height.
    private void PlaceRows()
    {
        var limits = new List<(int From, int To, int Least)>();
        for (var row = 1; row < rows; row++)
            limits.Add((row - 1, row, 2 * Grid));
        var rooms = symbols.Select(s => (Of: s, Room: SymbolRoom.Of(s))).ToArray();
        var tracks = Enumerable.Range(0, rows).Select(r => Tracks(r, across: true)).ToArray();
        foreach (var (a, above) in rooms)
            foreach (var (b, below) in rooms)
            {
                if (b.Cell.Row <= a.Cell.Row) continue;
                // A rail is a line from end to end.
                var spans = a.IsLine || b.IsLine;
                if (!spans && (a.X + above.Left >= b.X + below.Right + Grid || b.X + below.Left >= a.X + above.Right + Grid)) continue;
                limits.Add((a.Cell.Row, b.Cell.Row, SymbolRoom.Up(above.Bottom + a.AsideY - b.AsideY - below.Top) + (Grid * (1 + looser + tracks[b.Cell.Row]))));
            }

        limits.AddRange(Descents());
        // A wire that runs level between neighbours is in the way of what hangs down from above or reaches up from below.
        foreach (var (row, wire) in LevelWires())
            foreach (var (s, room) in rooms)
            {
                if (s.Cell.Row == row || s.X + room.Left >= wire.Right || s.X + room.Right <= wire.Left) continue;
                limits.Add(s.Cell.Row < row
                    ? (s.Cell.Row, row, SymbolRoom.Up(room.Bottom + s.AsideY - wire.Top) + Grid)
                    : (row, s.Cell.Row, SymbolRoom.Up(wire.Top - s.AsideY - room.Top) + Grid));
            }

        foreach (var (s, y) in symbols.Zip(Between(limits, rows, s => s.Cell.Row)))
            s.Y = y + s.AsideY;
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
                limits.Add((a.Cell.Column, b.Cell.Column, SymbolRoom.Up(SymbolRoom.Of(a).Right + a.AsideX - b.AsideX - SymbolRoom.Of(b).Left) + gap));
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
}
