using EightOhm.Display.Tables;
using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;

namespace EightOhm.Display.Tests.Tables;

public sealed class RecordTablesTests
{
    private readonly DesignRecord _record = DesignRecord.Scratch("Tern");

    public RecordTablesTests()
    {
        _record.Target("P", 100.W, "rated");
        _record.Choose("n", 3, "the safe area asks for it", "two larger ones");
        _record.Assume("R_cs", 0.5.K_per_W, "common practice, no source");
        _record.Target("T_max", 125.degC);
        _record.Derive("P_n", (Power P, int n) => P / n);
        _record.Compute("T_j", (ThermalResistance R_cs) => 90.degC);
        _record.Compute("any", 1.0);
        _record.Require("junction of {n} pairs", "T_j").AtMost("T_max");
        _record.Set("P", "120 W");
        _record.Set("R_cs", "0.6 K/W");
    }

    [Fact]
    public void Entries_say_where_they_come_from_and_how_they_stand() => Assert.Equal(
        ["set: the chapter says 100 W", "chosen", "set: the chapter says 0.5 K/W", "target", "derived", "stale: R_cs moved", "stale: P moved"],
        Rows(RecordTables.Entries(_record.Entries), 3));

    [Fact]
    public void What_hangs_on_all_says_so() => Assert.Equal(["computed from R_cs", "computed; hangs on every input"], Rows(RecordTables.Entries(_record.EntriesOf("T_j", "any")), 2));

    [Fact]
    public void Decisions_and_assumptions_have_their_reasons()
    {
        Assert.Equal(["n", "3", "the safe area asks for it", "two larger ones", "chosen"], Assert.Single(RecordTables.Decisions(_record.Decisions).Rows));
        Assert.Equal(["0.6 K/W", "common practice, no source", "junction of 3 pairs", "set: the chapter says 0.5 K/W"], Assert.Single(RecordTables.Assumptions(_record.Assumptions).Rows).Skip(1));
    }

    [Fact]
    public void The_sheet_tells_value_limit_and_state_in_words() => Assert.Equal(
        ["junction of 3 pairs", "90 °C", "", "at most 125 °C (T_max)", "–", "stale: T_j is stale: R_cs moved"],
        Assert.Single(RecordTables.Compliance(_record.Compliance()).Rows));

    private static IEnumerable<string> Rows(Table table, int column) => table.Rows.Select(r => r[column]);
}
