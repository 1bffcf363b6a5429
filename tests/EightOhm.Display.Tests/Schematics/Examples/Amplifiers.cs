using EightOhm.Circuits;
using EightOhm.Quantities;

namespace EightOhm.Display.Tests.Schematics;

public static partial class Examples
{
    /// <summary>The amplifier in blocks, chapter 0.</summary>
    public static Circuit AmplifierInBlocks()
    {
        var c = new Circuit();
        c.Jack("J_in", "in");
        c.SummingPoint("sum", "in", "fb", "err");
        c.Block("input_pair", "err", "i", "gives a current");
        c.Block("second_stage", "i", "v", "makes the voltage swing");
        c.Block("output_stage", "v", "out", "amperes for the load");
        c.Block("divider", "out", "fb", "sets the gain");
        c.Loudspeaker("LS", "out", "0", 8.Ohm);
        return c.Plan("""
            J_in sum input_pair second_stage output_stage .  out
            .    .   .          divider<     .            LS .
            """);
    }

    /// <summary>Second stage with a follower in front and a cascode, chapter 11.</summary>
    public static Circuit SecondStage()
    {
        var model = new BipolarModel();
        var c = new Circuit();
        c.Rail("V+", 40.V);
        c.Rail("V-", -40.V);
        c.CurrentSource("I_2", "V+", "out", 8.mA);
        c.Npn("Q_7", "out", "bias", "k", model);
        c.Npn("Q_6", "k", "b", "e6", 8.mA, model);
        c.Resistor("R_8", "e6", "V-", 47.Ohm);
        c.Npn("Q_5", "V+", "in", "b", 1.mA, model);
        c.Resistor("R_7", "b", "V-", 2.2.kOhm);
        c.Capacitor("C_M", "in", "out", 68.pF);
        return c.Plan("""
            V+  .    .     .    .    .
            .   .    .     .    I_2  .
            .   C_M- .     .    .    out
            .   .    .     bias Q_7  .
            .   .    .     .    Q_6  .
            in  .    Q_5   .    .    .
            .   .    R_7   .    R_8  .
            V-  .    .     .    .    .
            """);
    }

    /// <summary>Output network with its cable, chapter 14.</summary>
    public static Circuit OutputNetwork()
    {
        var c = new Circuit();
        c.Terminal("amplifier", "a");
        c.Resistor("R_Z", "a", "z", 10.Ohm);
        c.Capacitor("C_Z", "z", "0", 100.nF);
        c.Inductor("L_1", "a", "t", 2.uH);
        c.Resistor("R_d", "a", "t", 10.Ohm);
        c.Resistor("R_c", "t", "c", 0.1.Ohm);
        c.Inductor("L_c", "c", "spk", 3.uH);
        c.Capacitor("C_c", "t", "0", 500.pF);
        c.Loudspeaker("LS", "spk", "0", 8.Ohm);
        return c.Plan("""
            .         .   .   R_d- .    .    .    .
            amplifier .   .   L_1- .    R_c- L_c- .
            .         R_Z .   .    C_c  .    .    LS
            .         C_Z .   .    .    .    .    .
            """);
    }

    /// <summary>The amplifier in stages, chapter 0: pair with mirror, second stage, bias spreader, followers, output pairs.</summary>
    public static Circuit AmplifierInStages()
    {
        var model = new BipolarModel();
        var c = new Circuit();
        c.Rail("V+", 40.V);
        c.Rail("V-", -40.V);
        c.Resistor("R_in", "in", "0", 10.kOhm);
        c.Resistor("R_3", "V+", "m1", 150.Ohm);
        c.Resistor("R_4", "V+", "m2", 150.Ohm);
        c.Pnp("Q_3", "d", "m", "m1", model);
        c.Pnp("Q_4", "m", "m", "m2", model);
        c.Npn("Q_1", "d", "in", "e1", model);
        c.Npn("Q_2", "m", "fb", "e2", model);
        c.Resistor("R_1", "e1", "tail", 100.Ohm);
        c.Resistor("R_2", "e2", "tail", 100.Ohm);
        c.CurrentSource("I_1", "tail", "V-", 4.mA);
        c.Pnp("Q_5", "b+", "d", "e5", model);
        c.Resistor("R_5", "V+", "e5", 47.Ohm);
        c.Capacitor("C_M", "d", "b+", 68.pF);
        c.Npn("Q_6", "b+", "mid", "b-", model);
        c.Resistor("R_6", "b+", "mid", 2.4.kOhm);
        c.Resistor("R_7", "mid", "b-", 820.Ohm);
        c.CurrentSource("I_2", "b-", "V-", 8.mA);
        c.Npn("Q_7", "V+", "b+", "d+", model);
        c.Pnp("Q_8", "V-", "b-", "d-", model);
        c.Resistor("R_8", "d+", "d-", 220.Ohm);
        c.Npn("Q_9", "V+", "d+", "e+", model);
        c.Pnp("Q_10", "V-", "d-", "e-", model);
        c.Resistor("R_E1", "e+", "out", 0.22.Ohm);
        c.Resistor("R_E2", "out", "e-", 0.22.Ohm);
        c.Resistor("R_F", "out", "fb", 10.kOhm);
        c.Resistor("R_G", "fb", "g", 442.Ohm);
        c.Capacitor("C_G", "g", "0", 470.uF);
        return c.Plan("""
            V+  .    .    .    .    .    .    .    .    .    .    .
            .   .    R_3  .    R_4  .    .    R_5  .    .    .    .
            .   .    Q_3< .    Q_4  .    .    Q_5  .    .    .    .
            .   .    .    .    .    .    .    .    .    Q_7  .    .
            .   .    .    .    .    C_M- .    .    .    .    Q_9  .
            .   .    .    .    .    .    R_6  .    .    .    R_E1 .
            in  .    Q_1  .    Q_2< fb*  .    Q_6  .    R_8  .    out
            .   R_in R_1  .    R_2  R_G  R_7  .    .    .    R_E2 .
            .   .    .    .    .    C_G  .    .    .    .    Q_10 .
            .   .    .    I_1  .    .    .    I_2  .    Q_8  .    .
            V-  .    .    .    .    .    .    .    .    .    .    .
            .   .    .    .    .    .    .    .    R_F- .    .    .
            """);
    }
}
