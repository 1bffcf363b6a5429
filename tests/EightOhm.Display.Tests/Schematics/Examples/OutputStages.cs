using EightOhm.Circuits;
using EightOhm.Quantities;

namespace EightOhm.Display.Tests.Schematics;

public static partial class Examples
{
    /// <summary>Output pair with emitter resistors, chapter 6.</summary>
    public static Circuit OutputPair()
    {
        var model = new BipolarModel();
        var c = new Circuit();
        c.Rail("+V", 40.V);
        c.Rail("-V", -40.V);
        c.Npn("Q_1", "+V", "drive+", "e1", model);
        c.Resistor("R_E1", "e1", "out", 0.22.Ohm);
        c.Resistor("R_E2", "out", "e2", 0.22.Ohm);
        c.Pnp("Q_2", "-V", "drive-", "e2", model);
        c.Loudspeaker("Z", "out", "0", 8.Ohm);
        return c.Plan("""
            +V      .
            drive+  Q_1
            .       R_E1
            .       .     out*
            .       R_E2  Z
            drive-  Q_2
            -V      .
            """);
    }

    /// <summary>Output triple with V_BE multiplier and emitter resistors, chapters 6 and 7.</summary>
    public static Circuit OutputTriple()
    {
        var model = new BipolarModel();
        var c = new Circuit();
        c.Rail("+V", 40.V);
        c.Rail("-V", -40.V);
        c.CurrentSource("I_1", "+V", "b+", 8.mA);
        c.Npn("Q_B", "b+", "mid", "b-", model);
        c.Resistor("R_2", "b+", "mid", 3.9.kOhm);
        c.Resistor("R_1", "mid", "b-", 820.Ohm);
        c.Npn("Q_V", "b-", "in", "-V", model);
        c.Npn("Q_1", "+V", "b+", "d+", model);
        c.Pnp("Q_2", "-V", "b-", "d-", model);
        c.Resistor("R_3", "d+", "d-", 470.Ohm);
        c.Npn("Q_3", "+V", "d+", "p+", model);
        c.Pnp("Q_4", "-V", "d-", "p-", model);
        c.Resistor("R_4", "p+", "p-", 100.Ohm);
        c.Npn("Q_5", "+V", "p+", "e+", model);
        c.Pnp("Q_6", "-V", "p-", "e-", model);
        c.Resistor("R_E1", "e+", "out", 0.22.Ohm);
        c.Resistor("R_E2", "out", "e-", 0.22.Ohm);
        return c.Plan("""
            +V  .    .    .    .    .    .
            .   .    I_1  .    .    .    .
            .   .    .    Q_1  .    .    .
            .   R_2  .    .    Q_3  .    .
            .   .    .    .    .    Q_5  .
            .   .    Q_B  .    .    R_E1 .
            .   .    .    R_3  R_4  .    out
            .   .    .    .    .    R_E2 .
            .   R_1  .    .    .    Q_6  .
            .   .    .    .    Q_4  .    .
            .   .    .    Q_2  .    .    .
            .   in   Q_V  .    .    .    .
            -V  .    .    .    .    .    .
            """);
    }

    /// <summary>V_BE multiplier, chapter 7b.</summary>
    public static Circuit Multiplier()
    {
        var c = new Circuit();
        c.Terminal("upper_base", "u");
        c.Terminal("lower_base", "l");
        c.Npn("Q_B", "u", "b", "l", new BipolarModel());
        c.Resistor("R_2", "u", "b", 1.8.kOhm);
        c.Resistor("R_1", "b", "l", 310.Ohm);
        return c.Plan("""
            .   upper_base
            R_2 .
            b*  Q_B
            R_1 .
            .   lower_base
            """);
    }
}
