using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Supply;

/// <summary>The textbook's rectifier: a reservoir charged in an instant to the peak, emptied by a constant current between.</summary>
/// <remarks>No source resistance, so the mean is too high and the ripple too large; <see cref="SupplyEstimates"/> says by how much.</remarks>
public static partial class ReservoirEstimates
{
    private const string Malvino = "Malvino & Bates, Electronic Principles, 7th ed., ch. 4: V_r = I/(f_ripple·C)";
    private const string Boylestad = "Boylestad & Nashelsky, Electronic Devices and Circuit Theory, 11th ed., ch. 15: capacitor filter";

    /// <summary>Ripple of a full-wave rectifier, peak to peak: I/(2·f·C).</summary>
    /// <param name="I">Load current; 0 A or more.</param>
    /// <param name="f">Mains frequency (not the ripple's); greater than 0 Hz.</param>
    /// <param name="C">Reservoir; greater than 0 F.</param>
    /// <returns>The ripple, peak to peak, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>ReservoirEstimates.RippleFullWave(3.A, 50.Hz, 10.mF)   // 3 V</code></example>
    [Formula(Malvino + ", f_ripple = 2·f", Symbol = "V_r")]
    [RecordName("reservoir-estimates.ripple-full-wave")]
    public static ElectricPotential RippleFullWave(ElectricCurrent I, Frequency f, ElectricCapacitance C)
    {
        Guard.NotNegative(I);
        Guard.Positive(f);
        Guard.Positive(C);
        return I / (2 * (C * f));
    }

    /// <summary>Ripple of a half-wave rectifier, peak to peak: I/(f·C). Not that of a bridge or a centre-tapped winding.</summary>
    /// <param name="I">Load current; 0 A or more.</param>
    /// <param name="f">Mains frequency; greater than 0 Hz.</param>
    /// <param name="C">Reservoir; greater than 0 F.</param>
    /// <returns>The ripple, peak to peak, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Malvino + ", f_ripple = f", Symbol = "V_r")]
    [RecordName("reservoir-estimates.ripple-half-wave")]
    public static ElectricPotential RippleHalfWave(ElectricCurrent I, Frequency f, ElectricCapacitance C)
    {
        Guard.NotNegative(I);
        Guard.Positive(f);
        Guard.Positive(C);
        return I / (C * f);
    }

    /// <summary>Ripple of a full-wave rectifier, rms of a triangle: I/(4·√3·f·C).</summary>
    /// <param name="I">Load current; 0 A or more.</param>
    /// <param name="f">Mains frequency; greater than 0 Hz.</param>
    /// <param name="C">Reservoir; greater than 0 F.</param>
    /// <returns>The ripple, rms, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>ReservoirEstimates.RippleRms(3.A, 50.Hz, 10.mF)   // 866 mV</code></example>
    [Formula(Boylestad + " (2.4·I/C at 60 Hz, mA and µF)", Symbol = "V_r_rms")]
    [RecordName("reservoir-estimates.ripple-rms")]
    public static ElectricPotential RippleRms(ElectricCurrent I, Frequency f, ElectricCapacitance C)
    {
        Guard.NotNegative(I);
        Guard.Positive(f);
        Guard.Positive(C);
        return I / (4 * Sqrt(3) * (C * f));
    }

    /// <summary>Mean of a full-wave rectifier: V_m − I/(4·f·C), the peak less half the ripple.</summary>
    /// <param name="V_m">Peak at the reservoir, the diodes' drop taken off; greater than 0 V.</param>
    /// <param name="I">Load current; 0 A or more.</param>
    /// <param name="f">Mains frequency; greater than 0 Hz.</param>
    /// <param name="C">Reservoir; greater than 0 F.</param>
    /// <returns>The voltage, mean, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>ReservoirEstimates.Mean(50.V, 3.A, 50.Hz, 10.mF)   // 48.5 V</code></example>
    [Formula(Boylestad + " (4.17·I/C at 60 Hz, mA and µF)", Symbol = "V_dc")]
    [RecordName("reservoir-estimates.mean")]
    public static ElectricPotential Mean(ElectricPotential V_m, ElectricCurrent I, Frequency f, ElectricCapacitance C)
    {
        Guard.Positive(V_m);
        Guard.NotNegative(I);
        Guard.Positive(f);
        Guard.Positive(C);
        return V_m - I / (4 * (C * f));
    }

    /// <summary>The peak that the reservoir is charged to: √2·V − V_d.</summary>
    /// <param name="V">Winding, rms; greater than 0 V.</param>
    /// <param name="V_d">Drop of all diodes in the path; 0 V or more.</param>
    /// <returns>The voltage, peak, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>ReservoirEstimates.Peak(35.V, 1.V)   // 48.5 V</code></example>
    [Formula("Malvino & Bates, Electronic Principles, 7th ed., ch. 4", Symbol = "V_m")]
    [RecordName("reservoir-estimates.peak")]
    public static ElectricPotential Peak(ElectricPotential V, ElectricPotential V_d)
    {
        Guard.Positive(V);
        Guard.NotNegative(V_d);
        return Sqrt(2) * V - V_d;
    }

    /// <summary>Ripple factor: rms ripple over dc.</summary>
    /// <param name="V_r_rms">Ripple, rms; 0 V or more.</param>
    /// <param name="V_dc">Mean; greater than 0 V.</param>
    /// <returns>The ripple factor, rms over dc, as a fraction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Boylestad, Symbol = "r")]
    [RecordName("reservoir-estimates.ripple-factor")]
    public static Ratio RippleFactor(ElectricPotential V_r_rms, ElectricPotential V_dc)
    {
        Guard.NotNegative(V_r_rms);
        Guard.Positive(V_dc);
        return Ratio.FromDecimalFractions(V_r_rms / V_dc);
    }
}
