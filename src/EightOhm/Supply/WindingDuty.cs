using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Supply;

/// <summary>What the loads and their duty ask of a winding: the current that heats it as much as all of them in turn, and the rating that carries it.</summary>
/// <remarks>A winding's temperature follows its copper loss over many minutes, so parts of a duty much shorter than that count by their squares. A half-winding's current at each load is
/// <see cref="DualSteadySupply.HalfWindingRms"/>.</remarks>
public static partial class WindingDuty
{
    /// <summary>The steady current that heats as much: √(d·I_1² + (1 − d)·I_2²).</summary>
    /// <param name="I_1">Rms current while on; 0 A or more.</param>
    /// <param name="d">Share of the time that it is on; 0 to 100 %.</param>
    /// <param name="I_2">Rms current of the rest of the time, such as the idle current's; 0 A or more.</param>
    /// <returns>A, rms. Not the mean of the two currents, which heats less.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("equal Joule heat over the duty: mean of the squares", Symbol = "I_eq")]
    [RecordName("winding-duty.equivalent")]
    public static ElectricCurrent Equivalent(ElectricCurrent I_1, Ratio d, ElectricCurrent I_2)
    {
        Guard.NotNegative(I_1);
        Guard.Between(d, 0.percent, 100.percent);
        Guard.NotNegative(I_2);
        return Sqrt(d.DecimalFractions * (I_1 * I_1) + (1 - d.DecimalFractions) * (I_2 * I_2));
    }

    /// <summary>The nameplate that two halves ask for: 2·V_FL·I_half.</summary>
    /// <remarks>A nameplate counts the voltage at full load.</remarks>
    /// <param name="V_FL">Nameplate voltage of one half, at full load, rms; greater than 0 V.</param>
    /// <param name="I_half">Rms current of the busier half, by <see cref="Equivalent"/> where a duty is rated; 0 A or more.</param>
    /// <returns>VA, of the whole transformer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("apparent power of two equal windings", Symbol = "S")]
    [RecordName("winding-duty.rating")]
    public static ElectricApparentPower Rating(ElectricPotential V_FL, ElectricCurrent I_half)
    {
        Guard.Positive(V_FL);
        Guard.NotNegative(I_half);
        return ElectricApparentPower.FromVoltamperes(2 * V_FL.Volts * I_half.Amperes);
    }

    /// <summary>The share of the time for which a load may last so that the winding is not overloaded on the whole: (I_R² − I_2²)/(I_1² − I_2²).</summary>
    /// <param name="I_R">What a half may carry all day, rms; from I_2 to I_1.</param>
    /// <param name="I_1">Rms current while on; more than I_2.</param>
    /// <param name="I_2">Rms current of the rest of the time; 0 A or more.</param>
    /// <returns>The share of the time, 0 to 1, as a fraction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("equal Joule heat over the duty, solved for its share", Symbol = "d")]
    [RecordName("winding-duty.allowed")]
    public static Ratio Allowed(ElectricCurrent I_R, ElectricCurrent I_1, ElectricCurrent I_2)
    {
        Guard.NotNegative(I_2);
        Guard.Positive(I_1 - I_2, nameof(I_1), "The load must be more than the rest.");
        Guard.Between(I_R, I_2, I_1, hint: "Above the load's own current it may last for ever; below the rest's the transformer is too small.");
        return Ratio.FromDecimalFractions((I_R * I_R - I_2 * I_2) / (I_1 * I_1 - I_2 * I_2));
    }
}
