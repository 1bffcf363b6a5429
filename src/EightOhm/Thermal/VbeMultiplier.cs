using EightOhm.Quantities;
using EightOhm.Working;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>The transistor with two resistors that holds the bias voltage apart and, on the sink, lets it fall as the junctions warm.</summary>
/// <remarks>Its base current is left out: a few per cent of the current in the resistors.</remarks>
public static partial class VbeMultiplier
{
    private const string Source = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14: the V_BE multiplier";

    /// <summary>The voltage across it: V_BE·(1 + R_1/R_2).</summary>
    /// <param name="V_BE">Of its transistor at its own current; greater than 0 V.</param>
    /// <param name="R_1">From collector to base; 0 Ω or more.</param>
    /// <param name="R_2">From base to emitter; greater than 0 Ω.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "V_BB")]
    public static ElectricPotential Voltage(ElectricPotential V_BE, ElectricResistance R_1, ElectricResistance R_2)
    {
        Guard.Positive(V_BE);
        Guard.NotNegative(R_1);
        Guard.Positive(R_2);
        return V_BE * (1 + R_1 / R_2);
    }

    /// <summary>How many junctions' worth a voltage is: V_BB/V_BE.</summary>
    /// <param name="V_BB">The voltage wanted across it; greater than 0 V.</param>
    /// <param name="V_BE">Of its transistor at its own current; greater than 0 V.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "m")]
    public static double Factor(ElectricPotential V_BB, ElectricPotential V_BE)
    {
        Guard.Positive(V_BB);
        Guard.Positive(V_BE);
        return V_BB / V_BE;
    }

    /// <summary>How its voltage moves with its own temperature: −m·tc.</summary>
    /// <param name="m">Its factor; greater than 0.</param>
    /// <param name="tc">How much V_BE falls for a kelvin, as a positive value (about 2.1 mV/K); greater than 0 V/K.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "dV_dT")]
    public static VoltageDrift Drift(double m, VoltageDrift tc)
    {
        Guard.Positive(m);
        Guard.Positive(tc);
        return -(m * tc);
    }
}
