using EightOhm.Quantities;
using EightOhm.Explaining;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>The transistor that holds the bias voltage apart, as a multiple of its own V_BE, and on the sink lets it fall as the junctions warm.</summary>
public static partial class BiasSpreader
{
    private const string Source = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14: the V_BE multiplier";

    /// <summary>How many junctions' worth a voltage is: V_BB/V_BE.</summary>
    /// <param name="V_BB">The voltage wanted across it; greater than 0 V.</param>
    /// <param name="V_BE">Of its transistor at its own current; greater than 0 V.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "m")]
    [RecordName("bias-spreader.factor")]
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
    [RecordName("bias-spreader.drift")]
    public static VoltageDrift Drift(double m, VoltageDrift tc)
    {
        Guard.Positive(m);
        Guard.Positive(tc);
        return -(m * tc);
    }
}
