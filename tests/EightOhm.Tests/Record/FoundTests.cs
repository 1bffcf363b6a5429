using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;

namespace EightOhm.Tests.Record;

public sealed class FoundTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_result_is_stale_when_what_it_came_from_moved_and_current_when_found_again()
    {
        var record = _folder.Open();
        record.Given("P_d", 40.W);
        record.Given("R_sink", 1.2.K_per_W);
        record.Found("T_j", 90.degC, from: ["P_d", "R_sink"]);
        record.Let("T_rise", (Temperature T_j) => T_j - Literals.get_degC(25));
        Assert.Equal(("found", true), State(record, "T_j"));
        record.Given("P_d", 50.W);
        record = _folder.Open();
        Assert.Equal(("stale: P_d moved", false), State(record, "T_j"));
        Assert.Equal(("stale: T_j is stale", false), State(record, "T_rise"));
        Assert.Equal(90.degC, record.Get<Temperature>("T_j"));
        record.Found("T_j", 104.degC, from: ["P_d", "R_sink"]);
        Assert.Equal(("found", true), State(record, "T_j"));
        Assert.Equal(("computed", true), State(record, "T_rise"));
    }

    [Fact]
    public void A_result_is_current_again_when_the_value_goes_back()
    {
        var record = _folder.Open();
        record.Given("P_d", 40.W);
        record.Found("T_j", 90.degC, from: ["P_d"]);
        record.Set("P_d", "41 W");
        Assert.False(record.EntryOf("T_j").IsCurrent);
        record.ClearSet("P_d");
        Assert.True(record.EntryOf("T_j").IsCurrent);
    }

    [Fact]
    public void The_last_bit_of_a_source_counts()
    {
        var record = _folder.Open();
        record.Given("x", 0.1);
        record.Found("y", 1.0, from: ["x"]);
        record.Given("x", Math.BitIncrement(0.1));
        Assert.Equal(("stale: x moved", false), State(record, "y"));
    }

    [Fact]
    public void A_result_from_a_stale_result_is_stale_too()
    {
        var record = _folder.Open();
        record.Given("a", 1.0);
        record.Found("b", 2.0, from: ["a"]);
        record.Found("c", 3.0, from: ["b"]);
        record.Given("a", 1.5);
        Assert.Equal(("stale: b is stale", false), State(record, "c"));
    }

    [Fact]
    public void Circles_and_unknown_sources_are_refused_and_used_entries_stay()
    {
        var record = _folder.Open();
        Assert.Contains("no entries yet", Assert.Throws<RecordException>(() => record.Found("y", 1.0, from: ["x"])).Message, StringComparison.Ordinal);
        record.Given("x", 1.0);
        record.Found("y", 1.0, from: ["x"]);
        record.Let("z", (double y) => y + 1);
        Assert.Contains("y ← z ← y", Assert.Throws<RecordException>(() => record.Found("y", 1.0, from: ["z"])).Message, StringComparison.Ordinal);
        Assert.Equal("y comes from x; remove it first.", Assert.Throws<RecordException>(() => record.Remove("x")).Message);
    }

    private static (string, bool) State(DesignRecord record, string name) => (record.EntryOf(name).State, record.EntryOf(name).IsCurrent);
}
