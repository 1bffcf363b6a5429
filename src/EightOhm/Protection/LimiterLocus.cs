using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Protection;

/// <summary>The current at which a voltage-current limiter begins to take the drive away, over the voltage from the output to the rail.</summary>
/// <remarks>
/// The network of one output transistor, its sense transistor between base node b and output o:
/// <code>
///   rail ──────────┬──────────────┐
///                  │              R_3
///             output transistor   │
///                  │              │
///                  e ──── R_1 ────b────── R_sl ──▷|── far end (ground, or a fixed voltage)
///                  │              │
///                 R_E            R_2     (the sense transistor's base is at b, its emitter at o,
///                  │              │       its collector pulls the drive of the output transistor)
///                  o ─────────────┴─────
/// </code>
/// Seen from the output: e is at I·R_E, the rail at V = V_CE + I·R_E, and b at V_BE when limiting begins. The sum of the currents at b gives the locus.
/// Without R_sl it is one straight line; with it the current allowed near the rail is raised, by as much as the output is above the far end.
/// The sense transistor's base current is neglected (keep R_1 below about 1 kΩ). pnp side: mirror all.
/// </remarks>
public static partial class LimiterLocus
{
    private const string Lm391 = "the network of National Semiconductor, LM391 datasheet, Application Hints (there without R_2), by the sum of currents at the sense transistor's base";

    /// <summary>One slope: R_1/R_E·(V_BE·(1/R_1 + 1/R_2 + 1/R_3) − V/R_3). Negative beyond the voltage at which the limiter blocks altogether.</summary>
    /// <param name="V_BE">Sense transistor's base-emitter voltage when it takes the drive away; greater than 0 V.</param>
    /// <param name="R_1">From the emitter resistor's upper end to the base; greater than 0 Ω.</param>
    /// <param name="R_2">From the base to the output; greater than 0 Ω (a very large one stands for none).</param>
    /// <param name="R_3">From the base to the rail; greater than 0 Ω.</param>
    /// <param name="R_E">Emitter resistor of this one transistor; greater than 0 Ω.</param>
    /// <param name="V">From the output to this transistor's rail, V_CE + I·R_E; 0 V or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Lm391, Symbol = "I_lim")]
    [RecordName("limiter-locus.single-slope")]
    public static ElectricCurrent SingleSlope(ElectricPotential V_BE, ElectricResistance R_1, ElectricResistance R_2, ElectricResistance R_3, ElectricResistance R_E, ElectricPotential V)
    {
        Guard.Positive(V_BE);
        Guard.Positive(R_1);
        Guard.Positive(R_2);
        Guard.Positive(R_3);
        Guard.Positive(R_E);
        Guard.NotNegative(V);
        var g_123 = 1 / R_1 + 1 / R_2 + 1 / R_3;
        return R_1 / R_E * (V_BE * g_123 - V / R_3);
    }

    /// <summary>Two slopes: the single slope, raised by R_1/R_E·(V_S + V_BE − V)/R_sl below the knee at V_S + V_BE.</summary>
    /// <param name="V_BE">Sense transistor's base-emitter voltage when it takes the drive away; greater than 0 V.</param>
    /// <param name="R_1">From the emitter resistor's upper end to the base; greater than 0 Ω.</param>
    /// <param name="R_2">From the base to the output; greater than 0 Ω (a very large one stands for none).</param>
    /// <param name="R_3">From the base to the rail; greater than 0 Ω.</param>
    /// <param name="R_sl">From the base through a diode to the far end; greater than 0 Ω.</param>
    /// <param name="R_E">Emitter resistor of this one transistor; greater than 0 Ω.</param>
    /// <param name="V_S">From the far end to the rail, less the diode's drop: the rail itself where the far end is ground and the drop neglected; 0 V or more.</param>
    /// <param name="V">From the output to this transistor's rail, V_CE + I·R_E; 0 V or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Lm391, Symbol = "I_lim")]
    [RecordName("limiter-locus.double-slope")]
    public static ElectricCurrent DoubleSlope(ElectricPotential V_BE, ElectricResistance R_1, ElectricResistance R_2, ElectricResistance R_3, ElectricResistance R_sl, ElectricResistance R_E, ElectricPotential V_S, ElectricPotential V)
    {
        Guard.Positive(R_sl);
        Guard.NotNegative(V_S);
        var I_1 = SingleSlope(V_BE, R_1, R_2, R_3, R_E, V);
        var V_k = V_S + V_BE;
        if (V >= V_k)
            return I_1;
        return I_1 + R_1 / R_E * ((V_k - V) / R_sl);
    }

    /// <summary>The voltage at which a single slope comes down to no current: V_BE·R_3·(1/R_1 + 1/R_2 + 1/R_3). Beyond it the transistor gets no drive at all.</summary>
    /// <param name="V_BE">Sense transistor's base-emitter voltage; greater than 0 V.</param>
    /// <param name="R_1">From the emitter resistor's upper end to the base; greater than 0 Ω.</param>
    /// <param name="R_2">From the base to the output; greater than 0 Ω.</param>
    /// <param name="R_3">From the base to the rail; greater than 0 Ω.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Lm391, Symbol = "V_M")]
    [RecordName("limiter-locus.zero-at")]
    public static ElectricPotential ZeroAt(ElectricPotential V_BE, ElectricResistance R_1, ElectricResistance R_2, ElectricResistance R_3)
    {
        Guard.Positive(V_BE);
        Guard.Positive(R_1);
        Guard.Positive(R_2);
        Guard.Positive(R_3);
        return V_BE * (1 + R_3 / R_1 + R_3 / R_2);
    }

    /// <summary>The sense voltage at another junction temperature: V_0 + tc·(T − T_0).</summary>
    /// <param name="V_0">Base-emitter voltage at T_0; greater than 0 V.</param>
    /// <param name="tc">Temperature coefficient, about −2 mV/K.</param>
    /// <param name="T">The sense junction's temperature.</param>
    /// <param name="T_0">The temperature at which V_0 holds.</param>
    /// <exception cref="ArgumentOutOfRangeException">V_0 is not positive.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 3: about −2 mV for each °C at a constant current", Symbol = "V_BE")]
    [RecordName("limiter-locus.sense-voltage")]
    public static ElectricPotential SenseVoltage(ElectricPotential V_0, VoltageDrift tc, Temperature T, Temperature T_0)
    {
        Guard.InReach(tc);
        Guard.Positive(V_0);
        return V_0 + tc * (T - T_0);
    }
}
