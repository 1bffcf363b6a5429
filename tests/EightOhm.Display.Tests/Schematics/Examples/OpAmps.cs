using EightOhm.Circuits;
using EightOhm.Quantities;

namespace EightOhm.Display.Tests.Schematics;

public static partial class Examples
{
    /// <summary>A large op-amp's feedback divider with its servo, chapter 2.</summary>
    public static Circuit DividerWithServo()
    {
        var c = new Circuit();
        c.Resistor("R_in", "in", "0", 47.kOhm);
        c.OpAmp("A", "in", "fb", "out", Gain.FromRatio(1e6), 10.MHz);
        c.Resistor("R_F", "out", "fb", 10.kOhm);
        c.Resistor("R_G", "fb", "0", 442.Ohm);
        c.Resistor("R_s", "fb", "servo", 100.kOhm);
        c.OpAmp("U", "p", "n", "servo", Gain.FromRatio(2e5), 3.MHz);
        c.Resistor("R_i", "out", "p", 1.MOhm);
        c.Capacitor("C_i", "p", "0", 470.nF);
        c.Resistor("R_n", "n", "0", 1.MOhm);
        c.Capacitor("C_n", "n", "servo", 470.nF);
        return c.Plan("""
            in  .     .    A>   .    .    .    out
            .   R_in  .    .    R_F  .    .    .
            .   .     fb*  .    .    .    .    .
            .   .     .    .    R_G  R_s  .    .
            .   .     .    .    .    U<   .    R_i|
            .   .     .    .    .    C_n- R_n| C_i|
            """);
    }

    /// <summary>The feedback divider alone.</summary>
    public static Circuit Divider()
    {
        var c = new Circuit();
        c.OpAmp("A", "in", "fb", "out", Gain.FromRatio(1e6), 10.MHz);
        c.Resistor("R_in", "in", "0", 47.kOhm);
        c.Resistor("R_F", "out", "fb", 10.kOhm);
        c.Resistor("R_G", "fb", "0", 442.Ohm);
        return c.Plan("""
            in   .    .    A>   .    out
            .    R_in .    .    R_F  .
            .    .    fb*  .    .    .
            .    .    .    .    R_G  .
            """);
    }
}
