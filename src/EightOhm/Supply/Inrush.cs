using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Supply;

/// <summary>Closed forms of switch-on: empty capacitors at the mains peak, a saturated core at its zero, and a limiter against both.</summary>
/// <remarks>Two worst moments, not one: the capacitors draw most when the switch closes at the peak of the mains, the core when it closes at zero and the flux runs to twice its
/// peak and more. The larger governs the fuse. <see cref="SoftStart"/> follows the charging in time.</remarks>
public static partial class Inrush
{
    private const string Ohm = "Ohm's law at the peak of the mains; Ametherm, selecting an inrush current limiter";

    /// <summary>Both half windings of a dual rail, seen from the primary while both charge: R_half·N_r²/2.</summary>
    /// <param name="R_half">Resistance of one half winding, with its diode's and reservoir's; 0 Ω or more.</param>
    /// <param name="N_r">Primary turns over those of one half: mains over its no-load voltage; greater than 0.</param>
    /// <returns>The resistance seen from the primary, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [RecordName("inrush.reflected-halves")]
    [Formula("ideal transformer: N_r·I_p = 2·I_s, the same dissipation on both sides", Symbol = "R_refl")]
    public static ElectricResistance ReflectedHalves(ElectricResistance R_half, double N_r)
    {
        Guard.NotNegative(R_half);
        Guard.Positive(N_r);
        return N_r * N_r / 2 * R_half;
    }

    /// <summary>The primary's peak into empty capacitors: (√2·V_m − N_r·V_D)/R.</summary>
    /// <param name="V_m">Mains, rms, at its highest if that is what counts; greater than 0 V.</param>
    /// <param name="V_D">Drop of one diode; 0 V or more.</param>
    /// <param name="N_r">Primary turns over those of one half winding; greater than 0.</param>
    /// <param name="R">Everything in series, seen from the primary: mains, limiter, primary, reflected halves; greater than 0 Ω.</param>
    /// <returns>The current in the primary, peak, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Ohm, Symbol = "I_p")]
    [RecordName("inrush.capacitor-peak")]
    public static ElectricCurrent CapacitorPeak(ElectricPotential V_m, ElectricPotential V_D, double N_r, ElectricResistance R)
    {
        Guard.Positive(V_m);
        Guard.NotNegative(V_D);
        Guard.Positive(N_r);
        Guard.Positive(R);
        var V_c = Sqrt(2) * V_m - N_r * V_D;
        Guard.NotNegative(V_c, "the peak of the mains less the diodes' drop", "The diodes never conduct: look at the mains, the drop and the turns.");
        return V_c / R;
    }

    /// <summary>The most that a saturated core can draw: √2·V_m/R. A bound: the core's own air-core inductance and its remanence keep it below.</summary>
    /// <param name="V_m">Mains, rms; greater than 0 V.</param>
    /// <param name="R">Mains, limiter and primary winding (nothing reflected: a saturated core passes nothing on); greater than 0 Ω.</param>
    /// <returns>The current in the primary, peak, an upper bound, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula("Ohm's law: winding and mains resistance alone remain when the core is saturated", Symbol = "I_core")]
    [RecordName("inrush.core-bound")]
    public static ElectricCurrent CoreBound(ElectricPotential V_m, ElectricResistance R)
    {
        Guard.Positive(V_m);
        Guard.Positive(R);
        return Sqrt(2) * V_m / R;
    }

    /// <summary>The least resistance in series that keeps a peak: V_pk/I_max.</summary>
    /// <param name="V_pk">Peak of the mains at its highest (peak, not rms); greater than 0 V.</param>
    /// <param name="I_max">Peak allowed; greater than 0 A.</param>
    /// <returns>The least resistance in series, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Ohm, Symbol = "R_lim")]
    [RecordName("inrush.least-resistance")]
    public static ElectricResistance LeastResistance(ElectricPotential V_pk, ElectricCurrent I_max)
    {
        Guard.Positive(V_pk);
        Guard.Positive(I_max);
        return V_pk / I_max;
    }

    /// <summary>The power dissipation of a limiter that stays in circuit while the amplifier plays: I²·R_lim.</summary>
    /// <remarks>What a failed bypass does. A limiter for a second's use does not bear it: it needs a thermal fuse in touch with it, or the bypass must be watched.</remarks>
    /// <param name="I">Primary current while playing, rms; 0 A or more.</param>
    /// <param name="R_lim">Limiter; 0 Ω or more.</param>
    /// <returns>The power dissipation of the limiter, average, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    [Formula("Joule's law: I²·R of the rms current", Symbol = "P_lim")]
    [RecordName("inrush.failed-bypass-heat")]
    public static Power FailedBypassDissipation(ElectricCurrent I, ElectricResistance R_lim)
    {
        Guard.NotNegative(I);
        Guard.NotNegative(R_lim);
        return I * I * R_lim;
    }
}
