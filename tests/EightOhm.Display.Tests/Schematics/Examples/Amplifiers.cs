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
            .   .    C_M-  .    .    out
            .   .    .     bias Q_7  .
            in  .    .     .    Q_6  .
            .   .    Q_5   .    .    .
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
}
