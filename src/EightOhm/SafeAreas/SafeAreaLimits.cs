using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.SafeAreas;

/// <summary>The pieces of which a safe operating area is made, and what a warm case leaves of each.</summary>
public static partial class SafeAreaLimits
{
    private const string Ratings = "onsemi, MJ15003/MJ15004 datasheet, Rev. 16: maximum ratings and the active-region safe operating area";

    /// <summary>The part set by power dissipation: P/V_CE, slope −1 on a log-log chart.</summary>
    /// <param name="P">Dissipation allowed: the rating for dc, more for a pulse; greater than 0 W.</param>
    /// <param name="V_CE">Collector to emitter; greater than 0 V.</param>
    /// <returns>The collector current, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>SafeAreaLimits.ByDissipation(150.W, 50.V)   // 3 A</code></example>
    [Formula(Ratings, Symbol = "I_th")]
    [RecordName("safe-area-limits.by-heat")]
    public static ElectricCurrent ByDissipation(Power P, ElectricPotential V_CE)
    {
        Guard.Positive(P);
        Guard.Positive(V_CE);
        return P / V_CE;
    }

    /// <summary>Between two corners of a safe-area line, straight on a log-log chart: I_1·(V/V_1)^(ln(I_2/I_1)/ln(V_2/V_1)).</summary>
    /// <param name="V">Collector to emitter, from the first corner to the second.</param>
    /// <param name="V_1">Voltage of the first corner; greater than 0 V.</param>
    /// <param name="I_1">Current of the first corner; greater than 0 A.</param>
    /// <param name="V_2">Voltage of the second corner; above the first's.</param>
    /// <param name="I_2">Current of the second corner; greater than 0 A.</param>
    /// <returns>The collector current, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The corners are not in order or V is outside them.</exception>
    [Formula("a straight line on the log-log charts of makers' datasheets, e.g. " + Ratings, Symbol = "I_SB")]
    [RecordName("safe-area-limits.between")]
    public static ElectricCurrent Between(ElectricPotential V, ElectricPotential V_1, ElectricCurrent I_1, ElectricPotential V_2, ElectricCurrent I_2)
    {
        Guard.Positive(V_1);
        Guard.Positive(I_1);
        Guard.Positive(I_2);
        Guard.Positive(V_2 - V_1, nameof(V_2));
        Guard.Between(V, V_1, V_2, hint: "Outside the corners the line is not known.");
        var m = Ln(I_2 / I_1) / Ln(V_2 / V_1);
        return Pow(V / V_1, m) * I_1;
    }

    /// <summary>The share of its power dissipation that a warm case leaves a transistor: (T_J − T_C)/(T_J − T_ref), and never more than 1.</summary>
    /// <param name="T_J">Hottest junction allowed.</param>
    /// <param name="T_C">Case temperature; at most T_J.</param>
    /// <param name="T_ref">Case temperature up to which the ratings hold; below T_J.</param>
    /// <returns>The share left, 0 to 1, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperatures are not in order.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14: the power-derating curve", Symbol = "k_th")]
    [RecordName("safe-area-limits.power-derating-factor")]
    public static double PowerDeratingFactor(Temperature T_J, Temperature T_C, Temperature T_ref)
    {
        Guard.Between(T_ref, default, T_J, hint: "Give the sheet's reference temperature, for example 25.degC.");
        Guard.Between(T_C, default, T_J, hint: "A case hotter than the junction limit allows nothing at all: cool the case.");
        Guard.Positive(T_J - T_ref, nameof(T_ref));
        if (T_C <= T_ref)
            return 1;
        return (T_J - T_C) / (T_J - T_ref);
    }

    /// <summary>The share of its second-breakdown current that a warm case leaves a transistor: k_th + (1 − k_th)·k_SB, a line of its own.</summary>
    /// <param name="k_th">The share of its power dissipation that the case leaves it; from 0 to 1.</param>
    /// <param name="k_SB">The share left when the case is as hot as the junction may be: 0 derates it as the power, 1 not at all.</param>
    /// <returns>The share left, 0 to 1, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A share is outside 0 to 1.</exception>
    [Formula("k_SB = 0: onsemi, 2N3055/MJ2955 datasheet, Fig. 2 (pulse limits derated by the power-derating curve); k_SB above 0: makers' second-breakdown derating lines; derived as a straight line between both ends", Symbol = "k_2")]
    [RecordName("safe-area-limits.second-breakdown-left")]
    public static double SecondBreakdownLeft(double k_th, double k_SB)
    {
        Guard.Between(k_th, 0, 1);
        Guard.Between(k_SB, 0, 1);
        return k_th + (1 - k_th) * k_SB;
    }

    /// <summary>The pulse that a half-wave of a sine is to a class-B transistor: 1/(2·f).</summary>
    /// <param name="f">Frequency of the sine; greater than 0 Hz.</param>
    /// <returns>The length of the half-wave, in s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not positive.</exception>
    [Formula("common practice, no source", Symbol = "t_p")]
    [RecordName("safe-area-limits.half-period")]
    public static Duration HalfPeriod(Frequency f)
    {
        Guard.Positive(f);
        return 1 / (2 * f);
    }
}
