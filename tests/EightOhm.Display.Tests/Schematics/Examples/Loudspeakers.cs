using EightOhm.Circuits;
using EightOhm.Quantities;

namespace EightOhm.Display.Tests.Schematics;

public static partial class Examples
{
    /// <summary>A driver in its box as a network, chapter 4b.</summary>
    public static Circuit Driver()
    {
        var c = new Circuit();
        c.Resistor("R_vc", "in", "l", 5.8.Ohm);
        c.Inductor("L_vc", "l", "m", 0.5.mH);
        c.Resistor("R_es", "m", "0", 29.Ohm);
        c.Capacitor("C_mes", "m", "0", 366.uF);
        c.Inductor("L_ces", "m", "0", 34.mH);
        return c.Plan("""
            in R_vc- L_vc- .    .     .
            .  .     .     R_es C_mes L_ces
            .  .     .     0-   .     .
            """);
    }
}
