using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;

namespace EightOhm.Tests.Record;

public sealed class ComputeTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_result_is_stale_when_what_it_came_from_moved_and_current_when_computed_again()
    {
        var record = _folder.Open();
        record.Target("P_d", 40.W);
        record.Choose("R_sink", 1.2.K_per_W);
        Assert.Equal(73.degC, record.Compute("T_j", (Power P_d, ThermalResistance R_sink) => Temperature.FromDegreesCelsius(25 + (double)P_d.Watts * R_sink.Si)));
        record.Derive("T_rise", (Temperature T_j) => T_j - Literals.get_degC(25));
        Assert.Equal((EntryState.Current, null), State(record, "T_j"));
        record.Target("P_d", 50.W);
        record = _folder.Open();
        Assert.Equal((EntryState.Stale, "P_d moved"), State(record, "T_j"));
        Assert.Equal((EntryState.Stale, "T_j is stale: P_d moved"), State(record, "T_rise"));
        Assert.Equal(73.degC, record.Get<Temperature>("T_j"));
        record.Compute("T_j", (Power P_d, ThermalResistance R_sink) => Temperature.FromDegreesCelsius(25 + (double)P_d.Watts * R_sink.Si));
        Assert.Equal((EntryState.Current, null), State(record, "T_j"));
        Assert.Equal((EntryState.Current, null), State(record, "T_rise"));
    }

    [Fact]
    public void What_the_reader_of_cells_knows_is_what_it_hangs_on()
    {
        var record = _folder.Open();
        record.Target("a", 1.0);
        record.Target("b", 2.0);
        using (KnownSources.Are("a"))
            record.Compute("c", 3.0);
        Assert.Equal(["a"], record.EntryOf("c").From);
        Assert.False(record.EntryOf("c").HangsOnAll);
        record.Set("b", "5");
        Assert.True(record.EntryOf("c").IsCurrent);
        record.Set("a", "5");
        Assert.Equal((EntryState.Stale, "a moved"), State(_folder.Open(), "c"));
    }

    [Fact]
    public void Where_nothing_is_known_it_hangs_on_every_input_and_says_so()
    {
        var record = _folder.Open();
        record.Target("a", 1.0);
        record.Choose("b", 2.0);
        record.Assume("d", 2.0);
        record.Compute("c", 3.0);
        Assert.True(record.EntryOf("c").HangsOnAll);
        Assert.Equal(["a", "b", "d"], record.EntryOf("c").From);
        record.Target("later", 1.0);
        Assert.True(_folder.Open().EntryOf("c").IsCurrent);
        foreach (var input in new[] { "a", "b", "d" })
        {
            record.Set(input, "9");
            Assert.Equal((EntryState.Stale, $"{input} moved"), State(_folder.Open(), "c"));
            record.ClearSet(input);
            Assert.True(_folder.Open().EntryOf("c").IsCurrent);
        }
    }

    [Fact]
    public void A_source_that_the_record_does_not_have_means_that_nothing_is_known()
    {
        var record = _folder.Open();
        record.Target("a", 1.0);
        using (KnownSources.Are("nowhere"))
            record.Compute("c", 3.0);
        Assert.True(record.EntryOf("c").HangsOnAll);
    }

    [Fact]
    public void A_conditions_name_among_the_sources_is_no_entry_and_makes_nothing_unknown()
    {
        var record = _folder.Open();
        record.Target("a", 1.0);
        record.Target("b", 1.0);
        var over = record.Conditions().Range("x", 0.0, 1.0).Spread("y", 5.percent);
        Assert.Equal(["x", "y"], over.Names);
        using (KnownSources.Are("a", "x", "y"))
            record.Compute("c", 3.0);
        Assert.Equal((false, "a"), (record.EntryOf("c").HangsOnAll, string.Join(' ', record.EntryOf("c").From)));
        record.Target("x", 2.0);
        using (KnownSources.Are("a", "x"))
            record.Compute("c", 3.0);
        Assert.Equal(["a", "x"], record.EntryOf("c").From);
    }

    [Fact]
    public void A_result_of_unknown_origin_hangs_on_the_results_before_it_too()
    {
        // The inputs stayed, but somebody computed the first anew and to another figure: the second may have come from it.
        var record = _folder.Open();
        record.Target("a", 1.0);
        record.Compute("first", 2.0);
        record.Compute("second", 3.0);
        record.Compute("first", 2.5);
        Assert.Equal((EntryState.Stale, "first moved"), State(_folder.Open(), "second"));
        record.Compute("second", 3.5);
        Assert.True(record.EntryOf("first").IsCurrent);
        Assert.True(record.EntryOf("second").IsCurrent);
    }

    [Fact]
    public void A_result_is_current_again_when_the_value_goes_back()
    {
        var record = _folder.Open();
        record.Target("P_d", 40.W);
        record.Compute("T_j", (Power P_d) => 90.degC);
        record.Set("P_d", "41 W");
        Assert.False(record.EntryOf("T_j").IsCurrent);
        record.ClearSet("P_d");
        Assert.True(record.EntryOf("T_j").IsCurrent);
    }

    [Fact]
    public void The_last_bit_of_a_source_counts()
    {
        var record = _folder.Open();
        record.Target("x", 0.1);
        record.Compute("y", (double x) => 1.0);
        record.Target("x", Math.BitIncrement(0.1));
        Assert.Equal((EntryState.Stale, "x moved"), State(record, "y"));
    }

    [Fact]
    public void A_result_from_a_stale_result_is_stale_too()
    {
        var record = _folder.Open();
        record.Target("a", 1.0);
        record.Compute("b", (double a) => 2 * a);
        record.Compute("c", (double b) => b + 1);
        record.Target("a", 1.5);
        Assert.Equal((EntryState.Stale, "b is stale: a moved"), State(record, "c"));
        // Computed again from the stale one, it belongs to no inputs that are in force.
        record.Compute("c", (double b) => b + 1);
        Assert.Equal((EntryState.Stale, "b is stale: a moved"), State(record, "c"));
    }

    [Fact]
    public void Circles_and_unknown_sources_are_refused_and_used_entries_stay()
    {
        var record = _folder.Open();
        Assert.Contains("no entries yet", Assert.Throws<RecordException>(() => record.Compute("y", (double x) => x)).Message, StringComparison.Ordinal);
        record.Target("x", 1.0);
        record.Compute("y", (double x) => x);
        record.Derive("z", (double y) => y + 1);
        Assert.Contains("y ← z ← y", Assert.Throws<RecordException>(() => record.Compute("y", (double z) => z)).Message, StringComparison.Ordinal);
        Assert.Equal("y comes from x; remove it first.", Assert.Throws<RecordException>(() => record.Remove("x")).Message);
        Assert.Contains("y takes x for Power, but the record has it as Double", Assert.Throws<RecordException>(() => record.Compute("y", (Power x) => 1.0)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_solver_that_gives_up_leaves_no_answer_and_its_reason()
    {
        var record = _folder.Open();
        record.Target("P", 100.W);
        record.Target("V_max", 50.V);
        record.Compute("V_rail", (Power P) => 45.V);
        record.Derive("V_2", (ElectricPotential V_rail) => V_rail * 2);
        record.Require("rail", "V_rail").AtMost("V_max");
        record.Set("P", "200 W");
        Assert.Equal(RequirementState.Stale, record.Compliance()[0].State);
        var thrown = Assert.Throws<InvalidOperationException>(() => record.Compute("V_rail", (Power P) => P > Power.FromWatts(150) ? throw new InvalidOperationException("short by 3.2 V: take a higher secondary.") : 45.V));
        Assert.Equal("short by 3.2 V: take a higher secondary.", thrown.Message);
        record = _folder.Open();
        Assert.Equal((EntryState.NoAnswer, "short by 3.2 V: take a higher secondary."), State(record, "V_rail"));
        Assert.Equal((EntryState.NoAnswer, "V_rail has no answer: short by 3.2 V: take a higher secondary."), State(record, "V_2"));
        Assert.Equal((RequirementState.CannotTell, "V_rail has no answer: short by 3.2 V: take a higher secondary."), (record.Compliance()[0].State, record.Compliance()[0].Reason));
        record.ClearSet("P");
        Assert.Equal(EntryState.NoAnswer, record.EntryOf("V_rail").State);
        record.Compute("V_rail", (Power P) => 45.V);
        Assert.Equal(RequirementState.Met, record.Compliance()[0].State);
    }

    [Fact]
    public void What_a_run_could_not_write_has_no_answer_until_it_is_written()
    {
        var record = _folder.Open();
        record.Target("T_max", 125.degC);
        record.Target("P", 100.W);
        record.Compute("T_j", (Power P) => 90.degC);
        record.Require("junction", "T_j").AtMost("T_max");
        record.Require("case", "T_c").AtMost("T_max");
        record.NoAnswer(["T_j", "T_c"], [], "chapter 8, cell 4: short by 3.2 V");
        record = _folder.Open();
        Assert.All(record.Compliance(), r => Assert.Equal(RequirementState.CannotTell, r.State));
        Assert.All(record.Compliance(), r => Assert.EndsWith("has no answer: chapter 8, cell 4: short by 3.2 V", r.Reason, StringComparison.Ordinal));
        Assert.Throws<RecordException>(() => record.Get<Temperature>("T_j"));
        record.Compute("T_j", (Power P) => 90.degC);
        record.Compute("T_c", (Power P) => 80.degC);
        Assert.All(_folder.Open().Compliance(), r => Assert.Equal(RequirementState.Met, r.State));
    }

    private static (EntryState, string?) State(DesignRecord record, string name) => (record.EntryOf(name).State, record.EntryOf(name).Reason);
}
