using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Protection;

/// <summary>Whether a limiter clears both limits of its operating window: below the safe area when its sense junction is coldest, above every load when it is hottest.</summary>
/// <param name="Area">Against the safe area.</param>
/// <param name="Loads">Against each load.</param>
public sealed record LimiterVerdict(LimiterMargin Area, IReadOnlyList<LimiterMargin> Loads)
{
    /// <summary>Whether all pass.</summary>
    public bool Passes => Tightest.Passes;

    /// <summary>The tightest of all.</summary>
    public LimiterMargin Tightest => Loads.Append(Area).MinBy(m => m.Margin)!;

    /// <summary>The tightest margin; below 1 it does not pass.</summary>
    [Symbol("m")]
    public double TightestMargin => Tightest.Margin;

    /// <summary>The most current of one transistor that is missing anywhere; 0 A when all pass.</summary>
    public ElectricCurrent Short => Loads.Append(Area).MaxBy(m => m.Short)!.Short;

    /// <summary>Collector to emitter where it is tightest.</summary>
    [Symbol("V_CE")]
    public ElectricPotential Where => Tightest.Voltage;

    /// <summary>The verdict in words.</summary>
    public string Says
    {
        get
        {
            var failed = Loads.Prepend(Area).Where(m => !m.Passes).ToList();
            return failed.Count == 0
                ? $"Passes: the tightest is {Tightest}."
                : $"Does not pass: {string.Join("; ", failed.Select(Why))}.";
        }
    }

    /// <inheritdoc/>
    public override string ToString() => Says;

    private string Why(LimiterMargin m) => ReferenceEquals(m, Area)
        ? $"the limiter lets the transistor out of its safe area at {QuantityFormat.Short(m.Voltage, 3)}, where it allows {QuantityFormat.Short(m.Locus, 3)} and the area {QuantityFormat.Short(m.Other, 3)}: short by {QuantityFormat.Short(m.Short, 3)} (margin {QuantityFormat.Short(m.Margin, 3)}, sense junction at {QuantityFormat.Short(m.Sense)})"
        : $"the limiter acts within the load line of {m.To} at {QuantityFormat.Short(m.Voltage, 3)}, where the load needs {QuantityFormat.Short(m.Other, 3)} of each transistor and gets {QuantityFormat.Short(m.Locus, 3)}: short by {QuantityFormat.Short(m.Short, 3)} (margin {QuantityFormat.Short(m.Margin, 3)}, sense junction at {QuantityFormat.Short(m.Sense)})";
}
