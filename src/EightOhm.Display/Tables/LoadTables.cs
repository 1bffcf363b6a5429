using EightOhm.Loads;
using EightOhm.Quantities;

namespace EightOhm.Display.Tables;

/// <summary>Loads side by side.</summary>
public static class LoadTables
{
    private const int Digits = 3;

    /// <summary>What each load asks at its worst frequency.</summary>
    /// <param name="loads">The loads.</param>
    [Shows]
    public static Table Demands(IEnumerable<LoadDemand> loads)
    {
        ArgumentNullException.ThrowIfNull(loads);
        return new Table(
            ["load", "peak output", "peak current, sine", "worst programme", "average-equivalent", "peak-equivalent"],
            [.. loads.Select(l => (IReadOnlyList<string>)
            [
                l.Name,
                QuantityFormat.Short(l.PeakVoltage, Digits),
                QuantityFormat.Short(l.SineCurrent, Digits),
                l.WorstProgrammeCurrent is { } current ? QuantityFormat.Short(current, Digits) : "–",
                QuantityFormat.Short(l.Least.AverageEquivalent, Digits),
                QuantityFormat.Short(l.Least.PeakEquivalent, Digits),
            ])],
            [1, 2, 3, 4, 5],
            "Each at its worst frequency from 10 Hz to 20 kHz; – where a magnitude and a phase say nothing of programme");
    }
}
