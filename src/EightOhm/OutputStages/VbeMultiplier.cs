using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <summary>The bias spreader: a transistor that holds its own V_BE, multiplied by two resistors, and on the sink lets it fall as the junctions warm.</summary>
/// <remarks>Base currents are left aside. R_1 is from base to emitter, R_2 from collector to base.</remarks>
public static partial class VbeMultiplier
{
    private const string Source = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14, biasing by the V_BE multiplier";

    /// <summary>The multiplied voltage: V_BE·(1 + R_2/R_1).</summary>
    /// <param name="V_BE">Base-emitter voltage of the multiplying transistor; greater than 0 V.</param>
    /// <param name="R_1">From base to emitter; greater than 0 Ω.</param>
    /// <param name="R_2">From collector to base; 0 Ω or more.</param>
    /// <returns>The voltage from collector to emitter of the multiplier, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>VbeMultiplier.Voltage(650.mV, 1.kOhm, 3.kOhm)   // 2.6 V</code></example>
    [Formula(Source, Symbol = "V_BB")]
    [RecordName("vbe-multiplier.voltage")]
    public static ElectricPotential Voltage(ElectricPotential V_BE, ElectricResistance R_1, ElectricResistance R_2)
    {
        Guard.Positive(V_BE);
        Guard.Positive(R_1);
        Guard.NotNegative(R_2);
        return V_BE * (1 + R_2 / R_1);
    }

    /// <summary>The resistor from base to emitter for a current through the divider: V_BE/I_R.</summary>
    /// <param name="V_BE">Base-emitter voltage of the multiplying transistor; greater than 0 V.</param>
    /// <param name="I_R">Current through the divider; greater than 0 A.</param>
    /// <returns>The resistor from base to emitter, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>VbeMultiplier.LowerResistor(650.mV, 1.mA)   // 650 Ω</code></example>
    [Formula(Source, Symbol = "R_1")]
    [RecordName("vbe-multiplier.lower-resistor")]
    public static ElectricResistance LowerResistor(ElectricPotential V_BE, ElectricCurrent I_R)
    {
        Guard.Positive(V_BE);
        Guard.Positive(I_R);
        return V_BE / I_R;
    }

    /// <summary>The resistor from collector to base for a current through the divider: (V_BB − V_BE)/I_R.</summary>
    /// <param name="V_BB">The voltage wanted; at least V_BE.</param>
    /// <param name="V_BE">Base-emitter voltage of the multiplying transistor; greater than 0 V.</param>
    /// <param name="I_R">Current through the divider; greater than 0 A.</param>
    /// <returns>The resistor from collector to base, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>VbeMultiplier.UpperResistor(2.6.V, 650.mV, 1.mA)   // 1.95 kΩ</code></example>
    [Formula(Source, Symbol = "R_2")]
    [RecordName("vbe-multiplier.upper-resistor")]
    public static ElectricResistance UpperResistor(ElectricPotential V_BB, ElectricPotential V_BE, ElectricCurrent I_R)
    {
        Guard.Positive(V_BE);
        Guard.Positive(I_R);
        Guard.NotNegative(V_BB - V_BE, nameof(V_BB), "One junction is the least that a multiplier makes.");
        return (V_BB - V_BE) / I_R;
    }

    /// <summary>How many junctions' worth a voltage is: V_BB/V_BE.</summary>
    /// <param name="V_BB">The voltage wanted across it; greater than 0 V.</param>
    /// <param name="V_BE">Of its transistor at its own current; greater than 0 V.</param>
    /// <returns>The multiplication factor m, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "m")]
    [RecordName("vbe-multiplier.factor")]
    public static double Factor(ElectricPotential V_BB, ElectricPotential V_BE)
    {
        Guard.Positive(V_BB);
        Guard.Positive(V_BE);
        return V_BB / V_BE;
    }

    /// <summary>How its voltage moves with its own temperature: −m·tc.</summary>
    /// <param name="m">Its factor; greater than 0.</param>
    /// <param name="tc">How much V_BE falls for a kelvin, as a positive value (about 2.1 mV/K); greater than 0 V/K.</param>
    /// <returns>The temperature coefficient of the whole voltage, in V/K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "dV_dT")]
    [RecordName("vbe-multiplier.drift")]
    public static VoltageDrift Drift(double m, VoltageDrift tc)
    {
        Guard.Positive(m);
        Guard.Positive(tc);
        return -(m * tc);
    }
}
