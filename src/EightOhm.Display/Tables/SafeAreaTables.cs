using EightOhm.Devices;
using EightOhm.Protection;
using EightOhm.Quantities;
using EightOhm.SafeAreas;

namespace EightOhm.Display.Tables;

/// <summary>Cards, safe areas, pairs and limiters as tables whose caption is the verdict in words.</summary>
public static class SafeAreaTables
{
    /// <summary>A value's figures under its own words: a card says there that it is invented, a use whether it is inside.</summary>
    /// <param name="value">A value of ours with words of its own.</param>
    [Shows(As = [typeof(Transistor), typeof(DeratedArea), typeof(LoadEllipse), typeof(SafeAreaUtilisation), typeof(VoltageCurrentLimiter)])]
    public static Table WithWords(object value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return Facts.Of(value) with { Caption = value.ToString()! };
    }

    /// <summary>The number of pairs by each criterion, and what is left of it with the number decided on.</summary>
    /// <param name="pairs">The decision.</param>
    [Shows]
    public static Table Pairs(PairCount pairs)
    {
        ArgumentNullException.ThrowIfNull(pairs);
        List<IReadOnlyList<string>> rows =
        [
            ["average dissipation", QuantityFormat.Short(pairs.ByDissipation), QuantityFormat.Short(pairs.DissipationOfOne, 3), QuantityFormat.Short(pairs.DissipationAllowed, 3)],
            ["safe area", QuantityFormat.Short(pairs.BySafeArea), QuantityFormat.Short(pairs.Area.Current, 3), $"{QuantityFormat.Short(pairs.Area.Allowed, 3)} at {QuantityFormat.Short(pairs.Area.Voltage, 3)}"],
            ["peak current", QuantityFormat.Short(pairs.ByCurrent), QuantityFormat.Short(pairs.CurrentOfOne, 3), QuantityFormat.Short(pairs.CurrentAllowed, 3)],
        ];
        return new Table(["by", "pairs needed", $"one transistor of {pairs.Pairs} {(pairs.Pairs == 1 ? "pair" : "pairs")}", "allowed"], rows, [1, 2, 3], $"{pairs.Pairs} {(pairs.Pairs == 1 ? "pair" : "pairs")}; what decides is {pairs.Decides}");
    }

    /// <summary>A limiter against the safe area and each load.</summary>
    /// <param name="verdict">The verdict.</param>
    [Shows]
    public static Table Verdict(LimiterVerdict verdict)
    {
        ArgumentNullException.ThrowIfNull(verdict);
        return new Table(
            ["against", "margin", "at V_CE", "limiter", "area or load", "sense junction", "verdict"],
            [.. verdict.Loads.Prepend(verdict.Area).Select(IReadOnlyList<string> (m) => [m.To, QuantityFormat.Short(m.Margin, 3), QuantityFormat.Short(m.Voltage, 3), QuantityFormat.Short(m.Locus, 3), QuantityFormat.Short(m.Other, 3), QuantityFormat.Short(m.Sense), m.Passes ? "passes" : "does not pass"])],
            [1, 2, 3, 4, 5],
            verdict.Says);
    }
}
