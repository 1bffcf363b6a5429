using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Protection;

/// <content>From a locus back to resistors.</content>
public sealed partial record VoltageCurrentLimiter
{
    /// <summary>The single-slope limiter whose locus runs through two points at 25 °C: R_3 from the slope, R_2 from what is left.</summary>
    /// <param name="R_1">Chosen, 100 Ω to 1 kΩ: low against the sense transistor's base current.</param>
    /// <param name="R_E">Emitter resistor of this one transistor; greater than 0 Ω.</param>
    /// <param name="V_a">From the output to the rail at the first point, often 0 V.</param>
    /// <param name="I_a">Limit of one transistor there.</param>
    /// <param name="V_b">From the output to the rail at the second point, above the first.</param>
    /// <param name="I_b">Limit there, below the first.</param>
    /// <param name="V_BE">Sense voltage at 25 °C; 0.65 V when not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">The points do not fall.</exception>
    /// <exception cref="ShortfallException">No R_2 can make them with this emitter resistor: it is too small.</exception>
    public static VoltageCurrentLimiter Through(ElectricResistance R_1, ElectricResistance R_E, ElectricPotential V_a, ElectricCurrent I_a, ElectricPotential V_b, ElectricCurrent I_b, ElectricPotential? V_BE = null)
    {
        var sense = V_BE ?? ElectricPotential.FromVolts(0.65);
        var R_3 = LimiterDesign.SlopeResistor(R_1, R_E, V_a, I_a, V_b, I_b);
        var shunt = LimiterDesign.Shunt(sense, R_1, R_3, R_E, V_a, I_a).Siemens;
        // What rounding leaves of an R_2 that is not there.
        var least = 1e-9 / R_1.Ohms;
        if (shunt < -least)
        {
            var slope = (I_a - I_b).Amperes / (V_b - V_a).Volts;
            var needed = ElectricResistance.FromOhms(sense.Volts / (I_a.Amperes + ((V_a.Volts - sense.Volts) * slope)));
            throw new ShortfallException("The emitter resistor R_E", needed - R_E, $"these points need {QuantityFormat.Short(needed, 3)} and it is {QuantityFormat.Short(R_E)}", "Its drop is too small for the sense voltage, and R_2 can only divide it further: take a larger R_E, or allow more current.");
        }

        return new(R_1, shunt > least ? ElectricResistance.FromOhms(1 / shunt) : null, R_3, R_E, sense);
    }

    /// <summary>The same with the second slope that raises the limit to a point below the knee, at 25 °C.</summary>
    /// <param name="V_S">From the far end of R_sl to the rail, less the diode's drop; greater than 0 V.</param>
    /// <param name="V">From the output to the rail at the point; below V_S and the sense voltage.</param>
    /// <param name="I">Limit of one transistor there; above what the single slope allows.</param>
    /// <exception cref="ArgumentOutOfRangeException">The point is beyond the knee or allowed already.</exception>
    public VoltageCurrentLimiter RaisedTo(ElectricPotential V_S, ElectricPotential V, ElectricCurrent I) => WithSecondSlope(
        LimiterDesign.SecondSlopeResistor(FromEmitter, EmitterResistor, V_S, SenseAtRoom, V, I, LimiterLocus.SingleSlope(SenseAtRoom, FromEmitter, ToOutput, ToRail, EmitterResistor, V)),
        V_S);
}
