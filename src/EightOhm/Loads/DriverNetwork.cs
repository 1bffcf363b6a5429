using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;

namespace EightOhm.Loads;

/// <summary>The moving parts of a driver in a closed box, seen from its terminals: a resistance, a capacitance and an inductance in parallel.</summary>
/// <remarks>Small signal. Resonance and Q factors are those of the driver in its box; in free air they give the free-air network.</remarks>
public static partial class DriverNetwork
{
    private const string Source = "R. H. Small, Direct-radiator loudspeaker system analysis, J. Audio Eng. Soc. 20 (1972): the electrical equivalent circuit";

    /// <summary>Motional resistance: R_vc·Q_ms/Q_es.</summary>
    /// <param name="R_vc">Voice-coil resistance, dc; greater than 0 Ω.</param>
    /// <param name="Q_ms">Mechanical Q; greater than 0.</param>
    /// <param name="Q_es">Electrical Q with R_vc alone in the circuit; greater than 0.</param>
    /// <returns>The motional resistance, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "R_es")]
    [RecordName("driver-network.resistance")]
    public static ElectricResistance Resistance(ElectricResistance R_vc, double Q_ms, double Q_es)
    {
        Guard.Positive(R_vc);
        Guard.Positive(Q_ms);
        Guard.Positive(Q_es);
        return R_vc * (Q_ms / Q_es);
    }

    /// <summary>Motional capacitance, the moving mass: Q_es/(2·π·f_s·R_vc).</summary>
    /// <param name="R_vc">Voice-coil resistance, dc; greater than 0 Ω.</param>
    /// <param name="f_s">Resonance; greater than 0 Hz.</param>
    /// <param name="Q_es">Electrical Q with R_vc alone in the circuit; greater than 0.</param>
    /// <returns>The motional capacitance, in F.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "C_mes")]
    [RecordName("driver-network.capacitance")]
    public static ElectricCapacitance Capacitance(ElectricResistance R_vc, Frequency f_s, double Q_es)
    {
        Guard.Positive(R_vc);
        Guard.Positive(f_s);
        Guard.Positive(Q_es);
        return Q_es / R_vc / (2 * pi * f_s);
    }

    /// <summary>Motional inductance, the compliance: R_vc/(2·π·f_s·Q_es).</summary>
    /// <param name="R_vc">Voice-coil resistance, dc; greater than 0 Ω.</param>
    /// <param name="f_s">Resonance; greater than 0 Hz.</param>
    /// <param name="Q_es">Electrical Q with R_vc alone in the circuit; greater than 0.</param>
    /// <returns>The motional inductance, in H.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "L_ces")]
    [RecordName("driver-network.inductance")]
    public static ElectricInductance Inductance(ElectricResistance R_vc, Frequency f_s, double Q_es)
    {
        Guard.Positive(R_vc);
        Guard.Positive(f_s);
        Guard.Positive(Q_es);
        return R_vc / (2 * pi * f_s * Q_es);
    }

    /// <summary>Both dampings together: Q_ms·Q_es/(Q_ms + Q_es).</summary>
    /// <param name="Q_ms">Mechanical Q; greater than 0.</param>
    /// <param name="Q_es">Electrical Q; greater than 0.</param>
    /// <returns>The total Q, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "Q_ts")]
    [RecordName("driver-network.total-q")]
    public static double TotalQ(double Q_ms, double Q_es)
    {
        Guard.Positive(Q_ms);
        Guard.Positive(Q_es);
        return Q_ms * Q_es / (Q_ms + Q_es);
    }

    /// <summary>The electrical Q with resistance in front of the driver: Q_es·(R_vc + R_o)/R_vc.</summary>
    /// <remarks>This is all that damping does: beyond a factor of about 40 the voice coil is nearly the whole of the resistance.</remarks>
    /// <param name="Q_es">Electrical Q with R_vc alone; greater than 0.</param>
    /// <param name="R_vc">Voice-coil resistance; greater than 0 Ω.</param>
    /// <param name="R_o">All resistance in front of it, amplifier and cable, at the resonance; 0 Ω or more.</param>
    /// <returns>The electrical Q, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source + ": the source's resistance is in series with R_vc", Symbol = "Q_e")]
    [RecordName("driver-network.electrical-q")]
    public static double ElectricalQ(double Q_es, ElectricResistance R_vc, ElectricResistance R_o)
    {
        Guard.Positive(Q_es);
        Guard.Positive(R_vc);
        Guard.NotNegative(R_o);
        return Q_es * ((R_vc + R_o) / R_vc);
    }
}
