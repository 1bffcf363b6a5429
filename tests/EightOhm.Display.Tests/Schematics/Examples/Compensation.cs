using EightOhm.Circuits;
using EightOhm.Quantities;

namespace EightOhm.Display.Tests.Schematics;

public static partial class Examples
{
    /// <summary>One-pole compensation: a capacitor over the second stage, chapter 12.</summary>
    public static Circuit OnePole()
    {
        var c = new Circuit();
        c.VoltageControlledCurrent("g_m", "i", "0", "in", "fb", 5.mS);
        c.OpAmp("A_2", "0", "i", "v", Gain.FromRatio(1e4), 1.GHz);
        c.Capacitor("C_M", "i", "v", 68.pF);
        c.Amplifier("one", "v", "out", "× 1");
        c.Resistor("R_F", "out", "fb", 10.kOhm);
        c.Resistor("R_G", "fb", "0", 442.Ohm);
        return c.Plan("""
            .   .     .    C_M- .    .    .
            in  g_m   .    A_2> .    one  out
            .   fb*   .    .    .    R_F- .
            .   R_G   .    .    .    .    .
            """);
    }

    /// <summary>Two-pole compensation: the capacitor in two, and a resistor to ground between them, chapter 12.</summary>
    public static Circuit TwoPole()
    {
        var model = new BipolarModel();
        var c = new Circuit();
        c.Rail("V+", 40.V);
        c.Rail("V-", -40.V);
        c.CurrentSource("I_2", "V+", "out", 8.mA);
        c.Npn("Q_5", "out", "in", "e", model);
        c.Resistor("R_8", "e", "V-", 47.Ohm);
        c.Capacitor("C_1", "in", "p", 150.pF);
        c.Capacitor("C_2", "p", "out", 1.nF);
        c.Resistor("R_p", "p", "0", 1.kOhm);
        return c.Plan("""
            .   .   .    .    .    .    V+
            .   .   .    .    .    I_2  .
            .   .   C_1- .    C_2- .    out
            .   .   .    R_p| .    .    .
            in  .   .    .    .    Q_5  .
            .   .   .    .    .    R_8  .
            .   .   .    .    .    .    V-
            """);
    }

    /// <summary>Noise sources of the input pair, chapter 13.</summary>
    public static Circuit PairNoise()
    {
        var c = new Circuit();
        c.VoltageSource("v_s", "a", "0");
        c.Resistor("R_s", "a", "b", 1.kOhm);
        c.VoltageSource("e_n", "p", "b");
        c.CurrentSource("i_n1", "p", "0");
        c.OpAmp("A", "p", "n", "out", Gain.FromRatio(1e6), 10.MHz);
        c.CurrentSource("i_n2", "n", "0");
        c.Resistor("R_F", "out", "n", 10.kOhm);
        c.Resistor("R_G", "n", "0", 442.Ohm);
        return c.Plan("""
            .    R_s- e_n- .    .    .    A>   .    out
            v_s| .    .    i_n1 .    .    .    .    .
            .    .    .    .    .    n*   .    R_F- .
            .    .    .    .    i_n2 .    R_G| .    .
            """);
    }
}
