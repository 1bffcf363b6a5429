using EightOhm.Quantities;
using EightOhm.Thermal;

namespace EightOhm.Display.Tables;

/// <summary>Temperatures of a network, layers of a ladder and terms of an impedance as tables.</summary>
public static class ThermalTables
{
    /// <summary>The temperatures, node by node, and the ambient's.</summary>
    /// <param name="temperatures">The temperatures.</param>
    [Shows]
    public static Table Nodes(NodeTemperatures temperatures)
    {
        ArgumentNullException.ThrowIfNull(temperatures);
        IEnumerable<IReadOnlyList<string>> rows = temperatures.Nodes.Select(IReadOnlyList<string> (n) => [n.Name, QuantityFormat.Short(temperatures[n])]);
        return new Table(["node", "temperature"], [.. rows, ["ambient", QuantityFormat.Short(temperatures.Ambient)]], [1], "Temperatures");
    }

    /// <summary>The layers, the junction first.</summary>
    /// <param name="rungs">The layers.</param>
    [Shows]
    public static Table Rungs(IEnumerable<LadderRung> rungs) =>
        new(["layer", "stores", "to the next"], [.. rungs.Select((r, i) => (IReadOnlyList<string>)[FormattableString.Invariant($"{i + 1}"), QuantityFormat.Short(r.C), QuantityFormat.Short(r.R)])], [1, 2], "Layers from the junction on");

    /// <summary>The exponentials. They are no layers.</summary>
    /// <param name="terms">The terms.</param>
    [Shows]
    public static Table Terms(IEnumerable<FosterTerm> terms) =>
        new(["term", "R", "τ"], [.. terms.Select((t, i) => (IReadOnlyList<string>)[FormattableString.Invariant($"{i + 1}"), QuantityFormat.Short(t.R), QuantityFormat.Short(t.Tau)])], [1, 2], "Exponentials of a thermal impedance");

    /// <summary>A ladder, layer by layer.</summary>
    /// <param name="ladder">The ladder.</param>
    [Shows]
    public static Table Ladder(CauerLadder ladder)
    {
        ArgumentNullException.ThrowIfNull(ladder);
        return Rungs(ladder.Rungs);
    }

    /// <summary>An impedance, exponential by exponential.</summary>
    /// <param name="impedance">The impedance.</param>
    [Shows]
    public static Table Impedance(FosterImpedance impedance)
    {
        ArgumentNullException.ThrowIfNull(impedance);
        return Terms(impedance.Terms);
    }

}
