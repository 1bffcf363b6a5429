using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Protection;

/// <summary>One fault: who acts, how soon, and how it is set back.</summary>
/// <param name="Fault">What goes wrong.</param>
/// <param name="Action">Who acts and what it does.</param>
/// <param name="Time">How soon, where it was computed; null where it was not.</param>
/// <param name="Timing">How soon in words where no time was computed, or a remark on it; may be empty.</param>
/// <param name="Reset">How it is set back.</param>
public sealed record FaultLine(string Fault, string Action, Duration? Time, string Timing, string Reset)
{
    /// <summary>The longest that the fault may last before something is lost, where that is known; null where it is not, or where it may last for ever.</summary>
    public Duration? Longest { get; init; }

    /// <summary>Whether the action comes in time: a fault that has a longest time is answered only by an action that is shorter.</summary>
    public bool Answered => Longest is not { } longest || (Time is { } time && time <= longest);

    /// <summary>By how much the action is too slow; 0 s when it is soon enough.</summary>
    public Duration Short => Longest is { } longest && Time is { } time && time > longest ? time - longest : default;
}

/// <summary>Protection as one system: each fault with who acts, how soon and how it is set back.</summary>
/// <remarks>A fault without a line is a fault that nobody answers for, so a table is read for what is missing as much as for what is there
/// (<see cref="Missing"/>). A table is not changed: each line makes a new one.</remarks>
public sealed class FaultTable
{
    /// <summary>The faults that every power amplifier must answer for.</summary>
    /// <remarks>common practice, no source.</remarks>
    public static IReadOnlyList<string> Expected { get; } =
        ["over-current", "sustained short", "dc at the output", "over-temperature", "mains lost", "soft start not bypassed", "bias open", "a rail missing"];

    private FaultTable(IReadOnlyList<FaultLine> lines) => Lines = lines;

    /// <summary>A table without lines.</summary>
    public static FaultTable Empty { get; } = new([]);

    /// <summary>The lines in the order in which they were written.</summary>
    public IReadOnlyList<FaultLine> Lines { get; }

    /// <summary>What of <see cref="Expected"/> has no line yet; see <see cref="Unanswered"/> for the whole of what is open.</summary>
    public IReadOnlyList<string> Missing => [.. Expected.Where(e => Lines.All(l => !string.Equals(l.Fault, e, StringComparison.OrdinalIgnoreCase)))];

    /// <summary>The faults of <see cref="Expected"/> that nobody answers: without a line, or with an action that comes too late.</summary>
    public IReadOnlyList<string> Unanswered => [.. Missing, .. Lines.Where(l => !l.Answered).Select(l => l.Fault)];

    /// <summary>A fault that must be ended within a time: it counts as answered only when the action is no slower.</summary>
    /// <param name="fault">What goes wrong; not empty and not yet in the table.</param>
    /// <param name="action">Who acts and what it does; not empty.</param>
    /// <param name="time">How soon, detector and relay together, at their slowest; null when nothing ends it.</param>
    /// <param name="longest">The longest that the fault may last, such as <see cref="FaultEndurance.Longest"/>; null when it may last for ever.</param>
    /// <param name="reset">How it is set back; not empty.</param>
    /// <param name="remark">A remark on the time; may be empty.</param>
    /// <example><code>table.Within("sustained short", "current-time detector opens the relay", t_act, hold.Longest, "switch off and on")</code></example>
    /// <exception cref="ArgumentException">A text is empty or the fault already there.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A time is negative.</exception>
    public FaultTable Within(string fault, string action, Duration? time, Duration? longest, string reset, string remark = "")
    {
        if (time is { } t)
            Guard.NotNegative(t, nameof(time));
        if (longest is { } most)
            Guard.NotNegative(most, nameof(longest));
        return With(new FaultLine(fault, action, time, remark, reset) { Longest = longest });
    }

    /// <summary>A fault whose time was computed.</summary>
    /// <param name="fault">What goes wrong; not empty and not yet in the table. One of <see cref="Expected"/> counts as answered.</param>
    /// <param name="action">Who acts and what it does; not empty.</param>
    /// <param name="time">How soon; 0 s or more.</param>
    /// <param name="reset">How it is set back; not empty.</param>
    /// <param name="remark">A remark on the time; may be empty.</param>
    /// <exception cref="ArgumentException">A text is empty or the fault already there.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The time is negative.</exception>
    public FaultTable When(string fault, string action, Duration time, string reset, string remark = "") =>
        With(new FaultLine(fault, action, Guard.NotNegative(time), remark, reset));

    /// <summary>A fault whose time is said in words.</summary>
    /// <param name="fault">What goes wrong; not empty and not yet in the table.</param>
    /// <param name="action">Who acts and what it does; not empty.</param>
    /// <param name="timing">How soon, in words; not empty.</param>
    /// <param name="reset">How it is set back; not empty.</param>
    /// <exception cref="ArgumentException">A text is empty or the fault already there.</exception>
    public FaultTable When(string fault, string action, string timing, string reset)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(timing);
        return With(new FaultLine(fault, action, null, timing, reset));
    }

    private FaultTable With(FaultLine line)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(line.Fault);
        ArgumentException.ThrowIfNullOrWhiteSpace(line.Action);
        ArgumentException.ThrowIfNullOrWhiteSpace(line.Reset);
        ArgumentNullException.ThrowIfNull(line.Timing);
        if (Lines.Any(l => string.Equals(l.Fault, line.Fault, StringComparison.OrdinalIgnoreCase)))
            throw new ArgumentException($"\"{line.Fault}\" stands in the table twice. Put both actions in one line, or name the cases apart.", nameof(line));
        return new FaultTable([.. Lines, line]);
    }
}
