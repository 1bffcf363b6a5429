using EightOhm.OutputStages;
using EightOhm.Quantities;

namespace EightOhm.Display.Tables;

/// <summary>The powers of an output stage at several levels as a table.</summary>
public static class DissipationTables
{
    /// <summary>A row for each level.</summary>
    /// <param name="levels">The powers, in the order to show.</param>
    [Shows]
    public static Table Levels(IEnumerable<StagePowers> levels)
    {
        ArgumentNullException.ThrowIfNull(levels);
        return new Table(
            ["peak output", "one rail", "from the supply", "into the load", "emitter resistors", "all transistors", "one transistor"],
            [.. levels.Select(IReadOnlyList<string> (h) =>
                [QuantityFormat.Short(h.Level), QuantityFormat.Short(h.Rail), QuantityFormat.Short(h.SupplyPower), QuantityFormat.Short(h.LoadPower), QuantityFormat.Short(h.Resistors), QuantityFormat.Short(h.Total), QuantityFormat.Short(h.PerDevice)])],
            [0, 1, 2, 3, 4, 5, 6],
            "Powers of the output stage");
    }
}
