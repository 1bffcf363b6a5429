using EightOhm.Display.Figures;
using static EightOhm.Display.Schematics.SymbolInk;

namespace EightOhm.Display.Schematics;

/// <summary>Transistors and the operational amplifier.</summary>
internal static class TransistorSymbols
{
    // Standing, its control terminal to the left or to the right; lying for a common base in the way of the signal.
    private static readonly Turn[] Standing =
        [Turn.None, Turn.LeftRight, Turn.UpsideDown, Turn.Half, Turn.Left, Turn.Right, Turn.LeftMirrored, Turn.RightMirrored];

    private static readonly Box Body = new(-12, -13, 13, 26);

    public static readonly Symbol Npn = new(
        [new("c", 0, -20, Way.Up), new("b", -20, 0, Way.ToLeft), new("e", 0, 20, Way.Down)], Body,
        [Line(-20, 0, -10, 0), Heavy(-10, -12, -10, 12), Line(-10, -5, 0, -13, 0, -20), Line(-10, 5, 0, 13, 0, 20), Arrow(-0.6, 12.6, -10, 5)])
    { Turns = Standing };

    public static readonly Symbol Pnp = new(
        [new("c", 0, 20, Way.Down), new("b", -20, 0, Way.ToLeft), new("e", 0, -20, Way.Up)], Body,
        [Line(-20, 0, -10, 0), Heavy(-10, -12, -10, 12), Line(-10, -5, 0, -13, 0, -20), Line(-10, 5, 0, 13, 0, 20), Arrow(-8.6, -6.2, 0, -13)])
    { Turns = Standing };

    public static readonly Symbol NMosfet = new(
        [new("d", 0, -20, Way.Up), new("g", -20, 0, Way.ToLeft), new("s", 0, 20, Way.Down)], Body,
        [.. MosfetInk(), Line(0, -10, 0, -20), Line(0, 0, 0, 20), Arrow(-7, 0, 0, 0, 6)])
    { Turns = Standing };

    public static readonly Symbol PMosfet = new(
        [new("d", 0, 20, Way.Down), new("g", -20, 0, Way.ToLeft), new("s", 0, -20, Way.Up)], Body,
        [.. MosfetInk(), Line(0, 0, 0, -20), Line(0, 10, 0, 20), Arrow(0, 0, -8, 0, 6)])
    { Turns = Standing };

    public static readonly Symbol NJfet = new(
        [new("d", 0, -20, Way.Up), new("g", -20, 0, Way.ToLeft), new("s", 0, 20, Way.Down)], Body,
        [.. JfetInk(), Arrow(-8.5, 0, -20, 0)])
    { Turns = Standing };

    public static readonly Symbol PJfet = new(
        [new("d", 0, 20, Way.Down), new("g", -20, 0, Way.ToLeft), new("s", 0, -20, Way.Up)], Body,
        [.. JfetInk(), Arrow(-17, 0, -8, 0)])
    { Turns = Standing };

    /// <summary>The operational amplifier as a triangle.</summary>
    public static readonly Symbol OpAmp = new(
        [new("plus", -30, -20, Way.ToLeft), new("minus", -30, 20, Way.ToLeft), new("out", 40, 0, Way.ToRight)], new(-26, -34, 60, 68),
        [
            Hollow(-26, -34, -26, 34, 34, 0), Line(-30, -20, -26, -20), Line(-30, 20, -26, 20), Line(34, 0, 40, 0),
            new Sign("+", new(-18, -20), 14), new Sign("−", new(-18, 20), 14),
        ])
    { Turns = Lying, NameRoom = new(-24, -10, 44, 20) };

    /// <summary>An amplifier of one input.</summary>
    public static readonly Symbol Amplifier = new(
        [new("in", -30, 0, Way.ToLeft), new("out", 40, 0, Way.ToRight)], new(-26, -30, 60, 60),
        [Hollow(-26, -30, -26, 30, 34, 0), Line(-30, 0, -26, 0), Line(34, 0, 40, 0)])
    { Turns = [Turn.None, Turn.LeftRight], NameRoom = new(-24, -10, 44, 20) };

    private static Turn[] Lying => [Turn.None, Turn.UpsideDown, Turn.LeftRight, Turn.Half];

    private static Ink[] MosfetInk() =>
    [
        Line(-20, 0, -13, 0), Line(-13, -10, -13, 10), Heavy(-8, -13, -8, -7), Heavy(-8, -3, -8, 3), Heavy(-8, 7, -8, 13),
        Line(-8, -10, 0, -10), Line(-8, 10, 0, 10), Line(-8, 0, 0, 0),
    ];

    private static Ink[] JfetInk() =>
        [Line(-20, 0, -8, 0), Heavy(-8, -13, -8, 13), Line(-8, -9, 0, -9, 0, -20), Line(-8, 9, 0, 9, 0, 20)];
}
