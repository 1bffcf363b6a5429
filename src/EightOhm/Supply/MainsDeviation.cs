using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>How a mains that is not nominal is written, one way in all rooms: its deviation, 10.percent for high mains and (−10).percent for low.</summary>
public static class MainsDeviation
{
    /// <summary>Mains over nominal: 1 + deviation.</summary>
    /// <param name="deviation">Mains over nominal, less one; above −100 %.</param>
    /// <returns>A plain factor, such as 0.9 for −10 %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The deviation leaves no mains.</exception>
    [Worked("one and the deviation of the mains")]
    public static double Factor(Ratio deviation)
    {
        var factor = 1 + deviation.DecimalFractions;
        if (!(factor > 0) || !double.IsFinite(factor))
            Guard.Refuse(nameof(deviation), deviation, "above −100 %", "Write 10.percent for a tenth above nominal, (−10).percent for a tenth below.");
        return factor;
    }
}
