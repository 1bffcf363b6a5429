using EightOhm.Display.Figures;

namespace EightOhm.Display.Schematics;

/// <summary>A place where a wire meets a symbol, on the grid of wires.</summary>
/// <param name="Name">The terminal's name.</param>
/// <param name="X">From the symbol's origin, a multiple of the grid.</param>
/// <param name="Y">From the symbol's origin, downwards.</param>
/// <param name="Out">The direction in which a wire leaves.</param>
internal readonly record struct Pin(string Name, int X, int Y, Way Out)
{
    public Pin Turned(Turn turn)
    {
        var p = turn.Of(new Point(X, Y));
        return this with { X = (int)p.X, Y = (int)p.Y, Out = turn.Of(Out) };
    }
}

/// <summary>A symbol of IEC 60617 about its origin: ink, pins, and the box that no wire may enter.</summary>
internal sealed record Symbol(IReadOnlyList<Pin> Pins, Box Body, IReadOnlyList<Ink> Ink)
{
    /// <summary>The ways in which it may lie.</summary>
    public IReadOnlyList<Turn> Turns { get; init; } = [Turn.None];

    /// <summary>The box inside which its name stands, where it has room for one.</summary>
    public Box? NameRoom { get; init; }

    public Symbol Turned(Turn turn) => this with
    {
        Pins = [.. Pins.Select(p => p.Turned(turn))],
        Body = turn.Of(Body),
        Ink = [.. Ink.Select(i => i.Turned(turn))],
        NameRoom = NameRoom is { } room ? turn.Of(room) : null,
    };

    /// <summary>The box of ink and pins.</summary>
    public Box Extent
    {
        get
        {
            double left = Math.Min(Body.Left, Pins.Min(p => p.X)), right = Math.Max(Body.Right, Pins.Max(p => p.X));
            double top = Math.Min(Body.Top, Pins.Min(p => p.Y)), bottom = Math.Max(Body.Bottom, Pins.Max(p => p.Y));
            return new(left, top, right - left, bottom - top);
        }
    }
}
