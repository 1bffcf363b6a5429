using EightOhm.Circuits;
using EightOhm.Display.Figures;

namespace EightOhm.Display.Schematics;

/// <summary>A symbol at its place in the drawing.</summary>
internal sealed class PlacedSymbol(PlanCell cell, Element? element, Symbol symbol, IReadOnlyList<string> nets)
{
    /// <summary>Pixels between two tracks of wires.</summary>
    public const int Grid = 10;

    /// <summary>Where the plan has it.</summary>
    public PlanCell Cell { get; } = cell;

    /// <summary>The element that it stands for; null for a ground, a rail, a node's terminal and a bend.</summary>
    public Element? Element { get; } = element;

    /// <summary>The symbol as it lies.</summary>
    public Symbol Symbol { get; set; } = symbol;

    /// <summary>The node of each pin, in the symbol's order.</summary>
    public IReadOnlyList<string> Nets { get; } = nets;

    /// <summary>Its origin.</summary>
    public int X { get; set; }

    /// <summary>Its origin, downwards.</summary>
    public int Y { get; set; }

    /// <summary>Off its column, so that a wire to its neighbour runs straight.</summary>
    public int AsideX { get; set; }

    /// <summary>Off its row, so that a wire to its neighbour runs straight.</summary>
    public int AsideY { get; set; }

    /// <summary>More room around its words, where they found none.</summary>
    public int Spare { get; set; }

    /// <summary>The words beside or in it.</summary>
    public LabelBlock? Label { get; set; }

    public bool IsPart => Element is not null && Cell.Kind == PlanKind.Part;

    /// <summary>Whether it is no more than a point where a wire ends or bends.</summary>
    public bool IsPoint => Cell.Kind is PlanKind.Node or PlanKind.Bend or PlanKind.Rail or PlanKind.Ground || Element?.Kind == ElementKind.Terminal;

    /// <summary>Whether it is drawn as a line from end to end: a rail, or a ground that the plan has lying.</summary>
    public bool IsLine => Cell.Kind == PlanKind.Rail || (Cell.Kind == PlanKind.Ground && Cell.Hint == '-');

    /// <summary>Whether its poles are to its left and right.</summary>
    public bool Lies => Symbol.Pins.Count == 2 && Symbol.Pins.All(p => p.Out.IsAcross);

    public Box Body => Moved(Symbol.Body);

    public Box Moved(Box box) => box with { Left = box.Left + X, Top = box.Top + Y };

    public IEnumerable<(Pin Pin, string Net, int X, int Y)> PinsAt => Symbol.Pins.Zip(Nets, (p, n) => (p, n, X + p.X, Y + p.Y));
}
