using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Supply;

/// <summary>The single losses between a rail and the peak of the output, for a <see cref="SwingBudget"/>.</summary>
public static partial class SwingLosses
{
    private const string Junctions = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 5: exponential junction from a known point, with its series resistance";

    /// <summary>The emitter resistors of n pairs that share the peak current: I_p·R_E/n.</summary>
    /// <param name="I_p">Peak current into the load (not rms), of all pairs together; 0 A or more.</param>
    /// <param name="R_E">Emitter resistor of one transistor; 0 Ω or more.</param>
    /// <param name="n">Pairs in parallel that share equally; 1 or more.</param>
    /// <returns>The drop at the peak, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>SwingLosses.EmitterResistors(10.A, 0.22.Ohm, 2)   // 1.1 V</code></example>
    [Formula("Ohm's law; equal sharing", Symbol = "V_RE")]
    [RecordName("swing-losses.emitter-resistors")]
    public static ElectricPotential EmitterResistors(ElectricCurrent I_p, ElectricResistance R_E, int n)
    {
        Guard.NotNegative(I_p);
        Guard.NotNegative(R_E);
        Guard.Positive(n);
        return I_p * (R_E / n);
    }

    /// <summary>The base-emitter voltage at a current, from the one at another: V_BE0 + V_T·ln(I/I_0) + (I − I_0)·r_int.</summary>
    /// <remarks>Exponential region at one junction temperature. The terminal voltage V_BE0 already holds I_0·r_int.</remarks>
    /// <param name="V_BE0">Base-emitter voltage at I_0; 0 V or more.</param>
    /// <param name="V_T">Thermal voltage at the junction; greater than 0 V.</param>
    /// <param name="I">Emitter current now, of one transistor; greater than 0 A.</param>
    /// <param name="I_0">Emitter current at which V_BE0 holds; greater than 0 A.</param>
    /// <param name="r_int">The transistor's own series resistance seen at the emitter; 0 Ω or more.</param>
    /// <returns>The base-emitter voltage, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Junctions, Symbol = "V_BE")]
    [RecordName("swing-losses.junction")]
    public static ElectricPotential Junction(ElectricPotential V_BE0, ElectricPotential V_T, ElectricCurrent I, ElectricCurrent I_0, ElectricResistance r_int)
    {
        Guard.NotNegative(V_BE0);
        Guard.Positive(V_T);
        Guard.Positive(I);
        Guard.Positive(I_0);
        Guard.NotNegative(r_int);
        return V_BE0 + V_T * Ln(I / I_0) + (I - I_0) * r_int;
    }

    /// <summary>The current of a follower whose next stage asks for base current: I_Q + I/h_FE.</summary>
    /// <param name="I_Q">Its own standing current; 0 A or more.</param>
    /// <param name="I">Emitter current that it drives, of all transistors at its emitter; 0 A or more.</param>
    /// <param name="h_FE">Current gain of the driven transistors at that current; greater than 0.</param>
    /// <returns>The current of the follower, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 5: base current, with I_B taken as I/h_FE", Symbol = "I_D")]
    [RecordName("swing-losses.driver-current")]
    public static ElectricCurrent DriverCurrent(ElectricCurrent I_Q, ElectricCurrent I, double h_FE)
    {
        Guard.NotNegative(I_Q);
        Guard.NotNegative(I);
        Guard.Positive(h_FE);
        return I_Q + I / h_FE;
    }

    /// <summary>The collector-emitter voltage at which quasi-saturation begins: V_BE + I·R_C.</summary>
    /// <remarks>There the inner base-collector junction is at 0 V although the terminals are not: the undepleted collector drops the rest. Below it
    /// current gain and speed fall long before the transistor looks saturated, so a rail that leaves only V_CE(sat) is too low.</remarks>
    /// <param name="V_BE">Base-emitter voltage at the current; 0 V or more.</param>
    /// <param name="I">Collector current of one transistor; 0 A or more.</param>
    /// <param name="R_C">Resistance of the undepleted collector; 0 Ω or more.</param>
    /// <returns>The collector-emitter voltage, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    [Formula("common practice, no source: quasi-saturation begins where the inner base-collector junction reaches 0 V", Symbol = "V_CE")]
    [RecordName("swing-losses.quasi-saturation")]
    public static ElectricPotential QuasiSaturation(ElectricPotential V_BE, ElectricCurrent I, ElectricResistance R_C)
    {
        Guard.NotNegative(V_BE);
        Guard.NotNegative(I);
        Guard.NotNegative(R_C);
        return V_BE + I * R_C;
    }
}
