using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Supply;

/// <summary>The power dissipation of a rectifier whose diodes take a threshold voltage and a slope: the mean current heats through one, the rms current through the other.</summary>
/// <remarks>The supply's own figures, <see cref="SteadySupply.DiodeDissipation"/> and <see cref="DualSteadySupply.BridgeDissipation"/>, take the currents of the solved waveform.
/// Charging pulses have an rms current of two to three times their mean: a slope must not be taken at the mean.</remarks>
public static partial class RectifierDissipation
{
    private const string Source = "STMicroelectronics, AN604: conduction losses in a power rectifier, P = V_t0·I_F(AV) + r_d·I_F(RMS)²";

    /// <summary>One diode: V_0·I_av + r_T·I_rms².</summary>
    /// <param name="V_0">Threshold voltage, at the junction temperature that counts; 0 V or more.</param>
    /// <param name="r_T">Slope resistance; 0 Ω or more.</param>
    /// <param name="I_av">Mean current of this diode over the whole period; 0 A or more.</param>
    /// <param name="I_rms">Rms current of this diode over the whole period; at least its mean.</param>
    /// <returns>W, of one diode.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "P_D")]
    [RecordName("rectifier-dissipation.of-diode")]
    public static Power OfDiode(ElectricPotential V_0, ElectricResistance r_T, ElectricCurrent I_av, ElectricCurrent I_rms)
    {
        Guard.NotNegative(V_0);
        Guard.NotNegative(r_T);
        Guard.NotNegative(I_av);
        Guard.AtLeast(I_rms, I_av, hint: "No current has an rms value below its mean: were the two exchanged?");
        return V_0 * I_av + r_T * (I_rms * I_rms);
    }

    /// <summary>All diodes that serve one rail: n·(V_0·I_dc + r_T·I_rms²), whichever of them conducts at the time.</summary>
    /// <remarks>A bridge on one winding has two in the path, a centre tap one; each rail of a dual supply has one, so its bridge dissipates both rails' together.
    /// Each of the diodes dissipates an equal part.</remarks>
    /// <param name="n">Diodes in the path at once; 1 or 2.</param>
    /// <param name="V_0">Threshold voltage of one; 0 V or more.</param>
    /// <param name="r_T">Slope resistance of one; 0 Ω or more.</param>
    /// <param name="I_dc">Mean current of the rail; 0 A or more.</param>
    /// <param name="I_rms">The rail's charging current, rms; at least the mean.</param>
    /// <returns>W, of all of them together.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source + "; summed over the diodes that take turns", Symbol = "P_D")]
    [RecordName("rectifier-dissipation.of-rail")]
    public static Power OfRail(int n, ElectricPotential V_0, ElectricResistance r_T, ElectricCurrent I_dc, ElectricCurrent I_rms)
    {
        Guard.Between(n, 1, 2);
        return n * OfDiode(V_0, r_T, I_dc, I_rms);
    }
}
