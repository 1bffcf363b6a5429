using EightOhm.Display.Figures;
using static EightOhm.Display.Schematics.SymbolInk;

namespace EightOhm.Display.Schematics;

/// <summary>Symbols of more or fewer than two poles that are no transistor: transformers, the bridge, the heat sink, ground, terminals, controlled sources.</summary>
internal static class OtherSymbols
{
    private static readonly Turn[] LeftOrRight = [Turn.None, Turn.LeftRight];

    /// <summary>Primary to the left, secondary to the right, the iron between them.</summary>
    public static readonly Symbol Transformer = new(
        [new("p1", -30, -30, Way.ToLeft), new("p2", -30, 30, Way.ToLeft), new("s1", 30, -30, Way.ToRight), new("s2", 30, 30, Way.ToRight)],
        new(-14, -30, 28, 60),
        [
            Line(-30, -30, -12, -30, -12, -24), Line(-30, 30, -12, 30, -12, 24), .. Coil(-12, -24, 6, true),
            Line(30, -30, 12, -30, 12, -24), Line(30, 30, 12, 30, 12, 24), .. Coil(12, -24, 6, false), Line(-2, -28, -2, 28), Line(2, -28, 2, 28),
        ])
    { Turns = LeftOrRight };

    /// <summary>A transformer whose secondary has a centre tap.</summary>
    public static readonly Symbol TappedTransformer = new(
        [
            new("p1", -30, -40, Way.ToLeft), new("p2", -30, 40, Way.ToLeft),
            new("s1", 30, -40, Way.ToRight), new("ct", 30, 0, Way.ToRight), new("s2", 30, 40, Way.ToRight),
        ],
        new(-14, -40, 28, 80),
        [
            Line(-30, -40, -12, -40, -12, -24), Line(-30, 40, -12, 40, -12, 24), .. Coil(-12, -24, 6, true),
            Line(30, -40, 12, -40, 12, -36), .. Coil(12, -36, 4, false), Line(12, -4, 12, 4), Line(12, 0, 30, 0),
            .. Coil(12, 4, 4, false), Line(12, 36, 12, 40, 30, 40), Line(-2, -38, -2, 38), Line(2, -38, 2, 38),
        ])
    { Turns = LeftOrRight };

    /// <summary>A rectifier bridge as one block.</summary>
    public static readonly Symbol Bridge = new(
        [new("ac a", -30, -30, Way.ToLeft), new("ac b", -30, 30, Way.ToLeft), new("plus", 30, -30, Way.ToRight), new("minus", 30, 30, Way.ToRight)],
        new(-26, -42, 52, 84),
        [
            Rectangle(52, 84), Line(-30, -30, -26, -30), Line(-30, 30, -26, 30), Line(30, -30, 26, -30), Line(30, 30, 26, 30),
            new Sign("~", new(-18, -30), 13), new Sign("~", new(-18, 30), 13), new Sign("+", new(18, -30), 13), new Sign("−", new(18, 30), 13),
            Hollow(-8, -9, -8, 9, 8, 0), Line(8, -9, 8, 9), Line(-17, 0, 17, 0),
        ])
    { Turns = LeftOrRight };

    /// <summary>A heat sink: fins on a plate. Heat comes in at its one terminal.</summary>
    public static readonly Symbol HeatSink = new(
        [new("1", 0, -20, Way.Up)], new(-22, -10, 44, 22),
        [Line(0, -20, 0, -8), Heavy(-22, -8, 22, -8), .. new[] { -20, -12, -4, 4, 12, 20 }.Select(x => Line(x, -8, x, 12))])
    { Turns = [Turn.None, Turn.Left, Turn.Right, Turn.Half] };

    /// <summary>A source of heat: the arrow says where the heat goes.</summary>
    public static readonly Symbol HeatSource = new(
        [new("node", 0, -20, Way.Up)], new(-13, -8, 26, 26), [Line(0, -20, 0, -8), Circle(0, 5, 13), Line(-13, 5, 13, 5), Arrow(0, -19, 0, -8)])
    { Turns = [Turn.None, Turn.Right, Turn.Left, Turn.Half] };

    /// <summary>A socket: the tip's contact in the sleeve's ring.</summary>
    public static readonly Symbol Jack = new(
        [new("tip", 20, 0, Way.ToRight), new("sleeve", 0, 20, Way.Down)], new(-10, -10, 20, 20),
        [Circle(0, 0, 10), Line(0, 0, 20, 0), new Ring(InkLook.Solid, new(0, 0), 2.5), Line(0, 10, 0, 20)])
    { Turns = LeftOrRight };

    /// <summary>A point where signals are added, with the sign of each beside its arrow.</summary>
    public static readonly Symbol SummingPoint = new(
        [new("plus", -20, 0, Way.ToLeft), new("minus", 0, 20, Way.Down), new("out", 20, 0, Way.ToRight)], new(-14, -14, 28, 28),
        [
            Circle(0, 0, 14), Line(-20, 0, -14, 0), Line(0, 20, 0, 14), Line(14, 0, 20, 0),
            new Sign("+", new(-8, -1), 11), new Sign("−", new(0, 9), 11),
        ])
    { Turns = [Turn.None, Turn.UpsideDown, Turn.LeftRight, Turn.Half] };

    public static readonly Symbol Ground = new(
        [new("0", 0, 0, Way.Up)], new(-10, 6, 20, 8), [Line(0, 0, 0, 4), Line(-10, 4, 10, 4), Line(-6, 8, 6, 8), Line(-2.5, 12, 2.5, 12)]);

    /// <summary>A terminal: an open circle. A wire may leave to any side.</summary>
    public static readonly Symbol Terminal = new([new("", 0, 0, default)], new(-4, -4, 8, 8), [Circle(0, 0, 3.5)]);

    /// <summary>A place that a wire is led through; nothing is drawn.</summary>
    public static readonly Symbol Bend = new([new("", 0, 0, default)], new(0, 0, 0, 0), []);

    /// <summary>A source steered by a voltage between two terminals.</summary>
    /// <param name="givesCurrent">Whether a current is steered, else a voltage.</param>
    public static Symbol Controlled(bool givesCurrent) => new(
        [new("plus", 0, -20, Way.Up), new("minus", 0, 20, Way.Down), new("control plus", -40, -10, Way.ToLeft), new("control minus", -40, 10, Way.ToLeft)],
        new(-30, -14, 44, 28),
        [
            Line(0, -20, 0, -14), Line(0, 14, 0, 20), Diamond(),
            givesCurrent ? Line(-14, 0, 14, 0) : Line(0, -14, 0, 14), givesCurrent ? Arrow(0, 20, 0, 14, 6) : new Sign("+", new(10, -15), 12),
            Line(-40, -10, -29.5, -10), Line(-40, 10, -29.5, 10), Circle(-27, -10, 2.5), Circle(-27, 10, 2.5),
        ])
    { Turns = [Turn.None, Turn.UpsideDown, Turn.LeftRight, Turn.Half] };
}
