using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Loads;

/// <summary>A driver in a closed box as its electrical network: voice coil, and its moving parts as a resonance in parallel.</summary>
/// <remarks>Small signal; the coil's inductance is a plain one, where iron makes it grow less than with the frequency.
/// Resonance and Q factors are those in the box (usually written with a c: f_c, Q_mc, Q_ec).</remarks>
public sealed class BoxedDriver : NetworkLoad
{
    /// <summary>Makes the load.</summary>
    /// <param name="R_vc">Voice-coil resistance, dc; greater than 0 Ω.</param>
    /// <param name="L">Voice-coil inductance; 0 H or more.</param>
    /// <param name="f_s">Resonance in the box; greater than 0 Hz.</param>
    /// <param name="Q_ms">Mechanical Q; greater than 0.</param>
    /// <param name="Q_es">Electrical Q, R_vc alone in the circuit; greater than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public BoxedDriver(ElectricResistance R_vc, ElectricInductance L, Frequency f_s, double Q_ms, double Q_es)
        : base(Of(R_vc, L, f_s, Q_ms, Q_es)) => (this.R_vc, this.L, this.f_s, this.Q_ms, this.Q_es) = (R_vc, L, f_s, Q_ms, Q_es);

    /// <summary>Voice-coil resistance, dc.</summary>
    [Symbol("R_vc")]
    [Called("voice-coil resistance, dc")]
    public ElectricResistance R_vc { get; }

    /// <summary>Voice-coil inductance.</summary>
    [Symbol("L")]
    [Called("voice-coil inductance")]
    public ElectricInductance L { get; }

    /// <summary>Resonance in the box.</summary>
    [Symbol("f_s")]
    [Called("resonance in the box")]
    public Frequency f_s { get; }

    /// <summary>Mechanical Q.</summary>
    [Symbol("Q_ms")]
    [Called("mechanical Q")]
    public double Q_ms { get; }

    /// <summary>Electrical Q.</summary>
    [Symbol("Q_es")]
    [Called("electrical Q")]
    public double Q_es { get; }

    /// <summary>Motional resistance.</summary>
    [Symbol("R_es")]
    [Called("motional resistance")]
    public ElectricResistance R_es => DriverNetwork.Resistance(R_vc, Q_ms, Q_es);

    /// <summary>Motional capacitance: the moving mass.</summary>
    [Symbol("C_mes")]
    [Called("motional capacitance (moving mass)")]
    public ElectricCapacitance C_mes => DriverNetwork.Capacitance(R_vc, f_s, Q_es);

    /// <summary>Motional inductance: the compliance.</summary>
    [Symbol("L_ces")]
    [Called("motional inductance (compliance)")]
    public ElectricInductance L_ces => DriverNetwork.Inductance(R_vc, f_s, Q_es);

    private static SeriesNetwork Of(ElectricResistance R_vc, ElectricInductance L, Frequency f_s, double Q_ms, double Q_es)
    {
        Guard.Positive(R_vc, hint: "Give the dc resistance of the voice coil, for example 5.8.Ohm.");
        Guard.NotNegative(L);
        Guard.Positive(f_s);
        Guard.Positive(Q_ms);
        Guard.Positive(Q_es);
        return new(R_vc.Ohms, L.Henries, 2 * Math.PI * f_s.Hertz, 1 / Guard.Finite(Q_ms), R_vc.Ohms / Guard.Finite(Q_es));
    }
}
