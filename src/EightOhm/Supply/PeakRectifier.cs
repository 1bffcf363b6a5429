using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Supply;

/// <summary>The ideal half-wave peak rectifier of the textbook, with small ripple: what the diode must carry.</summary>
/// <remarks>For a full-wave rectifier put half the ripple-to-peak ratio: V_p/(2·V_r) where V_p/V_r stands (see the full-wave forms).
/// Without source resistance the pulses are too high and too short.</remarks>
public static partial class PeakRectifier
{
    private const string Exchanged = "A ripple cannot be above the peak: were the two exchanged, or is the reservoir far too small?";
    private const string Source = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 3: the peak rectifier";

    /// <summary>The reservoir for a ripple, half-wave: V_p/(f·R·V_r).</summary>
    /// <param name="V_p">Peak of the sine; greater than 0 V.</param>
    /// <param name="R">Load; greater than 0 Ω.</param>
    /// <param name="f">Mains frequency; greater than 0 Hz.</param>
    /// <param name="V_r">Ripple, peak to peak; greater than 0 V.</param>
    /// <returns>The capacitance of the reservoir, in F.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "C")]
    [RecordName("peak-rectifier.half-wave-reservoir")]
    public static ElectricCapacitance HalfWaveReservoir(ElectricPotential V_p, ElectricResistance R, Frequency f, ElectricPotential V_r)
    {
        Guard.Positive(V_p);
        Guard.Positive(R);
        Guard.Positive(f);
        Guard.Positive(V_r);
        Guard.Between(V_r, default, V_p, hint: Exchanged);
        return V_p / R / (V_r * f);
    }

    /// <summary>Conduction angle: √(2·V_r/V_p) radians before the peak.</summary>
    /// <param name="V_p">Peak of the sine; greater than 0 V.</param>
    /// <param name="V_r">Ripple, peak to peak; greater than 0 V, at most the peak and small beside it.</param>
    /// <returns>The conduction angle before the peak, in degrees.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive, or the ripple is above the peak.</exception>
    [Formula(Source, Symbol = "theta_c")]
    [RecordName("peak-rectifier.conduction-angle")]
    public static Angle ConductionAngle(ElectricPotential V_p, ElectricPotential V_r)
    {
        Guard.Positive(V_p);
        Guard.Positive(V_r);
        Guard.Between(V_r, default, V_p, hint: Exchanged);
        return Angle.FromRadians(Sqrt(2 * V_r / V_p));
    }

    /// <summary>Mean diode current while it conducts, half-wave: I·(1 + π·√(2·V_p/V_r)).</summary>
    /// <param name="I">Load current; 0 A or more.</param>
    /// <param name="V_p">Peak of the sine; greater than 0 V.</param>
    /// <param name="V_r">Ripple, peak to peak; greater than 0 V, at most the peak.</param>
    /// <returns>The current while the diode conducts, mean, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or the ripple is above the peak.</exception>
    [Formula(Source, Symbol = "i_D_av")]
    [RecordName("peak-rectifier.half-wave-mean")]
    public static ElectricCurrent HalfWaveMean(ElectricCurrent I, ElectricPotential V_p, ElectricPotential V_r)
    {
        Guard.NotNegative(I);
        Guard.Positive(V_p);
        Guard.Positive(V_r);
        Guard.Between(V_r, default, V_p, hint: Exchanged);
        return I * (1 + pi * Sqrt(2 * V_p / V_r));
    }

    /// <summary>Peak diode current, half-wave: I·(1 + 2·π·√(2·V_p/V_r)).</summary>
    /// <param name="I">Load current; 0 A or more.</param>
    /// <param name="V_p">Peak of the sine; greater than 0 V.</param>
    /// <param name="V_r">Ripple, peak to peak; greater than 0 V, at most the peak.</param>
    /// <returns>The current of the diode, peak, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or the ripple is above the peak.</exception>
    [Formula(Source, Symbol = "i_D_max")]
    [RecordName("peak-rectifier.half-wave-peak")]
    public static ElectricCurrent HalfWavePeak(ElectricCurrent I, ElectricPotential V_p, ElectricPotential V_r)
    {
        Guard.NotNegative(I);
        Guard.Positive(V_p);
        Guard.Positive(V_r);
        Guard.Between(V_r, default, V_p, hint: Exchanged);
        return I * (1 + 2 * pi * Sqrt(2 * V_p / V_r));
    }

    /// <summary>Mean diode current while it conducts, full-wave: I·(1 + π·√(V_p/(2·V_r))).</summary>
    /// <remarks>Over a whole period each of a pair carries half the load current; this is the mean of a pulse alone.</remarks>
    /// <param name="I">Load current; 0 A or more.</param>
    /// <param name="V_p">Peak at the reservoir; greater than 0 V.</param>
    /// <param name="V_r">Ripple, peak to peak; greater than 0 V, at most the peak.</param>
    /// <returns>The current while the diode conducts, mean, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or the ripple is above the peak.</exception>
    [Formula(Source, Symbol = "i_D_av")]
    [RecordName("peak-rectifier.full-wave-mean")]
    public static ElectricCurrent FullWaveMean(ElectricCurrent I, ElectricPotential V_p, ElectricPotential V_r)
    {
        Guard.NotNegative(I);
        Guard.Positive(V_p);
        Guard.Positive(V_r);
        Guard.Between(V_r, default, V_p, hint: Exchanged);
        return I * (1 + pi * Sqrt(V_p / (2 * V_r)));
    }

    /// <summary>Peak diode current, full-wave: I·(1 + 2·π·√(V_p/(2·V_r))).</summary>
    /// <param name="I">Load current; 0 A or more.</param>
    /// <param name="V_p">Peak at the reservoir; greater than 0 V.</param>
    /// <param name="V_r">Ripple, peak to peak; greater than 0 V, at most the peak.</param>
    /// <returns>The current of the diode, peak, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or the ripple is above the peak.</exception>
    [Formula(Source, Symbol = "i_D_max")]
    [RecordName("peak-rectifier.full-wave-peak")]
    public static ElectricCurrent FullWavePeak(ElectricCurrent I, ElectricPotential V_p, ElectricPotential V_r)
    {
        Guard.NotNegative(I);
        Guard.Positive(V_p);
        Guard.Positive(V_r);
        Guard.Between(V_r, default, V_p, hint: Exchanged);
        return I * (1 + 2 * pi * Sqrt(V_p / (2 * V_r)));
    }
}
