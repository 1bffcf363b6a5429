using EightOhm.Circuits;
using EightOhm.Quantities;

namespace EightOhm.Display.Tests.Schematics;

public static partial class Examples
{
    /// <summary>Dual supply with four diodes and two reservoirs, chapter 5.</summary>
    public static Circuit DualSupply()
    {
        var c = new Circuit();
        c.Terminal("L", "l");
        c.Terminal("N", "n");
        c.Transformer("T_1", "l", "n", "a", "b", tap: "0", text: "2 × 30 V");
        c.Diode("D_1", "a", "V+");
        c.Diode("D_2", "b", "V+");
        c.Diode("D_3", "V-", "a");
        c.Diode("D_4", "V-", "b");
        c.Capacitor("C_1", "V+", "0", 10.mF);
        c.Capacitor("C_2", "0", "V-", 10.mF);
        c.Rail("V+", 42.V);
        c.Rail("V-", -42.V);
        return c.Plan("""
            .   .    .   .    .    .   .   V+
            .   .    .   D_1| D_2| .   .   .
            L   .    .   .    .    C_1 .   .
            .   T_1  .   .    .    .   0-  .
            N   .    .   .    .    C_2 .   .
            .   .    .   D_3| D_4| .   .   .
            .   .    .   .    .    .   .   V-
            """);
    }

    /// <summary>The same with the bridge as one part.</summary>
    public static Circuit BridgeSupply()
    {
        var c = new Circuit();
        c.Terminal("L", "l");
        c.Terminal("N", "n");
        c.Transformer("T_1", "l", "n", "a", "b", text: "30 V");
        c.BridgeRectifier("B_1", "a", "b", "V+", "0");
        c.Capacitor("C_1", "V+", "0", 10.mF);
        c.Resistor("R_1", "V+", "0", 2.2.kOhm);
        c.Rail("V+", 42.V);
        return c.Plan("""
            .   .    .    .    .   .   V+
            L   .    .    .    .   .   .
            .   T_1  B_1  .    C_1 R_1 .
            N   .    .    .    .   .   .
            .   .    .    .    .   0-  .
            """);
    }

    /// <summary>Soft start in the primary, chapter 5b.</summary>
    public static Circuit SoftStart()
    {
        var c = new Circuit();
        c.Terminal("L", "l");
        c.Terminal("N", "n");
        c.Fuse("F_1", "l", "f", 3.15.A);
        c.Switch("S_1", "f", "s");
        c.Thermistor("R_soft", "s", "p", 33.Ohm);
        c.RelayContact("K_1", "s", "p");
        c.Transformer("T_1", "p", "n", "a", "b", tap: "ct", text: "2 × 30 V");
        return c.Plan("""
            .  .    .    .   K_1-    .    .    .
            .  .    .    .   .       .    .    a
            L  F_1- S_1- .   R_soft- .    T_1  ct
            N  .    .    .   .       .    .    b
            """);
    }
}
