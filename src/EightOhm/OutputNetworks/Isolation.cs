using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.OutputNetworks;

/// <summary>A resistor between an amplifier and a capacitive load, and the capacitor that keeps the loop off the load's phase: for small stages, where a resistor may be lost in series.</summary>
public static partial class Isolation
{
    private const string Source = "S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 8: capacitive-load isolation";

    /// <summary>The resistor in series with the load: r_o·R_1/R_2.</summary>
    /// <param name="r_o">Open-loop output resistance; greater than 0 Ω.</param>
    /// <param name="R_1">From the source to the inverting input; greater than 0 Ω.</param>
    /// <param name="R_2">From the load to the inverting input; greater than 0 Ω.</param>
    /// <returns>The resistor, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "R_s")]
    [RecordName("isolation.resistor")]
    public static ElectricResistance Resistor(ElectricResistance r_o, ElectricResistance R_1, ElectricResistance R_2)
    {
        Guard.Positive(r_o);
        Guard.Positive(R_1);
        Guard.Positive(R_2);
        return R_1 / R_2 * r_o;
    }

    /// <summary>The capacitor from the amplifier's own output to its input: (1 + R_1/R_2)²·(r_o/R_2)·C_L.</summary>
    /// <param name="r_o">Open-loop output resistance; greater than 0 Ω.</param>
    /// <param name="R_1">From the source to the inverting input; greater than 0 Ω.</param>
    /// <param name="R_2">From the load to the inverting input; greater than 0 Ω.</param>
    /// <param name="C_L">The load; greater than 0 F.</param>
    /// <returns>The capacitor, in F.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "C_f")]
    [RecordName("isolation.capacitor")]
    public static ElectricCapacitance Capacitor(ElectricResistance r_o, ElectricResistance R_1, ElectricResistance R_2, ElectricCapacitance C_L)
    {
        Guard.Positive(r_o);
        Guard.Positive(R_1);
        Guard.Positive(R_2);
        Guard.Positive(C_L);
        var x = 1 + R_1 / R_2;
        return C_L * (x * x * (r_o / R_2));
    }
}
