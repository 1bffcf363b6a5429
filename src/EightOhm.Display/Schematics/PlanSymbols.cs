using EightOhm.Circuits;
using EightOhm.Display.Figures;

namespace EightOhm.Display.Schematics;

/// <summary>The symbols of a plan, each turned so that its pins look to where their nodes go on.</summary>
internal static class PlanSymbols
{
    /// <summary>A symbol for each name in the plan.</summary>
    public static List<PlacedSymbol> Of(Circuit circuit, IReadOnlyList<PlanCell> cells)
    {
        var placed = cells.Select(c => Placed(circuit, c)).ToList();
        foreach (var symbol in placed.Where(p => p.Symbol.Turns.Count > 1))
            symbol.Symbol = symbol.Symbol.Turned(Best(circuit, symbol, placed));
        return placed;
    }

    private static PlacedSymbol Placed(Circuit circuit, PlanCell cell)
    {
        switch (cell.Kind)
        {
            case PlanKind.Part:
                var element = circuit[cell.Name];
                var symbol = SymbolTable.Of(element) ?? throw new ArgumentException($"{cell.Name} has no place in a drawing: it is said beside what it couples. Leave it out of the plan.", nameof(circuit));
                // The dotted ends of coupled inductors.
                if (element.Kind == ElementKind.Inductor && circuit.Elements.Any(e => e.Kind == ElementKind.Coupling && e.Refers.Contains(element.Name)))
                    symbol = symbol with { Ink = [.. symbol.Ink, new Ring(InkLook.Solid, new Point(-6, -14), 2)] };
                return new(cell, element, symbol, [.. symbol.Pins.Select(p => element[p.Name])]);
            case PlanKind.Ground:
                return new(cell, null, OtherSymbols.Ground, [cell.Name]);
            case PlanKind.Bend:
                return new(cell, null, OtherSymbols.Bend, [cell.Name]);
            default:
                return new(cell, circuit.Elements.FirstOrDefault(e => e.Name == cell.Name && e.Kind == ElementKind.Rail), OtherSymbols.Terminal, [cell.Name]);
        }
    }

    // Of the ways that the hint leaves open, the one whose pins look most to their neighbours. The first is the usual way, and wins a tie.
    private static Turn Best(Circuit circuit, PlacedSymbol symbol, List<PlacedSymbol> all)
    {
        var turns = symbol.Symbol.Turns.Where(t => Fits(symbol, t)).ToArray();
        if (turns.Length == 0)
            throw new ArgumentException($"{symbol.Cell.Name} cannot lie as its hint \"{symbol.Cell.Hint}\" says. Leave the hint out, or use one that fits: - and | for what has two poles, < and > for what points.", nameof(symbol));
        var pulls = symbol.Symbol.Pins.Zip(symbol.Nets, (pin, net) => (pin, Pull: Pull(circuit, symbol, net, all))).ToArray();
        return turns.Select((t, i) => (t, score: pulls.Sum(p => Dot(t.Of(p.pin.Out), p.Pull)) - (0.01 * i) - Unusual(symbol, t))).MaxBy(x => x.score).t;
    }

    private static bool Fits(PlacedSymbol symbol, Turn turn)
    {
        var turned = symbol.Symbol.Turned(turn);
        var lies = turned.Pins.Count == 2 && turned.Pins.All(p => p.Out.IsAcross);
        return symbol.Cell.Hint switch
        {
            '-' => turned.Pins.Count == 2 ? lies : turn.Lies,
            '|' => turned.Pins.Count == 2 ? !lies : !turn.Lies,
            '<' => Points(symbol, turned) == -1,
            '>' => Points(symbol, turned) == 1,
            _ => symbol.Symbol.Pins.Count != 3 || !turn.Lies,
        };
    }

    // A transistor points away from its base, an amplifier or a block to its output, whatever lies to its second pole.
    private static int Points(PlacedSymbol symbol, Symbol turned)
    {
        var way = turned.Pins.FirstOrDefault(p => p.Name is "b" or "g") is { Name: not null } control ? -control.Out.X
            : turned.Pins.FirstOrDefault(p => p.Name is "out") is { Name: not null } output ? output.Out.X
            : symbol.Element!.Kind is ElementKind.Transformer or ElementKind.BridgeRectifier ? -turned.Pins[0].Out.X
            : symbol.Element!.Kind is ElementKind.Loudspeaker or ElementKind.Jack ? (turned.Body.Right > -turned.Body.Left || turned.Pins[0].Out.X > 0 ? 1 : -1)
            : turned.Pins[^1].Out.X;
        return way;
    }

    // A source of heat and the like stand; upside down looks odd where nothing asks for it.
    private static double Unusual(PlacedSymbol symbol, Turn turn) =>
        symbol.Element!.Kind is (ElementKind.Npn or ElementKind.Pnp) && turn.YY < 0 ? 0.8 : 0;

    private static double Dot(Way way, (double X, double Y) pull) => (way.X * pull.X) + (way.Y * pull.Y);

    // To where a net goes on from a place: its other names in the plan, the nearest most.
    private static (double X, double Y) Pull(Circuit circuit, PlacedSymbol from, string net, List<PlacedSymbol> all)
    {
        var (x, y) = (0.0, 0.0);
        foreach (var other in all)
        {
            if (other == from || !other.Nets.Contains(net)) continue;
            double dx = other.Cell.Column - from.Cell.Column, dy = other.Cell.Row - from.Cell.Row;
            // A rail is a line across the drawing: only its height counts.
            if (other.IsLine && dy != 0) dx = 0;
            var far = Math.Sqrt((dx * dx) + (dy * dy));
            var weight = 1 / (far * far);
            (x, y) = (x + (dx / far * weight), y + (dy / far * weight));
        }

        // Ground is below, where nothing else says so, a positive rail above.
        if (net == Circuit.Ground) y += 0.6;
        else if (circuit.Elements.FirstOrDefault(e => e.Kind == ElementKind.Rail && e.Name == net) is { Value: UnitsNet.ElectricPotential v } && x == 0 && y == 0) y -= 0.6 * Math.Sign(v.Volts);
        return (x, y);
    }
}
