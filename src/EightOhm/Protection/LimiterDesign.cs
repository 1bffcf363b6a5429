using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Protection;

/// <summary>A limiter's resistors from the locus that they shall give: <see cref="LimiterLocus"/> read backwards.</summary>
public static partial class LimiterDesign
{
    private const string Lm391 = "National Semiconductor, LM391 datasheet, Application Hints";

    /// <summary>The emitter resistor on which a current makes the sense voltage: V_BE/I.</summary>
    /// <param name="V_BE">Sense voltage; greater than 0 V.</param>
    /// <param name="I">Limit without the voltage's part; greater than 0 A.</param>
    /// <returns>The resistance of the emitter resistor, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>LimiterDesign.EmitterResistor(650.mV, 5.A)   // 130 mΩ</code></example>
    [Formula(Lm391, Symbol = "R_E")]
    [RecordName("limiter-design.emitter-resistor")]
    public static ElectricResistance EmitterResistor(ElectricPotential V_BE, ElectricCurrent I)
    {
        Guard.Positive(V_BE);
        Guard.Positive(I);
        return V_BE / I;
    }

    /// <summary>R_3 from a slope through two points: R_1·(V_b − V_a)/(R_E·(I_a − I_b)).</summary>
    /// <param name="R_1">From the emitter resistor's upper end to the base; greater than 0 Ω.</param>
    /// <param name="R_E">Emitter resistor; greater than 0 Ω.</param>
    /// <param name="V_a">From the output to the rail at the first point; 0 V or more.</param>
    /// <param name="I_a">Limit at the first point.</param>
    /// <param name="V_b">From the output to the rail at the second point; above the first.</param>
    /// <param name="I_b">Limit at the second point; below the first, 0 A or more.</param>
    /// <returns>The resistance of R_3, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range: the current must fall while the voltage rises.</exception>
    [Formula("LimiterLocus.SingleSlope at two points, their difference solved for R_3", Symbol = "R_3_need")]
    [RecordName("limiter-design.slope-resistor")]
    public static ElectricResistance SlopeResistor(ElectricResistance R_1, ElectricResistance R_E, ElectricPotential V_a, ElectricCurrent I_a, ElectricPotential V_b, ElectricCurrent I_b)
    {
        Guard.Positive(R_1);
        Guard.Positive(R_E);
        Guard.NotNegative(V_a);
        Guard.NotNegative(I_b);
        Guard.Positive(V_b - V_a, nameof(V_b), "Give the point of the lower voltage first.");
        Guard.Positive(I_a - I_b, nameof(I_b), "The limit must fall while the voltage rises.");
        return R_1 * ((V_b - V_a) / (R_E * (I_a - I_b)));
    }

    /// <summary>The conductance of R_2 from one point, R_3 known: (I·R_E/R_1 + V/R_3)/V_BE − 1/R_1 − 1/R_3. Negative if no R_2 can do it.</summary>
    /// <param name="V_BE">Sense voltage; greater than 0 V.</param>
    /// <param name="R_1">From the emitter resistor's upper end to the base; greater than 0 Ω.</param>
    /// <param name="R_3">From the base to the rail; greater than 0 Ω.</param>
    /// <param name="R_E">Emitter resistor; greater than 0 Ω.</param>
    /// <param name="V">From the output to the rail; 0 V or more.</param>
    /// <param name="I">Limit there; 0 A or more.</param>
    /// <returns>The conductance of R_2, in S; negative if there is none that does it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("LimiterLocus.SingleSlope solved for 1/R_2", Symbol = "G_2")]
    [RecordName("limiter-design.shunt")]
    public static ElectricConductance Shunt(ElectricPotential V_BE, ElectricResistance R_1, ElectricResistance R_3, ElectricResistance R_E, ElectricPotential V, ElectricCurrent I)
    {
        Guard.Positive(V_BE);
        Guard.Positive(R_1);
        Guard.Positive(R_3);
        Guard.Positive(R_E);
        Guard.NotNegative(V);
        Guard.NotNegative(I);
        var I_b = I * R_E / R_1 + V / R_3;
        return I_b / V_BE - 1 / R_1 - 1 / R_3;
    }

    /// <summary>R_3 without an R_2, from the voltage at which no current is left: R_1·(V_M/V_BE − 1).</summary>
    /// <param name="R_1">From the emitter resistor's upper end to the base; greater than 0 Ω.</param>
    /// <param name="V_M">From the output to the rail where the limit comes to 0 A; above V_BE.</param>
    /// <param name="V_BE">Sense voltage; greater than 0 V.</param>
    /// <returns>The resistance of R_3, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Lm391, Symbol = "R_3_need")]
    [RecordName("limiter-design.slope-without-shunt")]
    public static ElectricResistance SlopeWithoutShunt(ElectricResistance R_1, ElectricPotential V_M, ElectricPotential V_BE)
    {
        Guard.Positive(R_1);
        Guard.Positive(V_BE);
        Guard.Positive(V_M - V_BE, nameof(V_M), "The limiter would block at once.");
        return R_1 * (V_M / V_BE - 1);
    }

    /// <summary>R_sl from a point below the knee: (V_S + V_BE − V)·R_1/(R_E·(I − I_1)), I_1 what the single slope allows there.</summary>
    /// <param name="R_1">From the emitter resistor's upper end to the base; greater than 0 Ω.</param>
    /// <param name="R_E">Emitter resistor; greater than 0 Ω.</param>
    /// <param name="V_S">From the far end of R_sl to the rail, less the diode's drop; 0 V or more.</param>
    /// <param name="V_BE">Sense voltage; greater than 0 V.</param>
    /// <param name="V">From the output to the rail; 0 V or more, below V_S + V_BE.</param>
    /// <param name="I">Limit wanted there; above I_1.</param>
    /// <param name="I_1">What the single slope allows there.</param>
    /// <returns>The resistance of R_sl, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range: beyond the knee, or a limit that the single slope allows already.</exception>
    [Formula(Lm391 + ", there with I_1 = V_BE/R_E", Symbol = "R_sl")]
    [RecordName("limiter-design.second-slope-resistor")]
    public static ElectricResistance SecondSlopeResistor(ElectricResistance R_1, ElectricResistance R_E, ElectricPotential V_S, ElectricPotential V_BE, ElectricPotential V, ElectricCurrent I, ElectricCurrent I_1)
    {
        Guard.Positive(R_1);
        Guard.Positive(R_E);
        Guard.Positive(V_BE);
        Guard.NotNegative(V_S);
        Guard.NotNegative(V);
        Guard.Positive(V_S + V_BE - V, nameof(V), "Beyond the knee R_sl carries nothing: give a point of a lower voltage.");
        Guard.Positive(I - I_1, nameof(I), "The single slope allows as much already: ask for more, or leave R_sl out.");
        return R_1 * ((V_S + V_BE - V) / (R_E * (I - I_1)));
    }
}
