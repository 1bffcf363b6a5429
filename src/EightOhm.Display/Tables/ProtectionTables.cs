using EightOhm.Protection;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Display.Tables;

/// <summary>Protection as tables: the faults, and a relay before a dc current.</summary>
public static class ProtectionTables
{
    /// <summary>Each fault with who acts, how soon and how it is set back; then the faults nobody answers for.</summary>
    /// <param name="faults">The table of faults.</param>
    [Shows]
    public static Table Faults(FaultTable faults)
    {
        ArgumentNullException.ThrowIfNull(faults);
        return new Table(
            ["fault", "action", "time", "reset"],
            [.. faults.Lines.Select(IReadOnlyList<string> (l) => [l.Fault, l.Action, Time(l), l.Reset]),
                .. faults.Missing.Select(IReadOnlyList<string> (m) => [m, "nobody answers for it yet", "", ""])],
            [],
            "Faults and who answers for them");
    }

    /// <summary>A relay before a dc current.</summary>
    /// <param name="verdict">The verdict.</param>
    [Shows]
    public static Table Relay(RelayVerdict verdict)
    {
        ArgumentNullException.ThrowIfNull(verdict);
        return new Table(
            ["dc", "to break", "rated"],
            [["voltage", QuantityFormat.Short(verdict.Rail), QuantityFormat.Short(verdict.RatedVoltage)], ["current", QuantityFormat.Short(verdict.Current), QuantityFormat.Short(verdict.RatedCurrent)]],
            [1, 2],
            $"Loudspeaker relay: {verdict}");
    }

    private static string Time(FaultLine line) => line.Longest is { } longest
        ? line.Time is not { } needed ? $"nothing ends it; at most {QuantityFormat.Short(longest)}"
            : line.Answered ? $"{With(line, needed)}, at most {QuantityFormat.Short(longest)}"
            : $"{With(line, needed)}, too late by {QuantityFormat.Short(line.Short)}"
        : line.Time is { } time ? With(line, time) : line.Timing;

    private static string With(FaultLine line, Duration time) =>
        line.Timing.Length > 0 ? $"{QuantityFormat.Short(time)} ({line.Timing})" : QuantityFormat.Short(time);
}
