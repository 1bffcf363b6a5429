using EightOhm.Circuits;
using EightOhm.Quantities;

namespace EightOhm.Display.Tests.Schematics;

public static partial class Examples
{
    /// <summary>One of every kind that the chapters' circuits do not have; no circuit that does anything.</summary>
    public static Circuit EveryKind()
    {
        var fet = new FetModel(10.mS);
        var c = new Circuit();
        c.Jack("J", "j");
        c.Inductor("L_1", "j", "0", 10.mH);
        c.Inductor("L_2", "k", "0", 10.mH);
        c.Coupling("M", "L_1", "L_2", 0.9);
        c.Nmos("M_1", "k", "j", "s1", fet);
        c.Pmos("M_2", "0", "k", "s2", fet);
        c.Njfet("J_1", "s2", "k", "d1", fet);
        c.Pjfet("J_2", "0", "d1", "s3", fet);
        c.Resistor("R_1", "s1", "0", 1.kOhm);
        c.VoltageControlledVoltage("E_1", "s3", "0", "s2", "d1", Gain.FromRatio(2));
        c.CurrentControlledVoltage("H_1", "h", "0", "R_1", 1.kOhm);
        c.CurrentControlledCurrent("F_1", "h", "0", "R_1", 3);
        c.Zener("D_Z", "0", "h", 12.V);
        c.Lamp("La", "h", "la", "12 V");
        c.Thermostat("S_T", "la", "t", 85.degC);
        c.Thermistor("R_T", "t", "0", 10.kOhm);
        c.Delay("delay", "h", "y", 50.ns);
        c.Amplifier("A", "y", "z", "× 1");
        c.Block("filter", "z", "out", "20 kHz");
        c.HeatSource("P", "hot", 10.W);
        c.HeatSink("sink", "hot", 2.K_per_W);
        c.HeatCapacity("C_th", "hot", 20.J_per_K);
        return c.Plan("""
            J   .    .   .   M_2  .    .    .    .    .
            .   .    M_1 .   J_1< .    J_2  .    .    .
            .   L_1| .   L_2| .   .    .    E_1  .    .
            .   .    R_1 .   .    .    .    .    .    .
            .   H_1  F_1 D_Z .    La-  S_T- .    delay A  filter out
            .   .    .   .   .    .    .    R_T| .    .
            .   P    .   .   C_th hot  .    sink .    .
            """);
    }
}
