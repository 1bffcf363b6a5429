using EightOhm.Circuits;

namespace EightOhm.Display.Schematics;

/// <summary>Grounds and rails of their own for pins to which the plan gives none.</summary>
internal static class LocalMarks
{
    /// <summary>Stands in the cell of a mark that no plan has.</summary>
    public const char Hint = 'o';

    private const int Grid = PlacedSymbol.Grid;

    /// <summary>The marks to add to the symbols of a drawing, beside their pins.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="symbols">In their places.</param>
    public static List<PlacedSymbol> For(Circuit circuit, IReadOnlyList<PlacedSymbol> symbols)
    {
        var marks = new List<PlacedSymbol>();
        var taken = symbols.SelectMany(s => s.PinsAt.Select(p => (p.X, p.Y))).ToHashSet();
        foreach (var symbol in symbols.Where(s => s.IsPart))
            foreach (var (pin, net, x, y) in symbol.PinsAt)
            {
                var rail = circuit.Elements.FirstOrDefault(e => e.Kind == ElementKind.Rail && e.Name == net);
                if ((net != Circuit.Ground && rail is null) || HasItsOwn(symbol, net, symbols)) continue;
                var places = rail is null
                    ? new[] { (x, y + Grid), (x + (2 * Grid * pin.Out.X), y + Grid), (x + Grid, y + (pin.Out.Y * Grid)), (x - Grid, y + (pin.Out.Y * Grid)) }
                    : [(x + (Grid * pin.Out.X), y + (Grid * pin.Out.Y)), (x + (2 * Grid * pin.Out.X), y + (2 * Grid * pin.Out.Y))];
                foreach (var (markX, markY) in places)
                {
                    if (pin.Out == Way.Up && rail is null && markX == x) continue;
                    if (pin.Out.IsAcross && rail is null && markX == x) continue;
                    if (!taken.Add((markX, markY))) continue;
                    marks.Add(new(new(rail is null ? PlanKind.Ground : PlanKind.Rail, net, symbol.Cell.Column, symbol.Cell.Row, Hint), rail,
                        rail is null ? OtherSymbols.Ground : OtherSymbols.Terminal, [net]) { X = markX, Y = markY });
                    break;
                }
            }

        return marks;
    }

    // A rail of the plan is for all of its pins, and so is a ground drawn as a line; a ground at one place is for its neighbours.
    private static bool HasItsOwn(PlacedSymbol symbol, string net, IReadOnlyList<PlacedSymbol> symbols) => symbols.Any(s =>
        s.Nets[0] == net && s.Cell.Kind is PlanKind.Ground or PlanKind.Rail
        && (s.IsLine || (Math.Abs(s.Cell.Column - symbol.Cell.Column) <= 1 && Math.Abs(s.Cell.Row - symbol.Cell.Row) <= 1)));
}
