using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Display.Tables;

/// <summary>The supply as tables: the swing ledger, the mains, the switch-on.</summary>
public static class SupplyTables
{
    /// <summary>A swing ledger: each loss with its why, and the rail needed.</summary>
    /// <param name="ledger">The ledger.</param>
    public static Table Ledger(SwingLedger ledger)
    {
        ArgumentNullException.ThrowIfNull(ledger);
        return new Table(
            ["from the output to the rail", "positive", "negative", "on", "why"],
            [["peak output", Face.Of(ledger.Peak), Face.Of(ledger.Peak), "", $"with {Face.Of(ledger.PeakCurrent)} into the load"],
                .. ledger.Losses.Select(IReadOnlyList<string> (l) => [l.Name, Face.Of(l.Positive), Face.Of(l.Negative), Way(l.On), l.Why]),
                ["rail needed at its trough", Face.Of(ledger.NeededPositive), Face.Of(ledger.NeededNegative), "", "the needier way decides"]],
            [1, 2],
            "Swing ledger");
    }

    /// <summary>A swing ledger against rails: margins, who clips first, where there is most to gain.</summary>
    /// <param name="verdict">The verdict.</param>
    public static Table Verdict(SwingVerdict verdict)
    {
        ArgumentNullException.ThrowIfNull(verdict);
        return new Table(
            ["rail", "needed", "there is", "margin"],
            [["positive", Face.Of(verdict.Ledger.NeededPositive), Face.Of(verdict.Rails.Positive), Signed(verdict.MarginPositive)],
                ["negative", Face.Of(verdict.Ledger.NeededNegative), Face.Of(verdict.Rails.Negative), Signed(verdict.MarginNegative)]],
            [1, 2, 3],
            $"Swing ledger against the rails: {verdict}");
    }

    /// <summary>Everything that the mains moves.</summary>
    /// <param name="table">The table.</param>
    public static Table Mains(MainsTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        var part = Engineering.Number(table.Tolerance * 100, 3);
        return new Table(
            ["what", $"mains −{part} %", "nominal", $"mains +{part} %", "rating", "used at high mains"],
            [.. table.Rows.Select(IReadOnlyList<string> (r) =>
                [r.Name, Face.Of(r.Low), Face.Of(r.Nominal), Face.Of(r.High), r.Limit is null ? "" : Face.Of(r.Limit), Used(r)])],
            [1, 2, 3, 4, 5],
            $"Mains ±{part} %");
    }

    /// <summary>Both worst moments of a switch-on.</summary>
    /// <param name="peaks">The peaks.</param>
    public static Table Inrush(InrushPeaks peaks)
    {
        ArgumentNullException.ThrowIfNull(peaks);
        return new Table(
            ["switched on", "without limiter", "with limiter"],
            [["at the crest: empty capacitors", Face.Of(peaks.Capacitors), Face.Of(peaks.CapacitorsLimited)],
                ["at zero: saturated core, a bound", Face.Of(peaks.Core), Face.Of(peaks.CoreLimited)]],
            [1, 2],
            $"Primary current, peak; the fuse is governed by {peaks.Governs}: {Face.Of(peaks.Governing)}, half a period of it {Face.Of(peaks.HalfPeriodPulse)}");
    }

    private static string Way(SwingPath path) => path switch
    {
        SwingPath.Both => "both ways",
        SwingPath.Drive => "the drive",
        _ => "the output transistor",
    };

    // A word beside the sign: a margin below zero is told by more than a dash.
    private static string Signed(ElectricPotential margin) => margin < default(ElectricPotential) ? $"{Face.Of(margin)}, falls short" : Face.Of(margin);

    private static string Used(MainsRow row) => row.ShareAtHigh is { } share ? $"{Engineering.Number(share * 100, 3)} %{(row.Holds ? "" : ", exceeded")}" : "";
}
