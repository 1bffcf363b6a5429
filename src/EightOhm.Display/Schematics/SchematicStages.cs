using EightOhm.Circuits;
using EightOhm.Display.Figures;

namespace EightOhm.Display.Schematics;

/// <summary>Cuts a drawing that is too wide for a telephone into stages, one under another; a wire that is cut has its node's name at both ends.</summary>
internal static class SchematicStages
{
    /// <summary>Wider than this a drawing on a telephone would have letters below nine pixels.</summary>
    public const double Widest = 520;

    private const int MostStages = 5, Gap = 20;

    /// <summary>The stages; null where the drawing is narrow enough as it is, or cannot be cut.</summary>
    public static SchematicSheet? Narrow(Circuit circuit, SchematicSheet whole, Annotations notes)
    {
        if (whole.Frame.Width <= Widest) return null;
        var cells = PlanText.Read(circuit);
        for (var stages = 2; stages <= MostStages; stages++)
        {
            var cuts = Cuts(whole, stages);
            if (cuts.Count < stages - 1) continue;
            var sheets = Pieces(circuit, whole, cells, cuts).Select(p => SchematicSheet.Of(circuit, p, notes)).ToArray();
            if (sheets.Max(s => s.Frame.Width) <= Widest || stages == MostStages) return Stacked(sheets);
        }

        return null;
    }

    // Before which columns: near equal widths, where the fewest wires are cut.
    private static List<int> Cuts(SchematicSheet whole, int stages)
    {
        var parts = whole.Symbols.Where(s => s.Cell.Hint != LocalMarks.Hint).ToArray();
        var columns = parts.Select(s => s.Cell.Column).Distinct().Order().ToArray();
        var cuts = new List<int>();
        for (var i = 1; i < stages; i++)
        {
            var wished = whole.Frame.Left + (whole.Frame.Width * i / stages);
            var open = columns.Skip(1).Where(c => !cuts.Contains(c)).ToArray();
            if (open.Length == 0) break;
            cuts.Add(open.MinBy(c => (Severed(parts, c) * 40) + Math.Abs(Edge(parts, c) - wished)));
        }

        return [.. cuts.Order()];
    }

    private static double Edge(PlacedSymbol[] parts, int column)
    {
        var (left, right) = (parts.Where(p => p.Cell.Column < column).Max(p => p.X), parts.Where(p => p.Cell.Column >= column).Min(p => p.X));
        return (left + right) / 2.0;
    }

    private static int Severed(PlacedSymbol[] parts, int column) =>
        parts.Where(p => p.Cell.Column < column).SelectMany(p => p.Nets).Intersect(parts.Where(p => p.Cell.Column >= column).SelectMany(p => p.Nets)).Count(n => n != Circuit.Ground);

    private static IEnumerable<IReadOnlyList<PlanCell>> Pieces(Circuit circuit, SchematicSheet whole, IReadOnlyList<PlanCell> cells, List<int> cuts)
    {
        var borders = cuts.Prepend(0).Append(int.MaxValue).ToArray();
        for (var i = 0; i + 1 < borders.Length; i++)
        {
            var inside = cells.Where(c => c.Column >= borders[i] && c.Column < borders[i + 1]).ToList();
            var nets = inside.SelectMany(c => Nets(circuit, c)).ToHashSet();
            var last = inside.Max(c => c.Column) + 1;
            var piece = inside.ToList();
            foreach (var net in nets.Where(n => !piece.Any(c => c.Kind is PlanKind.Node or PlanKind.Rail && c.Name == n)))
            {
                var beyond = cells.Where(c => !inside.Contains(c) && Nets(circuit, c).Contains(net)).ToArray();
                if (beyond.Length == 0) continue;
                if (net == Circuit.Ground)
                {
                    // A ground line goes on; grounds apart stand with their parts.
                    if (!inside.Any(c => c.Kind == PlanKind.Ground) && beyond.FirstOrDefault(c => c.Kind == PlanKind.Ground && c.Hint == '-') is { } line)
                        piece.Add(line with { Column = Free(piece, last, line.Row).Column, Row = Free(piece, last, line.Row).Row });
                    continue;
                }

                var rail = cells.FirstOrDefault(c => c.Kind == PlanKind.Rail && c.Name == net);
                var before = beyond.Any(c => c.Column < borders[i]);
                var row = rail?.Row ?? Facing(whole, inside, net, before).Row;
                var place = Free(piece, before && !(rail is not null) ? borders[i] - 1 : last, row);
                piece.Add(new(rail is null ? PlanKind.Node : PlanKind.Rail, net, place.Column, place.Row, default));
            }

            // The plan may begin with a column for the ends that were added.
            var first = piece.Min(c => c.Column);
            yield return [.. piece.Select(c => c with { Column = c.Column - first })];
        }
    }

    // The part that looks towards the cut, else the one nearest to it.
    private static PlanCell Facing(SchematicSheet whole, List<PlanCell> inside, string net, bool before) =>
        whole.Symbols.Where(s => inside.Contains(s.Cell) && s.Nets.Contains(net))
            .MinBy(s => (s.PinsAt.Any(p => p.Net == net && p.Pin.Out.X == (before ? -1 : 1)) ? 0 : 100) + (before ? s.Cell.Column : -s.Cell.Column))!.Cell;

    private static (int Column, int Row) Free(List<PlanCell> piece, int column, int row)
    {
        foreach (var off in new[] { 0, 1, -1, 2, -2, 3, -3 })
            if (row + off >= 0 && !piece.Any(c => c.Column == column && c.Row == row + off)) return (column, row + off);
        return (column, piece.Max(c => c.Row) + 1);
    }

    private static IEnumerable<string> Nets(Circuit circuit, PlanCell cell) =>
        cell.Kind == PlanKind.Part ? circuit[cell.Name].Terminals.Select(t => t.Node) : [cell.Name];

    private static SchematicSheet Stacked(IReadOnlyList<SchematicSheet> sheets)
    {
        var moved = new List<SchematicSheet>();
        var bottom = 0.0;
        foreach (var sheet in sheets)
        {
            moved.Add(sheet.Moved(-Down(sheet.Frame.Left), Down(bottom - sheet.Frame.Top)));
            bottom = moved[^1].Frame.Bottom + Gap;
        }

        double left = moved.Min(s => s.Frame.Left), top = moved.Min(s => s.Frame.Top);
        return new([.. moved.SelectMany(s => s.Symbols)], new([.. moved.SelectMany(s => s.Wires.Nets)], [.. moved.SelectMany(s => s.Wires.Dots)]),
            [.. moved.SelectMany(s => s.Labels)], new(left, top, Math.Ceiling(moved.Max(s => s.Frame.Right) - left), Math.Ceiling(moved.Max(s => s.Frame.Bottom) - top)));
    }

    // To whole tracks, so that the moved drawing stays on the grid.
    private static int Down(double length) => (int)Math.Ceiling(length / PlacedSymbol.Grid) * PlacedSymbol.Grid;
}
