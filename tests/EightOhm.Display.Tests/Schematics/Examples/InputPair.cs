using EightOhm.Circuits;
using EightOhm.Quantities;

namespace EightOhm.Display.Tests.Schematics;

public static partial class Examples
{
    /// <summary>Input pair with mirror and tail, chapter 10.</summary>
    public static Circuit InputPair()
    {
        var model = new BipolarModel { CurrentGain = 300 };
        var c = new Circuit();
        c.Rail("V+", 40.V);
        c.Rail("V-", -40.V);
        c.Resistor("R_5", "V+", "m1", 150.Ohm);
        c.Resistor("R_6", "V+", "m2", 150.Ohm);
        c.Pnp("Q_3", "out", "m", "m1", 2.mA, model);
        c.Pnp("Q_4", "m", "m", "m2", 2.mA, model);
        c.Npn("Q_1", "out", "in", "e1", 2.mA, model);
        c.Npn("Q_2", "m", "fb", "e2", 2.mA, model);
        c.Resistor("R_1", "e1", "tail", 100.Ohm);
        c.Resistor("R_2", "e2", "tail", 100.Ohm);
        c.CurrentSource("I_tail", "tail", "V-", 4.mA);
        return c.Plan("""
            V+   .     .    .
            .    R_5   .    R_6
            .    Q_3<  .    Q_4
            .    .     .    .    out
            in   Q_1   .    Q_2< fb
            .    R_1   .    R_2
            .    .     I_tail .
            V-   .     .    .
            """);
    }
}
