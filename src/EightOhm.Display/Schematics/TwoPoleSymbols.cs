using EightOhm.Display.Figures;
using static EightOhm.Display.Schematics.SymbolInk;

namespace EightOhm.Display.Schematics;

/// <summary>Symbols with one terminal above and one below: resistor, capacitor, coil, diodes, sources, fuse, lamp, contact.</summary>
internal static class TwoPoleSymbols
{
    private static readonly Turn[] Any = [Turn.None, Turn.Half, Turn.Left, Turn.Right];

    public static readonly Symbol Resistor = Of(new(-7, -16, 14, 32), 16, Rectangle(14, 32));

    /// <summary>Its resistance falls with temperature, or jumps with it: an inrush limiter, a sensor.</summary>
    public static readonly Symbol Thermistor = Of(new(-12, -18, 24, 36), 16, Rectangle(14, 32), Line(-13, 17, -8, 17, 13, -17));

    public static readonly Symbol Capacitor = Of(new(-12, -4, 24, 8), 4, Heavy(-12, -4, 12, -4), Heavy(-12, 4, 12, 4));

    public static readonly Symbol Inductor = Of(new(-2, -16, 8, 32), 16, [.. Coil(0, -16, 4, true)]);

    /// <summary>Current flows from its upper pole to its lower.</summary>
    public static readonly Symbol Diode = Of(new(-9, -9, 18, 18), 20, [.. DiodeInk(), Line(-9, 8, 9, 8)]);

    public static readonly Symbol ZenerDiode = Of(new(-9, -9, 18, 18), 20, [.. DiodeInk(), Line(-9, 3, -9, 8, 9, 8)]);

    /// <summary>An ideal voltage source; its upper pole is positive.</summary>
    public static readonly Symbol VoltageSource = Of(new(-16, -22, 29, 35), 13, Circle(0, 0, 13), Line(0, -13, 0, 13), new Sign("+", new(-11, -16), 12));

    /// <summary>An ideal current source; the arrow on the lead says which way the current flows, from the upper pole through it to the lower.</summary>
    public static readonly Symbol CurrentSource = Of(new(-13, -13, 26, 26), 13, Circle(0, 0, 13), Line(-13, 0, 13, 0), Arrow(0, 20, 0, 13));

    /// <summary>A voltage that a current elsewhere steers; its upper pole is positive.</summary>
    public static readonly Symbol ControlledVoltage = Of(new(-16, -22, 30, 36), 14, Diamond(), Line(0, -14, 0, 14), new Sign("+", new(-11, -16), 12));

    /// <summary>A current that a current elsewhere steers; it flows from the upper pole to the lower.</summary>
    public static readonly Symbol ControlledCurrent = Of(new(-14, -14, 28, 28), 14, Diamond(), Line(-14, 0, 14, 0), Arrow(0, 20, 0, 14, 6));

    public static readonly Symbol Fuse = Of(new(-6, -15, 12, 30), 20, Rectangle(12, 30), Line(0, -20, 0, 20));

    public static readonly Symbol Lamp = Of(new(-12, -12, 24, 24), 12, Circle(0, 0, 12), Line(-8.5, -8.5, 8.5, 8.5), Line(-8.5, 8.5, 8.5, -8.5));

    /// <summary>A contact that closes when its relay is fed.</summary>
    public static readonly Symbol MakeContact = Of(new(-12, -12, 14, 24), 10, Line(0, 10, -11, -11));

    /// <summary>A contact that a temperature moves.</summary>
    public static readonly Symbol Thermostat = Of(new(-12, -12, 14, 24), 10, Line(0, 10, -11, -11), new Sign("θ", new(-13, 2), 13));

    /// <summary>A switch that a hand moves.</summary>
    public static readonly Symbol Switch = Of(new(-20, -12, 22, 24), 10, Line(0, 10, -11, -11), Dashed(-6, -1, -16, -1), Line(-17, -6, -17, 4));

    /// <summary>The coil of a relay.</summary>
    public static readonly Symbol RelayCoil = Of(new(-15, -9, 30, 18), 9, Rectangle(30, 18));

    public static readonly Symbol Loudspeaker = Of(new(-6, -18, 21, 36), 10, Hollow(-6, -10, 5, -10, 5, 10, -6, 10), Hollow(5, -10, 15, -18, 15, 18, 5, 10)) with
    {
        Turns = [Turn.None, Turn.LeftRight, Turn.UpsideDown, Turn.Half, Turn.Left, Turn.Right],
    };

    // Leads from the pins at 20 to where the body begins.
    private static Symbol Of(Box body, double begins, params ReadOnlySpan<Ink> ink)
    {
        Ink[] leads = begins < 20 ? [Line(0, -20, 0, -begins), Line(0, begins, 0, 20)] : [];
        return new([new("1", 0, -20, Way.Up), new("2", 0, 20, Way.Down)], body, [.. leads, .. ink]) { Turns = Any };
    }

    // The line of the conductor goes through, as the standard has it.
    private static Ink[] DiodeInk() => [Line(0, -20, 0, 20), Hollow(-9, -8, 9, -8, 0, 8), Line(0, -8, 0, 8)];
}
