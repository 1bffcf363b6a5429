using EightOhm.Circuits;
using EightOhm.Quantities;

namespace EightOhm.Display.Tests.Schematics;

/// <summary>Small circuits of chance: a ladder of series and shunt parts, with a bridging part here and there.</summary>
internal static class RandomLadders
{
    public static Circuit Of(int seed)
    {
        var chance = new Random(seed);
        var c = new Circuit();
        var (top, middle, bottom) = (".   ", "in  ", ".   ");
        var node = "in";
        for (int i = 1, steps = chance.Next(1, 5); i <= steps; i++)
        {
            var next = i == steps ? "out" : $"n{i}";
            Part(c, chance, $"S{i}", node, next);
            Part(c, chance, $"P{i}", next, "0");
            var bridged = chance.Next(3) == 0;
            if (bridged) Part(c, chance, $"B{i}", node, next);
            (top, middle, bottom) = (top + $". {(bridged ? $"B{i}-" : ".")} . ", middle + $". S{i}- . ", bottom + $". . P{i}| ");
            node = next;
        }

        return c.Plan($"{top}.\n{middle}out\n{bottom}.");
    }

    private static void Part(Circuit c, Random chance, string name, string a, string b)
    {
        switch (chance.Next(4))
        {
            case 0: c.Capacitor(name, a, b, chance.Next(1, 1000).nF); break;
            case 1: c.Inductor(name, a, b, chance.Next(1, 1000).uH); break;
            case 2: c.Diode(name, a, b); break;
            default: c.Resistor(name, a, b, chance.Next(1, 1000).Ohm); break;
        }
    }
}
