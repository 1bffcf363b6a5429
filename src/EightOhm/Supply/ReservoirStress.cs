using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Supply;

/// <summary>What wears a reservoir: ripple current through its series resistance, the rise that makes, and the hours left of its base life; and the share of its rated voltage in use.</summary>
/// <remarks>The ripple current is the solved one, <see cref="RailFigures.CapacitorRipple"/>: it is larger than the load current. Makers rate ripple at 100 or 120 Hz, which is a rail's own.
/// A stored charge stays after switch-off: see <see cref="Discharge"/>.</remarks>
public static partial class ReservoirStress
{
    private const string Notes = "Samyoung Electronics, technical notes for aluminum electrolytic capacitors, sec. 4.2";

    /// <summary>Power dissipation of one capacitor: (I/n)²·R_s.</summary>
    /// <param name="I">Ripple current of the rail's reservoir, rms; 0 A or more.</param>
    /// <param name="n">Equal capacitors in parallel; 1 or more.</param>
    /// <param name="R_s">Series resistance (ESR) of one of them, at twice the mains frequency; 0 Ω or more.</param>
    /// <returns>W, of one capacitor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("BHC Aerovox, electrolytic capacitors, technical notes: ripple current; Joule's law", Symbol = "P_C")]
    [RecordName("reservoir-stress.dissipation")]
    public static Power Dissipation(ElectricCurrent I, int n, ElectricResistance R_s)
    {
        Guard.NotNegative(I);
        Guard.Positive(n);
        Guard.NotNegative(R_s);
        var I_1 = I / n;
        return R_s * (I_1 * I_1);
    }

    /// <summary>Rise of its core: P_C·θ.</summary>
    /// <param name="P_C">Power dissipation of one capacitor; 0 W or more.</param>
    /// <param name="theta">From its core to the air around; 0 K/W or more.</param>
    /// <returns>The temperature rise of the core, in K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    [Formula("Fourier's law in a heat path", Symbol = "dT_C")]
    [RecordName("reservoir-stress.rise")]
    public static TemperatureDelta Rise(Power P_C, ThermalResistance theta)
    {
        Guard.NotNegative(P_C);
        Guard.NotNegative(theta);
        return P_C * theta;
    }

    /// <summary>Rise of its core from its rated ripple alone: ΔT_0·(I/I_R)².</summary>
    /// <param name="I">Ripple current of one capacitor, rms; 0 A or more.</param>
    /// <param name="I_R">Its rated ripple current at the same frequency; greater than 0 A.</param>
    /// <param name="dT_0">Rise at the rated ripple current, such as 5 K, from its maker; greater than 0 K.</param>
    /// <returns>The temperature rise of the core, in K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Notes + ": the rise goes with the square of the ripple current", Symbol = "dT_C")]
    [RecordName("reservoir-stress.rise-by-rating")]
    public static TemperatureDelta RiseByRating(ElectricCurrent I, ElectricCurrent I_R, TemperatureDelta dT_0)
    {
        Guard.NotNegative(I);
        Guard.Positive(I_R);
        Guard.Positive(dT_0);
        var r = I / I_R;
        return r * r * dT_0;
    }

    /// <summary>Life at a core temperature by the ten-kelvin rule: L_0·2^((T_0 − T)/10 K).</summary>
    /// <remarks>Common practice, and most makers' first estimate. Some makers count the ripple's own rise harder than the ambient's, by 5 K for a factor of two; below 40 °C none promises more.
    /// Core against core: where the base life is told with rated ripple at a category temperature, put that temperature and the rated rise together for T_0.</remarks>
    /// <param name="L_0">Base life, from its datasheet, such as Duration.FromHours(2000); greater than 0 s.</param>
    /// <param name="T_0">Core temperature at which the base life is told; above 0 K.</param>
    /// <param name="T">Core temperature in use: the air around, and the ripple's rise; from 40 °C to T_0.</param>
    /// <returns>The estimate of life, in s; what it is worth ends at about 15 years, where seals age (common practice, no source).</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Rubycon, aluminum electrolytic capacitors, technical notes, sec. 5-1: life doubles for every 10 °C less", Symbol = "L")]
    [RecordName("reservoir-stress.life")]
    public static Duration Life(Duration L_0, Temperature T_0, Temperature T)
    {
        Guard.Positive(L_0);
        Guard.Positive(T_0);
        Guard.Between(T, 40.degC, T_0, hint: "Cooler than 40 °C nobody promises more: put 40.degC. Hotter than the base life's temperature the capacitor is misused.");
        return Pow(2, (T_0 - T) / 10.K) * L_0;
    }

    /// <summary>The share of its rated voltage in use: V/V_R.</summary>
    /// <remarks>At most 95 % at high mains without load (common practice, no source).</remarks>
    /// <param name="V">The rail at its highest, <see cref="Transformer.NoLoadRail"/> at high mains; 0 V or more.</param>
    /// <param name="V_R">Rated voltage; greater than 0 V.</param>
    /// <returns>The share of the rated voltage, as a fraction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("the definition of a ratio", Symbol = "k_V")]
    [RecordName("reservoir-stress.voltage-use")]
    public static Ratio VoltageUse(ElectricPotential V, ElectricPotential V_R)
    {
        Guard.NotNegative(V);
        Guard.Positive(V_R);
        return Ratio.FromDecimalFractions(V / V_R);
    }
}
