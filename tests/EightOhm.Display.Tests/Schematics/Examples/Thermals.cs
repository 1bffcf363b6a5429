using EightOhm.Circuits;
using EightOhm.Quantities;

namespace EightOhm.Display.Tests.Schematics;

public static partial class Examples
{
    /// <summary>Thermal ladder, chapter 8.</summary>
    public static Circuit ThermalLadder()
    {
        var c = new Circuit();
        c.HeatSource("P", "T_J", 40.W);
        c.ThermalPath("R_JC", "T_J", "T_C", 0.7.K_per_W);
        c.HeatCapacity("C_J", "T_J", 0.02.J_per_K);
        c.ThermalPath("R_CS", "T_C", "T_S", 0.5.K_per_W);
        c.HeatCapacity("C_C", "T_C", 4.J_per_K);
        c.ThermalPath("R_SA", "T_S", "0", 0.8.K_per_W);
        c.HeatCapacity("C_S", "T_S", 400.J_per_K);
        return c.Plan("""
            .  T_J .   R_JC- T_C .   R_CS- .    T_S .
            P  .   C_J .     .   C_C .     C_S  .  R_SA
            """);
    }
}
