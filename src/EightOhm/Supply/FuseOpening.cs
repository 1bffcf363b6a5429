using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>One gate of a fuse's standard sheet or datasheet: at so many times its rating it opens at the latest after a time.</summary>
/// <param name="Multiple">Current over the rating; greater than 1.</param>
/// <param name="Latest">The longest time that it may take there; greater than 0 s.</param>
public readonly record struct FuseGate([property: Symbol("m")] double Multiple, [property: Symbol("t_max")] Duration Latest);

/// <summary>When a fuse opens at the latest, from the gates of its datasheet: what it must open, and what it will never open.</summary>
/// <remarks>Time-lag and quick-acting fuses differ by their gates: a time-lag one of IEC 60127-2 sheet 5 has 30 min at 2.1 times its rating, 80 s at 2.75, 5 s at 4 and 100 ms at 10 times;
/// sheet 3 has 2 min, 10 s, 3 s and 300 ms. Below its first gate nobody promises that it opens at all: a limiter whose bypass has failed burns at the current of normal use,
/// and no mains fuse ends that. Give it a thermal fuse of its own.</remarks>
/// <example><code>var slow = new FuseOpening([new(2.1, 120.s), new(2.75, 10.s), new(4, 3.s), new(10, 300.ms)]);
/// slow.Latest(4.A, 2.3.A)     // none: it may never open</code></example>
public sealed class FuseOpening
{
    /// <summary>Takes the gates of a datasheet.</summary>
    /// <param name="gates">One or more, rising multiples, falling times.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no gate, or they are out of order.</exception>
    public FuseOpening(IReadOnlyList<FuseGate> gates)
    {
        ArgumentNullException.ThrowIfNull(gates);
        Guard.Positive(gates.Count, "the number of gates");
        for (var i = 0; i < gates.Count; i++)
        {
            if (!(gates[i].Multiple > (i == 0 ? 1 : gates[i - 1].Multiple)))
                Guard.Refuse($"the multiple of gate {i + 1}", gates[i].Multiple, i == 0 ? "more than 1" : "more than that of the gate before", "Write the gates from the smallest current to the largest.");
            Guard.Positive(gates[i].Latest, $"the time of gate {i + 1}");
            if (i > 0 && gates[i].Latest > gates[i - 1].Latest)
                Guard.Refuse($"the time of gate {i + 1}", gates[i].Latest, "at most that of the gate before", "A fuse opens no later at more current.");
        }

        Gates = [.. gates];
    }

    /// <summary>The gates.</summary>
    public IReadOnlyList<FuseGate> Gates { get; }

    /// <summary>When a fuse opens at the latest; null where nobody promises that it opens.</summary>
    /// <param name="rating">The fuse's rating; greater than 0 A.</param>
    /// <param name="fault">The current that it should open, rms; 0 A or more.</param>
    /// <returns>The time of the highest gate that the current reaches: more current opens no later.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Worked("the latest time of the highest gate that the current reaches")]
    public Duration? Latest(ElectricCurrent rating, ElectricCurrent fault)
    {
        var multiple = Guard.NotNegative(fault) / Guard.Positive(rating);
        Duration? latest = null;
        foreach (var gate in Gates)
            latest = multiple >= gate.Multiple ? gate.Latest : latest;
        return latest;
    }

    /// <summary>The largest rating that opens a fault within a time; null where no gate is that soon.</summary>
    /// <param name="fault">The current to open, rms; greater than 0 A.</param>
    /// <param name="within">The longest that it may last; greater than 0 s.</param>
    /// <returns>A rating; the fuse must also carry the current of normal use, by <see cref="Fuse.Rating"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Worked("the fault over the multiple of the first gate that is soon enough")]
    public ElectricCurrent? LargestRating(ElectricCurrent fault, Duration within)
    {
        Guard.Positive(fault);
        Guard.Positive(within);
        foreach (var gate in Gates)
            if (gate.Latest <= within)
                return fault / gate.Multiple;
        return null;
    }

    /// <inheritdoc/>
    public override string ToString() => string.Join("; ", Gates.Select(g => $"{QuantityFormat.Short(g.Latest)} at {QuantityFormat.Short(g.Multiple)} times its rating"));
}
