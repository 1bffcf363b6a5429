using EightOhm.Circuits;
using EightOhm.Quantities;

namespace EightOhm.Display.Tests.Schematics;

public static partial class Examples
{
    /// <summary>Limiter of one half, chapter 9a.</summary>
    public static Circuit Limiter()
    {
        var model = new BipolarModel();
        var c = new Circuit();
        c.Rail("+V", 40.V);
        c.Npn("Q_out", "+V", "drive", "e", model);
        c.Resistor("R_E", "e", "out", 0.22.Ohm);
        c.Resistor("R_1", "e", "s", 220.Ohm);
        c.Resistor("R_2", "s", "out", 120.Ohm);
        c.Resistor("R_3", "+V", "s", 22.kOhm);
        c.Npn("Q_s", "drive", "s", "out", model);
        return c.Plan("""
            .     .     .    .     +V
            .     .     R_3  .     .
            drive .     .    Q_out .
            .     .     R_1- .     .
            .     Q_s<  .    R_E   .
            .     .     R_2  .     .
            .     .     .    .     out
            """);
    }

    /// <summary>Dc detector and relay, chapter 9b.</summary>
    public static Circuit DcDetector()
    {
        var c = new Circuit();
        c.Terminal("amplifier", "a");
        c.RelayContact("K_1", "a", "spk");
        c.Loudspeaker("LS", "spk", "0", 8.Ohm);
        c.Resistor("R_1", "a", "f", 100.kOhm);
        c.Capacitor("C_1", "f", "0", 10.uF);
        c.Block("threshold", "f", "coil", "± 2 V for 50\u00a0ms");
        c.Resistor("R_2", "coil", "k", 100.Ohm);
        c.RelayCoil("K_2", "k", "0");
        return c.Plan("""
            amplifier .  .    .          K_1-  .    .
            .         .  .    .          .     .    LS
            .         R_1 .   threshold> R_2-  .    .
            .         .  C_1  .          .     K_2| .
            """);
    }
}
